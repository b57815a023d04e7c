import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import { oldPhotosHere } from '../../../src/screens/set-up/photos-view.ts';
import { aPhoto } from '../../support/a-photo.ts';
import { aWorkshop } from '../../support/a-shop.ts';
import { reason, stage } from '../../support/workshop.ts';

test('only photos that lie on this tablet can be let go, and only those of so many months ago', async () => {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 12);
  const flawed = (digit: string) =>
    shop.act({
      ...{ kind: 'photograph-piece', tray, stage: stage.turn },
      ...{ reasons: [reason.gap], photo: aPhoto(digit) },
    });
  flawed('a');
  flawed('b');
  shop.later(200 * 24 * 60);
  flawed('c');
  const session = {
    allEvents: async () => shop.log,
    now: shop.clock,
    view: signal({ shop: shop.shop, uncounted: 0 }),
  };
  const notes = ['a', 'c', 'd'].map((digit) => ({ ...aPhoto(digit), kept: 0 }));
  expect(await oldPhotosHere(session, { months: 6, notes })).toEqual([aPhoto('a').hash]);
  expect(await oldPhotosHere(session, { months: 12, notes })).toEqual([]);
});
