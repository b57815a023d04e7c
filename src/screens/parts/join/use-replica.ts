import { useContext, useEffect, useState } from 'preact/hooks';
import type { ReplicaDesk } from '../../../app/replica.ts';
import { AppContext } from '../app-context.ts';

/**
 * What keeps this tablet and the others the same; null while it is not there yet, where nothing outlives the window, and on
 * paper, which stands outside the app.
 */
export function useReplica(): ReplicaDesk | null {
  const leisure = useContext(AppContext)?.leisure;
  const [desk, setDesk] = useState<ReplicaDesk | null>(null);
  useEffect(() => {
    let isHere = true;
    void leisure
      ?.then(({ replica }) => replica)
      .then(
        (opened) => isHere && setDesk(opened),
        () => undefined,
      );
    return () => {
      isHere = false;
    };
  }, [leisure]);
  return desk;
}
