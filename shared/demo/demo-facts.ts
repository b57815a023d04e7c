import type {
  BatchId,
  PartId,
  PersonId,
  ReasonId,
  SpeciesId,
  StageId,
  StationId,
  VariantId,
} from '../../src/domain/log/ids.ts';
import { type RegisterSet, readRegisterSets } from '../../src/domain/set-up/register.ts';
import starting from '../starting-shop.json' with { type: 'json' };
import { blanksAndMachines } from './blanks.ts';

/** Good hafts wanted for the spring fair. */
export const wantedForFair = 360;
export const demoZone = 'Europe/London';
export const demoDayStart = 4;

/** Ids of the demo's own making; their form is that of every other id. */
const id = <Id extends string>(text: string) => text as Id;

interface Wood {
  readonly id: SpeciesId;
  readonly name: string;
  readonly reference: string | null;
  readonly look: readonly [grain: string, light: string, dark: string];
  readonly caution: string;
  /** What it did to Ida, before the batch. */
  readonly reaction?: string;
}

const sheet = 'The safety data sheet and your local codes rule.';

export const woods: readonly Wood[] = [
  { id: id('plum'), name: 'Plum', reference: 'plum', look: ['stripe', '#d9a48c', '#6e2c25'], caution: '' },
  {
    id: id('ash'),
    name: 'Ash',
    reference: 'ash-european',
    look: ['ring-porous', '#eadcc0', '#7a6242'],
    caution: '',
  },
  {
    id: id('beech'),
    name: 'Beech',
    reference: 'beech-european',
    look: ['ray-fleck', '#e6c7a0', '#7c4f2a'],
    caution: `Beech dust can make you allergic and is noted as a cause of cancer of the nose. Extraction and mask. ${sheet}`,
  },
  {
    id: id('walnut'),
    name: 'Walnut',
    reference: 'walnut-black',
    look: ['cathedral', '#a98560', '#3d2817'],
    caution: `Walnut dust can make you allergic. Extraction and mask. ${sheet}`,
  },
  {
    id: id('boxwood'),
    name: 'Boxwood',
    reference: 'boxwood',
    look: ['straight', '#f0dc9c', '#86682a'],
    caution: `Boxwood dust can make you allergic. Extraction and mask. ${sheet}`,
  },
  {
    id: id('yew'),
    name: 'Yew',
    reference: 'yew',
    look: ['curl', '#e8a868', '#7d3417'],
    caution: `Yew is poisonous: dust irritates and harms. Extraction, mask and gloves off the lathe. ${sheet}`,
    reaction: 'Itching eyes and a rash on both wrists after an hour of sanding',
  },
];

export const parts = {
  core: id<PartId>('awl-core'),
  copper: id<PartId>('copper-ferrule'),
  nickel: id<PartId>('nickel-ferrule'),
};
/** Low marks are those of a fortnight's work (common practice, no source). */
const partsOfDemo = {
  [parts.core]: { name: 'Awl core', sort: 'core', lowMark: 40, cleaned: true },
  [parts.copper]: { name: 'Copper ferrule', sort: 'ferrule', lowMark: 40, cleaned: true, fitDiameter: 1400 },
  [parts.nickel]: {
    name: 'Nickel silver ferrule',
    sort: 'ferrule',
    lowMark: 25,
    cleaned: true,
    fitDiameter: 1400,
  },
};
export const people = { ida: id<PersonId>('ida'), tam: id<PersonId>('tam') };
export const stations = { lathe: id<StationId>('demo-lathe'), bench: id<StationId>('demo-bench') };
export const batch = id<BatchId>('spring-fair');

export interface DemoVariant {
  readonly id: VariantId;
  readonly wood: Wood;
  readonly ferrule: PartId;
  readonly good: number;
}

const wantedByWood: Readonly<Record<string, number>> = {
  plum: 60,
  ash: 80,
  beech: 80,
  walnut: 60,
  boxwood: 50,
  yew: 30,
};

/** Every wood with copper; the dear ones with nickel silver too. */
export const variants: readonly DemoVariant[] = woods.flatMap((wood) => {
  const good = wantedByWood[wood.id] ?? 0;
  const both = ['walnut', 'boxwood', 'yew'].includes(wood.id);
  const share = both ? good / 2 : good;
  const copper = { id: id<VariantId>(`${wood.id}-copper`), wood, ferrule: parts.copper, good: share };
  return both
    ? [copper, { ...copper, id: id<VariantId>(`${wood.id}-nickel`), ferrule: parts.nickel }]
    : [copper];
});

export const stageIds = starting.facts.flatMap((fact) =>
  fact.register === 'stage' ? [fact.id] : [],
) as StageId[];
export const reasonOf = (name: string) => id<ReasonId>(name);
export const stageOf = (name: string) => id<StageId>(name);

/** Clamps of the demo workshop, and places on its drying rack; a new shop begins without either. */
const resources = [
  { id: 'clamps', name: 'Clamps', capacity: 48 },
  { id: 'rack', name: 'Drying rack', capacity: 120 },
] as const;

/** What the demo's holds have beyond those of a new shop: a made-up two-part glue and a made-up sealer. */
const holdsOfDemo: Readonly<Record<string, object>> = {
  'glue-cures': {
    ...{ resource: 'clamps', leastMinutes: 480, ratedAt: 200 },
    mix: {
      ...{ kind: 'adhesive', gramsEach: 150, resin: 10_000, hardener: 4500, by: 'weight', densities: null },
      ...{ wastePercent: 15, potMinutes: 30, secondsEach: 60 },
    },
  },
  'sealer-cures': {
    ...{ resource: 'rack', leastMinutes: 240, ratedAt: 200 },
    mix: { kind: 'finish', mlEach: 80, wastePercent: 20, recoatFrom: 240, recoatUntil: 2880 },
  },
};

/** What was done about the tear-out: a mark to compare before and after, at a moment in ms UTC. It did not help. */
export function gougeGround(at: number): RegisterSet {
  const value = { note: 'Re-ground the gouge', stage: stageOf('rough-turn'), species: null, at };
  return { register: 'mark', id: id('gouge'), value: { ...value, answers: null, retired: false } };
}

/** The hours of calendar.ts, Monday to Friday. */
const workDay = { from: 8 * 60, to: 17 * 60 + 30, breakMinutes: 75 };
const week = [workDay, workDay, workDay, workDay, workDay, null, null];

/** All set-up facts of the demo shop, judged by the schemas like any other data. */
export function demoFacts(due: string): readonly RegisterSet[] {
  const kept = starting.facts.filter(
    ({ register }) => register === 'reason' || register === 'stage' || register === 'route',
  );
  return readRegisterSets([
    {
      register: 'shop',
      id: 'shop',
      value: { name: 'Haft workshop (demo)', zone: demoZone, dayStartHour: demoDayStart, hourCost: 2600 },
    },
    { register: 'station', id: stations.lathe, value: { letter: 'A', name: 'Lathe', keys: [] } },
    { register: 'station', id: stations.bench, value: { letter: 'C', name: 'Sanding bench', keys: [] } },
    ...resources.map(({ id, ...value }) => ({
      register: 'resource',
      id,
      value: { ...value, retired: false },
    })),
    { register: 'person', id: people.ida, value: { name: 'Ida', retired: false, week } },
    { register: 'person', id: people.tam, value: { name: 'Tam', retired: false, week } },
    ...kept.map((fact) =>
      fact.id in holdsOfDemo ? { ...fact, value: { ...fact.value, ...holdsOfDemo[fact.id] } } : fact,
    ),
    ...woods.map(({ id: wood, name, reference, look: [grain, light, dark], caution, reaction }) => ({
      register: 'species',
      id: wood,
      value: {
        ...{ name, grain, light, dark, reference, caution, retired: false },
        ...(reaction && { reactions: [{ day: '2026-01-14', note: reaction, withdrawn: null }] }),
      },
    })),
    ...Object.entries(partsOfDemo).map(([id, value]) => ({
      register: 'part',
      id,
      value: { ...value, cost: null, retired: false },
    })),
    ...blanksAndMachines,
    ...variants.map(({ id: variant, wood, ferrule }) => ({
      register: 'variant',
      id: variant,
      value: {
        name: `Awl haft, ${wood.name.toLowerCase()}, ${ferrule === parts.copper ? 'copper' : 'nickel silver'}`,
        species: wood.id,
        ferrule,
        bill: [
          { part: parts.core, each: 1, stage: 'glue-up' },
          { part: ferrule, each: 1, stage: 'glue-up' },
        ],
        firstPrice: 2400,
        secondPrice: 1500,
        retired: false,
      },
    })),
    {
      register: 'batch',
      id: batch,
      value: {
        name: 'Spring fair',
        route: 'handles',
        wanted: variants.map(({ id: variant, good }) => ({ variant, good })),
        due,
        retired: false,
      },
    },
  ]);
}
