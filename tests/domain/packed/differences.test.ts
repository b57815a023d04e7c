import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry } from '../../../src/domain/log/chain.ts';
import { type Copy, differences } from '../../../src/domain/packed/differences.ts';
import type { RunHead } from '../../../src/domain/packed/packed-run.ts';
import { headOfEntry } from '../../../src/domain/packed/stretch.ts';
import { longLog, otherStory } from '../../support/long-logs.ts';
import { packedRuns } from '../../support/run-makers.ts';

const main = longLog(60);
const stories = [main, longLog(20, 'station-y'), otherStory(main, 31), otherStory(main, 45)];

interface OpenedCopy extends Copy {
  readonly opened: RunHead[];
}

/** A copy in runs of these entries, each list as many runs as its gaps ask for. */
function copyOf(...parts: readonly (readonly Entry[])[]): OpenedCopy {
  const entries = new Map<RunHead, readonly Entry[]>();
  for (const part of parts)
    for (const run of packedRuns(part)) {
      const { station, first, entries: count, prev, link, sum } = run;
      const own = part.filter(
        ({ event }) => event.station === station && event.seq >= first && event.seq < first + count,
      );
      entries.set(
        count === 1 ? headOfEntry(own[0] as Entry) : { station, first, entries: count, prev, link, sum },
        own,
      );
    }
  const opened: RunHead[] = [];
  return {
    heads: [...entries.keys()],
    opened,
    async open(head) {
      opened.push(head);
      return entries.get(head) ?? [];
    },
  };
}

/** Some entries of all stories, each story cut at some places. */
const copies = fc
  .tuple(...stories.map((story) => fc.tuple(fc.subarray([...story]), fc.subarray([5, 11, 29, 37, 38, 52]))))
  .map((told) =>
    told.flatMap(([entries, cuts]) =>
      [0, ...cuts].map((from, at) =>
        entries.filter(({ event: { seq } }) => seq > from && seq <= (cuts[at] ?? 99)),
      ),
    ),
  )
  .map((parts) => parts.filter((part) => part.length > 0));

const linksOf = (parts: readonly (readonly Entry[])[]) => parts.flat().map(({ link }) => link);

async function found(copy: Copy, only: { heads: readonly RunHead[]; entries: readonly Entry[] }) {
  const whole = await Promise.all(only.heads.map(copy.open));
  return [...whole.flat(), ...only.entries].map(({ link }) => link).toSorted();
}

describe('two copies, cut into runs in any way, with clones and gaps', () => {
  test('differ by just those entries that one by one are in only one of them', async () => {
    await fc.assert(
      fc.asyncProperty(copies, copies, async (ours, theirs) => {
        const [here, there] = [copyOf(...ours), copyOf(...theirs)];
        const only = await differences({ here, there });
        const [a, b] = [new Set(linksOf(ours)), new Set(linksOf(theirs))];
        expect(await found(here, only.here)).toEqual([...a].filter((link) => !b.has(link)).toSorted());
        expect(await found(there, only.there)).toEqual([...b].filter((link) => !a.has(link)).toSorted());
      }),
      { numRuns: 400 },
    );
  });

  test('of which one lacks the newest entries are told apart without opening a run', async () => {
    const here = copyOf(main.slice(0, 20), main.slice(20, 50));
    const there = copyOf(main.slice(0, 37), main.slice(37, 50), main.slice(50));
    const only = await differences({ here, there });
    expect(only.there.heads).toMatchObject([{ first: 51, entries: 10 }]);
    expect([only.here.heads, only.here.entries, only.there.entries]).toEqual([[], [], []]);
    expect([here.opened, there.opened]).toEqual([[], []]);
  });

  test('that end at different places inside of runs open no more than those runs', async () => {
    const here = copyOf(main.slice(0, 20), main.slice(20, 45));
    const there = copyOf(main.slice(0, 37), main.slice(37));
    const only = await differences({ here, there });
    expect(only.there.entries).toEqual(main.slice(45));
    expect(here.opened).toEqual([]);
    expect(new Set(there.opened)).toEqual(new Set(there.heads.slice(1)));
  });
});
