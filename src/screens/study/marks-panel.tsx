import type { MarkId } from '../../domain/log/ids.ts';
import type { MarkFact } from '../../domain/set-up/facts.ts';
import { factsOf, type Registers } from '../../domain/shop/registers.ts';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { momentWords } from '../../words/date-words.ts';
import { nameOf } from '../../words/names.ts';
import { signalsWords as words } from '../../words/signals-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { seriesInWords } from './series-name.ts';

/** Older marks than these stand one tap away: the way to the charts is not to be scrolled for. */
const mostShown = 8;

/** What was changed in the shop, the newest first. */
export const MarksPanel = ({ onAdd, onPick }: { onAdd: () => void; onPick: (id: MarkId) => void }) => {
  const { registers } = useShop();
  const marks = factsOf(registers, 'mark').toSorted((a, b) => b.fact.at - a.fact.at);
  const earlier = marks.slice(mostShown);
  return (
    <Panel
      title={words.marks}
      lead={words.marksLead}
      actions={<PressButton icon="plus" label={words.addMark} onAct={onAdd} testId="add-mark" />}
      testId="marks"
    >
      {marks.length === 0 && <p>{words.noMarks}</p>}
      <MarkList marks={marks.slice(0, mostShown)} onPick={onPick} />
      {earlier.length > 0 && (
        <Disclosure summary={words.earlierMarks(earlier.length)} testId="earlier-marks">
          <MarkList marks={earlier} onPick={onPick} />
        </Disclosure>
      )}
    </Panel>
  );
};

interface MarkListProps {
  marks: readonly { readonly id: MarkId; readonly fact: MarkFact }[];
  onPick: (id: MarkId) => void;
}

const MarkList = ({ marks, onPick }: MarkListProps) => {
  const { registers } = useShop();
  const zone = useSession().zone();
  return (
    <ul class="study-marks">
      {marks.map(({ id, fact }) => (
        <li key={id}>
          <PressButton
            label={fact.note}
            detail={`${momentWords(fact.at, zone)} · ${placeInWords(fact, registers)}`}
            onAct={() => onPick(id)}
            testId={`mark-${id}`}
          />
        </li>
      ))}
    </ul>
  );
};

function placeInWords({ stage, species, answers, retired }: MarkFact, registers: Registers): string {
  const where = answers
    ? seriesInWords({ stage, species, of: answers.of }, registers)
    : [
        nameOf(registers, { register: 'stage', id: stage }),
        species === null ? words.allWoods : nameOf(registers, { register: 'species', id: species }),
      ].join(', ');
  return retired ? `${where} · ${words.putAway}` : where;
}
