// @vitest-environment happy-dom
import { act, cleanup, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { address, goTo } from '../../../src/screens/parts/address.ts';
import { compareWords } from '../../../src/words/compare-words.ts';
import { signalsWords } from '../../../src/words/signals-words.ts';
import { timeStudyWords } from '../../../src/words/time-study-words.ts';
import { stage } from '../../support/workshop.ts';
import { choose, closeSheet, errorAt, press, settle, take, type } from '../set-up/mount.tsx';
import { answered, type BoredTray, boringShop, openStudy } from './open-study.tsx';

beforeEach(async () => {
  goTo('yield');
  await waitFor(() => expect(address.value.rest).toEqual([]));
});
afterEach(cleanup);

const many = (times: number, tray: BoredTray): BoredTray[] => Array.from({ length: times }, () => tray);

describe('a signal', () => {
  /** Twelve trays with one blown blank among them, and twelve in which a third of the blanks is blown. */
  const suddenlyBad = [
    { pieces: 6, blown: 1 },
    ...many(11, { pieces: 6 }),
    ...many(12, { pieces: 6, blown: 2 }),
  ];

  test('tells its counts, leads to its chart, and leaves the list when it is answered', async () => {
    const { session } = await boringShop(suddenlyBad);
    await openStudy('signals');
    const list = screen.getByTestId('signals');
    const found = within(list).getAllByRole('article');
    expect(list.textContent).toContain('1 in 72 before');
    expect(list.textContent).toContain('24 in 72 since');
    expect(list.textContent).toContain(signalsWords.expected(13, 25));

    await press('signal-0-chart');
    const sheet = await screen.findByTestId('series');
    await waitFor(() => expect(sheet.textContent).toContain('25 flawed of 144 pieces'));
    await closeSheet();

    const title = within(found[0] as HTMLElement).getByRole('heading').textContent;
    await press('signal-0-answer');
    await press('mark-save');
    expect(errorAt('mark-note')).toBeTruthy();
    type('mark-note', 'ground the bit');
    await press('mark-save');
    await answered();
    const [mark] = [...session.view.value.shop.registers.values()].flatMap(({ set }) =>
      set.register === 'mark' ? [set.value] : [],
    );
    expect(mark).toMatchObject({ note: 'ground the bit', stage: stage.bore });
    expect(mark?.answers?.of.kind).toBeDefined();
    const left = screen
      .queryAllByRole('article')
      .map((each) => within(each).getByRole('heading').textContent);
    expect(left).toHaveLength(found.length - 1);
    expect(left).not.toContain(title);
  });
});

test('a reason leads to what became of its pieces, and what they had taken', async () => {
  await boringShop(many(2, { pieces: 6, blown: 2, minutes: 3 }));
  await openStudy('flaws');
  const pareto = screen.getByTestId('pareto');
  expect(pareto.textContent).toContain('100% of all');
  act(() => within(pareto).getByRole('button', { name: /blown/i }).click());
  const sheet = screen.getByTestId('pareto-behind');
  expect(within(sheet).getByRole('row', { name: /Scrapped/ }).textContent).toContain('4');
  expect(sheet.textContent).toContain('12 min');
  await closeSheet();
  await take('pareto-by-minutes');
  expect(pareto.textContent).toContain('12 min');
});

describe('two people', () => {
  test('are compared once both are chosen, and never one with himself', async () => {
    await boringShop([
      { pieces: 20, blown: 12, by: 'edda' },
      { pieces: 20, blown: 1, by: 'odo' },
    ]);
    await openStudy('compare');
    await screen.findByTestId('compare-overall', undefined, { timeout: 20_000 });
    choose('compare-kind', compareWords.kinds.people);
    await settle();
    expect(screen.queryByTestId('compare-overall')).toBeNull();
    choose('compare-a', 'Edda');
    choose('compare-b', 'Edda');
    expect(errorAt('compare-b')).toBe(compareWords.sameTwice);
    choose('compare-b', 'Odo');
    const overall = await screen.findByTestId('compare-overall', undefined, { timeout: 20_000 });
    expect(overall.textContent).toContain('Edda: worse than Odo, and hardly by chance.');
    expect(overall.textContent).toContain('Edda: 40%, 8 of 20 · Odo: 95%, 19 of 20');
    expect(errorAt('compare-b')).toBeFalsy();
  });

  test('lead to Set-up where there is but one', async () => {
    await boringShop([{ pieces: 2, by: 'edda' }], { people: ['edda'] });
    await openStudy('compare');
    await screen.findByTestId('compare-overall', undefined, { timeout: 20_000 });
    choose('compare-kind', compareWords.kinds.people);
    await settle();
    expect(screen.queryByTestId('compare-a')).toBeNull();
    expect(screen.getByText(compareWords.fewPeople)).toBeDefined();
    await press('compare-to-people');
    await waitFor(() => expect(address.value).toMatchObject({ place: 'set-up', rest: ['people'] }));
  });
});

describe('time', () => {
  test('whose work goes quicker is told, and anybody else can be chosen', async () => {
    const minutes = (n: number) => 6 * n ** -0.4;
    await boringShop([
      ...Array.from(
        { length: 40 },
        (_, at) => ({ pieces: 1, minutes: minutes(at + 1), by: 'edda' }) as const,
      ),
      ...many(2, { pieces: 15, minutes: 2, by: 'odo' }),
    ]);
    await openStudy('time');
    choose('learning-of', 'Bore · Edda');
    expect(screen.getByTestId('learning').textContent).toContain(timeStudyWords.quicker);
    expect(screen.getByTestId('learning').textContent).toMatch(/a piece takes 7\d% of what it took/);
    choose('learning-of', 'Bore · Odo');
    expect(screen.getByTestId('learning').textContent).toContain(timeStudyWords.steady);
  });

  test('hours stand by day and by week, the newest beside the stages', async () => {
    await boringShop([
      ...many(1, { pieces: 7, minutes: 10 }),
      { pieces: 1, minutes: 7 * 24 * 60 },
      ...many(1, { pieces: 12, minutes: 10 }),
    ]);
    await openStudy('time');
    const hours = screen.getByTestId('hours');
    const heads = () =>
      within(within(hours).getAllByRole('table').at(-1) ?? hours)
        .getAllByRole('columnheader')
        .map(({ textContent }) => textContent);
    expect(heads()).toEqual(['Stage', 'Mon 9 Mar', 'Mon 2 Mar']);
    expect(hours.textContent).toContain('2 h');
    await take('hours-by-weeks');
    expect(heads()).toEqual(['Stage', 'Mon 9 Mar', 'Mon 2 Mar']);
    expect(hours.textContent).toContain(timeStudyWords.hoursLead(12, timeStudyWords.byWeek));
  });
});
