import { type Bounds, readWholeNumber, type WholeNumber } from '../../domain/command/whole-number.ts';
import type { PartId, SpeciesId, StageId } from '../../domain/log/ids.ts';
import type { VariantFact } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { factOf, factsOf, type Registers } from '../../domain/shop/registers.ts';
import { nameOf } from '../../words/names.ts';
import { numberProblemWords } from '../../words/problem-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { nameProblem, type Reading, readingOf } from '../parts/form/reading.ts';
import { priceText, readPrice } from '../parts/money.ts';
import { boxOf, problemsOf, type VariantBoxDraft, variantBoxDraftOf } from './box-draft.ts';

/** One part of the bill as it is typed. */
export interface BillLine {
  readonly part: PartId;
  readonly each: string;
  readonly stage: StageId;
}

/** A variant as it is typed. */
export interface VariantDraft {
  /** Null while the proposed name stands. */
  readonly name: string | null;
  readonly species: SpeciesId | undefined;
  readonly ferrule: PartId | null;
  readonly bill: readonly BillLine[];
  readonly firstPrice: string;
  readonly secondPrice: string;
  readonly printed: VariantBoxDraft['printed'];
  readonly finish: string;
  readonly care: string;
  readonly caution: string;
}

export const eachBounds: Bounds = { least: 1, most: 999 };

/** A new variant: in the shop's wood, where it has but one. */
export function newVariantDraft(registers: Registers): VariantDraft {
  const [wood, ...others] = factsOf(registers, 'species').filter(({ fact }) => !fact.retired);
  return { ...variantDraftOf(undefined), species: others.length === 0 ? wood?.id : undefined };
}

export function variantDraftOf(variant: VariantFact | undefined): VariantDraft {
  return {
    name: variant?.name ?? null,
    species: variant?.species,
    ferrule: variant?.ferrule ?? null,
    bill: variant?.bill.map((line) => ({ ...line, each: String(line.each) })) ?? [],
    firstPrice: priceText(variant?.firstPrice ?? null),
    secondPrice: priceText(variant?.secondPrice ?? null),
    ...variantBoxDraftOf(variant),
  };
}

/** The name that stands in the form: the typed one, or the one proposed from wood and ferrule. */
export function nameInForm(registers: Registers, { name, species, ferrule }: VariantDraft): string {
  if (name !== null) return name;
  if (!species) return '';
  const metal = ferrule ? nameOf(registers, { register: 'part', id: ferrule }) : '';
  return words.proposedName(nameOf(registers, { register: 'species', id: species }), metal);
}

export function readVariant(
  registers: Registers,
  draft: VariantDraft,
): Reading<Omit<VariantFact, 'retired'>, VariantDraft> {
  const name = nameInForm(registers, draft);
  const { species, ferrule } = draft;
  const [firstPrice, secondPrice] = [readPrice(draft.firstPrice), readPrice(draft.secondPrice)];
  const bill = draft.bill.flatMap((line) => {
    const each = readWholeNumber(line.each, eachBounds);
    return each.ok ? [{ ...line, each: each.value }] : [];
  });
  const problems = {
    // Without a wood there is no name to propose, and the wood is what is missing.
    name: species || name ? nameProblem(name) : undefined,
    species: species ? undefined : words.chooseWood,
    bill: bill.length < draft.bill.length ? words.badEach : undefined,
    firstPrice: firstPrice === undefined ? words.badPrice : undefined,
    secondPrice: secondPrice === undefined ? words.badPrice : undefined,
    ...problemsOf(draft),
  };
  if (!species) return { ok: false, problems };
  return readingOf(problems, () => ({
    name: tidyText(name),
    species,
    ferrule,
    bill,
    firstPrice: firstPrice ?? null,
    secondPrice: secondPrice ?? null,
    ...boxOf(draft),
  }));
}

/** What is wrong with the number of a part, or nothing. */
export function eachProblem({ each }: BillLine): string | undefined {
  const read: WholeNumber = readWholeNumber(each, eachBounds);
  return read.ok ? undefined : numberProblemWords(read.problem);
}

/** The bill with another ferrule: it takes the old one's stage and number, or goes in where ferrules are fitted. */
export function withFerrule(registers: Registers, { bill, ferrule }: VariantDraft, next: PartId | null) {
  const old = bill.find(({ part }) => part === ferrule);
  const others = bill.filter(({ part }) => part !== ferrule && part !== next);
  const stage = old?.stage ?? fittingStage(registers);
  return {
    ferrule: next,
    bill: next && stage ? [...others, { part: next, each: old?.each ?? '1', stage }] : others,
  };
}

/** Where parts are usually fitted: the stage before the first cure of a route in use, or else a route's first stage. */
export function fittingStage(registers: Registers): StageId | undefined {
  const routes = factsOf(registers, 'batch').flatMap(({ fact }) => {
    const route = fact.retired ? undefined : factOf(registers, { register: 'route', id: fact.route });
    return route ? [route.stages] : [];
  });
  const isHold = (id: StageId) => factOf(registers, { register: 'stage', id })?.kind === 'hold';
  const beforeCures = routes.flatMap((stages) =>
    stages.slice(0, Math.max(0, stages.findIndex(isHold))).slice(-1),
  );
  return beforeCures[0] ?? routes[0]?.[0];
}
