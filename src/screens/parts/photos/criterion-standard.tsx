import './photos.css';
import type { ReasonId } from '../../../domain/log/ids.ts';
import { factOf } from '../../../domain/shop/registers.ts';
import { criterionWords as words } from '../../../words/criterion-words.ts';
import { useSession, useShop } from '../app-context.ts';
import { useCriterionShots } from './criterion-shots.ts';
import { namedShots } from './named-shots.ts';
import { PhotoStrip } from './photo-strip.tsx';

/** What passes, in words and photos beside those of what does not, while a piece is judged. Nothing where there are none. */
export const CriterionStandard = ({ reason }: { reason: ReasonId }) => {
  const session = useSession();
  const { registers } = useShop();
  const shots = useCriterionShots(reason);
  const passes = factOf(registers, { register: 'reason', id: reason })?.passes;
  return (
    <div class="criterion-standard">
      {passes && (
        <p>
          {words.passes}: <b>{passes}</b>
        </p>
      )}
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
