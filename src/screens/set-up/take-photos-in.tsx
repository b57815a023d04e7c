import { useRef, useState } from 'preact/hooks';
import type { Photos } from '../../app/photos.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { photoWords as words } from '../../words/photo-words.ts';

export interface TakePhotosInProps {
  readonly photos: Photos;
  readonly onChange: () => void;
}

/** Takes photos in from files that a tablet saved, one after another. */
export const TakePhotosIn = ({ photos, onChange }: TakePhotosInProps) => {
  const input = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState('');
  const take = async (files: readonly File[]) => {
    setSaid(words.takingIn);
    const sums = { added: 0, here: 0, refused: 0 };
    for (const file of files) {
      const taken = await photos.takeIn(file).catch(() => undefined);
      if (!taken) return setSaid(words.noPhotoFile);
      sums.added += taken.added;
      sums.here += taken.here;
      sums.refused += taken.refused;
    }
    setSaid(words.takenIn(sums.added, sums.here, sums.refused));
    onChange();
  };
  return (
    <div class="files-block">
      <div>
        <PressButton
          icon="import"
          label={words.takeIn}
          detail={words.takeInDetail}
          onAct={() => input.current?.click()}
          testId="take-photos-in"
        />
        <input
          ref={input}
          type="file"
          hidden
          multiple
          accept=".zip,application/zip"
          data-testid="take-photos-in-input"
          onChange={({ currentTarget }) => {
            const files = [...(currentTarget.files ?? [])];
            currentTarget.value = '';
            if (files.length > 0) void take(files);
          }}
        />
      </div>
      <p role="status" data-testid="take-photos-in-said">
        {said}
      </p>
    </div>
  );
};
