import { useCallback, useEffect, useState } from 'preact/hooks';
import type { PhotoNotes } from '../../app/photos.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { photoWords as words } from '../../words/photo-words.ts';
import { useApp } from '../parts/app-context.ts';
import { countInNoFile } from '../parts/photos/in-no-file.ts';
import { usePhotos } from '../parts/photos/use-photos.ts';
import { LetPhotosGo } from './let-photos-go.tsx';
import { PhotoFiles } from './photo-files.tsx';
import { TakePhotosIn } from './take-photos-in.tsx';

/** The photos of the shop that lie here: out of the tablet, back in, and away. */
export const PhotosPanel = () => {
  // A copy that has gone out may have had photos with it: then they are looked at anew.
  const { outside } = useApp().copies.known.value;
  return <PhotosHere key={outside?.at} />;
};

const PhotosHere = () => {
  const photos = usePhotos();
  const [notes, setNotes] = useState<PhotoNotes>();
  const look = useCallback(() => void photos?.notes().then(setNotes, () => setNotes([])), [photos]);
  useEffect(look, [look]);
  if (!photos) return null;
  const bytes = notes?.reduce((sum, note) => sum + note.bytes, 0) ?? 0;
  const inNoFile = countInNoFile(notes ?? []);
  return (
    <Panel title={words.onTablet} lead={words.onTabletLead} testId="photos-panel">
      {inNoFile > 0 && <Notice tone="warn" title={words.inNoFile(inNoFile)} testId="photos-in-no-file" />}
      {notes && <p data-testid="photos-held">{words.held(notes.length, bytes)}</p>}
      {notes && <PhotoFiles photos={photos} notes={notes} onSaved={look} />}
      <TakePhotosIn photos={photos} onChange={look} />
      {notes && notes.length > 0 && <LetPhotosGo photos={photos} notes={notes} onChange={look} />}
    </Panel>
  );
};
