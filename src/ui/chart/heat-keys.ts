const steps: Readonly<Record<string, readonly [rows: number, columns: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

/**
 * The button that an arrow key leads to from another: the nearest one in its row or column. Where people read from right
 * to left, so do the keys. Nothing for other keys, and at the edge.
 */
export function nextCell(from: HTMLElement, key: string): HTMLElement | undefined {
  const [down, across] = steps[key] ?? [0, 0];
  const cell = from.closest('td');
  const row = cell?.parentElement;
  const body = row?.parentElement;
  if (!cell || !row || !body || (down === 0 && across === 0)) return undefined;
  const right = getComputedStyle(from).direction === 'rtl' ? -across : across;
  const rows = [...body.children];
  for (
    let [at, place] = [rows.indexOf(row) + down, [...row.children].indexOf(cell) + right];
    rows[at]?.children[place];
    at += down, place += right
  ) {
    const found = rows[at]?.children[place]?.querySelector('button');
    if (found) return found;
  }
  return undefined;
}
