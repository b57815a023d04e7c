import { expect, test } from 'vitest';
import {
  dayStartHours,
  readShop,
  shopDraftOf,
  zonesToOffer,
} from '../../../src/screens/set-up/shop-draft.ts';

test('a shop that is read back is the same shop', () => {
  const shop = { name: 'Haft shop', zone: 'Asia/Kolkata', dayStartHour: 0 };
  expect(readShop(shopDraftOf(shop, 'Europe/London'))).toEqual({ ok: true, value: shop });
});

test('a shop without a fact of its own begins in the zone of the tablet, its day at four', () => {
  expect(shopDraftOf(undefined, 'Europe/London')).toEqual({
    name: '',
    zone: 'Europe/London',
    hour: '4',
    hourCost: '',
  });
});

test('a rate is kept, and one that is none is refused', () => {
  const shop = { name: 'Haft shop', zone: 'Asia/Kolkata', dayStartHour: 0, hourCost: 2650 };
  const draft = shopDraftOf(shop, 'UTC');
  expect(draft.hourCost).toBe('26.50');
  expect(readShop(draft)).toEqual({ ok: true, value: shop });
  expect(readShop({ ...draft, hourCost: '-1' })).toMatchObject({
    problems: { hourCost: expect.any(String) },
  });
});

test('a shop needs a name', () => {
  expect(readShop(shopDraftOf(undefined, 'UTC'))).toEqual({
    ok: false,
    problems: { name: 'Enter a name.', hourCost: undefined },
  });
});

test('a day begins on an hour from midnight to noon', () => {
  expect(dayStartHours.map(({ label }) => label)).toEqual(
    ['00', '01', '02', '03', '04', '05', '06', '07', '08', '09', '10', '11', '12'].map(
      (hour) => `${hour}:00`,
    ),
  );
});

test('the zones offered have the chosen one, the tablet’s own and UTC among them, each once and in order', () => {
  const offered = zonesToOffer(['Europe/Vienna', 'Asia/Kolkata'], {
    chosen: 'America/New_York',
    here: 'Europe/Vienna',
  });
  expect(offered).toEqual(['America/New_York', 'Asia/Kolkata', 'Europe/Vienna', 'UTC']);
});

test('a zone that the platform does not know is not offered', () => {
  expect(zonesToOffer(['Europe/Atlantis'], { chosen: 'UTC', here: 'UTC' })).toEqual(['UTC']);
});
