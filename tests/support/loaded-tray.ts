import type { Session } from '../../src/app/session.ts';
import { factOf } from '../../src/domain/shop/registers.ts';
import { batch, stage, variant } from './workshop.ts';

/** A tray of the session with so many pieces in the clamps. */
export async function loaded(session: Session, pieces: number) {
  const done = async (command: Parameters<Session['act']>[0]) => {
    const result = await session.act(command);
    if (result.kind === 'refused') throw new Error(JSON.stringify(result.problem));
    return result.events;
  };
  const made = await done({
    ...{ kind: 'make-trays', variant: variant['ash-copper'], batch: batch.spring, pieces, trays: 1 },
  });
  const event = made.find(({ kind }) => kind === 'tray-made');
  if (event?.kind !== 'tray-made') throw new Error('no tray was made');
  const { tray, code } = event.of;
  const spot = (name: 'bore' | 'glue') =>
    ({ tray, stage: stage[name], at: 'waiting', grade: 'first', shown: pieces }) as const;
  await done({ kind: 'pass', spot: spot('bore'), pieces });
  await done({ kind: 'load', spot: spot('glue'), pieces });
  return { tray, code };
}

/** Says from when on the maker lets pieces out of the clamps, minutes. */
export async function withLeast(session: Session, leastMinutes: number) {
  const fact = factOf(session.view.value.shop.registers, { register: 'stage', id: stage.glue });
  if (fact?.kind !== 'hold') throw new Error('gluing is a hold');
  await session.act({
    kind: 'set',
    set: { register: 'stage', id: stage.glue, value: { ...fact, leastMinutes } },
  });
}
