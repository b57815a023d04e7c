import { useRef, useState } from 'preact/hooks';
import type { VariantId } from '../../domain/log/ids.ts';
import { shelfPlaces } from '../../domain/log/shelf-facts.ts';
import { type ShelfRow, usualPrice } from '../../domain/rollup/shelf-stock.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { useEnterSaves } from '../../ui/field/enter.ts';
import { Field } from '../../ui/field/field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { nameOf } from '../../words/names.ts';
import { numberProblemWords, problemWords } from '../../words/problem-words.ts';
import { shelfPlaceWords } from '../../words/shelf-place-words.ts';
import { shelfWords as words } from '../../words/shelf-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { CountField } from '../parts/count-field.tsx';
import { priceText } from '../parts/money.ts';
import { Unsaved } from '../parts/unsaved.tsx';
import { asksPrice, likelyMove, type MoveDraft, placesWithPieces, readMove, usuallyTo } from './move-view.ts';
import { rowsOf } from './shelf-view.ts';

export interface MoveSheetProps {
  readonly variant: VariantId;
  readonly onClose: () => void;
}

/** Moves finished pieces of a variant from one place to another. */
export const MoveSheet = ({ variant, onClose }: MoveSheetProps) => {
  const rows = rowsOf(useShop(), variant);
  const [draft, setDraft] = useState(() => likelyMove(rows));
  const row = rows.find(({ grade }) => grade === draft?.grade);
  const title = words.moveTitle(nameOf(useShop().registers, { register: 'variant', id: variant }));
  if (draft && row) return <Move {...{ title, rows, row, draft, onClose }} onDraft={setDraft} />;
  return (
    <Sheet title={title} onClose={onClose} closeLabel={words.close} testId="move-sheet">
      <p>{words.noneFinished}</p>
    </Sheet>
  );
};

interface MoveProps extends Pick<MoveSheetProps, 'onClose'> {
  readonly title: string;
  readonly rows: readonly ShelfRow[];
  readonly row: ShelfRow;
  readonly draft: MoveDraft;
  readonly onDraft: (draft: MoveDraft) => void;
}

const Move = ({ title, rows, row, draft, onDraft, onClose }: MoveProps) => {
  const session = useSession();
  const shop = useShop();
  const [tried, setTried] = useState(false);
  const [refusal, setRefusal] = useState('');
  const usual = usualPrice(shop, row);
  const read = readMove(draft, { row, usual });
  const change = (part: Partial<MoveDraft>) => {
    setRefusal('');
    onDraft({ ...draft, ...part });
  };
  const save = async () => {
    setTried(true);
    if (!('line' in read)) return;
    const result = await session.act({ kind: 'move-on-shelf', to: draft.to, lines: [read.line] });
    if (result.kind === 'refused') return setRefusal(problemWords(result.problem, shop.registers));
    onClose();
  };
  const fields = useRef<HTMLDivElement>(null);
  useEnterSaves(fields, () => void save());
  const wrongCount = 'line' in read || !read.pieces ? undefined : numberProblemWords(read.pieces);
  const grades = rows.filter((each) => placesWithPieces(each).length > 0 || each.grade === draft.grade);
  return (
    <Sheet
      title={title}
      onClose={onClose}
      closeLabel={words.close}
      testId="move-sheet"
      foot={
        <PressButton
          tone="go"
          icon="check"
          closing
          label={'line' in read ? words.moveNow(read.line.pieces) : words.move}
          onAct={() => void save()}
          testId="move-save"
        />
      }
    >
      <div class="shelf-form" ref={fields}>
        {grades.length > 1 && (
          <ChoiceRow
            label={words.grade}
            choices={grades.map(({ grade }) => ({ value: grade, label: words.grades[grade] }))}
            value={draft.grade}
            onChoose={(grade) => onDraft(likelyMove(rows, grade) ?? draft)}
            testId="move-grade"
          />
        )}
        <ChoiceRow
          label={words.from}
          choices={placesWithPieces(row).map((value) => ({
            ...{ value, label: shelfPlaceWords[value], detail: words.thereNow(row.at[value]) },
          }))}
          value={draft.from}
          onChoose={(from) => change({ from, ...(draft.to === from && { to: usuallyTo(from) }) })}
          testId="move-from"
        />
        <ChoiceRow
          label={words.to}
          choices={shelfPlaces
            .filter((place) => place !== draft.from)
            .map((value) => ({ value, label: shelfPlaceWords[value] }))}
          value={draft.to}
          onChoose={(to) => change({ to })}
          testId="move-to"
        />
        <CountField
          label={words.howMany}
          typed={draft.pieces}
          onTyped={(pieces) => change({ pieces })}
          bounds={{ least: 1, most: Math.max(1, row.at[draft.from]) }}
          error={refusal || (tried ? wrongCount : undefined)}
          fewer={words.fewer}
          more={words.more}
          testId="move-pieces"
        />
        {asksPrice(draft) && (
          <Field
            label={draft.to === 'sold' ? words.priceEach : words.priceBack}
            hint={words.priceHint}
            optional={words.optional}
            kind="number"
            value={draft.price ?? priceText(usual)}
            onText={(price) => change({ price })}
            error={'line' in read || !read.price ? undefined : words.badPrice}
            testId="move-price"
          />
        )}
      </div>
      <Unsaved />
    </Sheet>
  );
};
