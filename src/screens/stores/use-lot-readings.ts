import { useEffect, useState } from 'preact/hooks';
import { readingsOf } from '../../domain/rollup/lot-moisture.ts';
import { useSession } from '../parts/app-context.ts';
import { liveLots, type ReadingsOfLots } from './wood-view.ts';

/** The readings of all lots in use, read anew after each change of the shop; undefined until they are there, null when they cannot be read. */
export function useLotReadings(): ReadingsOfLots | null | undefined {
  const session = useSession();
  const view = session.view.value;
  const [found, setFound] = useState<ReadingsOfLots | null>();
  useEffect(() => {
    let isWanted = true;
    const { registers, voids } = view.shop;
    const reading = liveLots(registers).map(
      async ({ id }) => [id, readingsOf(await session.historyOf(`lot/${id}`), { lot: id, voids })] as const,
    );
    Promise.all(reading).then(
      (all) => isWanted && setFound(new Map(all)),
      () => isWanted && setFound(null),
    );
    return () => {
      isWanted = false;
    };
  }, [session, view]);
  return found;
}
