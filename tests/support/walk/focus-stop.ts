/** Where the focus stands, as one sees it who has no pointer. */
export interface FocusStop {
  /** What it is called, for a screen reader; empty when it has no name. */
  readonly name: string;
  readonly what: string;
  /** A ring of at least 2 px is drawn around it, or around the label that stands for it. */
  readonly ringed: boolean;
  /** Some of it is in view and not under something else (WCAG 2.2, success criterion 2.4.11). */
  readonly seen: boolean;
}

/** Reads the element that has the focus; undefined when nothing has. Runs in the page. */
export function focusStop(): FocusStop | undefined {
  const element = document.activeElement;
  if (!(element instanceof HTMLElement) || element === document.body) return undefined;
  const isRinged = (one: Element) => {
    const { outlineStyle, outlineWidth } = getComputedStyle(one);
    return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
  };
  const labels = 'labels' in element ? [...((element as HTMLInputElement).labels ?? [])] : [];
  const shown = [element, ...labels.filter((label) => label.contains(element))];
  const called = (element.getAttribute('aria-labelledby') ?? '')
    .split(' ')
    .map((id) => document.getElementById(id)?.textContent ?? '');
  const name = [
    element.getAttribute('aria-label'),
    ...called,
    ...labels.map(({ textContent }) => textContent),
    element instanceof HTMLInputElement ? '' : element.textContent,
  ].find((text) => text?.trim());
  const isSeen = (one: Element) => {
    const { left, right, top, bottom } = one.getBoundingClientRect();
    const [x0, x1] = [Math.max(0, left), Math.min(innerWidth, right)];
    const [y0, y1] = [Math.max(0, top), Math.min(innerHeight, bottom)];
    if (x1 - x0 < 1 || y1 - y0 < 1) return false;
    return [0.1, 0.5, 0.9].some((share) => {
      const top = document.elementFromPoint((x0 + x1) / 2, y0 + (y1 - y0) * share);
      return top !== null && (one.contains(top) || top.contains(one));
    });
  };
  return {
    name: name?.trim() ?? '',
    what: `${element.localName} ${element.dataset.testid ?? ''} ${name?.trim().slice(0, 30) ?? ''}`,
    ringed: shown.some(isRinged),
    seen: shown.some(isSeen),
  };
}
