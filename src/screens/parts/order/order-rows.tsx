import './order-rows.css';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { setUpWords as words } from '../../../words/set-up-words.ts';

interface OrderButtonsProps {
  readonly id: string;
  readonly name: string;
  readonly onMove: (by: -1 | 1) => void;
  readonly onRemove: () => void;
  /** What test ids begin with. */
  readonly kind: string;
}

/** Up, down and off for one row of an order: no drag is needed. */
export const OrderButtons = ({ id, name, onMove, onRemove, kind }: OrderButtonsProps) => (
  <div class="order-buttons">
    <PressButton
      label={words.up}
      name={`${words.up}: ${name}`}
      icon="up"
      onAct={() => onMove(-1)}
      testId={`${kind}-up-${id}`}
    />
    <PressButton
      label={words.down}
      name={`${words.down}: ${name}`}
      icon="down"
      onAct={() => onMove(1)}
      testId={`${kind}-down-${id}`}
    />
    <PressButton
      label={words.takeOff}
      name={`${words.takeOff}: ${name}`}
      tone="quiet"
      onAct={onRemove}
      testId={`${kind}-remove-${id}`}
    />
  </div>
);

interface Held {
  readonly row: Element;
  readonly top: number;
  readonly focused: Element | null;
}

/**
 * Keeps the row that was moved under the finger that moved it, by scrolling as far as it went: the next tap on the
 * same spot then moves the same row. Returns what to call with the row before it moves; `order` tells when it has.
 */
export function useSteadyRow(order: string): (row: Element | null) => void {
  const held = useRef<Held | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new order is what it waits for
  useLayoutEffect(() => {
    const moved = held.current;
    held.current = null;
    if (!moved) return;
    const by = moved.row.getBoundingClientRect().top - moved.top;
    scrollerOf(moved.row).scrollBy({ top: by, behavior: 'instant' });
    // An element that is put elsewhere in the page loses the focus.
    if (moved.focused instanceof HTMLElement) moved.focused.focus({ preventScroll: true });
  }, [order]);
  return (row) => {
    const focused = row?.contains(document.activeElement) ? document.activeElement : null;
    held.current = row && { row, top: row.getBoundingClientRect().top, focused };
  };
}

/** What scrolls the row: the body of a sheet, or the page. */
function scrollerOf(row: Element): Element {
  return row.closest('.sheet-body') ?? document.documentElement;
}
