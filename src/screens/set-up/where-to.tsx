import type { StageId } from '../../domain/log/ids.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { nameOf } from '../../words/names.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';

export interface WhereToProps {
  readonly asked: readonly { readonly stage: StageId; readonly pieces: number; readonly gone: boolean }[];
  readonly stages: readonly StageId[];
  readonly destinations: ReadonlyMap<StageId, StageId>;
  readonly onChoose: (from: StageId, to: StageId) => void;
}

/** For each stage that the new order takes away or moves past others: where its pieces go. */
export const WhereTo = ({ asked, stages, destinations, onChoose }: WhereToProps) => {
  const { registers } = useShop();
  const name = (id: StageId) => nameOf(registers, { register: 'stage', id });
  return (
    <fieldset class="set-up-bill">
      <legend class="field-label">{words.whereTo}</legend>
      <p>{words.whereToLead}</p>
      {asked.map(({ stage, pieces, gone }) => (
        <SelectField
          key={stage}
          label={words.piecesAt(pieces, name(stage))}
          options={[
            ...(gone ? [] : [{ value: stage, label: words.stay(name(stage)) }]),
            ...stages.filter((id) => id !== stage).map((id) => ({ value: id, label: name(id) })),
          ]}
          value={destinations.get(stage)}
          nothing={words.chooseStage}
          onChoose={(to) => onChoose(stage, to)}
          hint={destinations.has(stage) ? undefined : words.sayWhere}
          testId={`route-destination-${stage}`}
        />
      ))}
    </fieldset>
  );
};
