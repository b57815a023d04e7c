import { beforeEach, expect, test } from 'vitest';
import type { Busy } from '../../src/app/update-offer.ts';
import { otherWindows } from '../../src/app/update-windows.ts';
import { handClock } from '../support/hand-clock.ts';

let ids = 0;
const newId = () => {
  ids += 1;
  return `question-${ids}`;
};
let name = '';
beforeEach(() => {
  name = newId();
});

function aWindow(busy: Busy | undefined, at = '#/day') {
  const hands = handClock();
  return { hands, ...otherWindows({ name, timer: hands.timer, newId, busyHere: () => busy, at: () => at }) };
}

const aMoment = () => new Promise((resolve) => setTimeout(resolve, 20));

test('a window in mid-work says so, and where it is', async () => {
  const asker = aWindow(undefined);
  aWindow('tapping', '#/bench/sand/t1');
  expect(await asker.ask()).toEqual({ by: 'tapping', at: '#/bench/sand/t1' });
});

test('idle windows keep silent, and half a second of silence is a yes', async () => {
  const asker = aWindow(undefined);
  aWindow(undefined);
  let answer: unknown = 'none yet';
  const asked = asker.ask().then((said) => {
    answer = said;
  });
  await aMoment();
  asker.hands.pass(499);
  await aMoment();
  expect(answer).toBe('none yet');
  asker.hands.pass(1);
  await asked;
  expect(answer).toBeUndefined();
});

test('what another version may say is not understood, and harms nothing', async () => {
  const asker = aWindow(undefined);
  const asked = asker.ask();
  const other = new BroadcastChannel(name);
  for (const said of [
    null,
    7,
    'busy',
    { kind: 'not-now' },
    { kind: 'not-now', asked: 'question-0', by: 'x', at: 1 },
  ]) {
    other.postMessage(said);
  }
  await aMoment();
  other.close();
  asker.hands.pass(500);
  expect(await asked).toBeUndefined();
});
