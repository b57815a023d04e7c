import { expect, test } from 'vitest';
import { afterStep } from '../../src/app/bench-lock.ts';
import { openPreferences } from '../../src/app/preferences.ts';

const place = 'tallywright preferences';

/** Storage as a browser has it, one for all its windows. */
function storage(start?: object) {
  const kept = new Map<string, string>(start ? [[place, JSON.stringify(start)]] : []);
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    kept: () => JSON.parse(kept.get(place) ?? '{}'),
  };
}

const hashed = `$pbkdf2-sha256$i=600000$${'00'.repeat(16)}$${'11'.repeat(32)}`;
const open = afterStep(null, { kind: 'set', pin: hashed, recovery: hashed, now: 0 });
const locked = afterStep(open, { kind: 'lock' });

test('a lock is still closed when the page is loaded anew', () => {
  const tablet = storage();
  openPreferences(tablet).lock.value = locked;
  expect(openPreferences(tablet).lock.value).toEqual(locked);
});

test.each([
  ['is missing', { theme: 'glare' }],
  ['is nonsense', { theme: 'glare', lock: 'shut' }],
  ['has a hash cut short', { theme: 'glare', lock: { ...locked, pin: hashed.slice(0, -1) } }],
])('a lock that %s is no lock, and leaves the other settings alone', (_what, kept) => {
  const preferences = openPreferences(storage(kept));
  expect(preferences.lock.value).toBeNull();
  expect(preferences.theme.value).toBe('glare');
});

test('a window that heard nothing does not open the lock of another when it keeps its own choice', () => {
  const tablet = storage();
  const here = openPreferences(tablet);
  const there = openPreferences(tablet);
  here.lock.value = locked;
  there.theme.value = 'dark';
  expect(tablet.kept()).toMatchObject({ theme: 'dark', lock: { locked: true } });
  expect(there.lock.value).toEqual(locked);
});

test('what a listing sheet says is kept in its order', () => {
  const tablet = storage();
  openPreferences(tablet).listing.value = ['price', 'name'];
  expect(openPreferences(tablet).listing.value).toEqual(['price', 'name']);
});

test('a choice of columns that is no list is none', () => {
  expect(openPreferences(storage({ listing: 'name' })).listing.value).toBeNull();
});
