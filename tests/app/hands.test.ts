import { expect, test } from 'vitest';
import { tellOfHands } from '../../src/app/hands.ts';
import { handsChannel } from '../../src/worker/hands-protocol.ts';

test('each touch and each key is told to whoever listens on this tablet', async () => {
  const window = new EventTarget();
  tellOfHands(window);
  const channel = new BroadcastChannel(handsChannel);
  const heard: unknown[] = [];
  const twice = new Promise<void>((resolve) => {
    channel.onmessage = ({ data }) => {
      heard.push(data);
      if (heard.length === 2) resolve();
    };
  });
  window.dispatchEvent(new Event('pointerdown'));
  window.dispatchEvent(new Event('pointermove'));
  window.dispatchEvent(new Event('keydown'));
  await twice;
  channel.close();
  expect(heard).toEqual([null, null]);
});
