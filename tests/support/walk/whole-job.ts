import type { Locator } from 'playwright-core';
import { at, type BenchWalker, type Walker } from './walker.ts';

/** What each job took, in taps or presses. */
export type JobCounts = Readonly<Record<string, number>>;

const hour = 3_600_000;
const pieces = 3;

/** Bench stages that need nothing but their passes, in the order of the starting route. */
const beforeGlue = ['cut-and-bore', 'glue-up'];
const beforeSealer = ['rough-turn', 'shape', 'sand', 'seal'];
const beforeCheck = ['polish', 'dress-ferrule', 'cut-flat', 'wax'];

/** Counts each job by itself. */
function jobsOf(walker: Pick<Walker, 'count'>) {
  const counts: Record<string, number> = {};
  const job = async (name: string, does: () => Promise<void>): Promise<void> => {
    const before = walker.count();
    await does();
    counts[name] = walker.count() - before;
  };
  return { counts, job };
}

/** From an empty shop to a tray of three pieces at the first stage of the starting route, with a target on the plan. */
export async function walkToTheBench(walker: Walker, { trays = 1 } = {}): Promise<JobCounts> {
  const { page, go, save } = walker;
  const { counts, job } = jobsOf(walker);
  const press = (id: string) => walker.press(at(page, id));
  await job('a shop with one wood and one variant', async () => {
    await press('new-shop');
    await at(page, 'stage-kit-parts').waitFor();
    await go('set-up');
    await press('setup-next');
    await press('add-wood');
    await walker.type(at(page, 'wood-search'), 'plum');
    await press('wood-own');
    await save('wood-save');
    await press('setup-back');
    await press('setup-variants');
    await press('add-variant');
    await save('variant-save');
  });
  await job('a target on the plan, with its date', async () => {
    await go('plan');
    await press('targets-change-first-batch');
    // Day and month are the same number: it is the same date in every order of writing.
    await walker.type(at(page, 'targets-due'), `${new Date().getFullYear() + 1}-12-12`);
    await walker.type(first(walker, 'targets-good-'), String(pieces));
    await save('targets-save');
  });
  await job('a tray made up', async () => {
    await go('trays');
    await press('make-trays');
    await walker.type(at(page, 'make-pieces'), String(pieces));
    if (trays > 1) await walker.type(at(page, 'make-count'), String(trays));
    await save('make-save');
    await at(page, 'made-code').first().waitFor();
  });
  await job('from the tray made up to its first stage', async () => {
    await press('made-to-bench');
    if (trays > 1) await walker.press(first(walker, 'bench-tray-'));
    await at(page, 'stage-screen').waitFor();
  });
  return counts;
}

/**
 * Three pieces through the starting route, from its first stage to the shelf: one is flawed and mended, one pass is a slip,
 * one piece is lowered to a second. Two cures take a night each.
 */
export async function walkTheRoute(walker: BenchWalker): Promise<JobCounts> {
  const { page, act } = walker;
  const { counts, job } = jobsOf(walker);
  const now = Date.now();
  const benchStages = async (stages: readonly string[]) => {
    for (const stage of stages) {
      await onward(walker, stage);
      await walker.passAll(pieces);
      await nothingLeft(walker);
    }
  };
  const cure = async (stage: string, nights: number) => {
    await onward(walker, stage);
    await act('load-all');
    await isDone(walker, 'load-all');
    await page.clock.setFixedTime(new Date(now + nights * 25 * hour));
    // The tablet is opened anew the next day.
    await page.reload();
    await at(page, 'stage-screen').waitFor();
    await act('take-out');
    await isDone(walker, 'take-out');
  };
  await job('three pieces, one of them mended, and a slip taken back', async () => {
    await act('pass');
    await act('undo');
    await act('flaw-part-faulty');
    await act('outcome-mended');
    await walker.passAll(pieces - 1);
    await nothingLeft(walker);
  });
  await job('two bench stages, and on to each', () => benchStages(beforeGlue));
  await job('glue: on to it, loaded, taken out the next day', () => cure('glue-cures', 1));
  await job('four bench stages, and on to each', () => benchStages(beforeSealer));
  await job('sealer: on to it, loaded, taken out the next day', () => cure('sealer-cures', 2));
  await job('four more bench stages, and on to each', () => benchStages(beforeCheck));
  await job('on to the check, one lowered to a second', async () => {
    await onward(walker, 'test');
    await act('flaw-fails-test');
    await act('outcome-second');
    await walker.passAll(pieces - 1);
    await nothingLeft(walker);
  });
  await job('photographed, and so finished', async () => {
    await onward(walker, 'photograph');
    await walker.passAll(pieces - 1);
    await at(page, 'stage-left').filter({ hasText: 'seconds' }).waitFor();
    await walker.passAll(1);
    await nothingLeft(walker);
  });
  return counts;
}

/** From the bench to the shelf, where one is sold, and to the review of the batch. */
export async function walkFromTheBench(walker: Walker): Promise<JobCounts> {
  const { page, go, save } = walker;
  const { counts, job } = jobsOf(walker);
  const press = (id: string) => walker.press(at(page, id));
  await job('one sold from the shelf', async () => {
    await press('to-trays');
    await press('to-stages');
    await go('shelf');
    await walker.press(first(walker, 'shelf-move-'));
    await walker.pick(at(page, 'move-to-sold'));
    await save('move-save');
    await at(page, 'move-sheet').waitFor({ state: 'detached' });
  });
  await job('the review of the batch', async () => {
    await go('plan');
    await press('plan-to-review');
    await at(page, 'review-planned').waitFor();
  });
  return counts;
}

const first = ({ page }: Walker, start: string): Locator => page.locator(`[data-testid^="${start}"]`).first();

async function onward(walker: BenchWalker, stage: string): Promise<void> {
  const { page } = walker;
  await walker.act('next-tray');
  await page.waitForURL((url) => url.hash.startsWith(`#/bench/${stage}/`));
  // The stage that was left has nothing to do any more: this is the new one.
  await at(page, 'pass').or(at(page, 'load-all')).and(page.locator(':not([aria-disabled])')).waitFor();
}

/** There is nothing more for the button to do. */
const isDone = ({ page }: BenchWalker, id: string): Promise<void> =>
  at(page, id).and(page.locator('[aria-disabled]')).waitFor();

const nothingLeft = (walker: BenchWalker): Promise<void> => isDone(walker, 'pass');
