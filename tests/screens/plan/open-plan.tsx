import { screen, waitFor } from '@testing-library/preact';
import { goTo } from '../../../src/screens/parts/address.ts';
import { PlanPlace } from '../../../src/screens/plan/plan-place.tsx';
import { batch, route, stage, variant } from '../../support/workshop.ts';
import { type Mounted, mount, settle } from '../set-up/mount.tsx';

const springDue = '2026-03-30';
/** What the spring batch is set to want. */
export const spring = {
  name: 'Spring',
  route: route.short,
  wanted: [{ variant: variant['ash-copper'], good: 12 }],
  due: springDue as never,
  retired: false,
};

/** The plan of a shop whose spring batch wants twelve, of which so many pieces were turned, the rest passed on. */
export async function planOfShop({
  turned = 0,
  part = {},
}: {
  turned?: number;
  part?: Partial<typeof spring> & { chance?: number };
} = {}): Promise<Mounted> {
  goTo('plan');
  const mounted = await mount(<PlanPlace />);
  const { session } = mounted;
  const value = { ...spring, ...part };
  await session.act({ kind: 'set', set: { register: 'batch', id: batch.spring, value } });
  if (turned > 0) {
    const ash = { variant: variant['ash-copper'], batch: batch.spring };
    await session.act({ kind: 'make-trays', ...ash, pieces: turned, trays: 1 });
    const tray = [...session.view.value.shop.trays.values()].at(-1)?.tray;
    if (!tray) throw new Error('no tray was made up');
    const spot = { tray, stage: stage.turn, at: 'waiting', grade: 'first', shown: turned } as const;
    await session.act({ kind: 'pass', spot, pieces: turned });
  }
  await answered();
  return mounted;
}

/** Waits until what is asked is answered and drawn. */
export async function answered(): Promise<void> {
  await settle();
  await waitFor(
    () => {
      if (screen.getByRole('main').getAttribute('aria-busy') !== 'false') throw new Error('still busy');
    },
    { timeout: 20_000 },
  );
}
