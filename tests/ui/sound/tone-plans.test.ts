/** Limits from rule 20 of the bench: 700 to 3000 Hz, two parts below 1500 Hz (from memory: ISO 7731), a fifth apart (NUREG-0700). */
import { describe, expect, test } from 'vitest';
import {
  lengthOf,
  mayBegin,
  type Sounding,
  type ToneName,
  type TonePlan,
  tonePlans,
  vibrations,
} from '../../../src/ui/sound/tone-plans.ts';

const plans = Object.entries(tonePlans);

const partsOf = (plan: TonePlan): readonly number[] =>
  [...new Set(plan.flatMap((tone) => tone.parts))].toSorted((a, b) => a - b);

/** The lowest part of each tone: what the ear follows. */
const line = (plan: TonePlan): readonly number[] => plan.map((tone) => Math.min(...tone.parts));

describe.each(plans)('the plan of "%s"', (_name, plan) => {
  test('lies between 700 and 3000 Hz', () => {
    expect(partsOf(plan).every((hz) => hz >= 700 && hz <= 3000)).toBe(true);
  });

  test('has two parts below 1500 Hz for ears under muffs', () => {
    expect(partsOf(plan).filter((hz) => hz < 1500).length).toBeGreaterThanOrEqual(2);
  });

  test('keeps its parts a fifth apart', () => {
    const parts = partsOf(plan);
    for (const [place, hz] of parts.entries()) {
      const next = parts[place + 1];
      if (next !== undefined) expect(next / hz).toBeGreaterThanOrEqual(1.2);
    }
  });

  test('has tones of 150 to 350 ms', () => {
    expect(plan.every(({ ms }) => ms >= 150 && ms <= 350)).toBe(true);
  });

  test('ends without a rest', () => {
    expect(plan.at(-1)?.rest).toBe(0);
  });
});

test('saved is two short tones that rise', () => {
  const [first = 0, second = 0, ...more] = line(tonePlans.saved);
  expect(more).toEqual([]);
  expect(second / first).toBeGreaterThanOrEqual(1.2);
  expect(lengthOf(tonePlans.saved)).toBeLessThanOrEqual(334);
});

test('not saved is three long tones, lower than all others', () => {
  const plan = tonePlans['not-saved'];
  expect(plan).toHaveLength(3);
  expect(plan.every(({ ms }) => ms === 350)).toBe(true);
  const others = plans.filter(([name]) => name !== 'not-saved').flatMap(([, other]) => line(other));
  expect(Math.max(...line(plan))).toBeLessThan(Math.min(...others) / 1.2);
});

test('the last piece of a tray begins as saved does, and rises on', () => {
  const { saved, last } = tonePlans;
  expect(line(last).slice(0, saved.length)).toEqual(line(saved));
  const [, second = 0, third = 0, ...more] = line(last);
  expect(more).toEqual([]);
  expect(third / second).toBeGreaterThanOrEqual(1.2);
});

test('refused is two long rough tones: neither an answer nor the alarm', () => {
  expect(tonePlans.refused.map(({ parts, ms }) => [parts.length, ms])).toEqual([
    [2, 300],
    [2, 300],
  ]);
});

test('a cure that is over calls longer and slower than any tap is answered', () => {
  const answers = plans.filter(([name]) => name !== 'cured' && name !== 'not-saved');
  const longest = Math.max(...answers.map(([, plan]) => lengthOf(plan)));
  expect(lengthOf(tonePlans.cured)).toBeGreaterThanOrEqual(2 * longest);
  expect(tonePlans.cured.every(({ ms }) => ms >= 300)).toBe(true);
});

test('no two plans go up and down alike with as many tones', () => {
  const shapes = plans.map(([, plan]) =>
    [plan.length, ...line(plan).map((hz, place, all) => Math.sign(hz - (all[place - 1] ?? hz)))].join(),
  );
  expect(new Set(shapes).size).toBe(plans.length);
});

test('no two answers feel alike in the hand', () => {
  expect(new Set(Object.values(vibrations).map(String)).size).toBe(Object.keys(tonePlans).length);
});

describe('an answer', () => {
  const saved: Sounding = { name: 'saved', at: 1000 };
  const cured: Sounding = { name: 'cured', at: 1000 };
  const notSaved: Sounding = { name: 'not-saved', at: 1000 };

  test.each<[Sounding | undefined, ToneName, number, boolean]>([
    [undefined, 'saved', 0, true],
    [saved, 'saved', 1200, false],
    [saved, 'saved', 1333, false],
    [saved, 'saved', 1334, true],
    [saved, 'flaw', 1200, false],
    [saved, 'not-saved', 1001, true],
    [cured, 'saved', 1100, true],
    [cured, 'not-saved', 1100, true],
    [cured, 'cured', 1500, false],
    [saved, 'cured', 1200, false],
    [saved, 'cured', 1400, true],
    [notSaved, 'cured', 1500, false],
    [notSaved, 'saved', 1500, false],
    [notSaved, 'not-saved', 1500, false],
    [notSaved, 'saved', 1000 + lengthOf(tonePlans['not-saved']), true],
  ])('after %o, "%s" at %i may begin: %s', (last, name, at, may) => {
    expect(mayBegin(last, name, at)).toBe(may);
  });
});
