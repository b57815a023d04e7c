// @vitest-environment happy-dom
import * as v from 'valibot';
import { afterEach, expect, test } from 'vitest';
import { type KnownCopies, rememberCopies } from '../../src/app/known-copies.ts';
import { shopDayText } from '../../src/domain/log/ids.ts';

const mark = { at: 5000, day: v.parse(shopDayText, '2026-03-02'), log: 12 };
const kept = { ...mark, entries: 12 };
const outside = { ...mark, entries: 12, way: 'download' } as const;

afterEach(() => localStorage.clear());

test('what is known of the copies is there again after a restart, for each shop by itself', () => {
  rememberCopies('shop', localStorage).note({ kept, outside });
  expect(rememberCopies('shop', localStorage).known.value).toEqual({ kept, outside, trouble: null });
  expect(rememberCopies('demo', localStorage).known.value).toEqual({
    kept: null,
    outside: null,
    trouble: null,
  });
});

test('two windows that note different things lose neither', () => {
  const here = rememberCopies('shop', localStorage);
  const there = rememberCopies('shop', localStorage);
  here.note({ kept });
  there.note({ outside });
  expect(there.known.value).toEqual({ kept, outside, trouble: null });
  dispatchEvent(new StorageEvent('storage', { key: 'tallywright copies of shop' }));
  expect(here.known.value).toEqual({ kept, outside, trouble: null });
});

test('a memory that was spoilt is none, part by part', () => {
  const place = 'tallywright copies of shop';
  const nothing: KnownCopies = { kept: null, outside: null, trouble: null };
  for (const spoilt of ['', '{', '[]', 'null', '{"kept":{"at":"x"},"outside":7}']) {
    localStorage.setItem(place, spoilt);
    expect(rememberCopies('shop', localStorage).known.value).toEqual(nothing);
  }
  localStorage.setItem(place, JSON.stringify({ kept: { ...kept, log: -1 }, outside }));
  expect(rememberCopies('shop', localStorage).known.value).toEqual({ ...nothing, outside });
});

test('a browser that keeps nothing is done without', () => {
  const refusing = {
    getItem: (): string => {
      throw new Error('refused');
    },
    setItem: () => {
      throw new Error('refused');
    },
  };
  for (const storage of [undefined, refusing]) {
    const memory = rememberCopies('shop', storage);
    memory.note({ kept });
    memory.note({ outside });
    expect(memory.known.value).toEqual({ kept, outside, trouble: null });
  }
});
