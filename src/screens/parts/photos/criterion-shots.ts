import type { ReasonId } from '../../../domain/log/ids.ts';
import { type Shot, shotsAmong } from '../../../domain/rollup/photos.ts';
import { useShop } from '../app-context.ts';
import { useHistory } from '../use-history.ts';

type Verdict = 'good' | 'bad';

/** The photos of what a criterion accepts, and of what it does not, the newest first. */
export function useCriterionShots(reason: ReasonId): Readonly<Record<Verdict, readonly Shot[]>> {
  const { voids } = useShop();
  const shots = shotsAmong(useHistory(`reason/${reason}`), voids);
  const of = (verdict: Verdict) =>
    shots.filter(
      (shot) =>
        shot.kind === 'photo-taken' && shot.shows.kind === 'criterion' && shot.shows.verdict === verdict,
    );
  return { good: of('good'), bad: of('bad') };
}
