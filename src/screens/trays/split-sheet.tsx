import { useState } from 'preact/hooks';
import { readWholeNumber } from '../../domain/command/whole-number.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { numberProblemWords, problemWords } from '../../words/problem-words.ts';
import { traysWords as words } from '../../words/trays-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { CountField } from '../parts/count-field.tsx';
import { SpotChoice } from './spot-choice.tsx';
import { spotsOf, type TrayRow } from './trays-view.ts';

/** Some pieces of a tray go to a tray of their own. */
export const SplitSheet = ({ row, onClose }: { row: TrayRow; onClose: () => void }) => {
  const session = useSession();
  const { registers } = useShop();
  const spots = spotsOf(row).filter(({ shown }) => shown > 0);
  const [spot, setSpot] = useState(spots[0]);
  const [typed, setTyped] = useState('1');
  const [refusal, setRefusal] = useState<string | undefined>();
  const [code, setCode] = useState<string | null>(null);
  const bounds = { least: 1, most: spot?.shown ?? 1 };
  const save = async () => {
    if (!spot) return;
    const read = readWholeNumber(typed, bounds);
    if (!read.ok) return setRefusal(numberProblemWords(read.problem));
    const result = await session.act({ kind: 'split', spot, pieces: read.value });
    if (result.kind === 'refused') return setRefusal(problemWords(result.problem, registers));
    const made = result.events.find((event) => event.kind === 'tray-split');
    setCode(made?.into.code ?? '');
  };
  return (
    <Sheet
      title={words.splitTitle(row.tray.code)}
      onClose={onClose}
      closeLabel={words.close}
      testId="split-sheet"
    >
      {code === null ? (
        <div class="trays-form">
          <p>{words.splitHelp}</p>
          <SpotChoice spots={spots} chosen={spot} onChoose={setSpot} testId="split-spot" />
          <CountField
            label={words.splitPieces}
            typed={typed}
            onTyped={setTyped}
            bounds={bounds}
            error={refusal}
            fewer={words.fewer}
            more={words.moreOne}
            testId="split-pieces"
          />
          <PressButton
            size="bench-small"
            tone="go"
            closing
            label={words.splitSave}
            onAct={() => void save()}
            testId="split-save"
          />
        </div>
      ) : (
        <div class="trays-form">
          <p>{words.splitDone}</p>
          <p class="trays-made code" data-testid="split-code">
            {code}
          </p>
        </div>
      )}
    </Sheet>
  );
};
