import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry, Link } from '../../../src/domain/log/chain.ts';
import { holdingOf } from '../../../src/domain/log/holding.ts';
import { linksOfTexts, textsOfJournal } from '../../support/copy-reads.ts';
import { spellDraft } from '../../support/drafts.ts';
import type { FakeDisk, Fault } from '../../support/fake-folder.ts';
import { endOf, journalWindow, named } from '../../support/journal-windows.ts';
import { longLog } from '../../support/long-logs.ts';
import { packedRuns } from '../../support/run-makers.ts';

const log = longLog(860);
const links = log.map(({ link }) => link);
const act = (name: string) => JSON.stringify({ act: name, drafts: [spellDraft('turn')], now: 1000 });
const textsOf = (entries: readonly Entry[]) => entries.map((entry) => JSON.stringify(entry));
const faults: readonly Fault[] = ['throws', 'half', 'done', 'hangs', 'spoils'];
const older = 520;

/** A packed file of 256 entries and nine segments with 264 between them, all of windows that are shut. */
async function makeOlderDisk(): Promise<FakeDisk> {
  const disk: FakeDisk = new Map();
  const first = await journalWindow(disk);
  await first.addRuns(packedRuns(log.slice(0, 256)));
  await first.keepAct(act('tap-0'));
  first.die();
  for (let from = 256; from < older; from += 33) {
    const window = await journalWindow(disk);
    await window.add(textsOf(log.slice(from, Math.min(from + 33, older))));
    window.die();
  }
  return disk;
}
const olderDisk = await makeOlderDisk();

/** A disk of its own, with the same on it. */
function copyOf(disk: FakeDisk): FakeDisk {
  const folder = [...disk].map(
    ([name, files]) =>
      [name, new Map([...files].map(([file, { bytes }]) => [file, { bytes, holder: undefined }]))] as const,
  );
  return new Map(folder);
}

type Window = Awaited<ReturnType<typeof journalWindow>>;

/** A start, a fold, a restore, taps. Gives what was said to be kept. */
async function aDay(window: Window) {
  const kept: Link[] = [];
  const steps: (() => Promise<void>)[] = [
    async () => void (await window.look()),
    async () => {
      await window.add(textsOf(log.slice(520, 522)));
      kept.push(...links.slice(520, 522));
    },
    window.tidy,
    async () => {
      await window.addRuns(packedRuns(log.slice(522, 780)));
      kept.push(...links.slice(522, 780));
    },
    window.verify,
    async () => {
      await window.add(textsOf(log.slice(780, 782)));
      kept.push(...links.slice(780, 782));
    },
    async () => void (await window.look()),
  ];
  for (const step of steps) if ((await endOf(step(), window.hung)) === 'hangs') break;
  return kept;
}

async function expectAllKept(disk: FakeDisk, { kept, call }: { kept: readonly Link[]; call: string }) {
  const later = await journalWindow(disk);
  const { holding, unsettled } = await later.look();
  const found = linksOfTexts(await textsOfJournal(later));
  const there = new Set(found);
  expect(
    [...links.slice(0, older), ...kept].filter((link) => !there.has(link)),
    call,
  ).toEqual([]);
  expect(found.length, call).toBe(there.size);
  expect(holding, call).toEqual(holdingOf(there));
  expect(unsettled, call).toEqual([act('tap-0')]);
  later.die();
}

describe.each(faults)('when any one call %s in a day that folds, packs and verifies', (how) => {
  test('what was said to be kept is there at the next start, once', async () => {
    const whole = copyOf(olderDisk);
    const probe = await journalWindow(whole);
    await aDay(probe);
    // One that was folded, one of the restore, and the segment of the taps.
    expect(named(whole, '')).toHaveLength(3);
    for (let at = 1; at <= probe.calls(); at += 1) {
      const disk = copyOf(olderDisk);
      const window = await journalWindow(disk, { at, how });
      const kept = await aDay(window);
      window.die();
      // What a disk has changed on the way is found when it is read: a line of a segment by its check.
      await expectAllKept(disk, { kept: how === 'spoils' ? [] : kept, call: `call ${at}` });
    }
  }, 120_000);
});

/** What two windows do by turns. */
const deeds = fc.array(
  fc.record({
    window: fc.nat(1),
    deed: fc.constantFrom('add', 'add', 'add-many', 'runs', 'look', 'tidy', 'verify', 'restart'),
    from: fc.nat(log.length - 1),
    length: fc.integer({ min: 1, max: 300 }),
    fault: fc.option(
      fc.record({
        at: fc.integer({ min: 1, max: 60 }),
        how: fc.constantFrom<Fault>('throws', 'half', 'done'),
      }),
      {
        nil: undefined,
        freq: 3,
      },
    ),
  }),
  { minLength: 5, maxLength: 25 },
);

test('whatever two windows add, fold and verify, and whatever fails on the way, all that was kept is there once', async () => {
  await fc.assert(
    fc.asyncProperty(deeds, async (history) => {
      const disk = copyOf(olderDisk);
      const kept = new Set(links.slice(0, older));
      const windows = [await journalWindow(disk), await journalWindow(disk)];
      for (const { window: at, deed, from, length, fault } of history) {
        const window = windows[at] as Window;
        const part = log.slice(from, from + (deed === 'add' ? 3 : length));
        const deedOf: Record<typeof deed, () => Promise<unknown>> = {
          add: () => window.add(textsOf(part)),
          'add-many': () => window.add(textsOf(part)),
          runs: () => window.addRuns(packedRuns(part)),
          look: window.look,
          tidy: window.tidy,
          verify: window.verify,
          async restart() {
            window.die();
            windows[at] = await journalWindow(disk, fault);
          },
        };
        const end = await deedOf[deed]().then(
          () => 'kept',
          () => 'refused',
        );
        if (end === 'kept' && (deed.startsWith('add') || deed === 'runs'))
          for (const { link } of part) kept.add(link);
      }
      for (const window of windows) window.die();
      const later = await journalWindow(disk);
      const { holding } = await later.look();
      const found = linksOfTexts(await textsOfJournal(later));
      const there = new Set(found);
      expect([...kept].filter((link) => !there.has(link))).toEqual([]);
      expect(found.length).toBe(there.size);
      expect(holding).toEqual(holdingOf(there));
    }),
    { numRuns: 40 },
  );
}, 120_000);
