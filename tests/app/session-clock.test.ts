import { describe, expect, test } from 'vitest';
import type { Session } from '../../src/app/session.ts';
import type { ShopEvent } from '../../src/domain/log/event.ts';
import { compareStamps } from '../../src/domain/log/stamp.ts';
import { dayReport, doubtfulDays } from '../../src/domain/rollup/day-report.ts';
import { handClock } from '../support/hand-clock.ts';
import { freshName, openTestLog } from '../support/log-makers.ts';
import { openTestSession, setUpWorkshop } from '../support/open-test-session.ts';
import { batch, stage, variant } from '../support/workshop.ts';

const minute = 60_000;
const monday = Date.UTC(2026, 2, 2, 9);
const sixYearsBack = Date.UTC(2020, 2, 2, 9);

async function makeTray(session: Session): Promise<readonly ShopEvent[]> {
  const its = { variant: variant['ash-copper'], batch: batch.spring };
  const result = await session.act({ kind: 'make-trays', ...its, pieces: 12, trays: 1 });
  if (result.kind === 'refused') throw new Error(result.problem.kind);
  return result.events;
}

async function pass(session: Session): Promise<readonly ShopEvent[]> {
  const [tray] = session.view.value.shop.trays.keys();
  if (!tray) throw new Error('a tray was made');
  const spot = { tray, stage: stage.bore, at: 'waiting', grade: 'first', shown: 12 } as const;
  const result = await session.act({ kind: 'pass', spot, pieces: 1 });
  if (result.kind === 'refused') throw new Error(result.problem.kind);
  return result.events;
}

const setShop = (session: Session, value: { zone?: string; dayStartHour?: number }) =>
  session.act({
    kind: 'set',
    set: {
      register: 'shop',
      id: 'shop',
      value: { name: 'Hafts', zone: 'Europe/London', dayStartHour: 4, ...value },
    },
  });

describe('a clock set back six years in the middle of the day', () => {
  async function setBack() {
    const name = freshName();
    const hands = handClock(monday);
    const test = await openTestSession({ log: await openTestLog(name), hands, built: monday - minute });
    const { session } = test;
    await setUpWorkshop(session);
    await makeTray(session);
    hands.pass(minute);
    const before = await pass(session);
    hands.setWall(sixYearsBack);
    hands.pass(minute);
    const during = [...(await pass(session)), ...(await pass(session))];
    hands.setWall(monday + 10 * minute);
    const after = await pass(session);
    return { ...test, name, before, during, after };
  }

  test('keeps the order of taps and numbers them without a gap', async () => {
    const { before, during, after } = await setBack();
    const all = [...before, ...during, ...after];
    const seqs = all.map(({ seq }) => seq);
    expect(seqs).toEqual(seqs.map((_, index) => (seqs[0] ?? 0) + index));
    for (const [index, { stamp }] of all.entries()) {
      const earlier = all[index - 1];
      // The first pass begins its spell: those two are of one tap.
      if (earlier) expect(compareStamps(earlier.stamp, stamp)).toBeLessThan(index === 1 ? 1 : 0);
    }
  });

  test('marks those taps and no others, and the day on which they are counted', async () => {
    const { session, before, during, after } = await setBack();
    expect(during.map(({ clock, day }) => [clock, day])).toEqual([
      ['doubtful', '2020-03-02'],
      ['doubtful', '2020-03-02'],
    ]);
    for (const event of [...before, ...after]) expect(event).not.toHaveProperty('clock');
    const { shop } = session.view.value;
    const [marked, ...others] = doubtfulDays(shop);
    expect([marked, others]).toEqual(['2020-03-02', []]);
    expect(marked && dayReport(shop, marked)).toMatchObject({ doubtful: 2, made: { day: 0 } });
    expect(dayReport(shop, session.today()).doubtful).toBe(0);
    expect(session.today()).toBe('2026-03-02');
  });

  test('says so while it lasts, and no more when the clock is right again', async () => {
    const { session, hands } = await setBack();
    expect(session.clockWatch.unsaid.value).toBe(false);
    hands.setWall(sixYearsBack);
    await session.refresh();
    expect([session.clockWatch.doubt.value, session.clockWatch.unsaid.value]).toEqual(['before-build', true]);
  });

  test('is known again at the next opening, before anything is tapped', async () => {
    const { session, name } = await setBack();
    await session.close();
    const hands = handClock(monday - 60 * minute);
    const again = await openTestSession({ log: await openTestLog(name), hands });
    expect(again.session.clockWatch.doubt.value).toBe('behind');
  });

  test('does not stop an undo: it takes the mark away with the tap', async () => {
    const { session } = await setBack();
    for (let tap = 0; tap < 3; tap += 1) await session.undoLast();
    expect(doubtfulDays(session.view.value.shop)).toEqual([]);
  });
});

describe('the shop day of a tap is written once', () => {
  test('a later hour for the beginning of the day changes no earlier day', async () => {
    const fiveOClock = Date.UTC(2026, 2, 3, 5);
    const { session, hands } = await openTestSession({ hands: handClock(fiveOClock) });
    await setUpWorkshop(session);
    await setShop(session, { dayStartHour: 4 });
    await makeTray(session);
    const [first] = (await pass(session)).slice(-1);
    expect(first?.day).toBe('2026-03-03');
    await setShop(session, { dayStartHour: 6 });
    hands.pass(minute);
    const [second] = await pass(session);
    expect(second?.day).toBe('2026-03-02');
    const { shop } = session.view.value;
    const passed = (day: typeof first) => day && dayReport(shop, day.day).stages[0]?.passed.day;
    expect([passed(first), passed(second)]).toEqual([1, 1]);
  });

  test('a shop that moves to another zone in mid-batch keeps the days of its old one', async () => {
    const { session } = await openTestSession({ hands: handClock(Date.UTC(2026, 2, 2, 3, 30)) });
    await setUpWorkshop(session);
    await setShop(session, { zone: 'Europe/London' });
    await makeTray(session);
    const [here] = (await pass(session)).slice(-1);
    await setShop(session, { zone: 'Asia/Kathmandu' });
    const [there] = (await pass(session)).slice(-1);
    expect([here, there].map((event) => [event?.day, event?.zone])).toEqual([
      ['2026-03-01', { name: 'Europe/London', offset: 0 }],
      ['2026-03-02', { name: 'Asia/Kathmandu', offset: 345 }],
    ]);
  });

  test('a tablet that is set to another zone than the shop writes the days of the shop', async () => {
    // The hand clock's tablet is in London.
    const { session } = await openTestSession({ hands: handClock(Date.UTC(2026, 2, 2, 12)) });
    await setUpWorkshop(session);
    await setShop(session, { zone: 'Pacific/Kiritimati' });
    const [made] = await makeTray(session);
    expect(made).toMatchObject({ day: '2026-03-02', zone: { name: 'Pacific/Kiritimati', offset: 840 } });
    await setShop(session, { zone: 'Pacific/Pago_Pago' });
    expect((await makeTray(session))[0]).toMatchObject({ day: '2026-03-01' });
  });

  test('a zone that this browser does not know is no reason to lose a tap: the tablet’s own stands in', async () => {
    const { session } = await openTestSession();
    await setUpWorkshop(session);
    await setShop(session, { zone: 'Europe/Erewhon' });
    expect((await makeTray(session))[0]).toMatchObject({ zone: { name: 'Europe/London', offset: 0 } });
  });
});
