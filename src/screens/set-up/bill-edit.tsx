import { partId, readId, stageId } from '../../domain/log/ids.ts';
import { liveStages } from '../../domain/route/live-stages.ts';
import type { VariantFact } from '../../domain/set-up/facts.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { nameOf } from '../../words/names.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';

type Bill = VariantFact['bill'];
type Line = Bill[number];
const mostEach = 999;

/** The parts of one piece, each with the stage that fits it. */
export const BillEdit = ({ bill, onBill }: { bill: Bill; onBill: (bill: Bill) => void }) => {
  const { registers } = useShop();
  const parts = factsOf(registers, 'part').filter(({ fact }) => !fact.retired);
  const stages = liveStages(registers);
  const free = parts.filter(({ id }) => !bill.some(({ part }) => part === id));
  const change = (part: Line['part'], by: Partial<Line>) =>
    onBill(bill.map((line) => (line.part === part ? { ...line, ...by } : line)));
  const add = () => {
    const [part, stage] = [free[0]?.id, stages[0]];
    if (part && stage) onBill([...bill, { part, each: 1, stage }]);
  };
  return (
    <fieldset class="set-up-bill">
      <legend class="field-label">{words.bill}</legend>
      <p>{words.billLead}</p>
      {bill.map((line) => (
        <div key={line.part} class="set-up-line">
          <SelectField
            label={words.part}
            options={[
              { value: `${line.part}`, label: nameOf(registers, { register: 'part', id: line.part }) },
              ...free.map(({ id, fact }) => ({ value: `${id}`, label: fact.name })),
            ]}
            value={`${line.part}`}
            onChoose={(value) => change(line.part, { part: readId(partId, value) ?? line.part })}
          />
          <SelectField
            label={words.fittedAt}
            options={stages.map((id) => ({
              value: `${id}`,
              label: nameOf(registers, { register: 'stage', id }),
            }))}
            value={`${line.stage}`}
            onChoose={(value) => change(line.part, { stage: readId(stageId, value) ?? line.stage })}
          />
          <div class="set-up-each">
            <span>
              {words.each}: <b class="figures">{line.each}</b>
            </span>
            <PressButton
              icon="minus"
              label={words.fewer}
              onAct={() => change(line.part, { each: Math.max(1, line.each - 1) })}
            />
            <PressButton
              icon="plus"
              label={words.more}
              onAct={() => change(line.part, { each: Math.min(mostEach, line.each + 1) })}
            />
            <PressButton
              tone="quiet"
              label={words.removeLine}
              onAct={() => onBill(bill.filter(({ part }) => part !== line.part))}
            />
          </div>
        </div>
      ))}
      {free.length > 0 && <PressButton icon="plus" label={words.addLine} onAct={add} testId="bill-add" />}
    </fieldset>
  );
};
