/**
 * Runs inside the page: what breaks the bench rules 1 to 6, 10 and 11, each in a sentence. Phones are held in the hand
 * at half the distance, so the bench sizes are asked of tablets only.
 * @param {{ bench: boolean, size: string }} shown
 * @returns {string[]}
 */
export function faultsOf({ bench, size }) {
  /** @type {string[]} */
  const faults = [];
  const tablet = size !== 'phone';
  const fault = (/** @type {string} */ text) => faults.push(text);
  const nameOf = (/** @type {Element} */ element) => element.textContent?.trim().slice(0, 24) ?? '';
  const acting = [...document.querySelectorAll('button, a[href], input, select, textarea, summary')].filter(
    (element) => element.checkVisibility() && element.getBoundingClientRect().width > 0,
  );

  if (document.documentElement.scrollWidth > innerWidth)
    fault(`the page is ${document.documentElement.scrollWidth} px wide`);

  for (const element of acting) {
    const { width, height, left, top, right } = element.getBoundingClientRect();
    const least = { bench: 132, 'bench-small': 96 }[element.getAttribute('data-size') ?? ''] ?? 56;
    const floor = tablet ? least : 56;
    if (Math.min(width, height) < floor - 0.5)
      fault(`${nameOf(element)} is ${Math.round(width)} × ${Math.round(height)} px`);
    if (element.scrollWidth > element.clientWidth + 1 && element.matches('.press'))
      fault(`${nameOf(element)} overflows`);
    const page = document.documentElement;
    if (bench && tablet && (left < 39.5 || right > innerWidth - 39.5 || top + scrollY < 39.5))
      fault(`${nameOf(element)} acts within 40 px of the edge`);
    if (bench && top + scrollY + height > page.scrollHeight - 23.5)
      fault(`${nameOf(element)} touches the foot`);
  }

  if (bench) {
    for (const one of acting)
      for (const other of acting) {
        if (one === other || one.closest('.bench-bar') || other.closest('.bench-bar')) continue;
        const a = one.getBoundingClientRect();
        const b = other.getBoundingClientRect();
        const across = Math.max(a.left, b.left) - Math.min(a.right, b.right);
        const along = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom);
        const gap = Math.max(across, along);
        if (gap < 23.5) fault(`${nameOf(one)} and ${nameOf(other)} are ${Math.round(gap)} px apart`);
        const counts = one.closest('.bench-acts');
        const ends = other.closest('.bench-foot');
        if (counts && ends && along < 95.5)
          fault(`${nameOf(other)} ends ${Math.round(along)} px under ${nameOf(one)}`);
      }
  }

  for (const [selector, least] of [
    ['[data-size^=bench] .press-label, [data-size^=bench] .press-detail', 30],
    ['[data-size=bench] .press-label', 40],
    ['.last-act, .big-count-words, .pad-label, .pad-error', 30],
    ['.big-code-signs, .big-count-figure', 105],
  ])
    for (const element of document.querySelectorAll(String(selector))) {
      const px = Number.parseFloat(getComputedStyle(element).fontSize);
      if (tablet && px < Number(least)) fault(`${nameOf(element)} is written ${px} px high`);
    }
  return faults;
}
