import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import type { Session } from '../../src/app/session.ts';
import { nameStation, settleLetter, stationFactOf, takeLetterOver } from '../../src/app/station-letter.ts';
import { stationId } from '../../src/domain/log/ids.ts';
import type { StationFact } from '../../src/domain/set-up/facts.ts';
import { factOf } from '../../src/domain/shop/registers.ts';
import { letterOf } from '../../src/domain/shop/station-letters.ts';
import { openTestSession } from '../support/open-test-session.ts';
import { setUpFacts } from '../support/workshop.ts';

const name = (letter: string) => `Tablet ${letter}`;
const other = v.parse(stationId, 'other');
const third = v.parse(stationId, 'third');

const registersOf = (session: Session) => session.view.value.shop.registers;
const factAt = (session: Session, id = session.station) =>
  factOf(registersOf(session), { register: 'station', id });
const say = (session: Session, id: typeof other, value: StationFact) =>
  session.act({ kind: 'set', set: { register: 'station', id, value } });

/** A session on a shop; other stations have been heard of when `others` names them. */
async function shopWith(others: readonly [typeof other, StationFact][] = []): Promise<Session> {
  const { session, hands } = await openTestSession();
  for (const set of setUpFacts) await session.act({ kind: 'set', set });
  for (const [id, value] of others) await say(session, id, value);
  hands.pass(60_000);
  return session;
}

const lathe: StationFact = { letter: 'A', name: 'Lathe', keys: [{ act: 'pass', key: 'PageDown' }] };

describe('a station gets its letter', () => {
  test('the first that is free, and a name by it', async () => {
    const session = await shopWith([[other, { ...lathe, name: 'Tablet C' }]]);
    await nameStation(session, { name, before: null });
    expect(factAt(session)).toEqual({ letter: 'C', name: 'Tablet C 2', keys: [] });
  });

  test('only once, and not before there is a shop', async () => {
    const { session } = await openTestSession();
    await nameStation(session, { name, before: null });
    expect(factAt(session)).toBeUndefined();
    for (const set of setUpFacts) await session.act({ kind: 'set', set });
    await nameStation(session, { name, before: null });
    await nameStation(session, { name, before: other });
    expect(factAt(session)?.letter).toBe('A');
  });

  test('of the station that the tablet wrote under before, which has it no more', async () => {
    const session = await shopWith([[other, lathe]]);
    await nameStation(session, { name, before: other });
    expect(factAt(session)).toEqual({ ...lathe, name: 'Lathe 2', stage: null });
    expect(factAt(session, other)).toMatchObject({ letter: 'A', handedTo: session.station });
    expect(letterOf(registersOf(session), session.station)).toEqual({ kind: 'own', letter: 'A' });
  });

  test('another than that when it was handed on before', async () => {
    const session = await shopWith([
      [other, { ...lathe, handedTo: third }],
      [third, { ...lathe, name: 'Lathe 2' }],
    ]);
    await nameStation(session, { name, before: other });
    expect(factAt(session)).toMatchObject({ letter: 'C', name: 'Lathe 3', keys: lathe.keys });
    expect(factAt(session, other)?.handedTo).toBe(third);
  });
});

describe('a station whose letter is another’s by an earlier claim', () => {
  async function later(own: Partial<StationFact> = {}): Promise<Session> {
    const session = await shopWith([[other, lathe]]);
    await session.act({
      kind: 'set',
      set: {
        register: 'station',
        id: session.station,
        value: { letter: 'A', name: 'Tablet A', keys: [], ...own },
      },
    });
    return session;
  }

  test('takes a free one by itself, with a name by it, and tells what changed', async () => {
    const session = await later();
    expect(await settleLetter(session, name)).toEqual({ from: 'A', to: 'C', owner: 'Lathe' });
    expect(factAt(session)).toEqual({ letter: 'C', name: 'Tablet C', keys: [] });
    expect(await settleLetter(session, name)).toBeNull();
  });

  test('keeps a name of its own', async () => {
    const session = await later({ name: 'Sanding bench' });
    await settleLetter(session, name);
    expect(factAt(session)).toMatchObject({ letter: 'C', name: 'Sanding bench' });
  });

  test('that took over the letter of a tablet that is gone has that one', async () => {
    const session = await later();
    await takeLetterOver(session, other, name);
    expect(factAt(session)).toMatchObject({ letter: 'A', name: 'Tablet A' });
    expect(letterOf(registersOf(session), session.station).kind).toBe('own');
    expect(letterOf(registersOf(session), other)).toMatchObject({ kind: 'lost', free: 'C' });
  });
});

test('a station for which no letter is free is named, and makes no code', async () => {
  const letters = [...'ACEFHJKMPRTWX'] as StationFact['letter'][];
  const session = await shopWith(
    letters.map((letter) => [
      v.parse(stationId, `other-${letter.toLowerCase()}`),
      { letter, name: name(letter), keys: [] },
    ]),
  );
  expect(stationFactOf(registersOf(session), { station: session.station, name }).letter).toBe('A');
  await nameStation(session, { name, before: null });
  expect(letterOf(registersOf(session), session.station)).toMatchObject({ kind: 'lost', free: null });
  expect(await settleLetter(session, name)).toBeNull();
});
