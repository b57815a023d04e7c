import { screen, waitFor } from '@testing-library/preact';
import type { Outcome } from '../../../src/domain/log/event.ts';
import { address, goTo } from '../../../src/screens/parts/address.ts';
import type { StudyPage } from '../../../src/screens/parts/study-pages.ts';
import { StudyPlace } from '../../../src/screens/study/study-place.tsx';
import { batch, person, reason, stage, variant } from '../../support/workshop.ts';
import { type Mounted, mount, settle } from '../set-up/mount.tsx';

const minute = 60_000;

/** What hands did to a tray of ash at the boring. */
export interface BoredTray {
  readonly pieces: number;
  /** Of them; the others pass. */
  readonly blown?: number;
  /** Of each piece; 1 when left out. */
  readonly minutes?: number;
  readonly by?: keyof typeof names;
}

const names = { edda: 'Edda', odo: 'Odo' } as const;

/** A shop of these people in which these trays were bored one after another, piece by piece. */
export async function boringShop(
  trays: readonly BoredTray[],
  { people = ['edda', 'odo'] }: { readonly people?: readonly (keyof typeof names)[] } = {},
): Promise<Mounted> {
  const mounted = await mount(<StudyPlace />);
  const { session, hands } = mounted;
  for (const who of people) {
    const value = { name: names[who], retired: false };
    await session.act({ kind: 'set', set: { register: 'person', id: person[who], value } });
  }
  session.enterStage(stage.bore);
  for (const { pieces, blown = 0, minutes = 1, by } of trays) {
    session.person.value = by ? person[by] : null;
    await session.act({
      ...{ kind: 'make-trays', variant: variant['ash-copper'], batch: batch.spring, pieces, trays: 1 },
    });
    const tray = [...session.view.value.shop.trays.values()].at(-1)?.tray;
    if (!tray) throw new Error('no tray was made up');
    for (let shown = pieces; shown > 0; shown -= 1) {
      hands.pass(Math.round(minutes * minute));
      const spot = { tray, stage: stage.bore, at: 'waiting', grade: 'first', shown } as const;
      const outcome: Outcome = { kind: 'scrapped', saved: [] };
      await session.act(
        shown <= blown
          ? { kind: 'flaw', spot, pieces: 1, reasons: [reason.blown], outcome }
          : { kind: 'pass', spot, pieces: 1 },
      );
    }
  }
  return mounted;
}

/** Opens a page of the study over the shop that is mounted, and waits for its answers. */
export async function openStudy(page: StudyPage): Promise<void> {
  goTo('yield', page);
  await waitFor(() => demandPage(page));
  await settle();
  await screen.findByTestId(`study-${page}`, undefined, { timeout: 20_000 });
  await answered();
}

/** Waits until what is asked is answered and drawn. */
export async function answered(): Promise<void> {
  await waitFor(
    () => {
      if (screen.getByRole('main').getAttribute('aria-busy') !== 'false') throw new Error('still busy');
    },
    { timeout: 20_000 },
  );
}

function demandPage(page: StudyPage): void {
  if (address.value.rest[0] !== page) throw new Error(`not yet at ${page}`);
}
