import type { StageId } from '../../domain/log/ids.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { nameOf } from '../../words/names.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import { moved, movedTo } from '../parts/order/moved.ts';
import { OrderButtons, useSteadyRow } from '../parts/order/order-rows.tsx';
import { type Ask, putBack, type RouteDraft, type RouteRow } from './route-draft.ts';

export interface RouteRowsProps {
  readonly rows: readonly RouteRow[];
  readonly draft: RouteDraft;
  readonly onChange: (part: Partial<RouteDraft>) => void;
  /** A save was tried: what is unanswered is now said to be wrong. */
  readonly askNow: boolean;
}

/** The stages in order, each with up, down and off, and with the question where its pieces go when there is one. */
export const RouteRows = ({ rows, draft, onChange, askNow }: RouteRowsProps) => {
  const { registers } = useShop();
  const steady = useSteadyRow(draft.stages.join(' '));
  const elements = new Map<StageId, Element | null>();
  const { stages, destinations } = draft;
  const arrange = (stage: StageId, next: readonly StageId[]) => {
    steady(elements.get(stage) ?? null);
    onChange({ stages: next });
  };
  return (
    <ol class="set-up-route" data-testid="route-rows">
      {rows.map(({ stage, place, pieces, ask }) => {
        const name = nameOf(registers, { register: 'stage', id: stage });
        return (
          <li
            key={stage}
            ref={(element) => void elements.set(stage, element)}
            data-leaves={place === null || undefined}
            data-testid={`route-row-${stage}`}
          >
            <span class="set-up-stage">
              {place === null ? (
                <b>{words.off}</b>
              ) : (
                <PlaceChoice
                  name={name}
                  stage={stage}
                  place={place}
                  of={stages.length}
                  onPlace={(to) => onChange({ stages: movedTo(stages, { thing: stage, place: to }) })}
                />
              )}
              <span class="set-up-stage-name">
                <span dir="auto">{name}</span>
                {pieces !== 0 && <small data-testid={`route-pieces-${stage}`}>{words.here(pieces)}</small>}
              </span>
            </span>
            {place === null ? (
              <PressButton
                label={words.putBack}
                name={`${words.putBack}: ${name}`}
                icon="undo"
                onAct={() => onChange({ stages: putBack(draft, stage) })}
                testId={`route-back-${stage}`}
              />
            ) : (
              <OrderButtons
                id={stage}
                name={name}
                kind="route"
                onMove={(by) => arrange(stage, moved(stages, { thing: stage, by }))}
                onRemove={() => onChange({ stages: stages.filter((each) => each !== stage) })}
              />
            )}
            {ask && (
              <WhereTo
                stage={stage}
                ask={ask}
                stages={stages}
                wrong={askNow && ask.to === undefined}
                onChoose={(to) => onChange({ destinations: new Map([...destinations, [stage, to]]) })}
              />
            )}
          </li>
        );
      })}
    </ol>
  );
};

interface PlaceChoiceProps {
  readonly name: string;
  readonly stage: StageId;
  readonly place: number;
  readonly of: number;
  readonly onPlace: (place: number) => void;
}

/** The number of a stage, which is also the short way to a place far off. */
const PlaceChoice = ({ name, stage, place, of, onPlace }: PlaceChoiceProps) => (
  <select
    class="slot set-up-place"
    aria-label={words.placeOf(name)}
    value={String(place)}
    data-testid={`route-place-${stage}`}
    onChange={(event) => onPlace(Number(event.currentTarget.value))}
  >
    {Array.from({ length: of }, (_, each) => (
      <option key={each} value={String(each)}>
        {each + 1}
      </option>
    ))}
  </select>
);

interface WhereToProps {
  readonly stage: StageId;
  readonly ask: Ask;
  readonly stages: readonly StageId[];
  readonly wrong: boolean;
  readonly onChoose: (to: StageId) => void;
}

/** Where the pieces of a stage go that the new order takes away or moves past another. */
const WhereTo = ({ stage, ask, stages, wrong, onChoose }: WhereToProps) => {
  const { registers } = useShop();
  const name = (id: StageId) => nameOf(registers, { register: 'stage', id });
  const stay = ask.gone ? [] : [{ value: stage, label: words.stay(name(stage)) }];
  const others = stages.filter((id) => id !== stage).map((id) => ({ value: id, label: name(id) }));
  return (
    <div class="set-up-where">
      <SelectField
        label={ask.pieces === 1 ? words.whereToOne : words.whereTo(ask.pieces)}
        hint={ask.gone ? words.leaves(name(stage)) : words.movedPast(name(stage))}
        options={[...stay, ...others]}
        value={ask.to}
        nothing={words.chooseStage}
        onChoose={onChoose}
        error={wrong ? words.sayWhere : undefined}
        testId={`route-destination-${stage}`}
      />
    </div>
  );
};
