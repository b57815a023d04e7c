import { type Finish, finishFor } from '../../../domain/hold/mix.ts';
import { Panel } from '../../../ui/panel/panel.tsx';
import { clockTime } from '../../../words/date-words.ts';
import { mixWords as words } from '../../../words/mix-words.ts';
import { useSession } from '../../parts/app-context.ts';
import { useNow } from '../../parts/use-now.ts';

const minute = 60_000;

/** How much finish a coat takes, and between when and when the next one goes on. */
export const FinishPanels = ({ mix, pieces }: { mix: Finish; pieces: number }) => {
  const zone = useSession().zone();
  const now = useNow();
  const { recoatFrom, recoatUntil } = mix;
  const at = (minutes: number) => clockTime(now + minutes * minute, { zone, now });
  return (
    <>
      <Panel title={words.coat(pieces)} lead={words.coatIs} testId="mix-coat">
        <p class="mix-big" data-testid="coat-ml">
          {words.ml(finishFor(pieces, mix))}
        </p>
      </Panel>
      <Panel title={words.recoat} lead={words.recoatNow} testId="mix-recoat">
        {recoatFrom === null && recoatUntil === null ? (
          <p>{words.recoatAny}</p>
        ) : (
          <p class="mix-parts">
            {recoatFrom !== null && <span>{words.recoatFrom(at(recoatFrom))} </span>}
            {recoatUntil !== null && <span>{words.recoatUntil(at(recoatUntil))}</span>}
          </p>
        )}
      </Panel>
    </>
  );
};
