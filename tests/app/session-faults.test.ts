import { describe, expect, test } from 'vitest';
import type { Session } from '../../src/app/session.ts';
import { stagesOfTray } from '../../src/domain/rollup/waiting.ts';
import type { LogStore } from '../../src/store/log-store.ts';
import { openTestLog } from '../support/log-makers.ts';
import { openTestSession, setUpWorkshop } from '../support/open-test-session.ts';
import { batch, stage, variant } from '../support/workshop.ts';

type Fault = 'throws before it writes' | 'writes and then throws' | 'answers late';
const faults: readonly Fault[] = ['throws before it writes', 'writes and then throws', 'answers late'];
const taps = 40;

/** A store whose n-th append goes wrong in a given way; `release` lets a late answer come. */
function faultyLog(log: LogStore, { fault, nth }: { fault: Fault; nth: () => number }) {
  let calls = 0;
  let release: (() => void) | undefined;
  const faulty: LogStore = {
    ...log,
    async append(act) {
      calls += 1;
      if (calls !== nth()) return log.append(act);
      if (fault === 'throws before it writes') throw new DOMException('disk full', 'QuotaExceededError');
      const events = await log.append(act);
      if (fault === 'writes and then throws') throw new DOMException('aborted', 'AbortError');
      await new Promise<void>((resolve) => {
        release = resolve;
      });
      return events;
    },
  };
  return { faulty, hangs: () => release !== undefined, release: () => release?.(), calls: () => calls };
}

const settle = () => new Promise((resolve) => setImmediate(resolve));

async function fortyTaps(session: Session): Promise<void> {
  const [tray] = session.view.value.shop.trays.keys();
  if (!tray) throw new Error('there is a tray');
  for (let tap = 0; tap < taps; tap += 1) {
    const shown =
      stagesOfTray(session.view.value.shop, tray).find((at) => at.stage === stage.bore)?.waiting.first ?? 0;
    const done = session.act({
      kind: 'pass',
      spot: { tray, stage: stage.bore, at: 'waiting', grade: 'first', shown },
      pieces: 1,
    });
    await done;
  }
}

describe.each(faults)('a store whose append %s', (fault) => {
  test.each(Array.from({ length: taps }, (_, index) => index + 1))(
    'at tap %i keeps every tap exactly once',
    async (n) => {
      const log = await openTestLog();
      let nth = 0;
      const { faulty, hangs, release, calls } = faultyLog(log, { fault, nth: () => nth });
      const { session, hands } = await openTestSession({ log: faulty });
      await setUpWorkshop(session);
      await session.act({
        kind: 'make-trays',
        variant: variant['ash-copper'],
        batch: batch.spring,
        pieces: taps,
        trays: 1,
      });
      nth = calls() + n;
      const done = fortyTaps(session);
      if (fault === 'answers late') {
        while (!hangs()) await settle();
        hands.pass(2000);
        expect(session.saving.value).toMatchObject({ kind: 'not-saved', why: 'slow' });
        release();
      }
      await done;
      const stored = (await log.since(new Map())).events.filter(({ kind }) => kind === 'passed');
      expect(stored).toHaveLength(taps);
      expect(session.saving.value).toEqual({ kind: 'saved' });
      expect([...session.view.value.shop.ledger.wip]).toEqual([['glue|ash|first|waiting', taps]]);
    },
  );
});

test('a store that fails again asks the person; the tap is kept and saved once when they try again', async () => {
  const log = await openTestLog();
  let broken = false;
  const faulty: LogStore = {
    ...log,
    append: (act) =>
      broken ? Promise.reject(new DOMException('disk full', 'QuotaExceededError')) : log.append(act),
  };
  const { session } = await openTestSession({ log: faulty });
  await setUpWorkshop(session);
  broken = true;
  const done = session.act({
    kind: 'make-trays',
    variant: variant['ash-copper'],
    batch: batch.spring,
    pieces: 3,
    trays: 1,
  });
  while (session.saving.value.kind !== 'not-saved') await settle();
  expect(session.saving.value).toMatchObject({ why: 'failed', act: { drafts: [{ kind: 'tray-made' }] } });
  expect(session.view.value.shop.trays.size).toBe(0);
  broken = false;
  session.retry();
  expect((await done).kind).toBe('saved');
  expect(session.view.value.shop.trays.size).toBe(1);
});

test('a read that fails at the opening is no empty shop: nothing is written', async () => {
  const log = await openTestLog();
  let writes = 0;
  const unreadable: LogStore = {
    ...log,
    since: () => Promise.reject(new DOMException('Internal error', 'UnknownError')),
    append: (act) => {
      writes += 1;
      return log.append(act);
    },
    saveSnapshot: async () => {
      writes += 1;
      return 1;
    },
  };
  await expect(openTestSession({ log: unreadable })).rejects.toThrow('Internal error');
  expect(writes).toBe(0);
});
