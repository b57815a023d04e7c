// @vitest-environment happy-dom
import { signal } from '@preact/signals';
import { act, cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import type { ShopDay } from '../../../src/domain/log/ids.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { DustPanel } from '../../../src/screens/day/dust-panel.tsx';
import { dustLimits, dustWords as words } from '../../../src/words/dust-words.ts';
import { batch, person, species, stage, variant } from '../../support/workshop.ts';
import { type Mounted, mount } from '../set-up/mount.tsx';

afterEach(cleanup);

const day = '2026-03-02' as ShopDay;

async function sayDust({ session }: Mounted): Promise<void> {
  const fact = factOf(session.view.value.shop.registers, { register: 'stage', id: stage.bore });
  if (!fact) throw new Error('no stage');
  const value = { ...fact, does: ['dust' as const] };
  await session.act({ kind: 'set', set: { register: 'stage', id: stage.bore, value } });
}

/** Bores some pieces of the newest tray, each in so many minutes. */
async function bore({ session, hands }: Mounted, { pieces, minutes }: { pieces: number; minutes: number }) {
  const tray = [...session.view.value.shop.trays.keys()].at(-1);
  if (!tray) throw new Error('no tray');
  session.enterStage(stage.bore);
  for (let shown = pieces; shown > 0; shown -= 1) {
    hands.pass(minutes * 60_000);
    const spot = { tray, stage: stage.bore, at: 'waiting', grade: 'first', shown } as const;
    await session.act({ kind: 'pass', spot, pieces: 1 });
  }
}

test('while no stage says that it makes dust, the way to say it is shown, and no minutes', async () => {
  await mount(<DustPanel day={day} />);
  expect(screen.getByText(words.notSaid)).toBeTruthy();
  expect(screen.queryByTestId('dust-table')).toBeNull();
  expect(screen.getByText(words.noDosimeter)).toBeTruthy();
});

test('minutes stand by wood, of whoever taps here, and every published limit by its name', async () => {
  const isOpen = signal(false);
  const Shown = () => (isOpen.value ? <DustPanel day={day} /> : null);
  const mounted = await mount(<Shown />);
  const { session } = mounted;
  await sayDust(mounted);
  await session.act({
    kind: 'set',
    set: { register: 'person', id: person.edda, value: { name: 'Edda', retired: false } },
  });
  const made = { variant: variant['ash-copper'], batch: batch.spring, pieces: 9, trays: 1 };
  await session.act({ kind: 'make-trays', ...made });
  await bore(mounted, { pieces: 3, minutes: 2 });
  session.person.value = person.edda;
  await bore(mounted, { pieces: 2, minutes: 3 });
  act(() => {
    isOpen.value = true;
  });
  expect((await screen.findByTestId(`dust-${species.ash}`)).textContent).toBe('6');
  expect(screen.getByText(words.leadOne('Edda'))).toBeTruthy();
  act(() => {
    session.person.value = null;
  });
  expect(
    (await screen.findByText('12', { selector: `[data-testid="dust-${species.ash}"]` })).textContent,
  ).toBe('12');
  expect(screen.getByText(words.leadAll)).toBeTruthy();
  for (const { name } of Object.values(dustLimits)) expect(screen.getByText(name)).toBeTruthy();
  expect(screen.getByText(words.rules)).toBeTruthy();
});
