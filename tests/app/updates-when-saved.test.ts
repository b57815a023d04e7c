import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import { updatesWhenSaved } from '../../src/app/updates-when-saved.ts';

function anUpdateWaits() {
  const saved = signal(true);
  let applied = 0;
  const updates = updatesWhenSaved(
    {
      waiting: signal(true),
      offlineReady: signal(true),
      apply: () => {
        applied += 1;
      },
    },
    () => saved.value,
  );
  return { updates, saved, applied: () => applied };
}

test('a new version is offered and applied while every tap is on disk', () => {
  const { updates, applied } = anUpdateWaits();
  expect(updates.waiting.value).toBe(true);
  updates.apply();
  expect(applied()).toBe(1);
});

test('while a tap waits to be saved no new version is offered, and none is applied', () => {
  const { updates, saved, applied } = anUpdateWaits();
  saved.value = false;
  expect(updates.waiting.value).toBe(false);
  updates.apply();
  expect(applied()).toBe(0);
  saved.value = true;
  expect(updates.waiting.value).toBe(true);
});
