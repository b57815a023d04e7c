import { useEffect, useState } from 'preact/hooks';
import type { ReplicaDesk } from '../../../app/replica.ts';
import { useApp } from '../app-context.ts';

/** What keeps this tablet and the others the same; null while it is not there yet, and where nothing outlives the window. */
export function useReplica(): ReplicaDesk | null {
  const { leisure } = useApp();
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
