import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import starting from '../../../shared/label-sizes.json';
import {
  labelsPerPage,
  pagesOfLabels,
  placeOnPage,
  problemOfLabelSize,
} from '../../../src/domain/label/label-size.ts';
import { labelSizes } from '../../../src/domain/label/label-sizes.ts';
import { labelSizeId } from '../../../src/domain/log/ids.ts';
import type { LabelSizeFact } from '../../../src/domain/set-up/facts.ts';
import { emptyShop } from '../../../src/domain/shop/shop.ts';
import { aWorkshop } from '../../support/a-shop.ts';

const id = v.parse(labelSizeId, 'a4-3x8');
const sizes = labelSizes(emptyShop().registers);
const sizeOf = (name: string): LabelSizeFact => {
  const found = sizes.find((size) => size.id === name);
  if (!found) throw new Error(`no size ${name}`);
  return found.fact;
};
const onSheet = (change: Partial<NonNullable<LabelSizeFact['sheet']>>): LabelSizeFact => {
  const size = sizeOf('a4-3x8');
  return { ...size, sheet: size.sheet && { ...size.sheet, ...change } };
};

describe('the sizes to start from', () => {
  test('are all those of the shared table, and every one fits its sheet', () => {
    expect(sizes.length).toBe(starting.sizes.length);
    for (const { fact } of sizes) expect(problemOfLabelSize(fact)).toBeNull();
  });

  test('leave as much at the right and the foot of a sheet as at the left and the top', () => {
    for (const { fact } of sizes) {
      if (!fact.sheet) continue;
      const last = placeOnPage(fact, labelsPerPage(fact) - 1);
      const right = fact.sheet.width / 100 - last.x - fact.width / 100;
      const foot = fact.sheet.height / 100 - last.y - fact.height / 100;
      expect(Math.abs(right - fact.sheet.left / 100)).toBeLessThanOrEqual(0.1);
      expect(Math.abs(foot - fact.sheet.top / 100)).toBeLessThanOrEqual(0.1);
    }
  });

  test('give way to what the shop says of them, and stand beside its own', () => {
    const shop = aWorkshop();
    const own = v.parse(labelSizeId, 'own');
    const value = sizeOf('a4-3x8');
    shop.set({ register: 'label-size', id, value: { ...value, width: 6900, retired: true } });
    shop.set({ register: 'label-size', id: own, value: { ...value, name: 'A size of my own' } });
    const now = labelSizes(shop.shop.registers);
    expect(now.length).toBe(sizes.length + 1);
    expect(now.find((size) => size.id === id)?.fact).toMatchObject({ width: 6900, retired: true });
    expect(now[0]?.fact.name).toBe('A size of my own');
  });
});

describe('a size is refused', () => {
  const refusal = (value: LabelSizeFact) =>
    aWorkshop().refusal({ kind: 'set', set: { register: 'label-size', id, value } });

  test.each([
    ['columns too many', { columns: 4 }, { kind: 'labels-off-sheet', way: 'across' }],
    ['rows too many', { rows: 9 }, { kind: 'labels-off-sheet', way: 'down' }],
    ['a first label too far in', { left: 1 }, { kind: 'labels-off-sheet', way: 'across' }],
    ['labels over one another', { acrossStep: 6999 }, { kind: 'labels-overlap', way: 'across' }],
    ['rows over one another', { downStep: 3000 }, { kind: 'labels-overlap', way: 'down' }],
    ['no column', { columns: 0 }, { kind: 'number', problem: { kind: 'too-small', least: 1 } }],
    ['a part of a row', { rows: 1.5 }, { kind: 'number', problem: { kind: 'not-whole' } }],
  ])('with %s', (_, change, problem) => {
    expect(refusal(onSheet(change))).toEqual(problem);
  });

  test('that is too small to print on', () => {
    expect(refusal({ ...sizeOf('roll-29'), height: 1400 })).toEqual({
      kind: 'number',
      problem: { kind: 'too-small', least: 1500 },
    });
  });
});

describe('labels on pages', () => {
  const size = sizeOf('a4-3x8');
  const placesOf = (count: number, firstFree: number) =>
    pagesOfLabels(
      Array.from({ length: count }, (_, index) => index),
      { size, firstFree },
    );

  test('lie along the rows, at the places of the sheet', () => {
    expect(placesOf(5, 0)).toEqual([
      [
        { thing: 0, x: 0, y: 0.5 },
        { thing: 1, x: 70, y: 0.5 },
        { thing: 2, x: 140, y: 0.5 },
        { thing: 3, x: 0, y: 37.5 },
        { thing: 4, x: 70, y: 37.5 },
      ],
    ]);
  });

  test('go on where a begun sheet is free', () => {
    const [page] = placesOf(2, 23);
    expect(page).toEqual([{ thing: 0, x: 140, y: 259.5 }]);
    expect(placesOf(2, 23)[1]).toEqual([{ thing: 1, x: 0, y: 0.5 }]);
  });

  test('are none for no trays, and 21 pages for 500', () => {
    expect(placesOf(0, 3)).toEqual([]);
    const pages = placesOf(500, 0);
    expect(pages.length).toBe(21);
    expect(pages.flat().map(({ thing }) => thing)).toEqual(Array.from({ length: 500 }, (_, index) => index));
  });

  test('begin a new sheet where no such place is', () => {
    expect(placesOf(1, 24)).toEqual(placesOf(1, 0));
    expect(placesOf(1, -1)).toEqual(placesOf(1, 0));
  });

  test('of a roll are a page each', () => {
    const pages = pagesOfLabels(['a', 'b'], { size: sizeOf('roll-62'), firstFree: 0 });
    expect(pages).toEqual([[{ thing: 'a', x: 0, y: 0 }], [{ thing: 'b', x: 0, y: 0 }]]);
  });
});
