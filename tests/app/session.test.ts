import { beforeEach, describe, expect, test } from 'vitest';
import type { Session } from '../../src/app/session.ts';
import type { Command, Spot } from '../../src/domain/command/command.ts';
import type { ShopEvent } from '../../src/domain/log/event.ts';
import { stagesOfTray } from '../../src/domain/rollup/waiting.ts';
import { freshName, openTestLog } from '../support/log-makers.ts';
import {
  openTestSession,
  pairOfFeeds,
  setUpWorkshop,
  type TestSession,
} from '../support/open-test-session.ts';
import { batch, reason, stage, variant } from '../support/workshop.ts';

async function oneTray(session: Session, pieces = 12) {
  await setUpWorkshop(session);
  await session.act({
    kind: 'make-trays',
    variant: variant['ash-copper'],
    batch: batch.spring,
    pieces,
    trays: 1,
  });
  const [tray] = session.view.value.shop.trays.keys();
  if (!tray) throw new Error('a tray was made');
  const at = (name: 'bore' | 'turn' = 'bore') =>
    stagesOfTray(session.view.value.shop, tray).find((each) => each.stage === stage[name])?.waiting.first ??
    0;
  const spot = (): Spot => ({ tray, stage: stage.bore, at: 'waiting', grade: 'first', shown: at() });
  const pass = (n = 1): Command => ({ kind: 'pass', spot: spot(), pieces: n });
  return { tray, at, spot, pass };
}

async function entries(test: TestSession): Promise<readonly ShopEvent[]> {
  return (await test.log.since(new Map())).events.filter(({ kind }) => kind !== 'set-up');
}

let opened: TestSession;
beforeEach(async () => {
  opened = await openTestSession();
});

test('a tap is in the count once it is saved, and on disk', async () => {
  const { at, pass } = await oneTray(opened.session);
  const result = await opened.session.act(pass());
  expect(result.kind).toBe('saved');
  expect(opened.session.saving.value).toEqual({ kind: 'saved' });
  expect(at()).toBe(11);
  expect((await entries(opened)).map(({ kind }) => kind)).toEqual(['tray-made', 'spell-begun', 'passed']);
});

test('a refusal writes nothing and says why', async () => {
  const { spot } = await oneTray(opened.session);
  const before = await entries(opened);
  expect(await opened.session.act({ kind: 'pass', spot: spot(), pieces: 13 })).toEqual({
    kind: 'refused',
    problem: { kind: 'too-many', there: 12 },
  });
  expect(await entries(opened)).toEqual(before);
});

test('taps that come faster than the store are judged one after another and none is lost', async () => {
  const { at, pass } = await oneTray(opened.session);
  await Promise.all(Array.from({ length: 12 }, () => opened.session.act(pass())));
  expect(at()).toBe(0);
});

describe('undo', () => {
  test('goes back one act at a time over twenty acts, and the shop is as it was', async () => {
    const { at, pass } = await oneTray(opened.session, 30);
    for (let tap = 0; tap < 20; tap += 1) await opened.session.act(pass());
    for (let left = 11; left <= 30; left += 1) {
      expect((await opened.session.undoLast()).kind).toBe('saved');
      expect(at()).toBe(left);
    }
  });

  test('quick presses of undo take back different acts', async () => {
    const { at, pass } = await oneTray(opened.session);
    await opened.session.act(pass());
    await opened.session.act(pass());
    await Promise.all([opened.session.undoLast(), opened.session.undoLast()]);
    expect(at()).toBe(12);
  });

  test('takes all the trays back that one tap made up', async () => {
    await oneTray(opened.session);
    await opened.session.act({
      kind: 'make-trays',
      variant: variant['ash-copper'],
      batch: batch.spring,
      pieces: 5,
      trays: 5,
    });
    expect(opened.session.view.value.shop.trays.size).toBe(6);
    await opened.session.undoLast();
    expect(opened.session.view.value.shop.trays.size).toBe(1);
  });

  test('is itself undone by putting back', async () => {
    const { at, pass } = await oneTray(opened.session);
    await opened.session.act(pass());
    await opened.session.undoLast();
    expect(opened.session.canPutBack.value).toBe(true);
    await opened.session.putBack();
    expect(at()).toBe(11);
    expect(opened.session.canPutBack.value).toBe(true);
  });

  test('with nothing to take back is refused', async () => {
    expect(opened.session.canUndo.value).toBe(false);
    expect((await opened.session.undoLast()).kind).toBe('refused');
  });

  test('still works after the app was closed and opened again', async () => {
    const name = freshName();
    const first = await openTestSession({ log: await openTestLog(name) });
    const { pass } = await oneTray(first.session);
    await first.session.act(pass());
    await first.session.close();
    const { session } = await openTestSession({ log: await openTestLog(name) });
    await session.undoLast();
    const [tray] = session.view.value.shop.trays.keys();
    expect(
      tray &&
        stagesOfTray(session.view.value.shop, tray).map(({ stage: at, waiting }) => [at, waiting.first]),
    ).toEqual([['bore', 12]]);
  });
});

describe('a spell of work', () => {
  const elapsed = async () =>
    (await entries(opened)).flatMap((event) => ('elapsed' in event ? [event.elapsed] : []));

  test('is written with its first tap, and times each tap by a clock that nobody can set', async () => {
    const { pass } = await oneTray(opened.session);
    opened.session.enterStage(stage.bore);
    opened.hands.pass(90_000);
    await opened.session.act(pass());
    opened.hands.setWall(Date.UTC(2019, 0, 1));
    opened.hands.pass(30_000);
    await opened.session.act(pass());
    expect(await elapsed()).toEqual([90_000, 30_000]);
  });

  test('a glance at a stage leaves no trace', async () => {
    await oneTray(opened.session);
    const before = await entries(opened);
    opened.session.enterStage(stage.turn);
    await opened.session.pause();
    expect(await entries(opened)).toEqual(before);
  });

  test('a pause ends it with the time since the last tap; the next tap begins another', async () => {
    const { pass } = await oneTray(opened.session);
    opened.session.enterStage(stage.bore);
    opened.hands.pass(10_000);
    await opened.session.act(pass());
    opened.hands.pass(20_000);
    await opened.session.pause();
    opened.hands.pass(3_600_000);
    await opened.session.act(pass());
    expect(await elapsed()).toEqual([10_000, 20_000, null]);
    expect((await entries(opened)).map(({ kind }) => kind).slice(1)).toEqual([
      'spell-begun',
      'passed',
      'spell-ended',
      'spell-begun',
      'passed',
    ]);
  });

  test('after an undo the next tap is timed from the tap before the slip', async () => {
    const { pass } = await oneTray(opened.session);
    opened.session.enterStage(stage.bore);
    opened.hands.pass(10_000);
    await opened.session.act(pass());
    opened.hands.pass(20_000);
    await opened.session.act(pass());
    await opened.session.undoLast();
    opened.hands.pass(5_000);
    await opened.session.act(pass());
    expect(await elapsed()).toEqual([10_000, 20_000, 25_000]);
  });
});

test('a second window shows what the first has tapped, and a tap on a piece that is gone is kept as a count to check', async () => {
  const name = freshName();
  const [hereFeed, thereFeed] = pairOfFeeds();
  const here = await openTestSession({ log: await openTestLog(name), feed: hereFeed });
  const { tray, pass, spot } = await oneTray(here.session, 1);
  const there = await openTestSession({ log: await openTestLog(name), feed: thereFeed });
  const stale = spot();
  await here.session.act(pass());
  await there.session.act({ kind: 'pass', spot: stale, pieces: 1 });
  await here.session.refresh();
  for (const { session } of [here, there]) {
    const left = new Map(
      stagesOfTray(session.view.value.shop, tray).map(({ stage: at, waiting }) => [`${at}`, waiting.first]),
    );
    expect(left).toEqual(
      new Map([
        ['bore', -1],
        ['glue', 2],
      ]),
    );
  }
});

test('a window that is being opened while another one taps shows that tap', async () => {
  const name = freshName();
  const [hereFeed, thereFeed] = pairOfFeeds();
  const here = await openTestSession({ log: await openTestLog(name), feed: hereFeed });
  const { tray, pass } = await oneTray(here.session);
  const log = await openTestLog(name);
  let tapped: Promise<unknown> | undefined;
  const there = await openTestSession({
    log: {
      ...log,
      async since(seen) {
        const read = await log.since(seen);
        tapped ??= here.session.act(pass());
        await tapped;
        return read;
      },
    },
    feed: thereFeed,
  });
  const atBore = () =>
    stagesOfTray(there.session.view.value.shop, tray).find((each) => each.stage === stage.bore)?.waiting
      .first;
  await expect.poll(atBore, { timeout: 10_000 }).toBe(11);
});

test('the person who taps and the shop day go into every entry', async () => {
  const { pass } = await oneTray(opened.session);
  opened.session.person.value = null;
  await opened.session.act(pass());
  const last = (await entries(opened)).at(-1);
  expect(last).toMatchObject({ day: '2026-03-02', zone: { name: 'Europe/London', offset: 0 }, person: null });
});

test('history of a tray is in the order of its stamps, what was taken back included', async () => {
  const { tray, pass, spot } = await oneTray(opened.session);
  await opened.session.act(pass());
  await opened.session.undoLast();
  await opened.session.act({
    kind: 'flaw',
    spot: spot(),
    pieces: 1,
    reasons: [reason.blown],
    outcome: { kind: 'scrapped', saved: [] },
  });
  expect((await opened.session.historyOf(tray)).map(({ kind }) => kind)).toEqual([
    'tray-made',
    'passed',
    'voided',
    'flawed',
  ]);
});
