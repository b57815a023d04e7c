// @vitest-environment happy-dom
import { act, screen, waitFor } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { afterStep } from '../../../src/app/bench-lock.ts';
import type { BenchLock } from '../../../src/app/kept-lock.ts';
import { hashPin } from '../../../src/app/pin-hash.ts';
import { IdleLock } from '../../../src/screens/lock/idle-lock.tsx';
import { LockedPlace } from '../../../src/screens/lock/locked-place.tsx';
import { type Mounted, mount } from '../set-up/mount.tsx';

const minute = 60_000;

/** Few rounds: how many there are is tested with the hash. */
async function lockWith(change: Partial<BenchLock>): Promise<BenchLock> {
  const [pin, recovery] = await Promise.all(
    ['0271', '314159265358'].map((digits) => hashPin(digits, { rounds: 2 })),
  );
  const lock = afterStep(null, { kind: 'set', pin: pin ?? '', recovery: recovery ?? '', now: Date.now() });
  if (!lock) throw new Error('a lock that was set is missing');
  return { ...lock, ...change };
}

async function show(change: Partial<BenchLock>, part = <LockedPlace />): Promise<Mounted> {
  const mounted = await mount(part);
  const lock = await lockWith(change);
  await act(() => {
    mounted.app.preferences.lock.value = lock;
  });
  return mounted;
}

/** Types as on a keyboard, which the pad hears wherever the focus is. */
function keys(...names: readonly string[]): void {
  for (const key of names)
    act(() => void dispatchEvent(new KeyboardEvent('keydown', { key, cancelable: true })));
}

const display = () => screen.getByTestId('pin-pad').querySelector('output')?.textContent;
const fault = () => screen.getByTestId('pin-pad').querySelector('.pad-error')?.textContent;

test('the pad shows how many digits were typed, and never which', async () => {
  await show({ locked: true });
  keys('0', '2', '7');
  expect(display()).toBe('•••');
  keys('Backspace');
  expect(display()).toBe('••');
  expect(screen.getByTestId('locked').textContent).not.toContain('02');
});

test('the PIN opens, a nought at its head included', async () => {
  const { app } = await show({ locked: true });
  keys('0', '2', '7', '1', 'Enter');
  await waitFor(() => expect(app.preferences.lock.value?.locked).toBe(false));
});

test('a wrong PIN is said with its wait, and what is typed meanwhile is kept until it is over', async () => {
  const { app } = await show({ locked: true, wrong: 2, triedAt: Date.now() - 5000 });
  expect(fault()).toBe('Wrong PIN.');
  keys('1', '6', '1', '8', 'Enter');
  await waitFor(() => expect(fault()).toBe('Wrong PIN. Wait 4\u00a0s.'));
  keys('0', '2', '7', '1', 'Enter');
  expect(display()).toBe('••••');
  expect(app.preferences.lock.value).toMatchObject({ locked: true, wrong: 3 });
});

test('a tablet that was left alone for its minutes is locked when it is looked at again', async () => {
  const { app } = await show({ minutes: 5, touchedAt: Date.now() - 5 * minute }, <IdleLock />);
  await act(() => void document.dispatchEvent(new Event('visibilitychange')));
  expect(app.preferences.lock.value?.locked).toBe(true);
});

test.each(['pointerdown', 'keydown'])(
  'a touch (%s) puts the lock off, unless it comes too late',
  async (touch) => {
    const { app } = await show({ minutes: 5, touchedAt: Date.now() - 4 * minute }, <IdleLock />);
    await act(() => void dispatchEvent(new Event(touch)));
    const noted = app.preferences.lock.value?.touchedAt ?? 0;
    expect(Date.now() - noted).toBeLessThan(minute);
    app.preferences.lock.value = await lockWith({ minutes: 5, touchedAt: Date.now() - 6 * minute });
    await act(() => void dispatchEvent(new Event(touch)));
    expect(app.preferences.lock.value?.locked).toBe(true);
  },
);
