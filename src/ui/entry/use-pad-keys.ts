import { useEffect, useRef } from 'preact/hooks';

/** What a pad does with the keys of a keyboard, a pedal or a code reader while it is shown. */
export interface PadKeys {
  /** Takes a sign; says whether it was one of the pad's. */
  onSign: (sign: string) => boolean;
  onErase: () => void;
  onEnter?: (() => void) | undefined;
}

const takesText = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.matches('input, select, textarea, [contenteditable]');

const isButton = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest('button, a, summary') !== null;

/**
 * Listens on the whole page, for no slot on a bench screen holds the focus. Stays out of the way of real slots, of
 * a sheet laid over the pad, and of Enter on a button that has the focus.
 */
export const usePadKeys = (
  listens: boolean,
  pad: { keys: PadKeys; place: () => HTMLElement | null },
): void => {
  const latest = useRef(pad);
  latest.current = pad;
  useEffect(() => {
    if (!listens) return;
    const hear = (event: KeyboardEvent): void => {
      const { keys, place } = latest.current;
      const sheet = document.querySelector('dialog[open]');
      if (event.defaultPrevented || takesText(event.target) || event.ctrlKey || event.metaKey || event.altKey)
        return;
      if (sheet && !sheet.contains(place())) return;
      if (event.key === 'Backspace') keys.onErase();
      else if (event.key === 'Enter' && keys.onEnter && !event.repeat && !isButton(event.target))
        keys.onEnter();
      else if (event.key.length !== 1 || event.repeat || !keys.onSign(event.key)) return;
      event.preventDefault();
    };
    addEventListener('keydown', hear);
    return () => removeEventListener('keydown', hear);
  }, [listens]);
};
