import * as v from 'valibot';
import { expect, test } from 'vitest';
import { stationId } from '../../src/domain/log/ids.ts';
import { markKeeper } from '../../src/store/mark.ts';
import { testStorage } from '../support/twin-makers.ts';

const mark = { station: v.parse(stationId, 'station-a'), seq: 7, entries: 12 };

test('the mark of a store is found again at the next start, and is no other store’s', () => {
  const storage = testStorage();
  expect(markKeeper(storage, 'tallywright').read()).toBeNull();
  markKeeper(storage, 'tallywright').note(mark);
  markKeeper(storage, 'tallywright').suspect(true);
  const later = markKeeper(storage, 'tallywright');
  expect(later.read()).toEqual(mark);
  expect(later.isSuspect()).toBe(true);
  const demo = markKeeper(storage, 'tallywright-demo');
  expect(demo.read()).toBeNull();
  expect(demo.isSuspect()).toBe(false);
});

test.each([
  'no JSON',
  '[]',
  'null',
  '{"mark":{"station":"A B","seq":7,"entries":12}}',
  '{"mark":{"station":"station-a","seq":-1,"entries":12}}',
  '{"mark":{"station":"station-a","seq":7},"suspect":"yes"}',
])('a mark that reads %s is none', (text) => {
  const marks = markKeeper(testStorage(new Map([['tallywright mark', text]])), 'tallywright');
  expect(marks.read()).toBeNull();
  expect(marks.isSuspect()).toBe(false);
});

test('storage that throws, keeps nothing, or is not there, is done without', () => {
  const refuse = () => {
    throw new Error('refused');
  };
  const full = { getItem: () => null, setItem: refuse };
  const forgetful = { getItem: () => null, setItem: () => undefined };
  for (const storage of [undefined, { getItem: refuse, setItem: refuse }, full, forgetful]) {
    const marks = markKeeper(storage, 'tallywright');
    marks.note(mark);
    marks.suspect(true);
    expect([marks.read(), marks.isSuspect()]).toEqual([mark, true]);
  }
});

test('a mark that one window notes takes away no doubt of another', () => {
  const storage = testStorage();
  const [here, there] = [markKeeper(storage, 'tallywright'), markKeeper(storage, 'tallywright')];
  here.suspect(true);
  expect(there.isSuspect()).toBe(true);
  there.note(mark);
  expect(markKeeper(storage, 'tallywright').isSuspect()).toBe(true);
  expect(here.read()).toEqual(mark);
});

test('a window goes on doubting when a start of another has found the store whole', () => {
  const storage = testStorage();
  const [here, there] = [markKeeper(storage, 'tallywright'), markKeeper(storage, 'tallywright')];
  here.suspect(true);
  there.suspect(false);
  expect([here.isSuspect(), there.isSuspect()]).toEqual([true, false]);
});
