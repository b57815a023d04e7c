import { expect, test } from 'vitest';
import { readSettings } from '../../src/rescue/read-settings.ts';

function storageOf(entries: readonly (readonly [string, string])[]): Storage {
  const kept = new Map(entries);
  return {
    length: kept.size,
    key: (index) => [...kept.keys()][index] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    setItem: () => {
      throw new Error('the rescue page never writes');
    },
    removeItem: () => undefined,
    clear: () => undefined,
  };
}

test('what the app keeps is read as it lies there, and nothing of others', () => {
  const storage = storageOf([
    ['tallywright preferences', '{"theme":"dark"}'],
    ['other', 'x'],
  ]);
  expect(readSettings(() => storage).lines.map((line): unknown => JSON.parse(line))).toEqual([
    { setting: 'tallywright preferences', value: '{"theme":"dark"}' },
  ]);
});

test('a browser that refuses even the look is told', () => {
  const refusing = () => {
    throw new DOMException('denied', 'SecurityError');
  };
  expect(readSettings(refusing)).toMatchObject({ lines: [], unread: [expect.stringContaining('denied')] });
});
