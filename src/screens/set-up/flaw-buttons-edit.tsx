import type { ReasonId } from '../../domain/log/ids.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { nameOf } from '../../words/names.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import { moved } from '../parts/order/moved.ts';
import { OrderButtons, useSteadyRow } from '../parts/order/order-rows.tsx';
import { mostFlawButtons } from './stage-draft.ts';

export interface FlawButtonsEditProps {
  readonly reasons: readonly ReasonId[];
  readonly onReasons: (reasons: readonly ReasonId[]) => void;
}

/** Which reasons have a button at a stage, each in its place for good. */
export const FlawButtonsEdit = ({ reasons, onReasons }: FlawButtonsEditProps) => {
  const { registers } = useShop();
  const steady = useSteadyRow(reasons.join(' '));
  const rows = new Map<ReasonId, Element | null>();
  const free = factsOf(registers, 'reason').filter(({ id, fact }) => !fact.retired && !reasons.includes(id));
  const full = reasons.length >= mostFlawButtons;
  const move = (thing: ReasonId, by: number) => {
    steady(rows.get(thing) ?? null);
    onReasons(moved(reasons, { thing, by }));
  };
  return (
    <fieldset class="set-up-bill">
      <legend class="field-label">{words.flawButtons}</legend>
      <p>{reasons.length === 0 ? words.noFlawButtons : full ? words.flawsFull : words.flawButtonsHint}</p>
      <ol class="set-up-route">
        {reasons.map((id, place) => (
          <li key={id} ref={(row) => void rows.set(id, row)}>
            <span class="set-up-stage">
              <b class="figures">{place + 1}</b>
              <span dir="auto">{nameOf(registers, { register: 'reason', id })}</span>
            </span>
            <OrderButtons
              id={id}
              name={nameOf(registers, { register: 'reason', id })}
              kind="stage-flaw"
              onMove={(by) => move(id, by)}
              onRemove={() => onReasons(reasons.filter((each) => each !== id))}
            />
          </li>
        ))}
      </ol>
      {!full && (
        <ul class="set-up-rack">
          {free.map(({ id, fact }) => (
            <li key={id}>
              <PressButton
                tone="flaw"
                icon="plus"
                label={fact.name}
                onAct={() => onReasons([...reasons, id])}
                testId={`stage-flaw-${id}`}
              />
            </li>
          ))}
        </ul>
      )}
    </fieldset>
  );
};
