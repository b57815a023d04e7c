import type { Link } from '../domain/log/chain.ts';
import type { RunHead } from '../domain/packed/packed-run.ts';

/**
 * The stretches that are known to be held, by the links in which they end. A link stands for all that its station wrote
 * before it, so that one look tells of a whole run. What it does not know may be held all the same.
 */
export function knownEnds() {
  /** From which number on everything up to the entry with this link is held. */
  const firsts = new Map<Link, number>();
  return {
    add({ first, prev, link }: Pick<RunHead, 'first' | 'prev' | 'link'>): void {
      const before = firsts.get(prev);
      firsts.set(link, Math.min(first, before ?? first, firsts.get(link) ?? first));
    },
    has({ first, link }: Pick<RunHead, 'first' | 'link'>): boolean {
      return (firsts.get(link) ?? Number.POSITIVE_INFINITY) <= first;
    },
    clear: () => firsts.clear(),
  };
}

export type KnownEnds = ReturnType<typeof knownEnds>;
