import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type VariantWork, variantCost } from '../../../../src/domain/plan/cost/variant-cost.ts';
import { parts, stages } from './makers.ts';

const { core, oil } = parts;
const { turn, sand } = stages;

const work: VariantWork = {
  firsts: 8,
  seconds: 2,
  parts: [{ part: core, pieces: 10, unitCost: 300 }],
  consumables: [{ part: oil, pieces: 10, unitCost: 2.5 }],
  labour: [{ stage: turn, visits: 10, minutes: 6 }],
  scrapped: { parts: [], labour: [{ stage: turn, visits: 2, minutes: 6 }] },
  firstPrice: 4500,
  secondPrice: 3000,
};
const hourlyRate = 3000;

test('a good piece bears its parts and work, the scrap, and what seconds bring in less (by hand)', () => {
  const cost = variantCost(work, { hourlyRate });
  expect(cost).toEqual({
    kind: 'known',
    good: 10,
    all: { parts: 3000, labour: 3000, consumables: 25, scrap: 600, markdown: 3000, whole: 9625 },
    // 962.5 is rounded up, and the half cent of consumables is what makes it so.
    perGood: { parts: 300, labour: 300, consumables: 3, scrap: 60, markdown: 300, whole: 963 },
  });
});

describe('what nobody has said', () => {
  test('is named, each once, beside what is known', () => {
    const cost = variantCost(
      {
        ...work,
        parts: [{ part: core, pieces: 10, unitCost: null }],
        scrapped: { parts: [{ part: core, pieces: 1, unitCost: null }], labour: [] },
        labour: [{ stage: sand, visits: 10, minutes: undefined }],
        secondPrice: null,
      },
      { hourlyRate: null },
    );
    expect(cost).toEqual({
      kind: 'not-known',
      missing: [
        { what: 'unit-cost', part: core },
        { what: 'minutes', stage: sand },
        { what: 'price', grade: 'second' },
      ],
      atLeast: 25,
    });
  });

  test('is not missed where there is none of it', () => {
    const cost = variantCost(
      {
        ...work,
        seconds: 0,
        secondPrice: null,
        firstPrice: null,
        parts: [{ part: core, pieces: 0, unitCost: null }],
        labour: [{ stage: sand, visits: 0, minutes: undefined }],
        scrapped: { parts: [], labour: [] },
      },
      { hourlyRate: null },
    );
    expect(cost).toMatchObject({ kind: 'known', all: { parts: 0, labour: 0, markdown: 0, whole: 25 } });
  });

  test('the hourly rate, where there was work', () => {
    expect(variantCost(work, { hourlyRate: null })).toMatchObject({ missing: [{ what: 'hourly-rate' }] });
  });
});

test('where none came out good nothing bears the cost', () => {
  expect(variantCost({ ...work, firsts: 0, seconds: 0 }, { hourlyRate })).toMatchObject({
    kind: 'none-good',
    all: { whole: 6625 },
  });
});

test('lines add up to the whole, and what comes in less what was spent is the margin of a first on every good piece', () => {
  const count = fc.integer({ min: 0, max: 500 });
  const money = fc.integer({ min: 0, max: 100_000 });
  const minutes = fc.double({ min: 0, max: 90, noNaN: true });
  fc.assert(
    fc.property(
      count,
      count,
      count,
      money,
      money,
      money,
      minutes,
      (firsts, seconds, scrap, unit, first, second, each) => {
        fc.pre(firsts + seconds > 0);
        const all: VariantWork = {
          firsts,
          seconds,
          parts: [{ part: core, pieces: firsts + seconds, unitCost: unit }],
          consumables: [{ part: oil, pieces: firsts, unitCost: unit / 7 }],
          labour: [{ stage: turn, visits: firsts + seconds, minutes: each }],
          scrapped: {
            parts: [{ part: core, pieces: scrap, unitCost: unit }],
            labour: [{ stage: turn, visits: scrap, minutes: each }],
          },
          firstPrice: first,
          secondPrice: second,
        };
        const cost = variantCost(all, { hourlyRate: 2750 });
        if (cost.kind !== 'known') throw new Error(cost.kind);
        for (const { whole, ...lines } of [cost.all, cost.perGood]) {
          expect(Object.values(lines).reduce((sum, line) => sum + line, 0)).toBe(whole);
          expect(Object.values(lines).every(Number.isInteger)).toBe(true);
        }
        const pieces = firsts + seconds + scrap;
        const spent = pieces * unit + (firsts * unit) / 7 + (pieces * each * 2750) / 60;
        const profit = firsts * first + seconds * second - spent;
        expect(Math.abs(cost.good * first - cost.all.whole - profit)).toBeLessThan(0.51);
        expect(Math.abs(cost.perGood.whole - cost.all.whole / cost.good)).toBeLessThan(1);
      },
    ),
  );
});
