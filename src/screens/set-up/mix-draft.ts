import { readWholeNumber } from '../../domain/command/whole-number.ts';
import { longestCure, type MixFact } from '../../domain/set-up/facts.ts';
import { holdSetUpWords as words } from '../../words/hold-set-up-words.ts';
import { hundredthsText, readHundredths } from '../parts/form/hundredths.ts';
import type { Problems } from '../parts/form/reading.ts';
import { hoursText, readMinutes } from './typed-hours.ts';

export type MixKind = MixFact['kind'] | 'none';

/** What is mixed for a hold, as it is typed; numbers are texts until they are saved. */
export interface MixDraft {
  readonly mix: MixKind;
  readonly gramsEach: string;
  readonly resin: string;
  readonly hardener: string;
  readonly by: 'weight' | 'volume';
  readonly resinDensity: string;
  readonly hardenerDensity: string;
  readonly waste: string;
  readonly pot: string;
  readonly secondsEach: string;
  readonly mlEach: string;
  readonly recoatFrom: string;
  readonly recoatUntil: string;
}

/** Hundredths, as the fact has them. */
const amounts = { least: 1, most: 1_000_000 };
const usualWaste = 10;

export function mixDraftOf(mix: MixFact | null): MixDraft {
  const glue = mix?.kind === 'adhesive' ? mix : undefined;
  const coat = mix?.kind === 'finish' ? mix : undefined;
  const amount = (hundredths: number | undefined) =>
    hundredths === undefined ? '' : hundredthsText(hundredths);
  const hours = (minutes: number | null | undefined) => (minutes ? hoursText(minutes) : '');
  return {
    mix: mix?.kind ?? 'none',
    gramsEach: amount(glue?.gramsEach),
    resin: amount(glue?.resin),
    hardener: amount(glue?.hardener),
    by: glue?.by ?? 'weight',
    resinDensity: amount(glue?.densities?.resin),
    hardenerDensity: amount(glue?.densities?.hardener),
    waste: String(mix?.wastePercent ?? usualWaste),
    pot: glue ? String(glue.potMinutes) : '',
    secondsEach: glue?.secondsEach ? String(glue.secondsEach) : '',
    mlEach: amount(coat?.mlEach),
    recoatFrom: hours(coat?.recoatFrom),
    recoatUntil: hours(coat?.recoatUntil),
  };
}

export interface ReadMix {
  readonly problems: Problems<MixDraft>;
  /** Makes sense only where there are no problems. */
  readonly value: MixFact | null;
}

/** Reads what is mixed. Only the fields of the chosen kind count. */
export function readMix(draft: MixDraft): ReadMix {
  if (draft.mix === 'none') return { problems: {}, value: null };
  const waste = wholeOf(draft.waste, { least: 0, most: 90 });
  const wasteProblem = waste === null ? words.badWaste : undefined;
  const read = draft.mix === 'adhesive' ? readAdhesive(draft, waste ?? 0) : readFinish(draft, waste ?? 0);
  return { problems: { ...read.problems, waste: wasteProblem }, value: read.value };
}

function readAdhesive(draft: MixDraft, wastePercent: number): ReadMix {
  const gramsEach = readHundredths(draft.gramsEach, amounts);
  const resin = readHundredths(draft.resin, amounts);
  const hardener = readHundredths(draft.hardener, amounts);
  const potMinutes = wholeOf(draft.pot, { least: 1, most: 24 * 60 });
  const seconds = wholeOrNone(draft.secondsEach, { least: 1, most: 24 * 60 * 60 });
  const densities = readDensities(draft);
  return {
    problems: {
      gramsEach: gramsEach === null ? words.badAmount : undefined,
      resin: resin === null ? words.badAmount : undefined,
      hardener: hardener === null ? words.badAmount : undefined,
      pot: potMinutes === null ? words.badPot : undefined,
      secondsEach: seconds === undefined ? words.badSeconds : undefined,
      hardenerDensity: densities === undefined ? words.badDensities : undefined,
    },
    value: {
      kind: 'adhesive',
      gramsEach: gramsEach ?? 1,
      resin: resin ?? 1,
      hardener: hardener ?? 1,
      by: draft.by,
      densities: densities ?? null,
      wastePercent,
      potMinutes: potMinutes ?? 1,
      secondsEach: seconds ?? null,
    },
  };
}

/** Densities count for a ratio by volume; undefined when they are wrong. */
function readDensities({ by, resinDensity, hardenerDensity }: MixDraft) {
  if (by === 'weight' || (resinDensity.trim() === '' && hardenerDensity.trim() === '')) return null;
  const resin = readHundredths(resinDensity, amounts);
  const hardener = readHundredths(hardenerDensity, amounts);
  return resin === null || hardener === null ? undefined : { resin, hardener };
}

function readFinish(draft: MixDraft, wastePercent: number): ReadMix {
  const mlEach = readHundredths(draft.mlEach, amounts);
  const from = minutesOrNone(draft.recoatFrom);
  const until = minutesOrNone(draft.recoatUntil);
  const inOrder = !from || !until || from < until;
  return {
    problems: {
      mlEach: mlEach === null ? words.badAmount : undefined,
      recoatFrom: from === undefined ? words.badRecoat : undefined,
      recoatUntil: until === undefined || !inOrder ? words.badRecoat : undefined,
    },
    value: {
      kind: 'finish',
      mlEach: mlEach ?? 1,
      wastePercent,
      recoatFrom: from ?? null,
      recoatUntil: until ?? null,
    },
  };
}

function wholeOf(typed: string, bounds: { readonly least: number; readonly most: number }): number | null {
  const read = readWholeNumber(typed, bounds);
  return read.ok ? read.value : null;
}

/** null where nothing is typed, undefined where it is wrong. */
function wholeOrNone(typed: string, bounds: { readonly least: number; readonly most: number }) {
  return typed.trim() === '' ? null : (wholeOf(typed, bounds) ?? undefined);
}

function minutesOrNone(typed: string): number | null | undefined {
  return typed.trim() === '' ? null : (readMinutes(typed, longestCure) ?? undefined);
}
