import { describe, expect, test } from 'vitest';
import { factOf } from '../../../src/domain/shop/registers.ts';
import {
  type BatchDraft,
  batchDraftOf,
  inWork,
  readBatch,
  variantsToWant,
  wantedProblem,
} from '../../../src/screens/set-up/batch-draft.ts';
import { aWorkshop } from '../../support/a-shop.ts';
import { batch, route, variant } from '../../support/workshop.ts';

const workshop = aWorkshop();
const blank: BatchDraft = { ...batchDraftOf(undefined, workshop.shop.registers), name: 'Fair' };
const read = (part: Partial<BatchDraft>) =>
  readBatch(workshop.shop, { id: batch.autumn, draft: { ...blank, route: route.short, ...part } });

test('a new batch goes the first route of the shop, and wants nothing yet', () => {
  expect(blank).toMatchObject({ route: route.haft, due: '' });
  expect(blank.wanted.size).toBe(0);
});

test('wanted numbers are kept by variant; an empty one or nought wants none', () => {
  const wanted = new Map([
    [variant['ash-copper'], '60'],
    [variant['plum-copper'], ' '],
    [variant['ash-nickel'], '0'],
  ]);
  expect(read({ wanted })).toMatchObject({
    ok: true,
    value: { wanted: [{ variant: variant['ash-copper'], good: 60 }] },
  });
});

test.each([
  ['-3', 'At least 0.'],
  ['1e9', 'At most 99999.'],
  ['2.5', 'Whole pieces only.'],
  ['sixty', 'This is not a number.'],
])('“%s” good ones are refused: %s', (typed, words) => {
  expect(wantedProblem(typed)).toBe(words);
  expect(read({ wanted: new Map([[variant['ash-copper'], typed]]) })).toMatchObject({
    ok: false,
    problems: { wanted: words },
  });
});

test('what is wanted of a variant that was put away since stays wanted', () => {
  const shop = aWorkshop();
  const id = variant['ash-copper'];
  const now = factOf(shop.shop.registers, { register: 'variant', id });
  if (!now) throw new Error('no such variant');
  shop.set({ register: 'variant', id, value: { ...now, retired: true } });
  const { registers } = shop.shop;
  expect(variantsToWant(registers, blank).map((each) => each.id)).not.toContain(id);
  const draft = { ...blank, route: route.short, wanted: new Map([[id, '40']]) };
  expect(variantsToWant(registers, draft).map((each) => each.id)).toContain(id);
  expect(readBatch(shop.shop, { id: batch.autumn, draft })).toMatchObject({
    ok: true,
    value: { wanted: [{ variant: id, good: 40 }] },
  });
});

test.each([
  ['', null],
  ['2027-04-30', '2027-04-30'],
  ['2028-02-29', '2028-02-29'],
])('the day “%s” is due as %s', (due, kept) => {
  expect(read({ due })).toMatchObject({ ok: true, value: { due: kept } });
});

test.each(['2027-02-30', '2027-02-29', '2027-13-01', '30.4.2027', '12027-01-01', 'soon'])(
  '“%s” is no day of the calendar',
  (due) => {
    expect(read({ due })).toMatchObject({
      ok: false,
      problems: { due: 'This is not a day of the calendar. Write it as 2027-04-30.' },
    });
  },
);

test('a batch without a route asks for one', () => {
  expect(read({ route: undefined })).toMatchObject({ ok: false, problems: { route: 'Choose a route' } });
});

describe('while pieces are in work', () => {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 10);
  shop.pass(tray, 'bore', { pieces: 4 });
  shop.load(tray, 'glue', { pieces: 3 });
  const change = (to: BatchDraft['route']) =>
    readBatch(shop.shop, { id: batch.spring, draft: { ...blank, route: to } });

  test('a batch cannot go a route that lacks a stage at which its pieces stand', () => {
    expect(change(route.short)).toMatchObject({
      ok: false,
      problems: {
        route:
          'Pieces of this batch stand at Bore, Glue, which that route does not have. Put those stages on it first.',
      },
    });
    expect(change(route.haft).ok).toBe(true);
  });

  test('the pieces of a batch are counted over all its stages, those that cure among them', () => {
    expect(inWork(shop.shop, batch.spring)).toBe(10);
    expect(inWork(shop.shop, batch.autumn)).toBe(0);
  });
});

test.each([
  ['', {}],
  ['50', { chance: 50 }],
  ['99', { chance: 99 }],
])('“%s” is how sure one wants to be', (chance, expected) => {
  const result = read({ chance });
  expect(result.ok && { ...result.value }).toMatchObject(expected);
  expect(result.ok && 'chance' in result.value).toBe(chance !== '');
});

test.each(['49', '100', '90.5', 'sure', '1e9', '-90'])('“%s” is no such chance', (chance) => {
  expect(read({ chance })).toMatchObject({ problems: { chance: 'Whole per cent from 50 to 99.' } });
});
