import './photos.css';
import { useState } from 'preact/hooks';
import type { Photos } from '../../../app/photos.ts';
import type { PhotoFacts } from '../../../domain/log/photo-facts.ts';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { Sheet } from '../../../ui/sheet/sheet.tsx';
import { photoWords as words } from '../../../words/photo-words.ts';
import { handOver } from '../hand-over.ts';
import { usePhotos } from './use-photos.ts';
import { usePicture } from './use-picture.ts';

/** A photo with what is to be said of it. */
export interface NamedPhoto {
  /** The same for no two of a strip: one photo may be taken down twice. */
  readonly key: string;
  readonly photo: PhotoFacts;
  readonly name: string;
  readonly onTakeBack?: (() => Promise<void>) | undefined;
}

/** Small photos side by side; each opens large. */
export const PhotoStrip = ({ photos, testId }: { photos: readonly NamedPhoto[]; testId: string }) => {
  const store = usePhotos();
  const [open, setOpen] = useState<NamedPhoto | null>(null);
  if (!store) return <p>{words.noStore}</p>;
  if (photos.length === 0) return <p>{words.none}</p>;
  return (
    <>
      <ul class="photo-strip" data-testid={testId}>
        {photos.map((each) => (
          <li key={each.key}>
            <Small store={store} of={each} onOpen={() => setOpen(each)} />
          </li>
        ))}
      </ul>
      {open && <Large store={store} of={open} onClose={() => setOpen(null)} />}
    </>
  );
};

interface OneProps {
  readonly store: Photos;
  readonly of: NamedPhoto;
}

const Small = ({ store, of: { photo, name }, onOpen }: OneProps & { onOpen: () => void }) => {
  const address = usePicture(photo.hash, store.small);
  return (
    <button type="button" class="photo-small" aria-label={words.show(name)} onClick={onOpen}>
      {address ? (
        <img src={address} alt="" width={photo.width} height={photo.height} />
      ) : (
        <span class="photo-missing">{address === null ? words.notHere : ''}</span>
      )}
      <span class="photo-name">{name}</span>
    </button>
  );
};

const Large = ({ store, of, onClose }: OneProps & { onClose: () => void }) => {
  const { photo, name, onTakeBack } = of;
  const address = usePicture(photo.hash, store.large);
  const save = async () => {
    const picture = await store.large(photo.hash);
    if (picture)
      await handOver(new File([picture], `${photo.hash.slice(0, 12)}.jpg`, { type: 'image/jpeg' }));
  };
  return (
    <Sheet
      title={name}
      shape="whole"
      onClose={onClose}
      closeLabel={words.close}
      testId="photo-large"
      foot={
        <>
          {address && <PressButton icon="export" label={words.save} onAct={() => void save()} />}
          {onTakeBack && (
            <PressButton
              icon="undo"
              tone="quiet"
              label={words.takeBack}
              onAct={() => void onTakeBack().then(onClose)}
              testId="photo-take-back"
            />
          )}
        </>
      }
    >
      {address ? (
        <img class="photo-whole" src={address} alt={name} width={photo.width} height={photo.height} />
      ) : (
        <p>{address === null ? words.notHere : ''}</p>
      )}
    </Sheet>
  );
};
