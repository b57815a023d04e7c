import { useEffect } from 'preact/hooks';

/**
 * Keeps the focus of one who has no pointer: after the way to another page it stands at that page's heading, and so it does
 * when the element that had it is taken away, where a browser would let it fall to the page. A finger or a mouse needs no
 * focus, and nothing is moved under it.
 */
export function useFocusKept(): void {
  useEffect(() => {
    let byKey = false;
    let headingBefore: Element | null = null;
    let focused: Element | null = null;
    let isOnTheWay = false;
    const settle = () => {
      const now = document.activeElement;
      const isLost = focused?.isConnected === false && (now === null || now === document.body);
      if (!byKey || !(isOnTheWay || isLost)) return;
      const heading = headingNow();
      if (!heading || (isOnTheWay && heading === headingBefore)) return;
      isOnTheWay = false;
      if (isLost || !isAtHome(now)) focusHeading(heading);
    };
    const leave = () => {
      isOnTheWay = true;
      settle();
    };
    const hearKey = () => {
      byKey = true;
      headingBefore = headingNow();
    };
    const hearPointer = () => {
      byKey = false;
      isOnTheWay = false;
    };
    const note = ({ target }: FocusEvent) => {
      focused = target instanceof Element ? target : null;
    };
    const watch = new MutationObserver(settle);
    watch.observe(document.body, { childList: true, subtree: true });
    addEventListener('hashchange', leave);
    addEventListener('keydown', hearKey, { capture: true });
    addEventListener('pointerdown', hearPointer, { capture: true, passive: true });
    addEventListener('focusin', note, { passive: true });
    return () => {
      watch.disconnect();
      removeEventListener('hashchange', leave);
      removeEventListener('keydown', hearKey, { capture: true });
      removeEventListener('pointerdown', hearPointer, { capture: true });
      removeEventListener('focusin', note);
    };
  }, []);
}

/** Of the sheet that is laid over the page, or else of the page. */
function headingNow(): HTMLElement | null {
  const sheet = [...document.querySelectorAll('dialog[open]')].at(-1);
  return (sheet ?? document).querySelector<HTMLElement>(sheet ? 'h2' : 'main h1');
}

/** Something of the page itself has the focus already: it asked for it, or it has outlived the change. */
function isAtHome(element: Element | null): boolean {
  return element?.closest('main, dialog') != null;
}

function focusHeading(heading: HTMLElement): void {
  heading.tabIndex = -1;
  heading.focus();
}
