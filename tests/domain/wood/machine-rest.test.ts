import fc from 'fast-check';
import { expect, test } from 'vitest';
import { machineRest, type Worked } from '../../../src/domain/wood/machine-rest.ts';
import { stage } from '../../support/workshop.ts';

const minute = 60_000;
const lathe = { stages: [stage.turn, stage.sand], duty: { on: 30, off: 10 } };
const work = (from: number, to: number, at = stage.turn): Worked => ({
  stage: at,
  from: from * minute,
  to: to * minute,
});
const restAt = (now: number, ...worked: readonly Worked[]) =>
  machineRest(worked, { ...lathe, now: now * minute });

test('a machine at whose stages nobody works has run for nothing', () => {
  expect(restAt(100)).toEqual({ kind: 'runs', minutes: 0 });
  expect(restAt(100, work(0, 99, stage.bore))).toEqual({ kind: 'runs', minutes: 0 });
});

test('work at all its stages adds up, and a halt shorter than its rest neither counts nor cools it', () => {
  expect(restAt(24, work(0, 10), work(15, 24, stage.sand))).toEqual({ kind: 'runs', minutes: 19 });
  expect(restAt(36, work(0, 10), work(15, 36, stage.sand))).toEqual({ kind: 'rest', minutes: 31, left: 10 });
});

test('the rest that it needs starts the count anew, to the minute', () => {
  expect(restAt(30, work(0, 20), work(30, 30.5))).toMatchObject({ kind: 'runs', minutes: 0.5 });
  expect(restAt(30, work(0, 20), work(29.9, 30.4))).toMatchObject({ kind: 'runs', minutes: 20.5 });
});

test('a machine that rests says how long it has still to, and is free after', () => {
  expect(restAt(30, work(0, 30))).toEqual({ kind: 'rest', minutes: 30, left: 10 });
  expect(restAt(37, work(0, 30))).toEqual({ kind: 'rest', minutes: 30, left: 3 });
  expect(restAt(40, work(0, 30))).toEqual({ kind: 'runs', minutes: 0 });
});

test('stretches that lie over one another count once, in whatever order they come', () => {
  const stretch = fc.tuple(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 0, max: 40 }));
  fc.assert(
    fc.property(fc.array(stretch, { maxLength: 8 }), (made) => {
      const worked = made.map(([from, length]) => work(from, from + length));
      const here = restAt(240, ...worked);
      expect(restAt(240, ...worked.toReversed(), ...worked)).toEqual(here);
    }),
  );
  expect(restAt(21, work(0, 20), work(5, 10))).toEqual({ kind: 'runs', minutes: 20 });
});
