import type { ReasonId } from '../../domain/log/ids.ts';
import { criterionWords as words } from '../../words/criterion-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { useCriterionShots } from '../parts/photos/criterion-shots.ts';
import { namedShots } from '../parts/photos/named-shots.ts';
import { PhotoStrip } from '../parts/photos/photo-strip.tsx';
import { TakePhoto } from '../parts/photos/take-photo.tsx';

/** Photos of what a criterion accepts, and of what it does not. */
export const CriterionPhotos = ({ reason }: { reason: ReasonId }) => {
  const session = useSession();
  const { registers } = useShop();
  const shots = useCriterionShots(reason);
  return (
    <fieldset class="set-up-bill">
      <legend class="field-label">{words.photos}</legend>
      <p class="field-hint">{words.photosHint}</p>
      {(['good', 'bad'] as const).map((verdict) => (
        <section key={verdict} class="photo-section" aria-label={words[verdict]}>
          <h3>{words[verdict]}</h3>
          {shots[verdict].length > 0 && (
            <PhotoStrip
              photos={namedShots(shots[verdict], { registers, session })}
              testId={`criterion-${verdict}`}
            />
          )}
          <TakePhoto
            onKept={async (photo) => {
              const shows = { kind: 'criterion', reason, verdict } as const;
              await session.act({ kind: 'photograph', shows, photo });
            }}
            testId={`criterion-photo-${verdict}`}
          />
        </section>
      ))}
    </fieldset>
  );
};
