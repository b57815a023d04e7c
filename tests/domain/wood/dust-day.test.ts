import { expect, test } from 'vitest';
import type { ShopDay } from '../../../src/domain/log/ids.ts';
import { dustDay } from '../../../src/domain/wood/dust-day.ts';
import { species } from '../../support/workshop.ts';

const day = (text: string) => text as ShopDay;
const of = (text: string, wood: keyof typeof species, minutes: number) => ({
  day: day(text),
  species: species[wood],
  minutes,
});

const [one, other] = Object.keys(species) as (keyof typeof species)[];
if (!one || !other) throw new Error('the test workshop has two woods');

const history = [
  of('2026-03-02', one, 30),
  of('2026-03-02', other, 5),
  of('2026-03-03', one, 10),
  of('2026-03-04', one, 50),
  of('2026-03-05', one, 20),
  of('2026-03-06', one, 8),
  of('2026-03-06', other, 12),
  of('2026-03-07', one, 99),
];

test('each wood of the day stands beside the median of its own earlier days, the most minutes first', () => {
  expect(dustDay(history, day('2026-03-06'))).toEqual({
    woods: [
      { species: species[other], minutes: 12, usual: 5, days: 1 },
      { species: species[one], minutes: 8, usual: 25, days: 4 },
    ],
    // Days of 35, 10, 50 and 20 minutes.
    all: { minutes: 20, usual: 27.5, days: 4 },
  });
});

test('a first day has nothing to be held against, and a day without dust is empty', () => {
  expect(dustDay(history, day('2026-03-02')).all).toEqual({ minutes: 35, usual: null, days: 0 });
  expect(dustDay(history, day('2026-03-08'))).toMatchObject({ woods: [], all: { minutes: 0, days: 6 } });
});
