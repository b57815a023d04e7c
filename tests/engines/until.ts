import { setTimeout as wait } from 'node:timers/promises';

/** How often is looked (ms). */
const between = 50;

/** Looks until it is so, in hooks of tests, too. Throws with `what` when it is not within `longest` ms: slow machines draw without a graphics card here. */
export async function until(
  isSo: () => Promise<boolean> | boolean,
  { what, longest = 240_000 }: { readonly what: string; readonly longest?: number },
): Promise<void> {
  const end = performance.now() + longest;
  while (!(await isSo())) {
    if (performance.now() > end) throw new Error(`Waited in vain: ${what}`);
    await wait(between);
  }
}
