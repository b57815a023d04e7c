import { expect, test } from 'vitest';
import { flawShotsAt, oldFlawPhotos, shotsAmong, shotsOfVariant } from '../../../src/domain/rollup/photos.ts';
import { aPhoto } from '../../support/a-photo.ts';
import { aWorkshop } from '../../support/a-shop.ts';
import { reason, stage, variant } from '../../support/workshop.ts';

function aShopWithPhotos() {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 12);
  const shoot = (digit: string, reasons: readonly (typeof reason)['gap'][], at = stage.turn) =>
    shop.act({ kind: 'photograph-piece', tray, stage: at, reasons, photo: aPhoto(digit) });
  return { shop, shoot };
}
const hashes = (found: Iterable<{ photo: { hash: string } }>) => [...found].map(({ photo }) => photo.hash[0]);

test('the newest photo stands first, and one that was taken back not at all', () => {
  const { shop, shoot } = aShopWithPhotos();
  shoot('a', []);
  const slip = shoot('b', []);
  shoot('c', [reason.gap]);
  shop.undo(slip);
  expect(hashes(shotsAmong(shop.log, shop.shop.voids))).toEqual(['c', 'a']);
});

test('behind a field of the heat table are photos of flaws at its stage', () => {
  const { shop, shoot } = aShopWithPhotos();
  shoot('a', []);
  shoot('b', [reason.gap]);
  shoot('c', [reason.gap], stage.sand);
  expect(hashes(flawShotsAt(shop.log, { stage: stage.turn, voids: shop.shop.voids }))).toEqual(['b']);
});

test('old photos of flaws can go: not those of sound pieces, young ones, or what shows something else too', () => {
  const { shop, shoot } = aShopWithPhotos();
  shoot('a', [reason.gap]);
  shoot('b', []);
  shoot('c', [reason.gap]);
  shop.act({
    kind: 'photograph',
    shows: { kind: 'variant', variant: variant['ash-copper'] },
    photo: aPhoto('c'),
  });
  shoot('d', [reason.gap]);
  shop.act({ kind: 'let-photos-go', photos: [aPhoto('d').hash] });
  const before = shop.clock();
  shop.later(1);
  shoot('e', [reason.gap]);
  const old = oldFlawPhotos(shop.log, { before, voids: shop.shop.voids });
  expect([...old]).toEqual([aPhoto('a').hash]);
});

test('a variant is shown by its own photos, then by those of its pieces without a flaw, each the newest first', () => {
  const { shop, shoot } = aShopWithPhotos();
  const own = (digit: string, id = variant['ash-copper']) =>
    shop.act({ kind: 'photograph', shows: { kind: 'variant', variant: id }, photo: aPhoto(digit) });
  own('a');
  shoot('b', []);
  shoot('c', [reason.gap]);
  own('d');
  own('e', variant['plum-copper']);
  shoot('f', []);
  const other = shop.tray('plum-copper', 2);
  const its = { stage: stage.turn, reasons: [], photo: aPhoto('0') };
  shop.act({ kind: 'photograph-piece', tray: other, ...its });
  const shots = shotsOfVariant(shop.log, { variant: variant['ash-copper'], voids: shop.shop.voids });
  expect(hashes(shots)).toEqual(['d', 'a', 'f', 'b']);
});
