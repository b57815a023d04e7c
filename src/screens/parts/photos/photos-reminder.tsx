import { useEffect, useState } from 'preact/hooks';
import { photoWords as words } from '../../../words/photo-words.ts';
import { countInNoFile } from './in-no-file.ts';
import { usePhotos } from './use-photos.ts';

/** At the end of the day: that photos are no part of a copy, and how many of them are in no file yet. Else nothing. */
export const PhotosReminder = () => {
  const photos = usePhotos();
  const [count, setCount] = useState(0);
  useEffect(() => {
    photos?.notes().then(
      (notes) => setCount(countInNoFile(notes)),
      () => setCount(0),
    );
  }, [photos]);
  return count > 0 ? <p data-testid="photos-reminder">{words.reminder(count)}</p> : null;
};
