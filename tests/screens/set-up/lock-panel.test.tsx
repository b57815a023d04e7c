// @vitest-environment happy-dom
import { screen, waitFor } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { isClosed } from '../../../src/app/kept-lock.ts';
import { pinMatches } from '../../../src/app/pin-hash.ts';
import { LockPanel } from '../../../src/screens/set-up/lock-panel.tsx';
import { errorAt, type Mounted, mount, press, take, type, typed } from './mount.tsx';

/** Real hashing takes a moment. */
const slow = { timeout: 10_000 };

async function setPin(pin: string): Promise<Mounted & { recovery: string }> {
  const mounted = await mount(<LockPanel />);
  type('pin-once', pin);
  type('pin-again', pin);
  await press('pin-save');
  const shown = await waitFor(() => screen.getByTestId('recovery-number'), slow);
  return { ...mounted, recovery: (shown.textContent ?? '').replaceAll(' ', '') };
}

const lockOf = ({ app }: Mounted) => app.preferences.lock.value;

test('a PIN that is too short or was typed in two ways is refused at its field, and stays as typed', async () => {
  const mounted = await mount(<LockPanel />);
  type('pin-once', '123');
  type('pin-again', '123');
  await press('pin-save');
  expect(errorAt('pin-once')).toBe('A PIN has 4 to 8 digits.');
  type('pin-once', '1234');
  await press('pin-save');
  expect(errorAt('pin-again')).toBe('The two differ.');
  expect([typed('pin-once'), typed('pin-again')]).toEqual(['1234', '123']);
  expect(lockOf(mounted)).toBeNull();
});

test('a PIN is kept as a hash alone, and its recovery number is shown once', async () => {
  const mounted = await setPin('0271');
  const lock = lockOf(mounted);
  expect(await pinMatches('0271', lock?.pin ?? '')).toBe(true);
  expect(await pinMatches(mounted.recovery, lock?.recovery ?? '')).toBe(true);
  expect(JSON.stringify(lock)).not.toContain('0271"');
  await press('recovery-written');
  expect(screen.queryByTestId('recovery-number')).toBeNull();
});

test('the lock closes at a tap, and by itself only when it was asked to', async () => {
  const mounted = await setPin('0271');
  const late = Date.now() + 3_600_000;
  expect(isClosed(lockOf(mounted), late)).toBe(false);
  await take('lock-minutes-15');
  expect(isClosed(lockOf(mounted), late)).toBe(true);
  await take('lock-minutes-off');
  expect(isClosed(lockOf(mounted), late)).toBe(false);
  await press('lock-now');
  expect(lockOf(mounted)?.locked).toBe(true);
  expect(location.hash).toBe('#/bench');
});

test('taking the lock away asks the PIN', async () => {
  const mounted = await setPin('0271');
  type('away-current', '0272');
  await press('away-save');
  await waitFor(() => expect(errorAt('away-current')).toBe('Wrong PIN. Wait 1\u00a0s.'), slow);
  expect(lockOf(mounted)).not.toBeNull();
  await waitFor(() => expect(errorAt('away-current')).toBe('Wrong PIN.'), slow);
  type('away-current', '0271');
  await press('away-save');
  await waitFor(() => expect(lockOf(mounted)).toBeNull(), slow);
}, 20_000);

test('changing the PIN asks for it, and gives another recovery number', async () => {
  const mounted = await setPin('0271');
  const before = lockOf(mounted);
  type('change-current', '0271');
  type('change-once', '3141');
  type('change-again', '3141');
  await press('change-save');
  await waitFor(
    () => expect(screen.getByTestId('recovery-number').textContent).not.toContain(mounted.recovery.slice(-4)),
    slow,
  );
  const lock = lockOf(mounted);
  expect(await pinMatches('3141', lock?.pin ?? '')).toBe(true);
  expect(lock?.recovery).not.toBe(before?.recovery);
}, 20_000);

test('says what it is not', async () => {
  await mount(<LockPanel />);
  expect(screen.getByTestId('lock-panel').textContent).toContain(
    'no protection against someone who knows browsers',
  );
});
