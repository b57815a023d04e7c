import type { TargetedEvent, TargetedKeyboardEvent, TargetedPointerEvent } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { fingersDown, lastBackInView, lastLift, swallowEcho, watchFingers } from './fingers.ts';
import { feel, type PressMemory, type PressSignal, untouched } from './press-rules.ts';

/** What a press needs to know of its button. */
export interface PressWish {
  onAct: () => void;
  closing?: boolean | undefined;
  disabled?: boolean | undefined;
}

type ButtonEvent = TargetedEvent<HTMLButtonElement>;
type ButtonPointer = TargetedPointerEvent<HTMLButtonElement>;
type ButtonKey = TargetedKeyboardEvent<HTMLButtonElement>;

const isInside = (event: ButtonPointer): boolean => {
  const box = event.currentTarget.getBoundingClientRect();
  const { clientX: x, clientY: y } = event;
  return x >= box.left && x <= box.right && y >= box.top && y <= box.bottom;
};

/** The longer side of the contact: a palm may lie along the screen or across it. */
const contactPx = (event: ButtonPointer): number => Math.max(event.width, event.height);

const isPressKey = (key: string): boolean => key === 'Enter' || key === ' ';

/**
 * The handlers that make a button obey the press rules. While held, the button has the attribute `data-held`, set in
 * the event itself, so that the pressed look never waits for a render.
 */
export const usePress = ({ onAct, closing = false, disabled = false }: PressWish) => {
  const memory = useRef<PressMemory>(untouched);
  const button = useRef<HTMLButtonElement>(null);

  const tell = (signal: PressSignal): void => {
    const around = { closing, backInViewAt: lastBackInView(), liftedAt: lastLift() };
    const step = feel(memory.current, signal, around);
    memory.current = step.memory;
    button.current?.toggleAttribute('data-held', step.memory.hold !== undefined && !disabled);
    if (step.acts && signal.kind === 'lifted') swallowEcho();
    if (step.acts && !disabled) onAct();
  };

  const latest = useRef(tell);
  latest.current = tell;
  useEffect(() => watchFingers(() => latest.current({ kind: 'crowded' })), []);

  return {
    ref: button,
    onPointerDown: (event: ButtonPointer) => {
      if (event.button !== 0) return;
      // A mouse that leaves the window must still tell us that it was let go.
      event.currentTarget.setPointerCapture?.(event.pointerId);
      const { pointerId: pointer, timeStamp: at } = event;
      tell({ kind: 'contact', pointer, at, widthPx: contactPx(event), fingers: fingersDown() });
    },
    onPointerMove: (event: ButtonPointer) => {
      if (!memory.current.hold) return;
      tell({ kind: 'moved', pointer: event.pointerId, inside: isInside(event), widthPx: contactPx(event) });
    },
    onPointerUp: (event: ButtonPointer) =>
      tell({ kind: 'lifted', pointer: event.pointerId, at: event.timeStamp, inside: isInside(event) }),
    onPointerCancel: (event: ButtonPointer) => tell({ kind: 'cancelled', pointer: event.pointerId }),
    onKeyDown: (event: ButtonKey) => {
      if (!isPressKey(event.key)) return;
      event.preventDefault();
      tell({ kind: 'key-down', key: event.key, at: event.timeStamp, repeat: event.repeat });
    },
    onKeyUp: (event: ButtonKey) => {
      if (!isPressKey(event.key)) return;
      event.preventDefault();
      tell({ kind: 'key-up', key: event.key, at: event.timeStamp });
    },
    onBlur: () => tell({ kind: 'focus-lost' }),
    /** Screen readers, switches and voice control send a bare click. */
    onClick: (event: ButtonEvent) => tell({ kind: 'click', at: event.timeStamp }),
  };
};
