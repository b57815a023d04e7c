import { partId, readId, type StageId, stageId } from '../../domain/log/ids.ts';
import { liveStages } from '../../domain/route/live-stages.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { nameOf } from '../../words/names.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import { CountField } from '../parts/count-field.tsx';
import { type BillLine, eachBounds, eachProblem, type VariantDraft } from './variant-draft.ts';

type BillProps = Pick<VariantDraft, 'bill' | 'ferrule'> & {
  readonly onBill: (bill: readonly BillLine[]) => void;
};

/** The parts of one piece, each with the stage that fits it. */
export const BillEdit = ({ bill, ferrule, onBill }: BillProps) => {
  const { registers } = useShop();
  const parts = factsOf(registers, 'part').filter(({ fact }) => !fact.retired);
  const free = parts.filter(({ id }) => !bill.some(({ part }) => part === id));
  const stages = liveStages(registers);
  const change = (part: BillLine['part'], by: Partial<BillLine>) =>
    onBill(bill.map((line) => (line.part === part ? { ...line, ...by } : line)));
  const add = () => {
    const [part, stage] = [free[0]?.id, stages[0]];
    if (part && stage) onBill([...bill, { part, each: '1', stage }]);
  };
  return (
    <fieldset class="set-up-bill">
      <legend class="field-label">{words.bill}</legend>
      <p>{words.billLead}</p>
      {bill.map((line) => (
        <Line
          key={line.part}
          line={line}
          isFerrule={line.part === ferrule}
          free={free.map(({ id }) => id)}
          stages={stages}
          onChange={(by) => change(line.part, by)}
          onRemove={() => onBill(bill.filter(({ part }) => part !== line.part))}
        />
      ))}
      {free.length > 0 && (
        <div>
          <PressButton icon="plus" label={words.addLine} onAct={add} testId="bill-add" />
        </div>
      )}
    </fieldset>
  );
};

interface LineProps {
  readonly line: BillLine;
  /** The variant's ferrule is chosen above: here only its number and stage. */
  readonly isFerrule: boolean;
  readonly free: readonly BillLine['part'][];
  readonly stages: readonly StageId[];
  readonly onChange: (by: Partial<BillLine>) => void;
  readonly onRemove: () => void;
}

const Line = ({ line, isFerrule, free, stages, onChange, onRemove }: LineProps) => {
  const { registers } = useShop();
  const { part, each, stage } = line;
  const partName = (id: string) => nameOf(registers, { register: 'part', id });
  const offered = stages.includes(stage) ? stages : [stage, ...stages];
  return (
    <div class="set-up-line">
      {isFerrule ? (
        <p class="set-up-part">
          <span class="field-label">{words.ferrule}</span>
          <b dir="auto">{partName(part)}</b>
        </p>
      ) : (
        <SelectField
          label={words.part}
          options={[part, ...free].map((id) => ({ value: `${id}`, label: partName(id) }))}
          value={`${part}`}
          onChoose={(value) => onChange({ part: readId(partId, value) ?? part })}
          testId={`bill-part-${part}`}
        />
      )}
      <SelectField
        label={words.fittedAt}
        options={offered.map((id) => ({
          value: `${id}`,
          label: nameOf(registers, { register: 'stage', id }),
        }))}
        value={`${stage}`}
        onChoose={(value) => onChange({ stage: readId(stageId, value) ?? stage })}
        hint={stages.includes(stage) ? undefined : words.offRoute}
        testId={`bill-stage-${part}`}
      />
      <CountField
        label={words.each}
        typed={each}
        onTyped={(typed) => onChange({ each: typed })}
        bounds={eachBounds}
        error={eachProblem(line)}
        fewer={words.fewer}
        more={words.more}
        of={partName(part)}
        testId={`bill-each-${part}`}
      />
      {!isFerrule && (
        <PressButton
          tone="quiet"
          label={words.removeLine}
          name={`${words.removeLine}: ${partName(part)}`}
          onAct={onRemove}
          testId={`bill-remove-${part}`}
        />
      )}
    </div>
  );
};
