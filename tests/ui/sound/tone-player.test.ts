import { afterEach, expect, test } from 'vitest';
import { openTonePlayer } from '../../../src/ui/sound/tone-player.ts';
import { vibrate } from '../../../src/ui/sound/vibrate.ts';
import { fakeAudio } from '../../support/fake-audio.ts';

let takeAway = (): void => undefined;
afterEach(() => takeAway());

/** A loudspeaker that writes down when each frequency starts and stops (s). */
const listen = (): { heard: string[] } => {
  const heard: string[] = [];
  takeAway = fakeAudio({
    onStart: (hz, at) => heard.push(`${hz} from ${at.toFixed(2)}`),
    onStop: (hz, at) => heard.push(`${hz} to ${at.toFixed(2)}`),
    onCut: () => heard.push('cut'),
  });
  return { heard };
};

test('saved sounds as its plan says', () => {
  const { heard } = listen();
  openTonePlayer().play('saved', 0);
  expect(heard).toEqual(['1040 from 0.00', '1040 to 0.15', '1390 from 0.17', '1390 to 0.32']);
});

test('not saved cuts off what sounds', () => {
  const { heard } = listen();
  const player = openTonePlayer();
  player.play('saved', 0);
  player.play('not-saved', 100);
  expect(heard.slice(4, 7)).toEqual(['cut', '720 from 0.00', '720 to 0.35']);
});

test('a second tap within a third of a second is not answered aloud', () => {
  const { heard } = listen();
  const player = openTonePlayer();
  player.play('saved', 0);
  player.play('saved', 200);
  expect(heard).toHaveLength(4);
});

test('without audio it is silent, and closing does no harm', () => {
  const player = openTonePlayer();
  player.play('saved', 0);
  player.close();
  expect(() => player.close()).not.toThrow();
});

test('a device that can vibrate does, one that cannot is left alone', () => {
  const felt: unknown[] = [];
  const can = Object.getOwnPropertyDescriptor(globalThis, 'navigator');
  Object.defineProperty(globalThis, 'navigator', {
    configurable: true,
    value: { vibrate: (pattern: unknown) => felt.push(pattern) },
  });
  vibrate('undone');
  Object.defineProperty(globalThis, 'navigator', { configurable: true, value: {} });
  vibrate('saved');
  if (can) Object.defineProperty(globalThis, 'navigator', can);
  expect(felt).toEqual([[80]]);
});
