import { expect, test } from 'vitest';
import { findLabelled } from '../../../src/domain/label/find-labelled.ts';
import { shopSign } from '../../../src/domain/label/shop-sign.ts';
import { signOf } from '../../../src/domain/label/sign-of.ts';
import { symbolText } from '../../../src/domain/label/symbol-text.ts';
import { parseTrayCode, trayCode } from '../../../src/domain/tray/tray-code.ts';
import { aShop, aWorkshop } from '../../support/a-shop.ts';
import { setUpFacts } from '../../support/workshop.ts';

const stranger = shopSign([7, 7, 7, 7]);

function shopWithTray() {
  const tablet = aWorkshop();
  const tray = tablet.tray('ash-copper', 3);
  const code = parseTrayCode(tablet.shop.trays.get(tray)?.code ?? '');
  const sign = signOf(tablet.shop.registers);
  if (!code || !sign) throw new Error('the shop has a tray and a sign');
  return { tablet, tray, code, sign };
}

test('a label of this shop leads to its tray, as it was printed and as a person would type it', () => {
  const { tablet, tray, code, sign } = shopWithTray();
  for (const text of [symbolText({ code, sign }), code, ` ${code.toLowerCase()} `])
    expect(findLabelled(tablet.shop, text)).toMatchObject({ kind: 'tray', tray: { tray } });
});

test('a tray that is done with is found too', () => {
  const { tablet, tray, code } = shopWithTray();
  const other = tablet.tray('ash-copper', 1);
  tablet.join(tray, other);
  expect(findLabelled(tablet.shop, code)).toMatchObject({ kind: 'tray', tray: { tray } });
});

test('the same code under another sign is a label of another shop, whatever trays are here', () => {
  const { tablet, code } = shopWithTray();
  expect(findLabelled(tablet.shop, symbolText({ code, sign: stranger }))).toEqual({
    kind: 'other-shop',
    code,
  });
});

test('a code of this shop that its log does not have is said to be missing', () => {
  const { tablet, sign } = shopWithTray();
  const code = trayCode('X', 999);
  for (const text of [symbolText({ code, sign }), code])
    expect(findLabelled(tablet.shop, text)).toEqual({ kind: 'not-here', code });
});

test('a spoilt label is damaged, all else is foreign', () => {
  const { tablet, code, sign } = shopWithTray();
  const spoilt = symbolText({ code, sign }).replace(/^./, (letter) => (letter === 'A' ? 'C' : 'A'));
  expect(findLabelled(tablet.shop, spoilt)).toEqual({ kind: 'damaged' });
  for (const text of ['https://example.test/', '4006381333931', '', 'A17'])
    expect(findLabelled(tablet.shop, text), text).toEqual({ kind: 'foreign' });
});

test('a code that two trays in work carry is asked about; once one is done with, it is the other', () => {
  const [first, second] = ['first', 'second'].map((station) => {
    const tablet = aShop({ station, letter: 'A' });
    for (const set of setUpFacts) tablet.set(set);
    return { tablet, tray: tablet.tray('ash-copper', 3) };
  });
  if (!first || !second) throw new Error('two tablets were set up');
  first.tablet.receive(second.tablet.log);
  const code = parseTrayCode(first.tablet.shop.trays.get(first.tray)?.code ?? '');
  expect(findLabelled(first.tablet.shop, code ?? '')).toEqual({ kind: 'alike', code });
  first.tablet.join(first.tray, first.tablet.tray('ash-copper', 1));
  expect(findLabelled(first.tablet.shop, code ?? '')).toMatchObject({
    kind: 'tray',
    tray: { tray: second.tray },
  });
});
