import type { Bytes } from '../store/backup/sealing-keys.ts';
import { entropyOf, wordsOf } from '../store/backup/sealing-keys.ts';
import type { ShopKey } from './shop-key.ts';

/** The key of a shop as twelve words of BIP-39's English list, for a person to write down. */
export const wordsOfShop = (key: ShopKey): readonly string[] => wordsOf(key);

/** The key that twelve words stand for, as they may have been typed; undefined when a word or the check sum is wrong. */
export const keyOfWords = (words: string): Bytes | undefined => entropyOf(words.trim().split(/\s+/));
