import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { pressLimits } from '../press/press-rules.ts';

/** A press of Enter that is meant for the field: neither held down nor the end of a composed sign. */
export const isEnter = ({
  key,
  repeat,
  isComposing,
}: Pick<KeyboardEvent, 'key' | 'repeat' | 'isComposing'>): boolean =>
  key === 'Enter' && !repeat && !isComposing;

/**
 * Around the fields of a form: Enter in a field of one line, or at a choice, saves as its button does, and is deaf as long
 * after. A field that has an act of its own for Enter keeps it.
 */
export function useEnterSaves(form: RefObject<HTMLElement | null>, save: () => void): void {
  const savedAt = useRef(Number.NEGATIVE_INFINITY);
  // Known from the drawing on, not only once it is painted: Enter may follow a digit at once.
  const latest = useRef(save);
  latest.current = save;
  // After every drawing: the fields may have gone and come back.
  useEffect(() => {
    const hear = (event: KeyboardEvent) => {
      const { defaultPrevented, target, timeStamp } = event;
      if (!isEnter(event) || defaultPrevented) return;
      if (!(target instanceof HTMLInputElement) || target.type === 'file') return;
      if (timeStamp - savedAt.current < pressLimits.closingDeafMs) return;
      savedAt.current = timeStamp;
      latest.current();
    };
    const around = form.current;
    around?.addEventListener('keydown', hear);
    return () => around?.removeEventListener('keydown', hear);
  });
}
