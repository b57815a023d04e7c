import type { ReasonId } from '../../domain/log/ids.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';

export interface FlawButtonsEditProps {
  readonly reasons: readonly ReasonId[];
  readonly onReasons: (reasons: readonly ReasonId[]) => void;
}

const mostButtons = 6;

/** Which reasons have a button at a stage; the order of choosing is the order of their places. */
export const FlawButtonsEdit = ({ reasons, onReasons }: FlawButtonsEditProps) => {
  const all = factsOf(useShop().registers, 'reason').filter(
    ({ id, fact }) => !fact.retired || reasons.includes(id),
  );
  const full = reasons.length >= mostButtons;
  return (
    <fieldset class="set-up-bill">
      <legend class="field-label">{words.flawButtons}</legend>
      <p>{words.flawButtonsHint}</p>
      <ul class="set-up-rack">
        {all.map(({ id, fact }) => {
          const place = reasons.indexOf(id);
          const chosen = place >= 0;
          return (
            <li key={id}>
              <PressButton
                tone="flaw"
                label={fact.name}
                detail={chosen ? String(place + 1) : undefined}
                selected={chosen}
                disabledReason={full && !chosen ? words.tooManyFlaws : undefined}
                onAct={() => onReasons(chosen ? reasons.filter((each) => each !== id) : [...reasons, id])}
                testId={`stage-flaw-${id}`}
              />
            </li>
          );
        })}
      </ul>
    </fieldset>
  );
};
