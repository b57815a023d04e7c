import { useState } from 'preact/hooks';
import { readWholeNumber } from '../../domain/command/whole-number.ts';
import { mostParts } from '../../domain/log/stores-facts.ts';
import { longestNote } from '../../domain/set-up/text-schema.ts';
import { NumberPad } from '../../ui/entry/number-pad.tsx';
import { Field } from '../../ui/field/field.tsx';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { nameOf } from '../../words/names.ts';
import { numberProblemWords, problemWords } from '../../words/problem-words.ts';
import { samplingWords } from '../../words/sampling-words.ts';
import { storesWords as words } from '../../words/stores-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { readPrice } from '../parts/money.ts';
import { Unsaved } from '../parts/unsaved.tsx';
import { HowManyToCheck, useLimit } from './how-many-to-check.tsx';
import type { PartSheetProps } from './part-sheet-props.ts';

const bounds = { least: 1, most: mostParts };

/** A delivery of one part: how many came, and what they cost. */
export const ReceiveSheet = ({ part, onClose }: PartSheetProps) => {
  const session = useSession();
  const { registers } = useShop();
  const [typed, setTyped] = useState('');
  const [cost, setCost] = useState('');
  const [note, setNote] = useState('');
  const [refusal, setRefusal] = useState<string | undefined>();
  const [limit, chooseLimit] = useLimit();
  const price = readPrice(cost);
  const came = readWholeNumber(typed, bounds);
  const save = async () => {
    if (!came.ok) return setRefusal(numberProblemWords(came.problem));
    if (price === undefined) return;
    const parts = [{ part, pieces: came.value, cost: price }];
    const result = await session.act({ kind: 'receive-parts', parts, note });
    if (result.kind === 'refused') return setRefusal(problemWords(result.problem, registers));
    onClose();
  };
  return (
    <Sheet
      title={words.receiveTitle(nameOf(registers, { register: 'part', id: part }))}
      onClose={onClose}
      closeLabel={words.close}
      shape="whole"
      testId="receive-sheet"
      foot={
        <PressButton
          tone="go"
          icon="check"
          closing
          label={words.receive}
          onAct={() => void save()}
          testId="receive-save"
        />
      }
    >
      <div class="stores-entry">
        <NumberPad
          label={words.received}
          typed={typed}
          onTyped={(text) => {
            setTyped(text);
            setRefusal(undefined);
          }}
          eraseLabel={words.erase}
          error={refusal}
          onEnter={() => void save()}
          testId="receive-pieces"
        />
        <div class="stores-form">
          <Field
            label={words.cost}
            hint={words.costHint}
            optional={words.optional}
            kind="number"
            value={cost}
            onText={setCost}
            error={price === undefined ? words.badCost : undefined}
            testId="receive-cost"
          />
          <Field
            label={words.note}
            optional={words.optional}
            value={note}
            onText={setNote}
            longest={longestNote}
            tooLong={(length) => words.tooLong(length, longestNote)}
            testId="receive-note"
          />
          <Disclosure summary={samplingWords.title} testId="receive-check">
            <HowManyToCheck came={came.ok ? came.value : undefined} limit={limit} onLimit={chooseLimit} />
            <p>{samplingWords.keepLater}</p>
          </Disclosure>
        </div>
      </div>
      <Unsaved />
    </Sheet>
  );
};
