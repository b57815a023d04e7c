// @vitest-environment happy-dom
import { cleanup, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import { partsOnHand } from '../../../src/domain/rollup/parts-on-hand.ts';
import { DayPlace } from '../../../src/screens/day/day-place.tsx';
import { address, readAddress } from '../../../src/screens/parts/address.ts';
import { StoresPlace } from '../../../src/screens/stores/stores-place.tsx';
import { part, partFacts } from '../../support/workshop.ts';
import { errorAt, mount, press, pressOn, settle, type, typed } from '../set-up/mount.tsx';

beforeEach(() => {
  address.value = readAddress(`#/stores/part/${part.core}`);
});
afterEach(cleanup);

const text = (id: string) => screen.getByTestId(id).textContent ?? '';
const onHand = (session: Session) => partsOnHand(session.view.value.shop, part.core);

/** The page of a part of which 120 came. */
async function partPage(): Promise<Session> {
  const { session } = await mount(
    <>
      <StoresPlace />
      <DayPlace />
    </>,
  );
  for (const set of partFacts) await session.act({ kind: 'set', set });
  await session.act({
    kind: 'receive-parts',
    parts: [{ part: part.core, pieces: 120, cost: null }],
    note: '',
  });
  await settle();
  return session;
}

async function found(bad: string): Promise<void> {
  for (const digit of bad)
    await pressOn(within(screen.getByTestId('sample-bad')).getByRole('button', { name: digit }));
  await press('sample-save');
}

test('a sample goes by the last delivery, says how many to check, and is kept with the part and its day', async () => {
  const session = await partPage();
  await press('part-sample');
  await waitFor(() => expect(typed('sample-lot')).toBe('120'));
  // MIL-STD-105E at 2.5 per cent: of 120, letter F, 20 are checked and one bad one is accepted.
  expect(text('check-plan')).toContain('Check 20 of these 120');
  // On a phone the plan lies below the pad: it asks for the same number.
  expect(text('sample-bad')).toContain('How many bad ones among 20?');
  await found('1');
  expect(screen.queryByTestId('sample-sheet')).toBeNull();
  await waitFor(() => expect(document.body.textContent).toContain('Sample of 20 from 120'));
  expect(document.body.textContent).toContain('1 bad, accepted (plan F, at most 1)');
  const onDay = await screen.findByTestId('day-samples');
  expect(
    within(onDay)
      .getAllByRole('row')
      .map((row) => row.textContent),
  ).toEqual(['PartAcceptedRefused', 'core10']);
  expect(onHand(session)).toBe(120);
});

test('a refused one changes no count by itself, and is counted out when the person says so', async () => {
  const session = await partPage();
  await press('part-sample');
  await waitFor(() => expect(typed('sample-lot')).toBe('120'));
  await found('2');
  expect(text('sample-verdict')).toContain('2 bad, refused (plan F, at most 1)');
  expect(onHand(session)).toBe(120);
  await press('sample-count-out');
  expect(text('count-difference')).toContain('−120');
  expect(onHand(session)).toBe(120);
  await press('count-save');
  expect(onHand(session)).toBe(0);
});

test('where all were checked only the bad ones are counted out', async () => {
  const session = await partPage();
  await press('part-sample');
  type('sample-lot', '4');
  await found('1');
  expect(text('sample-verdict')).toContain('All of 4');
  await press('sample-count-out');
  await press('count-save');
  expect(onHand(session)).toBe(119);
});

test('what cannot be is refused at its field: more bad ones than were checked, or no delivery', async () => {
  await partPage();
  await press('part-sample');
  type('sample-lot', '');
  await found('3');
  expect(errorAt('sample-lot')).toBeTruthy();
  type('sample-lot', '120');
  await found('3');
  expect(text('sample-bad')).toContain('20');
  expect(screen.getByTestId('sample-sheet')).toBeDefined();
});
