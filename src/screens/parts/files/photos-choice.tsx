import { useEffect, useState } from 'preact/hooks';
import type { CopyDesk } from '../../../app/copy-desk.ts';
import type { PhotoNotes } from '../../../app/photos.ts';
import { ChoiceRow } from '../../../ui/field/choice-row.tsx';
import { filesWords as words } from '../../../words/files-words.ts';
import { photoWords } from '../../../words/photo-words.ts';

export interface ChosenPhotos {
  readonly notes: PhotoNotes;
  /** Whether they are to go with the copy. */
  readonly taken: boolean;
  readonly choose: (taken: boolean) => void;
}

/** The photos of this tablet, and whether they go with a copy: they do unless a person says otherwise. */
export function usePhotosChoice({ photos }: CopyDesk): ChosenPhotos {
  const [notes, setNotes] = useState<PhotoNotes>([]);
  const [taken, choose] = useState(true);
  useEffect(() => {
    photos?.notes().then(setNotes, () => setNotes([]));
  }, [photos]);
  return { notes, taken: taken && notes.length > 0, choose };
}

/** Asks it where there are photos. */
export const PhotosChoice = ({ chosen: { notes, taken, choose } }: { chosen: ChosenPhotos }) =>
  notes.length === 0 ? null : (
    <ChoiceRow
      label={photoWords.title}
      choices={[
        { value: 'with', label: words.withPhotos, detail: photoWords.volume(notes.length, sizeOf(notes)) },
        { value: 'without', label: words.withoutPhotos, detail: words.withoutPhotosDetail },
      ]}
      value={taken ? 'with' : 'without'}
      onChoose={(value) => choose(value === 'with')}
      testId="copy-photos"
    />
  );

const sizeOf = (notes: PhotoNotes) => notes.reduce((sum, { bytes }) => sum + bytes, 0);
