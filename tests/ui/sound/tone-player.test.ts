import { afterEach, expect, test } from 'vitest';
import { openTonePlayer } from '../../../src/ui/sound/tone-player.ts';
import { vibrate } from '../../../src/ui/sound/vibrate.ts';

/** A loudspeaker that writes down when each frequency starts and stops (s). */
const listen = (): { heard: string[] } => {
  const heard: string[] = [];
  class Node {
    readonly gain = { setValueAtTime: () => this, linearRampToValueAtTime: () => this };
    readonly #hz: number | undefined;
    constructor(_context: unknown, options: { frequency?: number }) {
      this.#hz = options.frequency;
    }
    connect(next: unknown) {
      return next;
    }
    disconnect() {
      heard.push('cut');
    }
    start(at: number) {
      heard.push(`${this.#hz} from ${at.toFixed(2)}`);
    }
    stop(at: number) {
      heard.push(`${this.#hz} to ${at.toFixed(2)}`);
    }
  }
  class Context {
    readonly currentTime = 0;
    readonly destination = {};
    readonly state = 'running';
    close = async () => undefined;
  }
  Object.assign(globalThis, { AudioContext: Context, GainNode: Node, OscillatorNode: Node });
  return { heard };
};

afterEach(() => {
  for (const name of ['AudioContext', 'GainNode', 'OscillatorNode']) Reflect.deleteProperty(globalThis, name);
});

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
