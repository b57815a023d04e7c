import * as v from 'valibot';
import { shopSignSchema } from '../label/shop-sign.ts';
import { partId, reasonId, resourceId, shopDayText, speciesId, stageId, stationId } from '../log/ids.ts';
import { celsiusBounds } from '../log/moisture-facts.ts';
import { money, partCount } from '../log/stores-facts.ts';
import { whole } from '../log/whole.ts';
import { codeLetters } from '../tray/code-alphabet.ts';
import { markNoteSchema, nameSchema, noteSchema } from './text-schema.ts';

/** Shown no more for new work, but kept: the log still speaks of it. */
const retired = v.boolean();
const colour = v.pipe(v.string(), v.regex(/^#[0-9a-f]{6}$/));

/** The drawn patterns by which woods are told apart beside their names. */
const grainPattern = v.picklist([
  'straight',
  'ray-fleck',
  'ring-porous',
  'cathedral',
  'burl',
  'curl',
  'spalt',
  'stripe',
  'interlocked',
  'pore-dots',
]);
export type GrainPattern = v.InferOutput<typeof grainPattern>;

/** What a wood did to the maker. It stands for good; one that was a mistake says when it was withdrawn. */
const reaction = v.object({
  day: shopDayText,
  note: noteSchema,
  withdrawn: v.nullable(shopDayText),
});
export const mostReactions = 50;

export const speciesFact = v.object({
  name: nameSchema,
  grain: grainPattern,
  light: colour,
  dark: colour,
  /** Id in shared/species.json where density, movement and hazard come from; null for a wood of the maker's own. */
  reference: v.nullable(v.string()),
  caution: noteSchema,
  retired,
  /** The maker's own, in the order in which they were noted; left out while there is none. */
  reactions: v.exactOptional(v.pipe(v.array(reaction), v.maxLength(mostReactions))),
});

export const partFact = v.object({
  name: nameSchema,
  sort: v.picklist(['core', 'ferrule', 'blank', 'consumable']),
  retired,
  /**
   * What one piece costs, in whole hundredths of a minor unit: a screw out of a box of a thousand costs less than a cent. It
   * stands where no delivery says a price; null, or left out by older versions, is not known.
   */
  cost: v.exactOptional(money),
  /** At so many pieces or fewer it is time to order; null, or left out by older versions, is no mark. */
  lowMark: v.exactOptional(v.nullable(partCount(0))),
  /** Saved from scrap it has to be cleaned before it is used again; left out by older versions, see `isCleaned`. */
  cleaned: v.exactOptional(v.boolean()),
  /** Diameter of wood that a core or ferrule is fitted on, 1/100 mm; left out while it is not said. */
  fitDiameter: v.exactOptional(whole(100, 30_000)),
});

/** `each` of a part goes into a piece at the stage that fits it. */
const billLine = v.object({
  part: partId,
  each: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(999)),
  stage: stageId,
});

/** What the sheet for the box says besides wood, batch and tray; an empty text says nothing. */
const boxTexts = { finish: noteSchema, care: noteSchema, caution: noteSchema };

export const variantFact = v.object({
  name: nameSchema,
  species: speciesId,
  ferrule: v.nullable(partId),
  bill: v.array(billLine),
  firstPrice: money,
  secondPrice: money,
  retired,
  /** Its own sheet for the box: an empty text is the shop's. Left out, or by older versions, it has the shop's sheet. */
  box: v.exactOptional(v.object({ printed: v.boolean(), ...boxTexts })),
});

/**
 * What a stage does that lungs, skin or hands pay for: it makes wood dust; the piece turns in the lathe; a finish or solvent
 * gives off fumes; it cuts a flat, after which the piece must not be spun again.
 */
export const stageDoings = ['dust', 'turns', 'fumes', 'flat'] as const;
export type StageDoing = (typeof stageDoings)[number];

const stageCommon = {
  name: nameSchema,
  /** The flaw buttons of the stage, each in a fixed place; six at most. */
  reasons: v.pipe(v.array(reasonId), v.maxLength(6)),
  /** Done by the tray rather than piece by piece: the stage screen offers +5 and the rest of the tray. */
  bulk: v.boolean(),
  caution: noteSchema,
  retired,
  /** Left out by older versions, and while nobody has said. */
  does: v.exactOptional(v.pipe(v.array(v.picklist(stageDoings)), v.maxLength(stageDoings.length))),
};

/** Clamps, or places on a rack, that several stages may share. */
export const resourceFact = v.object({
  name: nameSchema,
  /** Pieces that it takes at once; null is no limit. */
  capacity: v.nullable(whole(1, 9999)),
  retired,
});

/** The longest time of a hold, minutes: 90 days. */
export const longestCure = 90 * 24 * 60;
/** Tenths of °C. */
const celsius = whole(celsiusBounds.least, celsiusBounds.most);
/** Grams, millilitres, parts of a ratio, and g/ml: all in whole hundredths. */
const hundredths = whole(1, 1_000_000);
const wastePercent = whole(0, 90);

/** What is mixed for a hold, and how much of it a piece takes. The data sheet rules over all of it. */
const mix = v.variant('kind', [
  v.object({
    kind: v.literal('adhesive'),
    /** Hundredths of a gram of the mixed adhesive. */
    gramsEach: hundredths,
    /** The ratio as the data sheet prints it, such as 100 : 45, in hundredths. */
    resin: hundredths,
    hardener: hundredths,
    by: v.picklist(['weight', 'volume']),
    /** Hundredths of g/ml, without which a ratio by volume cannot be weighed; null when it is not said. */
    densities: v.nullable(v.object({ resin: hundredths, hardener: hundredths })),
    /** What stays in the cup and on the stick, as a share of what is mixed. */
    wastePercent,
    potMinutes: whole(1, 24 * 60),
    /** Seconds to spread one piece; null leaves it to what was learnt from taps. */
    secondsEach: v.nullable(whole(1, 24 * 60 * 60)),
  }),
  v.object({
    kind: v.literal('finish'),
    /** Hundredths of a millilitre of one coat. */
    mlEach: hundredths,
    wastePercent,
    /** Minutes after a coat from which, and until which, the next may go on; null is not said. */
    recoatFrom: v.nullable(whole(1, longestCure)),
    recoatUntil: v.nullable(whole(1, longestCure)),
  }),
]);

export const stageFact = v.variant('kind', [
  v.object({ kind: v.literal('bench'), ...stageCommon }),
  v.object({
    kind: v.literal('hold'),
    ...stageCommon,
    /** Minutes that glue or finish is recommended to have. */
    cureMinutes: whole(1, longestCure),
    /** Minutes after which pieces may be taken out without being asked about; left out, the recommended ones. */
    leastMinutes: v.exactOptional(whole(1, longestCure)),
    /** Pieces that clamps or racks of its own take at once; null is no limit. A resource rules over it. */
    capacity: v.nullable(whole(1, 9999)),
    /** The clamps or rack that it shares with whatever other stage names them; null, or left out by older versions, is none. */
    resource: v.exactOptional(v.nullable(resourceId)),
    /** Tenths of °C for which the times are given; null, or left out by older versions, is not said. */
    ratedAt: v.exactOptional(v.nullable(celsius)),
    /** The maker has confirmed that the data sheet lets warmth shorten the times; left out, it only lengthens them in the cold. */
    quickerWarm: v.exactOptional(v.boolean()),
    /** null, or left out by older versions, is nothing to mix. */
    mix: v.exactOptional(v.nullable(mix)),
  }),
  v.object({ kind: v.literal('check'), ...stageCommon }),
  v.object({ kind: v.literal('record'), ...stageCommon }),
]);
export const stageKinds = ['bench', 'hold', 'check', 'record'] as const;

export const routeFact = v.object({ name: nameSchema, stages: v.pipe(v.array(stageId), v.maxLength(60)) });

/** Minutes since midnight of the day; one that ends past midnight has a `to` past 1440. */
const workDay = v.object({
  from: whole(0, 1439),
  to: whole(1, 2880),
  /** Of all breaks together. */
  breakMinutes: whole(0, 1439),
});
export const mostDaysOff = 100;

export const personFact = v.object({
  name: nameSchema,
  retired,
  /** Hours of work by weekday, Monday first; null is a day without work. Left out while nobody has said. */
  week: v.exactOptional(v.pipe(v.array(v.nullable(workDay)), v.length(7))),
  /** First and last shop day of each stretch without work. */
  daysOff: v.exactOptional(
    v.pipe(v.array(v.object({ from: shopDayText, to: shopDayText })), v.maxLength(mostDaysOff)),
  ),
  /** What an hour of this person costs, in minor units; null, or left out, goes by the shop's. */
  hourCost: v.exactOptional(money),
});
export const reasonFact = v.object({
  name: nameSchema,
  retired,
  /** What passes, where the reason is a criterion of a check; left out while nobody has said. */
  passes: v.exactOptional(noteSchema),
});

/** Milliseconds since 1970 UTC. */
const moment = v.pipe(v.number(), v.safeInteger(), v.minValue(0));

/**
 * What somebody did that may have changed how pieces come out, such as a tool ground anew: it stands on the charts at its
 * time, and answers a signal when it was noted for one.
 */
export const markFact = v.object({
  note: markNoteSchema,
  stage: stageId,
  /** null for all woods of the stage. */
  species: v.nullable(speciesId),
  /** When it was done. */
  at: moment,
  /** The signal that it answers, of the stage and species of the mark: what is counted, and from when on it counts anew. */
  answers: v.nullable(
    v.object({
      of: v.variant('kind', [
        v.object({ kind: v.literal('scrap') }),
        v.object({ kind: v.literal('reason'), reason: reasonId }),
      ]),
      since: moment,
    }),
  ),
  retired,
});

/** A machine, with the stages that are worked on it. */
export const machineFact = v.object({
  name: nameSchema,
  stages: v.pipe(v.array(stageId), v.maxLength(60)),
  /** Minutes that it may run, and minutes that it must then rest; null when it needs no rest. */
  duty: v.nullable(v.object({ on: whole(1, 1440), off: whole(1, 1440) })),
  /** Its own most turns per minute; null when it does not turn, or that is not said. */
  mostTurns: v.nullable(whole(1, 99_999)),
  retired,
});

/** Blanks of one wood that lie and dry together, of which moisture is read. */
export const lotFact = v.object({ name: nameSchema, species: speciesId, retired });

/**
 * A size of label; lengths are hundredths of a millimetre, because all numbers of the log are whole. `sheet` says how labels lie on a sheet, null that each is a
 * page of its own, off a roll.
 */
export const labelSizeFact = v.object({
  name: nameSchema,
  width: whole(2500, 30_000),
  height: whole(1500, 30_000),
  sheet: v.nullable(
    v.object({
      width: whole(5000, 60_000),
      height: whole(5000, 60_000),
      columns: whole(1, 20),
      rows: whole(1, 40),
      /** From the edges of the sheet to its first label. */
      left: whole(0, 30_000),
      top: whole(0, 30_000),
      /** From a label's start to that of the next. */
      acrossStep: whole(0, 30_000),
      downStep: whole(0, 30_000),
    }),
  ),
  retired,
});

export const shopFact = v.object({
  name: nameSchema,
  zone: v.pipe(v.string(), v.maxLength(64)),
  /** Hour at which the shop's day begins, so that work past midnight still counts to its evening. */
  dayStartHour: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(12)),
  /** Left out by older versions; see label/sign-of.ts. */
  sign: v.exactOptional(shopSignSchema),
  /** Tenths of °C where glue and finish cure, as somebody last said; null, or left out by older versions, is not known. */
  celsius: v.exactOptional(v.nullable(celsius)),
  /** What an hour of work costs where the person has no rate of their own, in minor units; null, or left out, is not known. */
  hourCost: v.exactOptional(money),
  /** What the sheet for the box says of every variant that says nothing else. */
  box: v.exactOptional(v.object(boxTexts)),
});

/** Acts of the stage screen that a key can do, in the order of the keys 1 to 8 and on. */
export const benchActs = [
  'pass',
  'flaw-1',
  'flaw-2',
  'flaw-3',
  'flaw-4',
  'flaw-5',
  'flaw-6',
  'next',
  'undo',
  'pause',
] as const;
export type BenchAct = (typeof benchActs)[number];

export const stationFact = v.object({
  letter: v.picklist([...codeLetters]),
  name: nameSchema,
  /** Keys that the maker taught this station; an act without one keeps its usual key. */
  keys: v.array(
    v.object({ act: v.picklist(benchActs), key: v.pipe(v.string(), v.minLength(1), v.maxLength(32)) }),
  ),
  /** The stage that the app opens at here; left out by older versions, null for the choice of stages. */
  stage: v.exactOptional(v.nullable(stageId)),
  /** When the letter was claimed, where that was before this word on the station; left out, its stamp says so. */
  since: v.exactOptional(moment),
  /** The station that goes on with the letter in this one's stead: the same tablet under a new id, or one in its place. */
  handedTo: v.exactOptional(stationId),
});

export type SpeciesFact = Readonly<v.InferOutput<typeof speciesFact>>;
export type PartFact = Readonly<v.InferOutput<typeof partFact>>;
export type VariantFact = Readonly<v.InferOutput<typeof variantFact>>;
export type StageFact = Readonly<v.InferOutput<typeof stageFact>>;
export type StageKind = StageFact['kind'];
export type RouteFact = Readonly<v.InferOutput<typeof routeFact>>;
export type PersonFact = Readonly<v.InferOutput<typeof personFact>>;
export type WorkDay = Readonly<v.InferOutput<typeof workDay>>;
export type MarkFact = Readonly<v.InferOutput<typeof markFact>>;
export type LabelSizeFact = Readonly<v.InferOutput<typeof labelSizeFact>>;
export type MachineFact = Readonly<v.InferOutput<typeof machineFact>>;
export type ResourceFact = Readonly<v.InferOutput<typeof resourceFact>>;
export type HoldFact = Readonly<Extract<StageFact, { kind: 'hold' }>>;
export type MixFact = Readonly<v.InferOutput<typeof mix>>;
export type LotFact = Readonly<v.InferOutput<typeof lotFact>>;
export type Reaction = Readonly<v.InferOutput<typeof reaction>>;
export type ReasonFact = Readonly<v.InferOutput<typeof reasonFact>>;
export type ShopFact = Readonly<v.InferOutput<typeof shopFact>>;
export type StationFact = Readonly<v.InferOutput<typeof stationFact>>;
