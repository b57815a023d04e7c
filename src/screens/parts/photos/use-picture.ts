import { useEffect, useState } from 'preact/hooks';
import type { PhotoHash } from '../../../domain/log/photo-facts.ts';

/** The address of a picture while it is shown: undefined until it is read, null when it is not on this tablet. */
export function usePicture(
  photo: PhotoHash,
  read: (photo: PhotoHash) => Promise<Blob | undefined>,
): string | null | undefined {
  const [address, setAddress] = useState<string | null>();
  useEffect(() => {
    let made: string | undefined;
    let isWanted = true;
    const show = (picture: Blob | undefined) => {
      if (!isWanted) return;
      made = picture && URL.createObjectURL(picture);
      setAddress(made ?? null);
    };
    read(photo).then(show, () => show(undefined));
    return () => {
      isWanted = false;
      if (made) URL.revokeObjectURL(made);
      setAddress(undefined);
    };
  }, [photo, read]);
  return address;
}
