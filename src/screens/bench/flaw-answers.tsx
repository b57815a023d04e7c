import type { OutcomeKind } from '../../domain/log/event.ts';
import type { PartId, ReasonId, StageId } from '../../domain/log/ids.ts';
import { BenchGrid } from '../../ui/bench/bench-grid.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { nameOf } from '../../words/names.ts';
import { stageWords as words } from '../../words/stage-words.ts';
import { useShop } from '../parts/app-context.ts';
import { type BenchView, outcomesFor, salvageChoices, sendBackStages } from './bench-view.ts';
import { useAnswerKeys } from './use-bench-keys.ts';

interface OutcomesProps {
  readonly view: BenchView;
  readonly reason: ReasonId;
  readonly onChoose: (kind: OutcomeKind) => void;
}

/** The likeliest outcome first. Scrap stands in a row of its own, apart from what passes a piece on. */
export const Outcomes = ({ view, reason, onChoose }: OutcomesProps) => {
  const kinds = outcomesFor(useShop(), { view, reason });
  const others = kinds.filter((kind) => kind !== 'scrapped');
  const scrapLast: readonly (readonly OutcomeKind[])[] = [others, ['scrapped']];
  const rows = kinds[0] === 'scrapped' ? scrapLast.toReversed() : scrapLast;
  const inOrder = rows.flat();
  const keys = useAnswerKeys(inOrder.map((kind) => () => onChoose(kind)));
  return (
    <div class="flaw-outcomes">
      {rows.map((row) => (
        <BenchGrid key={row.join()}>
          {row.map((kind) => (
            <PressButton
              key={kind}
              size="bench"
              tone={kind === 'scrapped' ? 'danger' : 'plain'}
              label={words.outcomes[kind]}
              detail={words.outcomeDetails[kind]}
              keyHint={keys[inOrder.indexOf(kind)]}
              onAct={() => onChoose(kind)}
              testId={`outcome-${kind}`}
            />
          ))}
        </BenchGrid>
      ))}
    </div>
  );
};

/** The stages that it can go back to. */
export const SendBack = ({ view, onChoose }: { view: BenchView; onChoose: (to: StageId) => void }) => {
  const shop = useShop();
  const stages = sendBackStages(shop, view);
  const keys = useAnswerKeys(stages.map((stage) => () => onChoose(stage)));
  return (
    <>
      {stages.map((stage, place) => (
        <PressButton
          key={stage}
          size="bench"
          label={nameOf(shop.registers, { register: 'stage', id: stage })}
          keyHint={keys[place]}
          onAct={() => onChoose(stage)}
          testId={`back-to-${stage}`}
        />
      ))}
    </>
  );
};

interface AlsoWrongProps {
  readonly reasons: readonly ReasonId[];
  readonly chosen: ReadonlySet<ReasonId>;
  readonly onChoose: (reason: ReasonId) => void;
}

/** What else is wrong with it; each can be taken back. */
export const AlsoWrong = ({ reasons, chosen, onChoose }: AlsoWrongProps) => {
  const { registers } = useShop();
  const keys = useAnswerKeys(reasons.map((reason) => () => onChoose(reason)));
  return (
    <>
      {reasons.map((reason, place) => (
        <PressButton
          key={reason}
          size="bench"
          tone="flaw"
          label={nameOf(registers, { register: 'reason', id: reason })}
          selected={chosen.has(reason)}
          keyHint={keys[place]}
          onAct={() => onChoose(reason)}
        />
      ))}
    </>
  );
};

/** What of it is saved. */
export const Salvage = ({
  view,
  onSave,
}: {
  view: BenchView;
  onSave: (saved: readonly PartId[]) => void;
}) => {
  const shop = useShop();
  const choices = salvageChoices(shop, view);
  const keys = useAnswerKeys(choices.map((saved) => () => onSave(saved)));
  const partName = (id: PartId) => nameOf(shop.registers, { register: 'part', id });
  const label = (saved: readonly PartId[]) => {
    if (saved.length === 0) return words.saveNone;
    return saved.length === 1 && saved[0] ? words.saveOne(partName(saved[0])) : words.saveAll;
  };
  return (
    <>
      {choices.map((saved, place) => (
        <PressButton
          key={saved.join()}
          size="bench"
          keyHint={keys[place]}
          label={label(saved)}
          detail={saved.length > 1 ? saved.map(partName).join(', ') : undefined}
          onAct={() => onSave(saved)}
          testId={`save-${saved.length > 1 ? 'all' : (saved[0] ?? 'none')}`}
        />
      ))}
    </>
  );
};
