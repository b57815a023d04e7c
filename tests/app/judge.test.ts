import { expect, test } from 'vitest';
import { judge, type LoadDecide } from '../../src/app/judge.ts';
import { openTestLog } from '../support/log-makers.ts';
import { openTestSession, setUpWorkshop } from '../support/open-test-session.ts';
import { batch, stage, variant } from '../support/workshop.ts';

const notThere: LoadDecide = () =>
  Promise.reject(new TypeError('Failed to fetch dynamically imported module'));

test('a tap at a stage and its undo need no code that is not there; anything else is refused and can be tried again', async () => {
  const log = await openTestLog();
  const first = await openTestSession({ log });
  await setUpWorkshop(first.session);
  await first.session.act({
    kind: 'make-trays',
    ...{ variant: variant['ash-copper'], batch: batch.spring, pieces: 4, trays: 1 },
  });
  const { session } = await openTestSession({ log, loadDecide: notThere });
  const [tray] = session.view.value.shop.trays.keys();
  if (!tray) throw new Error('there is a tray');
  const spot = { tray, stage: stage.bore, at: 'waiting', grade: 'first', shown: 4 } as const;
  expect((await session.act({ kind: 'pass', spot, pieces: 1 })).kind).toBe('saved');
  expect((await session.undoLast()).kind).toBe('saved');
  const split = { kind: 'split', spot, pieces: 1 } as const;
  expect(await session.act(split)).toEqual({ kind: 'refused', problem: { kind: 'code-not-there' } });
  await first.session.refresh();
  expect((await first.session.act(split)).kind).toBe('saved');
});

test('the code is asked for again after it could not be had', async () => {
  const { session } = await openTestSession();
  await setUpWorkshop(session);
  const { shop } = session.view.value;
  const at = {
    ...{ now: 0, zone: { name: 'UTC', offset: 0 }, day: session.today(), clock: 'sound' as const },
    ...{ person: null, station: session.station, letter: 'A', elapsed: null, newId: () => 'id' },
  };
  const command = {
    kind: 'make-trays',
    ...{ variant: variant['ash-copper'], batch: batch.spring, pieces: 4, trays: 1 },
  } as const;
  expect(await judge(shop, { command, at, load: notThere })).toMatchObject({ kind: 'refused' });
  expect(await judge(shop, { command, at })).toMatchObject({ kind: 'events' });
});
