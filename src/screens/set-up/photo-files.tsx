import { useState } from 'preact/hooks';
import { photoFileName } from '../../app/copy-name.ts';
import type { PhotoNotes, Photos } from '../../app/photos.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { filesWords } from '../../words/files-words.ts';
import { photoWords as words } from '../../words/photo-words.ts';
import { useShop } from '../parts/app-context.ts';
import { handOver } from '../parts/hand-over.ts';

type Volume = ReturnType<Photos['volumes']>[number];

export interface PhotoFilesProps {
  readonly photos: Photos;
  readonly notes: PhotoNotes;
  readonly onSaved: () => void;
}

/** A button for each file that the photos go into. */
export const PhotoFiles = ({ photos, notes, onSaved }: PhotoFilesProps) => {
  const { registers } = useShop();
  const [said, setSaid] = useState('');
  const [waiting, setWaiting] = useState<{ readonly number: number; readonly file: File }>();
  const volumes = photos.volumes(notes);
  const shop = factOf(registers, { register: 'shop', id: 'shop' })?.name ?? null;
  const fileOf = async ({ number, photos: its }: Volume) => {
    setSaid(words.packing);
    const zip = await photos.zipped(its);
    return new File([zip], photoFileName({ shop, number }), { type: zip.type });
  };
  const save = async (volume: Volume) => {
    try {
      const file = waiting?.number === volume.number ? waiting.file : await fileOf(volume);
      const became = await handOver(file);
      setWaiting(became === 'tap-again' ? { number: volume.number, file } : undefined);
      if (became !== 'tap-again' && became !== 'called-off') {
        await photos.wentOut(volume.photos.map(({ hash }) => hash));
        onSaved();
      }
      setSaid(became === 'tap-again' ? filesWords.ready : became === 'called-off' ? '' : words.packed);
    } catch {
      setSaid(words.packFailed);
    }
  };
  return (
    <div class="files-block">
      <ul class="set-up-tables">
        {volumes.map((volume) => (
          <li key={volume.number}>
            <PressButton
              icon="export"
              label={words.saveVolume(volume.number, volumes.length)}
              detail={words.volume(volume.photos.length, volume.bytes)}
              onAct={() => void save(volume)}
              testId={`save-photos-${volume.number}`}
            />
          </li>
        ))}
      </ul>
      <p role="status" data-testid="save-photos-said">
        {said}
      </p>
    </div>
  );
};
