import { useState } from 'preact/hooks';
import { readWholeNumber } from '../../domain/command/whole-number.ts';
import type { RecountReason } from '../../domain/log/event.ts';
import { mostPieces } from '../../domain/log/place.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { recountWords } from '../../words/outcome-words.ts';
import { numberProblemWords, problemWords } from '../../words/problem-words.ts';
import { traysWords as words } from '../../words/trays-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { CountField } from '../parts/count-field.tsx';
import { SpotChoice } from './spot-choice.tsx';
import { spotsOf, type TrayRow } from './trays-view.ts';

const bounds = { least: 0, most: mostPieces };
const reasons = Object.keys(recountWords) as readonly RecountReason[];

/** The count as it is in the hand; the log keeps the difference with its reason. */
export const RecountSheet = ({ row, onClose }: { row: TrayRow; onClose: () => void }) => {
  const session = useSession();
  const { registers } = useShop();
  const spots = spotsOf(row).toSorted((a, b) => a.shown - b.shown);
  const [spot, setSpot] = useState(spots.find(({ shown }) => shown < 0) ?? spotsOf(row)[0]);
  const [typed, setTyped] = useState('');
  const [why, setWhy] = useState<RecountReason | undefined>();
  const [refusal, setRefusal] = useState<string | undefined>();
  const [whyMissing, setWhyMissing] = useState(false);
  const read = readWholeNumber(typed, bounds);
  const save = async () => {
    if (!spot) return;
    setWhyMissing(!why);
    if (!read.ok) return setRefusal(numberProblemWords(read.problem));
    if (!why) return;
    const { shown, ...where } = spot;
    const result = await session.act({ kind: 'recount', spot: where, counted: read.value, why, note: '' });
    if (result.kind === 'refused') return setRefusal(problemWords(result.problem, registers));
    onClose();
  };
  return (
    <Sheet
      title={words.recountTitle(row.tray.code)}
      onClose={onClose}
      closeLabel={words.close}
      testId="recount-sheet"
    >
      <div class="trays-form">
        <SpotChoice spots={spotsOf(row)} chosen={spot} onChoose={setSpot} testId="recount-spot" />
        {spot && <p data-testid="recount-log">{words.recountHelp(spot.shown)}</p>}
        <CountField
          label={words.recountCounted}
          typed={typed}
          onTyped={(text) => {
            setTyped(text);
            setRefusal(undefined);
          }}
          bounds={bounds}
          error={refusal}
          fewer={words.fewer}
          more={words.moreOne}
          testId="recount-counted"
        />
        {spot && read.ok && (
          <p class="trays-difference" data-testid="recount-difference">
            {words.recountDifference(read.value - spot.shown)}
          </p>
        )}
        <ChoiceRow
          label={words.recountWhy}
          choices={reasons.map((value) => ({ value, label: recountWords[value] }))}
          value={why}
          onChoose={setWhy}
          error={whyMissing && !why ? words.recountWhyMissing : undefined}
          testId="recount-why"
        />
        <PressButton
          size="bench-small"
          tone="go"
          closing
          label={words.recountSave}
          onAct={() => void save()}
          testId="recount-save"
        />
      </div>
    </Sheet>
  );
};
