import { expect, test } from 'vitest';
import { boxTextsOf, noBoxTexts } from '../../../src/domain/set-up/box-texts.ts';

const shop = { box: { finish: 'Shellac', care: 'Keep it dry', caution: '' } };

test('a variant that says nothing has the sheet of the shop', () => {
  expect(boxTextsOf(shop, {})).toEqual(shop.box);
  expect(boxTextsOf(shop, undefined)).toEqual(shop.box);
  expect(boxTextsOf({}, {})).toEqual(noBoxTexts);
  expect(boxTextsOf(undefined, {})).toEqual(noBoxTexts);
});

test('one that says something else has that, and the rest of the shop’s', () => {
  const box = { printed: true, finish: '', care: 'Oil it', caution: 'Sharp' };
  expect(boxTextsOf(shop, { box })).toEqual({ finish: 'Shellac', care: 'Oil it', caution: 'Sharp' });
});

test('one that has no sheet has none, whatever its texts', () => {
  const box = { printed: false, finish: 'Oil', care: '', caution: '' };
  expect(boxTextsOf(shop, { box })).toBeNull();
});
