import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import type { RegisterSet } from '../set-up/register.ts';
import type { Registers } from '../shop/registers.ts';
import { type ShopSign, shopSign } from './shop-sign.ts';

/**
 * The sign of the shop for its labels, and for telling whose label was scanned; undefined before there is a shop. A log of
 * an older version says none: the sign then follows from the word on the shop that stands, which is the same on every tablet.
 */
export function signOf(registers: Registers): ShopSign | undefined {
  const word = registers.get('shop/shop');
  if (word?.set.register !== 'shop') return undefined;
  return word.set.value.sign ?? signFrom(`${word.station}/${word.seq}`);
}

/**
 * A set-up fact as it is to be written: a fact of the shop carries the sign that the shop has, whatever its author says,
 * because labels that were printed stay; a new shop draws one. Other facts stay as they are.
 */
export function keepingSign(
  registers: Registers,
  { set, chance }: { set: RegisterSet; chance: () => string },
): RegisterSet {
  if (set.register !== 'shop') return set;
  return { ...set, value: { ...set.value, sign: signOf(registers) ?? signFrom(chance()) } };
}

/** The sign that a text stands for, by its SHA-256. */
function signFrom(text: string): ShopSign {
  return shopSign([...sha256(utf8ToBytes(text))]);
}
