import { useEffect, useRef, useState } from 'preact/hooks';
import type { PhotoHash } from '../../../domain/log/photo-facts.ts';
import { useReplica } from '../join/use-replica.ts';

/** The address of a picture while it is shown: undefined until it is read, null when it is not on this tablet. */
export function usePicture(
  photo: PhotoHash,
  read: (photo: PhotoHash) => Promise<Blob | undefined>,
): string | null | undefined {
  const [address, setAddress] = useState<string | null>();
  const desk = useReplica();
  /** Looks once more for one that is missed here. */
  const again = useRef(() => {});
  useEffect(() => {
    let made: string | undefined;
    let isWanted = true;
    const show = (picture: Blob | undefined) => {
      if (!isWanted || made !== undefined) return;
      made = picture && URL.createObjectURL(picture);
      setAddress(made ?? null);
      again.current = made === undefined ? look : () => {};
    };
    const look = () => void read(photo).then(show, () => show(undefined));
    look();
    return () => {
      isWanted = false;
      again.current = () => {};
      if (made) URL.revokeObjectURL(made);
      setAddress(undefined);
    };
  }, [photo, read]);
  // It may have come from another tablet.
  useEffect(() => desk?.photosCame.subscribe(() => again.current()), [desk]);
  return address;
}
