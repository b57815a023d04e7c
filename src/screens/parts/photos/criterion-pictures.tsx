import './photos.css';
import type { Photos } from '../../../app/photos.ts';
import type { ReasonId } from '../../../domain/log/ids.ts';
import type { PhotoFacts } from '../../../domain/log/photo-facts.ts';
import { factOf } from '../../../domain/shop/registers.ts';
import { criterionWords as words } from '../../../words/criterion-words.ts';
import { useShop } from '../app-context.ts';
import { useCriterionShots } from './criterion-shots.ts';
import { usePhotos } from './use-photos.ts';
import { usePicture } from './use-picture.ts';

/** What passes a criterion in a few words, with the newest picture of what does and of what does not. */
export const CriterionPictures = ({ reason }: { reason: ReasonId }) => {
  const { registers } = useShop();
  const photos = usePhotos();
  const { good, bad } = useCriterionShots(reason);
  const passes = factOf(registers, { register: 'reason', id: reason })?.passes;
  return (
    <span class="criterion">
      {passes && <span class="criterion-words">{passes}</span>}
      {photos && (
        <span class="criterion-pictures">
          {good[0] && <Small photos={photos} photo={good[0].photo} verdict="good" />}
          {bad[0] && <Small photos={photos} photo={bad[0].photo} verdict="bad" />}
        </span>
      )}
    </span>
  );
};

interface SmallProps {
  readonly photos: Photos;
  readonly photo: PhotoFacts;
  readonly verdict: 'good' | 'bad';
}

const Small = ({ photos, photo, verdict }: SmallProps) => {
  const address = usePicture(photo.hash, photos.small);
  if (!address) return null;
  return (
    <img
      src={address}
      alt={words[verdict]}
      data-verdict={verdict}
      width={photo.width}
      height={photo.height}
    />
  );
};
