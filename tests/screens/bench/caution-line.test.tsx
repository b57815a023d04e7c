// @vitest-environment happy-dom
import { signal } from '@preact/signals';
import { act, cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { StageScreen } from '../../../src/screens/bench/stage-screen.tsx';
import { cautionRules } from '../../../src/words/wood-care-words.ts';
import { batch, species, stage, variant } from '../../support/workshop.ts';
import { mount, press } from '../set-up/mount.tsx';

afterEach(cleanup);

const caution = 'Ash dust can make allergic. The safety data sheet and your local codes rule.';

/** Two trays of ash at the boring, and which of them is open; the stage screen stands over a real session. */
async function atTheBench() {
  const open = signal<TrayId | null>(null);
  const Shown = () => open.value && <StageScreen key={open.value} stage={stage.bore} tray={open.value} />;
  const { session } = await mount(<Shown />);
  const ash = factOf(session.view.value.shop.registers, { register: 'species', id: species.ash });
  if (!ash) throw new Error('no ash');
  const value = { ...ash, caution };
  await session.act({ kind: 'set', set: { register: 'species', id: species.ash, value } });
  const made = { variant: variant['ash-copper'], batch: batch.spring, pieces: 9, trays: 2 };
  await session.act({ kind: 'make-trays', ...made });
  const [first, second] = [...session.view.value.shop.trays.keys()];
  if (!first || !second) throw new Error('no trays');
  const show = (tray: TrayId) =>
    act(() => {
      open.value = tray;
    });
  session.enterStage(stage.bore);
  return { session, show, first, second };
}

const line = () => screen.queryByTestId('caution-line')?.textContent ?? null;

test('the caution of a wood stands until the first tap, and not again in that spell', async () => {
  const { session, show, first, second } = await atTheBench();
  show(first);
  expect(line()).toBe(caution);
  expect(screen.getByTestId('stage-signs').textContent).toContain(cautionRules.first);
  await press('pass');
  expect(line()).toBeNull();
  expect(screen.getByTestId('last-act')).toBeTruthy();
  show(second);
  expect(line()).toBeNull();
  await act(() => session.pause());
  expect(line()).toBe(caution);
});

test('a tray that is only looked at takes nothing away: the next one still says it', async () => {
  const { show, first, second } = await atTheBench();
  show(first);
  show(second);
  expect(line()).toBe(caution);
});
