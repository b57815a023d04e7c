/** Touches of a button at times of the test's own choosing, as the browser would report them. */
import { act } from '@testing-library/preact';

export interface Touch {
  pointer?: number;
  width?: number;
  height?: number;
  x?: number;
  y?: number;
  button?: number;
}

const at = <E extends Event>(event: E, ms: number): E => {
  Object.defineProperty(event, 'timeStamp', { value: ms });
  return event;
};

const pointer = (
  type: string,
  { pointer: pointerId = 1, width = 20, height = 20, x = 0, y = 0, button = 0 }: Touch,
) =>
  new PointerEvent(type, {
    pointerId,
    width,
    height,
    clientX: x,
    clientY: y,
    pointerType: 'touch',
    button,
    bubbles: true,
    cancelable: true,
  });

const send = (target: Element, event: Event): void => {
  act(() => {
    target.dispatchEvent(event);
  });
};

/** A finger comes down. */
export const downAt = (target: Element, ms: number, touch: Touch = {}): void =>
  send(target, at(pointer('pointerdown', touch), ms));

/** A finger slides. */
export const moveAt = (target: Element, ms: number, touch: Touch = {}): void =>
  send(target, at(pointer('pointermove', touch), ms));

/** A finger is lifted; the browser sends its click after it. */
export const upAt = (target: Element, ms: number, touch: Touch = {}): void => {
  send(target, at(pointer('pointerup', touch), ms));
  clickAt(target, ms + 1);
};

/** The browser takes the finger away, to scroll with it. */
export const cancelAt = (target: Element, ms: number, touch: Touch = {}): void =>
  send(target, at(pointer('pointercancel', touch), ms));

/** A bare click, as a screen reader sends it. */
export const clickAt = (target: Element, ms: number): void =>
  send(target, at(new MouseEvent('click', { bubbles: true, cancelable: true }), ms));

/** A whole tap that begins at `ms` and takes 40 ms. */
export const pressAt = (target: Element, ms: number, touch: Touch = {}): void => {
  downAt(target, ms, touch);
  upAt(target, ms + 40, touch);
};

/** A key goes down or up. */
export const keyAt = (
  target: EventTarget,
  ms: number,
  { type, key, repeat = false }: { type: 'keydown' | 'keyup'; key: string; repeat?: boolean },
): void => {
  act(() => {
    target.dispatchEvent(at(new KeyboardEvent(type, { key, repeat, bubbles: true, cancelable: true }), ms));
  });
};
