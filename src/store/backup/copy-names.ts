export type CopyKind = 'usual' | 'before-restore';

/** A copy on the shelf, by what its name says: `copy-<number>-<shop day>-<kind>.jsonl.gz`. */
export interface CopyName {
  readonly name: string;
  /** Counts the copies of the tablet. Order goes by it and not by the day: a clock may have been wrong. */
  readonly number: number;
  /** Shop day as `YYYY-MM-DD`. */
  readonly day: string;
  readonly kind: CopyKind;
}

const form = /^copy-(\d{6,9})-(\d{4}-\d{2}-\d{2})-(usual|before-restore)[.]jsonl[.]gz$/;

export function copyName({ number, day, kind }: Omit<CopyName, 'name'>): string {
  return `copy-${String(number).padStart(6, '0')}-${day}-${kind}.jsonl.gz`;
}

/** The copies among the files of a shelf, the newest first. */
export function copiesAmong(names: readonly string[]): readonly CopyName[] {
  return names
    .flatMap((name): readonly CopyName[] => {
      const [, number, day, kind] = form.exec(name) ?? [];
      if (number === undefined || day === undefined) return [];
      return [{ name, number: Number(number), day, kind: kind === 'usual' ? 'usual' : 'before-restore' }];
    })
    .sort((a, b) => b.number - a.number);
}

const dailies = 3;
const weeklies = 2;
const beforeRestores = 2;

/**
 * The copies that newer ones make up for, the oldest first: all but the newest of each of the last three days, the
 * newest of each of the two weeks before those days, and the last two from before a restore.
 */
export function outdatedCopies(newestFirst: readonly CopyName[]): readonly CopyName[] {
  const usual = newestFirst.filter(({ kind }) => kind === 'usual');
  const daily = newestOfEach(usual, ({ day }) => day).slice(0, dailies);
  const weeks = new Set(daily.map(weekOf));
  const earlier = usual.filter((copy) => !weeks.has(weekOf(copy)));
  const keep = new Set([
    ...daily,
    ...newestOfEach(earlier, weekOf).slice(0, weeklies),
    ...newestFirst.filter(({ kind }) => kind === 'before-restore').slice(0, beforeRestores),
  ]);
  return newestFirst.filter((copy) => !keep.has(copy)).reverse();
}

function newestOfEach(newestFirst: readonly CopyName[], group: (copy: CopyName) => unknown) {
  const met = new Map<unknown, CopyName>();
  for (const copy of newestFirst) if (!met.has(group(copy))) met.set(group(copy), copy);
  return [...met.values()];
}

/** Weeks from Monday to Sunday, counted from that of 29 December 1969. */
function weekOf({ day }: CopyName): number {
  const days = Date.parse(`${day}T00:00:00Z`) / 86_400_000;
  return Math.floor((days + 3) / 7);
}
