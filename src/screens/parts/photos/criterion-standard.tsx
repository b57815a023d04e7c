import './photos.css';
import type { ReasonId } from '../../../domain/log/ids.ts';
import { criterionWords as words } from '../../../words/criterion-words.ts';
import { useSession, useShop } from '../app-context.ts';
import { useCriterionShots } from './criterion-shots.ts';
import { namedShots } from './named-shots.ts';
import { PhotoStrip } from './photo-strip.tsx';

/** Photos of what passes and of what does not, side by side, while a piece is judged. Nothing where there are none. */
export const CriterionStandard = ({ reason }: { reason: ReasonId }) => {
  const session = useSession();
  const { registers } = useShop();
  const shots = useCriterionShots(reason);
  return (
    <div class="criterion-standard">
      {(['good', 'bad'] as const).map(
        (verdict) =>
          shots[verdict].length > 0 && (
            <section key={verdict} class="photo-section" data-verdict={verdict} aria-label={words[verdict]}>
              <h3>{words[verdict]}</h3>
              <PhotoStrip
                photos={namedShots(shots[verdict], { registers, session }).map(({ key, photo, name }) => ({
                  key,
                  photo,
                  name,
                }))}
                testId={`standard-${verdict}`}
              />
            </section>
          ),
      )}
    </div>
  );
};
