import type { Locator } from 'playwright-core';
import { at, type WalkedPlace, type Walker } from './walker.ts';

/** What each job took, in taps or presses. */
export type JobCounts = Readonly<Record<string, number>>;

const morning = '2026-11-02T08:00:00Z';
/** Day and month are the same, so that it is the same date in every order of writing. */
const due = '2026-12-12';
const pieces = 3;

/** Bench stages that need nothing but their passes, in the order of the starting route. */
const beforeGlue = ['cut-and-bore', 'glue-up'];
const beforeSealer = ['rough-turn', 'shape', 'sand', 'seal'];
const beforeCheck = ['polish', 'dress-ferrule', 'cut-flat', 'wax'];

/**
 * The whole job, from an empty shop to the review of its first batch: three pieces of one variant go through the starting
 * route. One is flawed and mended, one pass is a slip, one piece is lowered to a second, one is sold.
 */
export async function walkTheJob(walker: Walker): Promise<JobCounts> {
  const { page } = walker;
  const counts: Record<string, number> = {};
  const job = async (name: string, does: () => Promise<void>): Promise<void> => {
    const before = walker.count();
    await does();
    counts[name] = walker.count() - before;
  };
  const press = (id: string) => walker.press(at(page, id));
  const { go, save } = walker;
  const first = (start: string): Locator => page.locator(`[data-testid^="${start}"]`).first();

  await page.clock.setFixedTime(new Date(morning));
  await page.reload();
  await job('a shop with one wood and one variant', async () => {
    await press('new-shop');
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
    await walker.type(at(page, 'targets-due'), due);
    await walker.type(first('targets-good-'), String(pieces));
    await save('targets-save');
  });
  await job('a tray made up', async () => {
    await go('trays');
    await press('make-trays');
    await walker.type(at(page, 'make-pieces'), String(pieces));
    await save('make-save');
    await at(page, 'made-code').waitFor();
  });
  await job('from the tray made up to its first stage', async () => {
    await press('made-to-bench');
    await at(page, 'stage-screen').waitFor();
  });
  await job('three pieces, one of them mended, and a slip taken back', async () => {
    await walker.act('pass');
    await walker.act('undo');
    await walker.act('flaw-part-faulty');
    await walker.act('outcome-mended');
    await walker.passAll(pieces - 1);
    await nothingLeft(walker);
  });
  const benchStages = async (stages: readonly string[]) => {
    for (const stage of stages) {
      await onward(walker, stage);
      await walker.passAll(pieces);
      await nothingLeft(walker);
    }
  };
  const cure = async (stage: string, tomorrow: string) => {
    await onward(walker, stage);
    await walker.act('load-all');
    await at(page, 'load-all').and(page.locator('[aria-disabled]')).waitFor();
    await page.clock.setFixedTime(new Date(tomorrow));
    // The tablet is opened anew the next day.
    await page.reload();
    await at(page, 'stage-screen').waitFor();
    await walker.act('take-out');
    await at(page, 'take-out').and(page.locator('[aria-disabled]')).waitFor();
  };
  await job('two bench stages, and on to each', () => benchStages(beforeGlue));
  await job('glue: on to it, loaded, taken out the next day', () =>
    cure('glue-cures', '2026-11-03T09:00:00Z'),
  );
  await job('four bench stages, and on to each', () => benchStages(beforeSealer));
  await job('sealer: on to it, loaded, taken out the next day', () =>
    cure('sealer-cures', '2026-11-04T09:00:00Z'),
  );
  await job('four more bench stages, and on to each', () => benchStages(beforeCheck));
  await job('on to the check, one lowered to a second', async () => {
    await onward(walker, 'test');
    await walker.act('flaw-fails-test');
    await walker.act('outcome-second');
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
  await job('one sold from the shelf', async () => {
    await leaveTheBench(walker, 'shelf');
    await walker.press(first('shelf-move-'));
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

async function nothingLeft({ page }: Walker): Promise<void> {
  await at(page, 'pass').and(page.locator('[aria-disabled]')).waitFor();
}

/** With the tray to its next stage. */
async function onward(walker: Walker, stage: string): Promise<void> {
  const { page } = walker;
  await walker.act('next-tray');
  await page.waitForURL((url) => url.hash.startsWith(`#/bench/${stage}/`));
  await at(page, 'stage-screen').waitFor();
}

async function leaveTheBench(walker: Walker, place: WalkedPlace): Promise<void> {
  await walker.press(at(walker.page, 'to-trays'));
  await walker.press(at(walker.page, 'to-stages'));
  await walker.go(place);
}
