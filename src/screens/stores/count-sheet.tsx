import { useState } from 'preact/hooks';
import { readWholeNumber } from '../../domain/command/whole-number.ts';
import { type CountReason, type Heap, mostParts } from '../../domain/log/stores-facts.ts';
import { isTold, partsOnHand, partsToClean } from '../../domain/rollup/parts-on-hand.ts';
import { NumberPad } from '../../ui/entry/number-pad.tsx';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { nameOf } from '../../words/names.ts';
import { countReasonWords, heapWords } from '../../words/parts-words.ts';
import { numberProblemWords, problemWords } from '../../words/problem-words.ts';
import { storesWords as words } from '../../words/stores-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { Unsaved } from '../parts/unsaved.tsx';
import type { PartSheetProps } from './part-sheet-props.ts';

const bounds = { least: 0, most: mostParts };
const reasons = Object.keys(countReasonWords) as readonly CountReason[];
const heaps = Object.keys(heapWords) as readonly Heap[];

/** A count that another act has led to: nothing of it is kept until the person says so. */
export interface Proposed {
  readonly counted: number;
  readonly why: CountReason;
}

export interface CountSheetProps extends PartSheetProps {
  readonly proposed?: Proposed | undefined;
}

/** What a person has counted of a part; the log keeps the difference with its reason. */
export const CountSheet = ({ part, onClose, proposed }: CountSheetProps) => {
  const session = useSession();
  const shop = useShop();
  const there = { shelf: partsOnHand(shop, part), 'to-clean': partsToClean(shop, part) };
  const told = isTold(shop, part);
  const hasHeaps = there['to-clean'] !== 0;
  const [heap, setHeap] = useState<Heap>(there['to-clean'] < 0 ? 'to-clean' : 'shelf');
  const [typed, setTyped] = useState(proposed ? `${proposed.counted}` : '');
  const [why, setWhy] = useState<CountReason | undefined>(
    proposed?.why ?? (told ? undefined : 'first-count'),
  );
  const [refusal, setRefusal] = useState<string | undefined>();
  const [whyMissing, setWhyMissing] = useState(false);
  const read = readWholeNumber(typed, bounds);
  const save = async () => {
    setWhyMissing(!why);
    if (!read.ok) return setRefusal(numberProblemWords(read.problem));
    if (!why) return;
    const result = await session.act({ kind: 'count-parts', part, heap, counted: read.value, why, note: '' });
    if (result.kind === 'refused') return setRefusal(problemWords(result.problem, shop.registers));
    onClose();
  };
  return (
    <Sheet
      title={words.countTitle(nameOf(shop.registers, { register: 'part', id: part }))}
      onClose={onClose}
      closeLabel={words.close}
      shape="whole"
      testId="count-sheet"
      foot={
        <PressButton
          tone="go"
          icon="check"
          closing
          label={words.save}
          onAct={() => void save()}
          testId="count-save"
        />
      }
    >
      <div class="stores-entry">
        <NumberPad
          label={words.counted}
          typed={typed}
          onTyped={(text) => {
            setTyped(text);
            setRefusal(undefined);
          }}
          eraseLabel={words.erase}
          error={refusal}
          onEnter={() => void save()}
          testId="count-pieces"
        />
        <div class="stores-form">
          {hasHeaps && (
            <ChoiceRow
              label={words.whichHeap}
              choices={heaps.map((value) => ({ value, label: heapWords[value] }))}
              value={heap}
              onChoose={setHeap}
              testId="count-heap"
            />
          )}
          <p data-testid="count-log">
            {heap === 'shelf' && !told ? words.logKnowsNot : words.logSays(there[heap])}
          </p>
          <p class="stores-difference" data-testid="count-difference">
            {read.ok ? words.difference(read.value - there[heap]) : ''}
          </p>
          <ChoiceRow
            label={words.why}
            choices={reasons.map((value) => ({ value, label: countReasonWords[value] }))}
            value={why}
            onChoose={setWhy}
            error={whyMissing && !why ? words.whyMissing : undefined}
            testId="count-why"
          />
        </div>
      </div>
      <Unsaved />
    </Sheet>
  );
};
