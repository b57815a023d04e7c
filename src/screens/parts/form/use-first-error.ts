import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** Leads the eye and the keyboard to the first field in error, each time a save was in vain. */
export function useFirstError(failures: number): RefObject<HTMLDivElement | null> {
  const body = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (failures === 0) return;
    const said = body.current?.querySelector('.field-error:not(:empty)');
    said?.parentElement?.querySelector<HTMLElement>('input, select, textarea')?.focus();
  }, [failures]);
  return body;
}
