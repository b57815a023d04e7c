import { useState } from 'preact/hooks';
import { readWholeNumber } from '../../../domain/command/whole-number.ts';
import { Panel } from '../../../ui/panel/panel.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { listingWords as words } from '../../../words/listing-words.ts';
import { nameOf } from '../../../words/names.ts';
import { numberProblemWords, problemWords } from '../../../words/problem-words.ts';
import { shelfWords } from '../../../words/shelf-words.ts';
import { useSession, useShop } from '../../parts/app-context.ts';
import { CountField } from '../../parts/count-field.tsx';
import { chosenLines, kindKey, type LineToList, linesToList, rowsToList, type Said } from './listing-view.ts';

const nothingSaid: Said = new Map();

/** What stands on the shelf, with how many of each are listed; all at first. */
export const ToList = () => {
  const session = useSession();
  const shop = useShop();
  const [said, setSaid] = useState(nothingSaid);
  const [refusal, setRefusal] = useState('');
  const lines = linesToList(rowsToList(shop), said);
  const chosen = chosenLines(lines);
  const pieces = chosen?.reduce((sum, line) => sum + line.pieces, 0) ?? 0;
  const say = (line: LineToList, part: { chosen?: boolean; typed?: string }) => {
    setRefusal('');
    const key = kindKey(line.row);
    const { chosen: was, typed } = line;
    setSaid((before) => new Map([...before, [key, { chosen: was, typed, ...before.get(key), ...part }]]));
  };
  const sayAll = (all: boolean) =>
    setSaid(new Map(lines.map(({ row, typed }) => [kindKey(row), { chosen: all, typed }])));
  const list = async () => {
    if (!chosen) return;
    const result = await session.act({ kind: 'move-on-shelf', to: 'listed', lines: chosen });
    if (result.kind === 'refused') return setRefusal(problemWords(result.problem, shop.registers));
    setRefusal('');
    setSaid(nothingSaid);
  };
  if (lines.length === 0)
    return (
      <Panel title={words.toList} testId="to-list">
        <p data-testid="nothing-to-list">{words.nothingToList}</p>
      </Panel>
    );
  return (
    <Panel
      title={words.toList}
      lead={words.toListLead}
      testId="to-list"
      actions={
        <>
          <PressButton label={words.all} onAct={() => sayAll(true)} testId="list-all" />
          <PressButton label={words.none} onAct={() => sayAll(false)} testId="list-none" />
        </>
      }
    >
      <ul class="listing-lines">
        {lines.map((line) => (
          <Line key={kindKey(line.row)} line={line} onSay={(part) => say(line, part)} />
        ))}
      </ul>
      <div class="listing-act">
        <PressButton
          tone="go"
          icon="label"
          closing
          label={words.list(pieces)}
          disabledReason={pieces === 0 ? words.chooseSome : undefined}
          onAct={() => void list()}
          testId="list-now"
        />
        <p role="alert" data-testid="list-refused">
          {refusal}
        </p>
      </div>
    </Panel>
  );
};

interface LineProps {
  readonly line: LineToList;
  readonly onSay: (part: { chosen?: boolean; typed?: string }) => void;
}

const Line = ({ line: { row, chosen, typed }, onSay }: LineProps) => {
  const { registers } = useShop();
  const { variant, grade, at } = row;
  const name = nameOf(registers, { register: 'variant', id: variant });
  const kind = words.kind(name, shelfWords.grades[grade].toLowerCase());
  const bounds = { least: 1, most: at.shelf };
  const read = readWholeNumber(typed, bounds);
  const id = `${variant}-${grade}`;
  return (
    <li class="listing-line">
      <label class="listing-kind">
        <input
          type="checkbox"
          checked={chosen}
          onChange={({ currentTarget }) => onSay({ chosen: currentTarget.checked })}
          data-testid={`list-${id}`}
        />
        <span>
          <b dir="auto">{kind}</b>
          <span class="shelf-detail">{words.onShelf(at.shelf)}</span>
        </span>
      </label>
      {chosen && (
        <CountField
          label={words.howMany}
          typed={typed}
          onTyped={(text) => onSay({ typed: text })}
          bounds={bounds}
          error={read.ok ? undefined : numberProblemWords(read.problem)}
          fewer={words.fewer}
          more={words.more}
          of={kind}
          testId={`list-${id}-pieces`}
        />
      )}
    </li>
  );
};
