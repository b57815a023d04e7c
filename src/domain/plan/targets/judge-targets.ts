import type { BatchId, ShopDay, VariantId } from '../../log/ids.ts';
import { usualChance } from '../../set-up/batch-facts.ts';
import { tidyText } from '../../set-up/text.ts';
import { factOf, factsOf } from '../../shop/registers.ts';
import type { Shop } from '../../shop/shop.ts';
import { type CellProblem, readChance, readDue, readGood } from './read-target-cells.ts';

/** A line of a table of targets as texts; `line` is its number in the table, the headings being line 1. */
export interface TargetLine {
  readonly line: number;
  readonly batch: string;
  readonly variant: string;
  readonly good: string;
  readonly due: string;
  readonly chance: string;
  /** What the reader of the file found wrong with the line as a whole. */
  readonly broken?: 'quote' | 'too-many-cells' | undefined;
}

/** What a line would change; a field that stays as it is has none. */
export interface TargetChanges {
  readonly good?: { readonly from: number; readonly to: number };
  readonly due?: { readonly from: ShopDay | null; readonly to: ShopDay };
  readonly chance?: { readonly from: number; readonly to: number };
}

export type LineProblem =
  | CellProblem
  | { readonly kind: 'broken'; readonly how: 'quote' | 'too-many-cells' }
  | { readonly kind: 'no-name'; readonly column: 'batch' | 'variant' }
  | { readonly kind: 'unknown'; readonly column: 'batch' | 'variant'; readonly name: string }
  | { readonly kind: 'put-away'; readonly column: 'batch' | 'variant'; readonly name: string }
  | { readonly kind: 'two-of-name'; readonly column: 'batch' | 'variant'; readonly name: string }
  /** An earlier line has said something of the same variant, or another due day or chance of the same batch. */
  | { readonly kind: 'said-before'; readonly column: 'good' | 'due' | 'chance'; readonly line: number };

export type JudgedLine = { readonly of: TargetLine } & (
  | {
      readonly kind: 'understood';
      readonly batch: BatchId;
      readonly variant: VariantId;
      /** Empty where the line says what is so already. */
      readonly changes: TargetChanges;
    }
  | { readonly kind: 'refused'; readonly problem: LineProblem }
);

/** What a batch is to want, of what was judged; only what changes is among it. */
export interface NewTargets {
  readonly batch: BatchId;
  readonly good: readonly { readonly variant: VariantId; readonly good: number }[];
  readonly due?: ShopDay;
  readonly chance?: number;
}

/**
 * What each line of a table would change in the shop, or why it is not understood: every line has its answer, in the
 * order given. Names are read as people read them (`sameName`). An empty number, day or chance leaves what there is. Of
 * lines that contradict each other the first stands.
 */
export function judgeTargets(shop: Shop, lines: readonly TargetLine[]): readonly JudgedLine[] {
  const { registers } = shop;
  const batches = byFoldedName(factsOf(registers, 'batch'));
  const variants = byFoldedName(factsOf(registers, 'variant'));
  const seen: Seen = { variants: new Map(), due: new Map(), chance: new Map() };
  return lines.map((of): JudgedLine => {
    const refused = (problem: LineProblem): JudgedLine => ({ of, kind: 'refused', problem });
    if (of.broken) return refused({ kind: 'broken', how: of.broken });
    const batch = named(batches, { column: 'batch', text: of.batch });
    if (!batch.ok) return refused(batch.problem);
    const wanted = factOf(registers, { register: 'batch', id: batch.entry.id })?.wanted ?? [];
    const variant = named(variants, {
      column: 'variant',
      text: of.variant,
      // One that the batch wants already may be asked for in other numbers, put away or not.
      alsoAway: (id) => wanted.some((each) => each.variant === id),
    });
    if (!variant.ok) return refused(variant.problem);
    const [good, due, chance] = [readGood(of.good), readDue(of.due), readChance(of.chance)];
    if (!good.ok) return refused(good.problem);
    if (!due.ok) return refused(due.problem);
    if (!chance.ok) return refused(chance.problem);
    const said = { batch: batch.entry.id, variant: variant.entry.id, due: due.value, chance: chance.value };
    const before = saidBefore(seen, said);
    if (before) return refused({ kind: 'said-before', ...before });
    keep(seen, { ...said, line: of.line });
    const now = {
      good: wanted.find((each) => each.variant === said.variant)?.good ?? 0,
      due: batch.entry.fact.due,
      chance: batch.entry.fact.chance ?? usualChance,
    };
    return {
      of,
      ...{ kind: 'understood', batch: said.batch, variant: said.variant },
      changes: {
        ...(good.value !== null && good.value !== now.good && { good: { from: now.good, to: good.value } }),
        ...(due.value !== null && due.value !== now.due && { due: { from: now.due, to: due.value } }),
        ...(chance.value !== null &&
          chance.value !== now.chance && { chance: { from: now.chance, to: chance.value } }),
      },
    };
  });
}

/** What all understood lines come to, batch by batch; batches of which nothing changes are left out. */
export function newTargetsOf(judged: readonly JudgedLine[]): readonly NewTargets[] {
  const byBatch = new Map<BatchId, { good: NewTargets['good'][number][]; due?: ShopDay; chance?: number }>();
  for (const line of judged) {
    if (line.kind !== 'understood' || Object.keys(line.changes).length === 0) continue;
    const its = byBatch.get(line.batch) ?? { good: [] };
    byBatch.set(line.batch, its);
    const { good, due, chance } = line.changes;
    if (good) its.good.push({ variant: line.variant, good: good.to });
    if (due) its.due = due.to;
    if (chance) its.chance = chance.to;
  }
  return [...byBatch].map(([batch, targets]) => ({ batch, ...targets }));
}

interface Named<Id> {
  readonly id: Id;
  readonly fact: { readonly name: string; readonly retired: boolean };
}

const folded = (name: string) => tidyText(name).toLowerCase();

function byFoldedName<Each extends Named<string>>(
  entries: readonly Each[],
): ReadonlyMap<string, readonly Each[]> {
  const names = new Map<string, Each[]>();
  for (const entry of entries) {
    const name = folded(entry.fact.name);
    names.set(name, [...(names.get(name) ?? []), entry]);
  }
  return names;
}

interface Wanted<Id> {
  readonly column: 'batch' | 'variant';
  readonly text: string;
  readonly alsoAway?: (id: Id) => boolean;
}

function named<Each extends Named<string>>(
  names: ReadonlyMap<string, readonly Each[]>,
  { column, text, alsoAway }: Wanted<Each['id']>,
): { readonly ok: true; readonly entry: Each } | { readonly ok: false; readonly problem: LineProblem } {
  const name = tidyText(text);
  if (name === '') return { ok: false, problem: { kind: 'no-name', column } };
  const all = names.get(folded(text)) ?? [];
  const inUse = all.filter(({ id, fact }) => !fact.retired || alsoAway?.(id));
  const [entry, second] = inUse;
  if (entry && !second) return { ok: true, entry };
  const kind = second ? 'two-of-name' : all.length > 0 ? 'put-away' : 'unknown';
  return { ok: false, problem: { kind, column, name } };
}

interface Seen {
  /** Lines by batch and variant. */
  readonly variants: Map<string, number>;
  readonly due: Map<BatchId, { readonly value: ShopDay; readonly line: number }>;
  readonly chance: Map<BatchId, { readonly value: number; readonly line: number }>;
}

interface Said {
  readonly batch: BatchId;
  readonly variant: VariantId;
  readonly due: ShopDay | null;
  readonly chance: number | null;
}

function saidBefore(seen: Seen, { batch, variant, due, chance }: Said) {
  const line = seen.variants.get(`${batch}|${variant}`);
  if (line !== undefined) return { column: 'good', line } as const;
  const [day, sure] = [seen.due.get(batch), seen.chance.get(batch)];
  if (due !== null && day && day.value !== due) return { column: 'due', line: day.line } as const;
  if (chance !== null && sure && sure.value !== chance) return { column: 'chance', line: sure.line } as const;
  return undefined;
}

function keep(seen: Seen, { batch, variant, due, chance, line }: Said & { readonly line: number }): void {
  seen.variants.set(`${batch}|${variant}`, line);
  if (due !== null && !seen.due.has(batch)) seen.due.set(batch, { value: due, line });
  if (chance !== null && !seen.chance.has(batch)) seen.chance.set(batch, { value: chance, line });
}
