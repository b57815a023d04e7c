import { useEffect, useState } from 'preact/hooks';
import { photoWords as words } from '../../../words/photo-words.ts';
import { useApp } from '../app-context.ts';
import { countInNoFile } from './in-no-file.ts';
import { usePhotos } from './use-photos.ts';

/** At the end of the day: how many photos are in no file yet. Else nothing. */
export const PhotosReminder = () => {
  // A copy that has gone out may have had them with it: then they are counted anew.
  const { outside } = useApp().copies.known.value;
  return <PhotosInNoFile key={outside?.at} />;
};

const PhotosInNoFile = () => {
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
