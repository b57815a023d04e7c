import './sheet.css';
import type { ComponentChildren } from 'preact';
import { useId, useLayoutEffect, useRef } from 'preact/hooks';
import { PressButton } from '../press/press-button.tsx';

export interface SheetProps {
  title: string;
  /** Close, by its button, Escape or the system's back gesture. The parent takes the sheet away. */
  onClose: () => void;
  /** The word on the closing button. */
  closeLabel: string;
  children: ComponentChildren;
  /** A panel at the end side, or the whole screen; on a phone always the whole screen. */
  shape?: 'side' | 'whole' | undefined;
  /** Buttons that stay at the foot while the body scrolls. */
  foot?: ComponentChildren | undefined;
  testId?: string | undefined;
}

/**
 * A sheet laid over the screen. It is there as long as it is rendered: show it with `open && <Sheet …>`. The
 * browser's own modal dialog keeps the focus inside and gives it back.
 */
export const Sheet = ({ title, onClose, closeLabel, children, shape = 'side', foot, testId }: SheetProps) => {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  const name = useRef<HTMLHeadingElement>(null);
  const close = useRef(onClose);
  close.current = onClose;
  const takenAway = useRef(false);

  // Before the paint, and before the sheet leaves the page: only then does the browser give the focus back.
  useLayoutEffect(() => {
    const laid = dialog.current;
    laid?.showModal();
    // The title, not the closing button: Enter of a code reader must not close the sheet.
    name.current?.focus();
    return () => {
      takenAway.current = true;
      laid?.close();
    };
  }, []);

  return (
    <dialog
      ref={dialog}
      class="sheet"
      data-shape={shape}
      data-testid={testId}
      aria-labelledby={id}
      onCancel={(event) => {
        // The parent decides; a sheet that closed itself would come back at the next render.
        event.preventDefault();
        close.current();
      }}
      onClose={() => {
        // A browser may close it without asking, at a second Escape.
        if (!takenAway.current) close.current();
      }}
    >
      <header class="sheet-head">
        <h2 id={id} ref={name} class="sheet-title" tabIndex={-1}>
          {title}
        </h2>
        <PressButton label={closeLabel} icon="cross" tone="quiet" onAct={() => close.current()} />
      </header>
      <div class="sheet-body">{children}</div>
      {foot && <footer class="sheet-foot">{foot}</footer>}
    </dialog>
  );
};
