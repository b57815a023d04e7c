import { handsChannel } from '../worker/hands-protocol.ts';

/** Tells the workers of this tablet of each touch, so that work that can wait makes way for it. */
export function tellOfHands(target: Pick<EventTarget, 'addEventListener'> = globalThis): void {
  if (typeof BroadcastChannel === 'undefined') return;
  const channel = new BroadcastChannel(handsChannel);
  const tell = () => channel.postMessage(null);
  for (const touch of ['pointerdown', 'keydown'])
    target.addEventListener(touch, tell, { capture: true, passive: true });
}
