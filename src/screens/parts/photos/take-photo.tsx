import { useState } from 'preact/hooks';
import type { PhotoFacts } from '../../../domain/log/photo-facts.ts';
import { photoWords as words } from '../../../words/photo-words.ts';
import { keptWords } from './kept-words.ts';
import { PhotoButton } from './photo-button.tsx';
import { usePhotos } from './use-photos.ts';

export interface TakePhotoProps {
  /** The photo is kept: the log is to be told. */
  readonly onKept: (photo: PhotoFacts) => Promise<void>;
  readonly testId: string;
}

/** Takes a photo or chooses one, keeps it, and says what became of it. */
export const TakePhoto = ({ onKept, testId }: TakePhotoProps) => {
  const photos = usePhotos();
  const [said, setSaid] = useState('');
  if (!photos) return <p>{words.noStore}</p>;
  const take = async (file: File) => {
    setSaid(words.making);
    const kept = await photos.keep(file);
    if (kept.kind === 'kept') await onKept(kept.photo);
    setSaid(keptWords(kept));
  };
  return (
    <div class="photo-take">
      <PhotoButton
        from="camera"
        icon="camera"
        label={words.camera}
        onFile={(file) => void take(file)}
        testId={`${testId}-camera`}
      />
      <PhotoButton
        from="file"
        icon="import"
        label={words.file}
        onFile={(file) => void take(file)}
        testId={`${testId}-file`}
      />
      <p role="status" data-testid={`${testId}-said`}>
        {said}
      </p>
    </div>
  );
};
