import { describe, expect, test } from 'vitest';
import type { HoldFact, MixFact } from '../../../src/domain/set-up/facts.ts';
import { type HoldDraft, holdDraftOf, readHold } from '../../../src/screens/set-up/hold-draft.ts';
import { readResource, resourceDraftOf } from '../../../src/screens/set-up/resource-draft.ts';
import { hoursText, readMinutes } from '../../../src/screens/set-up/typed-hours.ts';
import { resource } from '../../support/workshop.ts';

const glue: MixFact = {
  ...{ kind: 'adhesive', gramsEach: 150, resin: 10_000, hardener: 4500, by: 'volume', wastePercent: 15 },
  ...{ densities: { resin: 115, hardener: 98 }, potMinutes: 30, secondsEach: 40 },
};
const coat: MixFact = {
  ...{ kind: 'finish', mlEach: 125, wastePercent: 0, recoatFrom: 100, recoatUntil: 1440 },
};
const hold: HoldFact = {
  ...{ kind: 'hold', name: 'Glue', reasons: [], bulk: true, caution: '', retired: false },
  ...{ cureMinutes: 720, capacity: null },
};
const usual = holdDraftOf(undefined);
const read = (part: Partial<HoldDraft>) => readHold({ ...usual, ...part }, { cureMinutes: 720 });
const wrong = (part: Partial<HoldDraft>) =>
  Object.entries(read(part).problems).flatMap(([field, problem]) => (problem ? [field] : []));

describe('what a hold has besides its time', () => {
  test('is read back as it was, and left out where it was not said', () => {
    const extras = { leastMinutes: 100, ratedAt: -25, quickerWarm: true, resource: resource.cramps };
    for (const all of [{ ...extras, mix: glue }, { ...extras, mix: coat }, {}]) {
      expect(readHold(holdDraftOf({ ...hold, ...all }), hold)).toMatchObject({ value: all });
      expect(Object.keys(readHold(holdDraftOf({ ...hold, ...all }), hold).value)).toHaveLength(
        Object.keys(all).length,
      );
    }
  });

  test('has a least time of at most the time to cure', () => {
    expect(read({ least: '12' }).value).toEqual({ leastMinutes: 720 });
    for (const least of ['12.1', '0', 'soon', '-1']) expect(wrong({ least })).toEqual(['least']);
  });

  test('has a temperature that a thermometer can show', () => {
    expect(read({ ratedAt: '22,5' }).value).toEqual({ ratedAt: 225 });
    for (const ratedAt of ['warm', '22.55', '200']) expect(wrong({ ratedAt })).toEqual(['ratedAt']);
  });

  test('lets warmth shorten nothing while no temperature is said', () => {
    expect(read({ quickerWarm: 'yes' }).value).toEqual({});
  });
});

describe('what is mixed', () => {
  const typed = { mix: 'adhesive', gramsEach: '1,5', resin: '2', hardener: '1', pot: '30' } as const;

  test('is read with commas, and by weight unless said otherwise', () => {
    expect(read(typed).value.mix).toEqual({
      ...{ kind: 'adhesive', gramsEach: 150, resin: 200, hardener: 100, by: 'weight', densities: null },
      ...{ wastePercent: 10, potMinutes: 30, secondsEach: null },
    });
  });

  test.each([
    [{ gramsEach: '' }, ['gramsEach']],
    [{ gramsEach: '0' }, ['gramsEach']],
    [{ resin: '1.234' }, ['resin']],
    [{ hardener: '-1' }, ['hardener']],
    [{ waste: '91' }, ['waste']],
    [{ pot: '0' }, ['pot']],
    [{ secondsEach: '1.5' }, ['secondsEach']],
    [{ by: 'volume', resinDensity: '1.15' }, ['hardenerDensity']],
    [{ by: 'weight', resinDensity: 'heavy' }, []],
    [{ mlEach: 'much', recoatFrom: 'late' }, []],
  ] as const)('with %j has wrong: %j', (part, fields) => {
    expect(wrong({ ...typed, ...part })).toEqual(fields);
  });

  test('for a coat may say from when to when the next one goes on, in that order', () => {
    const paint = { mix: 'finish', mlEach: '1.2' } as const;
    expect(read({ ...paint, recoatFrom: '4' }).value.mix).toMatchObject({
      ...{ mlEach: 120, recoatFrom: 240, recoatUntil: null },
    });
    expect(wrong({ ...paint, recoatFrom: '4', recoatUntil: '4' })).toEqual(['recoatUntil']);
    expect(wrong({ ...paint, recoatFrom: 'late' })).toEqual(['recoatFrom']);
    expect(wrong({ ...paint, mlEach: '' })).toEqual(['mlEach']);
  });
});

test('whole minutes are typed as hours that come back to the minute', () => {
  for (let minutes = 1; minutes <= 3000; minutes += 1)
    expect(readMinutes(hoursText(minutes), 3000)).toBe(minutes);
});

describe('clamps and racks', () => {
  test('are read back as they were', () => {
    for (const capacity of [null, 24])
      expect(readResource(resourceDraftOf({ name: 'Cramps', capacity, retired: false }))).toEqual({
        ...{ ok: true, value: { name: 'Cramps', capacity } },
      });
  });

  test('need a name, and whole places where any are said', () => {
    expect(readResource({ name: ' ', capacity: '2.5' })).toEqual({
      ...{ ok: false, problems: { name: 'Enter a name.', capacity: 'Whole pieces only.' } },
    });
  });
});
