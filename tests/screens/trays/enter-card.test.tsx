// @vitest-environment happy-dom
import { signal } from '@preact/signals';
import { cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import { stagesOfTray } from '../../../src/domain/rollup/waiting.ts';
import { EnterCard } from '../../../src/screens/trays/card/enter-card.tsx';
import { batch, stage, variant } from '../../support/workshop.ts';
import { choose, errorAt, mount, press, settle, type, typed } from '../set-up/mount.tsx';

afterEach(cleanup);

async function openCard(pieces = 10): Promise<{ session: Session; tray: TrayId }> {
  const shown = signal<TrayId | null>(null);
  const Shown = () => (shown.value === null ? null : <EnterCard id={shown.value} />);
  const { session } = await mount(<Shown />);
  const wanted = { variant: variant['ash-copper'], batch: batch.spring };
  const made = await session.act({ kind: 'make-trays', ...wanted, pieces, trays: 1 });
  const [tray] = session.view.value.shop.trays.keys();
  if (made.kind === 'refused' || tray === undefined) throw new Error('no tray');
  shown.value = tray;
  await settle();
  return { session, tray };
}

const standing = ({ session, tray }: { session: Session; tray: TrayId }) =>
  stagesOfTray(session.view.value.shop, tray).map(({ stage: at, waiting }) => [at, waiting.first]);

test('a pencilled card is entered as one act, and one undo takes all of it back', async () => {
  const card = await openCard();
  type(`card-passed-${stage.bore}`, '9');
  await press(`card-add-${stage.bore}`);
  type(`card-${stage.bore}/1-count`, '1');
  choose(`card-${stage.bore}/1-reason`, 'blown');
  choose(`card-${stage.bore}/1-outcome`, 'Scrapped');
  type(`card-passed-${stage.glue}`, '4');
  await press('card-enter');
  expect(screen.getByTestId('card-entered').textContent).toContain('3 entries in the log');
  expect(standing(card)).toEqual([
    [stage.glue, 5],
    [stage.turn, 4],
  ]);
  expect(typed(`card-passed-${stage.bore}`)).toBe('');
  await press('card-undo');
  expect(screen.getByTestId('card-undone').textContent).toContain('All of the card was taken back');
  expect(standing(card)).toEqual([[stage.bore, 10]]);
});

test('what cannot be is said at its line; nothing is entered and what is typed stays', async () => {
  const card = await openCard(4);
  type(`card-passed-${stage.bore}`, '4');
  type(`card-passed-${stage.glue}`, '5');
  await press('card-enter');
  expect(errorAt(`card-passed-${stage.glue}`)).toBe('Only 4 pieces here.');
  expect(screen.getByTestId('card-refused').textContent).toContain('Nothing was entered yet');
  expect(typed(`card-passed-${stage.bore}`)).toBe('4');
  expect(standing(card)).toEqual([[stage.bore, 4]]);
  type(`card-passed-${stage.glue}`, '3');
  expect(errorAt(`card-passed-${stage.glue}`)).toBeUndefined();
  await press('card-enter');
  expect(standing(card)).toEqual([
    [stage.glue, 1],
    [stage.turn, 3],
  ]);
});

test('a line that is no number, and an empty card, say so', async () => {
  await openCard();
  await press('card-enter');
  expect(screen.getByTestId('card-refused').textContent).toContain('Enter at least one count.');
  type(`card-passed-${stage.sand}`, 'some');
  await press('card-enter');
  expect(errorAt(`card-passed-${stage.sand}`)).toBe('This is not a number.');
  await settle();
});
