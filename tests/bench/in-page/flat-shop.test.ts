import { describe, expect, test } from 'vitest';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import { longLog } from '../../support/long-log.ts';
import { flatShop } from './flat-shop.ts';
import { mustSayTheSame } from './same-sums.ts';

describe('the counters that the bench holds the shop against', () => {
  const log = [...longLog({ events: 3_000, until: Date.UTC(2026, 5, 1) })];
  const flat = flatShop();
  for (const event of log) flat.add(event);

  test('come to the same sums', () => {
    expect(() => mustSayTheSame(shopOf(log), flat)).not.toThrow();
  });

  test('are told from a shop that lacks a flaw', () => {
    const flawed = log.findLastIndex(({ kind }) => kind === 'flawed');
    expect(() => mustSayTheSame(shopOf(log.toSpliced(flawed, 1)), flat)).toThrow('other sums');
  });
});
