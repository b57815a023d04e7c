// @vitest-environment happy-dom
import { act, cleanup, screen, waitFor, within } from '@testing-library/preact';
import * as v from 'valibot';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { markId } from '../../../src/domain/log/ids.ts';
import { address, goTo } from '../../../src/screens/parts/address.ts';
import { StudyPlace } from '../../../src/screens/study/study-place.tsx';
import { YieldPlace } from '../../../src/screens/yield/yield-place.tsx';
import { signalsWords } from '../../../src/words/signals-words.ts';
import { studyWords as words } from '../../../src/words/study-words.ts';
import { batch, reason, species, stage, variant } from '../../support/workshop.ts';
import {
  choose,
  closeSheet,
  errorAt,
  type Mounted,
  mount,
  press,
  settle,
  take,
  type,
} from '../set-up/mount.tsx';

beforeEach(async () => {
  goTo('yield');
  await waitFor(() => expect(address.value.rest).toEqual([]));
});
afterEach(cleanup);

/** What the shell shows for an address in Yield. */
const Yield = () => (address.value.rest.length > 0 ? <StudyPlace /> : <YieldPlace />);

/** Yield of a shop in which plum is blown at boring: 3 of 6 are flawed there, and 1 of 6 ash pieces. */
async function openYield(): Promise<Mounted> {
  const mounted = await mount(<Yield />);
  const { session } = mounted;
  for (const [made, flaws] of [
    [variant['plum-copper'], 3],
    [variant['ash-copper'], 1],
  ] as const) {
    await session.act({ kind: 'make-trays', variant: made, batch: batch.spring, pieces: 6, trays: 1 });
    const tray = [...session.view.value.shop.trays.values()].at(-1)?.tray;
    if (!tray) throw new Error('no tray was made up');
    for (let shown = 6; shown > 0; shown -= 1) {
      const spot = { tray, stage: stage.bore, at: 'waiting', grade: 'first', shown } as const;
      await session.act(
        shown <= flaws
          ? {
              kind: 'flaw',
              spot,
              pieces: 1,
              reasons: [reason.blown],
              outcome: { kind: 'scrapped', saved: [] },
            }
          : { kind: 'pass', spot, pieces: 1 },
      );
    }
  }
  return mounted;
}

async function openPage(page: 'chances' | 'flaws' | 'signals' | 'time' | 'compare'): Promise<Mounted> {
  const mounted = await openYield();
  await press(`study-to-${page}`);
  await screen.findByTestId(`study-${page}`, undefined, { timeout: 20_000 });
  await waitFor(() => expect(screen.getByRole('main').getAttribute('aria-busy')).toBe('false'));
  return mounted;
}

describe('Yield leads to what the whole log tells', () => {
  test('and each page leads back', async () => {
    await openPage('chances');
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe(words.pages.chances.title);
    await press('study-back');
    expect(await screen.findByTestId('study-to-chances')).toBeDefined();
  });

  test('a shop without a judged piece says that there is nothing to judge', async () => {
    const { session } = await mount(<Yield />);
    await session.act({
      ...{ kind: 'make-trays', variant: variant['ash-copper'], batch: batch.spring, pieces: 6, trays: 1 },
    });
    await settle();
    await press('study-to-signals');
    expect(await screen.findByText(words.nothing, undefined, { timeout: 20_000 })).toBeDefined();
  });
});

test('chances stand worst wood first, with an interval, the raw figure and why they differ', async () => {
  await openPage('chances');
  const panels = [...document.querySelectorAll('[data-testid^=chances-]')].map((each) =>
    each.getAttribute('data-testid'),
  );
  expect(panels.filter((each) => /^chances-[a-z]+$/.test(each ?? '') && each !== 'chances-by')).toEqual([
    `chances-${species.plum}`,
    `chances-${species.ash}`,
  ]);
  const plum = screen.getByTestId(`chance-${species.plum}-finished`);
  expect(plum.textContent).toMatch(/\d+ %, likely \d+ to \d+ %|\d+%, likely \d+ to \d+%/);
  expect(plum.textContent).toContain('50% so far, up to Bore');
  expect(plum.textContent).toContain(
    'Not every stage has judged a piece of plum yet, and there is nothing else to learn from',
  );
  await take('chances-by-variants');
  expect(await screen.findByTestId(`chance-${variant['plum-copper']}-firsts`)).toBeDefined();
});

test('flaws: a field of the table leads to the trays behind it, and minutes are another order', async () => {
  await openPage('flaws');
  const field = within(screen.getByTestId('heat')).getByRole('button', {
    name: 'plum at Bore: 50%, 3 of 6 flawed',
  });
  act(() => field.click());
  expect(within(screen.getByTestId('heat-behind')).getAllByRole('button')).toHaveLength(2);
  expect(screen.getByTestId('heat-behind').textContent).toContain('3 of 6');
  await closeSheet();
  expect(screen.getByTestId('pareto').textContent).toContain('4 pieces');
});

describe('signals', () => {
  test('a shop of few pieces has none, and says how many rates are watched', async () => {
    await openPage('signals');
    expect(screen.getByTestId('no-signals').textContent).toBe(signalsWords.none);
  });

  test('a mark is noted with its stage and wood, corrected, and stands in the list', async () => {
    const { session } = await openPage('signals');
    await press('add-mark');
    await press('mark-save');
    expect(errorAt('mark-note')).toBeTruthy();
    expect(errorAt('mark-stage')).toBeTruthy();
    type('mark-note', 're-ground the gouge');
    choose('mark-stage', 'Turn');
    choose('mark-species', 'plum');
    await press('mark-save');
    const [mark] = [...session.view.value.shop.registers.values()].flatMap(({ set }) =>
      set.register === 'mark' ? [set] : [],
    );
    expect(mark?.value).toMatchObject({
      ...{ note: 're-ground the gouge', stage: stage.turn, species: species.plum, answers: null },
    });
    await press(`mark-${mark?.id}`);
    type('mark-note', 'new gouge');
    await press('mark-save');
    expect(screen.getByTestId(`mark-${mark?.id}`).textContent).toContain('new gouge');
  });

  test('the newest marks stand in sight, the others one tap away', async () => {
    const { session } = await openPage('signals');
    for (let at = 1; at <= 10; at += 1) {
      const value = {
        ...{ note: `mark ${at}`, stage: stage.turn, species: null, at, answers: null, retired: false },
      };
      const id = v.parse(markId, `mark-of-${at}`);
      await session.act({ kind: 'set', set: { register: 'mark', id, value } });
    }
    await settle();
    const earlier = screen.getByTestId('earlier-marks');
    expect(earlier.textContent).toContain(signalsWords.earlierMarks(2));
    expect(within(earlier).getByTestId('mark-mark-of-1')).toBeDefined();
    expect(within(earlier).queryByTestId('mark-mark-of-3')).toBeNull();
    expect(screen.getByTestId('mark-mark-of-3')).toBeDefined();
  });

  test('a mark cannot be of a time to come', async () => {
    await openPage('signals');
    await press('add-mark');
    type('mark-note', 'new glue');
    choose('mark-stage', 'Turn');
    type('mark-day', '2999-01-01');
    await press('mark-save');
    expect(errorAt('mark-day')).toBe(signalsWords.whenLater);
  });

  test('any rate can be looked at, with its trays', async () => {
    await openPage('signals');
    choose('look-stage', 'Bore');
    choose('look-species', 'plum');
    await press('look-show');
    const sheet = await screen.findByTestId('series');
    await waitFor(() => expect(sheet.textContent).toContain('3 flawed of 6 pieces'));
  });

  test('a chart that lay open is gone for whoever comes back from another page', async () => {
    await openPage('signals');
    await press('look-show');
    await screen.findByTestId('series');
    for (const page of ['flaws', 'signals'] as const) {
      act(() => goTo('yield', page));
      await screen.findByTestId(`study-${page}`);
    }
    await waitFor(() => expect(screen.queryByTestId('series')).toBeNull());
  });
});

test('time says what is not known yet instead of a number', async () => {
  await openPage('time');
  expect(screen.getByTestId('lost-time').textContent).toContain(words.notYet);
});

test('two stretches of time are compared as soon as they are asked for', async () => {
  await openPage('compare');
  choose('compare-stretch', '28 days');
  await waitFor(() => expect(screen.getByTestId('compare-overall')).toBeDefined(), { timeout: 20_000 });
  expect(screen.getByTestId('compare-overall').textContent).toContain('8 of 12');
});
