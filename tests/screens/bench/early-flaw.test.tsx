// @vitest-environment happy-dom
import { signal } from '@preact/signals';
import { act, screen } from '@testing-library/preact';
import { expect, test } from 'vitest';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import { heldAt } from '../../../src/domain/rollup/holds.ts';
import { StageScreen } from '../../../src/screens/bench/stage-screen.tsx';
import { loaded, withLeast } from '../../support/loaded-tray.ts';
import { stage } from '../../support/workshop.ts';
import { mount, press } from '../set-up/mount.tsx';

/** The stage screen of a tray with six pieces in the clamps, so many minutes after they were loaded; they need 240. */
async function atTheClamps(after: number) {
  const tray = signal<TrayId | null>(null);
  const Shown = () => tray.value && <StageScreen stage={stage.glue} tray={tray.value} />;
  const { session, hands } = await mount(<Shown />);
  await withLeast(session, 240);
  const { tray: made } = await loaded(session, 6);
  hands.pass(after * 60_000);
  act(() => {
    tray.value = made;
  });
  const held = () => heldAt(session.view.value.shop.ledger, stage.glue);
  const last = () => session.acts.value.at(-1)?.events.at(-1);
  return { held, last };
}

const asks = () => screen.queryByTestId('take-out-early') !== null;

test('a flaw on a piece that still cures is asked about once, and says by how much it was too early', async () => {
  const { held, last } = await atTheClamps(200);
  await press('flaw-blown');
  await press('outcome-scrapped');
  await press('save-none');
  expect([asks(), held()]).toEqual([true, 6]);
  await press('keep-curing');
  expect([asks(), held()]).toEqual([false, 6]);
  await press('flaw-blown');
  await press('outcome-sent-back');
  await press('back-to-bore');
  await press('take-out-early');
  expect(held()).toBe(5);
  expect(last()).toMatchObject({ kind: 'flawed', early: 40, outcome: { kind: 'sent-back' } });
});

test('a flaw on a piece that may come out is not asked about', async () => {
  const { held, last } = await atTheClamps(240);
  await press('flaw-blown');
  await press('outcome-mended');
  expect([asks(), held()]).toEqual([false, 5]);
  expect(last()).not.toHaveProperty('early');
});
