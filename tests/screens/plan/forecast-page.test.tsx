// @vitest-environment happy-dom

import { signal } from '@preact/signals';
import { act, render, screen } from '@testing-library/preact';
import { beforeEach, expect, test } from 'vitest';
import type { ForecastDoor, ForecastState } from '../../../src/app/forecast.ts';
import type { ForecastQuestion } from '../../../src/domain/plan/forecast/forecast.ts';
import { goTo } from '../../../src/screens/parts/address.ts';
import { ForecastStanding } from '../../../src/screens/plan/forecast-standing.tsx';
import { useForecast } from '../../../src/screens/plan/use-forecast.ts';
import { aLot, aPlan, aStep, day } from '../../domain/plan/forecast/plans.ts';
import { person, stage } from '../../support/workshop.ts';
import { type Mounted, press } from '../set-up/mount.tsx';
import { answered, planOfShop } from './open-plan.tsx';

const shown = async (page: 'forecast' | 'what-if') => {
  goTo('plan', page);
  await screen.findByTestId(`plan-${page}`);
  await answered();
};

const usual = { from: 0, to: 1440, breakMinutes: 0 };
async function sayHours({ session }: Mounted) {
  const value = { name: 'Edda', retired: false, week: [usual, usual, usual, usual, usual, usual, usual] };
  await session.act({ kind: 'set', set: { register: 'person', id: person.edda, value } });
}

beforeEach(() => goTo('plan'));

test('without a time nothing is forecast, and the way to the bench is shown', async () => {
  await planOfShop();
  await shown('forecast');
  expect(screen.getByTestId('forecast-cannot-no-history').textContent).toContain(
    'No time per piece is known yet',
  );
  await press('forecast-mend');
  expect(location.hash).toBe('#/bench');
});

/** A door whose answers are given by the test. */
function fakeDoor() {
  const state = signal<ForecastState>({ kind: 'none', last: null });
  const asked: ForecastQuestion[] = [];
  let isClosed = false;
  const door: ForecastDoor = {
    state,
    ask: async (question) => {
      asked.push(question);
      state.value = { kind: 'working', done: 0, of: question.replications, last: null };
      return null;
    },
    cancel: () => {
      state.value = { kind: 'none', last: null };
    },
    close: () => {
      isClosed = true;
    },
  };
  return { door, state, asked, isClosed: () => isClosed };
}

const question: ForecastQuestion = {
  ...{ plan: aPlan([aStep(0, 5)], { lots: [aLot(8)] }), marks: [day], seed: 1, replications: 2000 },
  confidence: 0.9,
};

test('a forecast is asked once, says how far it is, is stopped, asked again, and ends with its page', async () => {
  const { door, state, asked, isClosed } = fakeDoor();
  const Page = ({ of }: { of: ForecastQuestion | null }) => {
    const used = useForecast(of, () => door);
    return <ForecastStanding {...used} />;
  };
  const { rerender } = render(<Page of={question} />);
  expect(asked).toEqual([question]);
  await act(() => {
    state.value = { kind: 'working', done: 700, of: 2000, last: null };
  });
  const standing = screen.getByTestId('forecast-standing');
  expect(standing.textContent).toContain('700 done');
  expect(screen.getByRole('progressbar').getAttribute('value')).toBe('700');
  rerender(<Page of={question} />);
  expect(asked).toHaveLength(1);
  await press('forecast-stop');
  expect(screen.getByTestId('forecast-standing').textContent).toContain('The forecast was stopped.');
  await press('forecast-again');
  expect(asked).toHaveLength(2);
  await act(() => {
    state.value = { kind: 'failed', problem: 'out of memory', last: null };
  });
  expect(screen.getByRole('alert').textContent).toContain('The forecast could not be worked out');
  await press('forecast-again');
  expect(asked).toHaveLength(3);
  rerender(<Page of={null} />);
  expect(state.value.kind).toBe('none');
  rerender(<p />);
  expect(isClosed()).toBe(true);
});

test('people without hours are named as the reason', async () => {
  const mounted = await planOfShop({ turned: 9 });
  await tapOff(mounted);
  await shown('forecast');
  expect((await screen.findByTestId('forecast-cannot-no-hands')).textContent).toContain('hours');
  await press('forecast-mend');
  expect(location.hash).toBe('#/set-up/people');
});

test('dates, promises and what they rest on are shown, and what if asks beside them', async () => {
  const mounted = await planOfShop({ turned: 9 });
  await tapOff(mounted);
  await sayHours(mounted);
  await shown('forecast');
  const dayOf = (level: string) => screen.getByTestId(`forecast-${level}`).dataset.day ?? '';
  expect(dayOf('at50')).toMatch(/^2026-03-/);
  expect(dayOf('at85') >= dayOf('at50') && dayOf('at95') >= dayOf('at85')).toBe(true);
  expect(screen.getByTestId('promise-table').textContent).toContain('ash with copper');
  expect(screen.getByTestId('forecast-pace').textContent).toContain('guess');
  await shown('what-if');
  expect(screen.getByTestId('what-if-result').textContent).toContain('Fill in a change above.');
  expect(Number(screen.getByTestId('fits-answer').dataset.fits)).toBeGreaterThan(0);
});

/** Sands five of the turned pieces, a minute each, so that there is a time. */
async function tapOff({ session, hands }: Mounted) {
  const [tray] = [...session.view.value.shop.trays.values()].slice(-1).map((each) => each.tray);
  if (!tray) throw new Error('a tray was made up');
  const spot = { tray, stage: stage.sand, at: 'waiting', grade: 'first' } as const;
  await session.act({ kind: 'begin-spell', stage: stage.sand });
  for (let shownPieces = 9; shownPieces > 4; shownPieces -= 1) {
    hands.pass(60_000);
    await session.act({ kind: 'pass', spot: { ...spot, shown: shownPieces }, pieces: 1 });
  }
}
