// @vitest-environment happy-dom
import { act, screen } from '@testing-library/preact';
import { expect, test } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import { chained } from '../../../src/domain/log/chain.ts';
import { useShop } from '../../../src/screens/parts/app-context.ts';
import { FindTray } from '../../../src/screens/trays/find-tray.tsx';
import { SharedCodes } from '../../../src/screens/trays/shared-codes.tsx';
import { traysInWork } from '../../../src/screens/trays/trays-view.ts';
import { aShop } from '../../support/a-shop.ts';
import { batch, setUpFacts, variant } from '../../support/workshop.ts';
import { mount, press, settle } from '../set-up/mount.tsx';

const Find = () => <FindTray rows={traysInWork(useShop()).live} />;

/** A session that made a tray A1 of its own, and then heard of one that another tablet had made under that code. */
async function twoOfOneCode(
  shown: preact.JSX.Element,
): Promise<{ session: Session; ids: readonly string[] }> {
  const { session } = await mount(shown);
  const made = await session.act({
    kind: 'make-trays',
    ...{ variant: variant['ash-copper'], batch: batch.spring, pieces: 6, trays: 1 },
  });
  const other = aShop({ station: 'other', letter: 'A', now: Date.UTC(2026, 2, 1, 9) });
  for (const set of setUpFacts) other.set(set);
  const theirs = other.tray('plum-copper', 4);
  await session.restore({ runs: [], entries: chained(other.log) });
  await settle();
  const own = made.kind === 'saved' && made.events[0]?.kind === 'tray-made' ? made.events[0].of.tray : '';
  return { session, ids: [own, theirs] };
}

/** Types a code on the pad as a code reader does. */
async function typeCode(code: string): Promise<void> {
  for (const key of [...code, 'Enter']) {
    act(() => void dispatchEvent(new KeyboardEvent('keydown', { key, cancelable: true })));
  }
  await settle();
}

test('a code that two trays carry shows both, the younger first, and opens the one that is meant', async () => {
  const { ids, session } = await twoOfOneCode(<Find />);
  const [own = '', theirs = ''] = ids;
  await typeCode(session.view.value.shop.trays.get(own as never)?.code ?? '');
  const shown = screen.getAllByTestId(/^same-code-/).map(({ dataset }) => dataset.testid);
  expect(shown).toEqual([`same-code-${own}`, `same-code-${theirs}`]);
  expect(screen.getByTestId(`same-code-${own}`).textContent).toContain('6 pieces at Bore');
  expect(screen.getByTestId(`same-code-${theirs}`).textContent).toContain('4 pieces at Bore');
  await press(`same-code-${theirs}`);
  expect(location.hash).toBe(`#/trays/${theirs}`);
});

test('the younger gets a new code, and then nothing is shared any more', async () => {
  const { session, ids } = await twoOfOneCode(<SharedCodes />);
  const [own = '', theirs = ''] = ids;
  const code = session.view.value.shop.trays.get(theirs as never)?.code ?? '';
  expect(screen.getByTestId('shared-codes').textContent).toContain(`Two trays carry ${code}.`);
  await press(`shared-${code}`);
  await press('recode');
  const carriers = [...session.view.value.shop.trays.values()];
  const fresh = carriers.find(({ tray }) => tray !== own && tray !== theirs);
  expect(fresh).toMatchObject({ variant: 'ash-copper' });
  expect(screen.getByTestId('new-code').textContent).toContain(fresh?.code);
  expect(screen.queryByTestId('shared-codes')).toBeNull();
});
