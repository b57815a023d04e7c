import { useState } from 'preact/hooks';
import type { Command } from '../../domain/command/command.ts';
import type { Outcome, OutcomeKind } from '../../domain/log/event.ts';
import type { PartId, ReasonId } from '../../domain/log/ids.ts';
import { BenchGrid } from '../../ui/bench/bench-grid.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { nameOf } from '../../words/names.ts';
import { stageWords as words } from '../../words/stage-words.ts';
import { useShop } from '../parts/app-context.ts';
import { type BenchView, outcomesFor, salvageChoices, sendBackStages, spotOf } from './bench-view.ts';
import { CriterionStandard } from './criterion-hint.tsx';
import { EarlyQuestion } from './early-question.tsx';
import { FlawPhoto, useFlawPhoto } from './flaw-photo.tsx';
import { HowMany } from './how-many.tsx';

export interface FlawPanelProps {
  readonly view: BenchView;
  readonly reason: ReasonId;
  readonly now: number;
  /** True when it was done. */
  readonly act: (command: Command) => Promise<boolean>;
  readonly onDone: () => void;
}

type Step = 'outcome' | 'send-back' | 'salvage' | 'also' | { readonly early: Outcome };

/** What becomes of a flawed piece: one tap, or two where a stage or the saved parts must be named. Asks once of a cure. */
export const FlawPanel = ({ view, reason, now, act, onDone }: FlawPanelProps) => {
  const shop = useShop();
  const [step, setStep] = useState<Step>('outcome');
  const [also, setAlso] = useState<ReadonlySet<ReasonId>>(new Set());
  const [pieces, setPieces] = useState(1);
  const [photo, setPhoto] = useState<File | null>(null);
  const keepPhoto = useFlawPhoto();
  const reasonName = (id: ReasonId) => nameOf(shop.registers, { register: 'reason', id });
  const spot = spotOf(view, view.stage.kind === 'hold' && view.held[view.grade] > 0 ? 'held' : 'waiting');

  const isEarly = spot.at === 'held' && pieces > view.mayComeOut;
  const finish = (outcome: Outcome) => (isEarly ? setStep({ early: outcome }) : void take(outcome));
  const take = async (outcome: Outcome) => {
    onDone();
    const reasons = [reason, ...also];
    const isDone = await act({ kind: 'flaw', spot, pieces, reasons, outcome });
    if (isDone && photo) await keepPhoto(photo, { tray: spot.tray, stage: spot.stage, reasons });
  };
  const choose = (kind: OutcomeKind) => {
    if (kind === 'sent-back') return setStep('send-back');
    if (kind !== 'scrapped') return finish({ kind });
    const choices = salvageChoices(shop, view);
    return choices.length > 1 ? setStep('salvage') : finish({ kind, saved: [] });
  };

  if (typeof step === 'object') {
    return <EarlyQuestion view={view} now={now} onKeep={onDone} onTakeOut={() => void take(step.early)} />;
  }
  const question = {
    outcome: words.whatBecomes([reason, ...also].map(reasonName).join(', ')),
    'send-back': words.whereTo,
    salvage: words.whatIsSaved,
    also: words.alsoWrong,
  }[step];
  return (
    <section class="flaw-panel" aria-label={question}>
      <div class="flaw-head">
        <h2 class="flaw-question">{question}</h2>
        {step === 'outcome' && view.stage.bulk && spot.shown > 1 && (
          <HowMany pieces={pieces} most={spot.shown} onPieces={setPieces} />
        )}
        {step === 'outcome' && <FlawPhoto taken={photo !== null} onFile={setPhoto} />}
      </div>
      {step === 'outcome' ? (
        <div class="flaw-judging">
          <Outcomes view={view} reason={reason} onChoose={choose} />
          {view.stage.kind === 'check' && <CriterionStandard reason={reason} />}
        </div>
      ) : (
        <BenchGrid>
          {step === 'send-back' &&
            sendBackStages(shop, view).map((stage) => (
              <PressButton
                key={stage}
                size="bench"
                label={nameOf(shop.registers, { register: 'stage', id: stage })}
                onAct={() => finish({ kind: 'sent-back', to: stage })}
                testId={`back-to-${stage}`}
              />
            ))}
          {step === 'salvage' && (
            <Salvage view={view} onSave={(saved) => finish({ kind: 'scrapped', saved: [...saved] })} />
          )}
          {step === 'also' &&
            view.stage.reasons
              .filter((each) => each !== reason)
              .map((each) => (
                <PressButton
                  key={each}
                  size="bench"
                  tone="flaw"
                  label={reasonName(each)}
                  selected={also.has(each)}
                  onAct={() => setAlso(toggled(also, each))}
                />
              ))}
        </BenchGrid>
      )}
      <div class="flaw-foot bench-row">
        <PressButton
          size="bench-small"
          tone="quiet"
          icon="back"
          label={step === 'also' ? words.alsoWrongDone : words.cancel}
          onAct={() => (step === 'outcome' ? onDone() : setStep('outcome'))}
          testId="flaw-cancel"
        />
        {step === 'outcome' && view.stage.reasons.length > 1 && (
          <PressButton
            size="bench-small"
            tone="quiet"
            icon="plus"
            label={words.alsoWrong}
            onAct={() => setStep('also')}
            testId="flaw-also"
          />
        )}
      </div>
    </section>
  );
};

function toggled<Item>(set: ReadonlySet<Item>, item: Item): ReadonlySet<Item> {
  const next = new Set(set);
  if (!next.delete(item)) next.add(item);
  return next;
}

interface OutcomesProps {
  readonly view: BenchView;
  readonly reason: ReasonId;
  readonly onChoose: (kind: OutcomeKind) => void;
}

/** The likeliest outcome first. Scrap stands in a row of its own, apart from what passes a piece on. */
const Outcomes = ({ view, reason, onChoose }: OutcomesProps) => {
  const kinds = outcomesFor(useShop(), { view, reason });
  const others = kinds.filter((kind) => kind !== 'scrapped');
  const rows: readonly (readonly OutcomeKind[])[] = [others, ['scrapped']];
  return (
    <div class="flaw-outcomes">
      {(kinds[0] === 'scrapped' ? rows.toReversed() : rows).map((row) => (
        <BenchGrid key={row.join()}>
          {row.map((kind) => (
            <PressButton
              key={kind}
              size="bench"
              tone={kind === 'scrapped' ? 'danger' : 'plain'}
              label={words.outcomes[kind]}
              detail={words.outcomeDetails[kind]}
              onAct={() => onChoose(kind)}
              testId={`outcome-${kind}`}
            />
          ))}
        </BenchGrid>
      ))}
    </div>
  );
};

const Salvage = ({ view, onSave }: { view: BenchView; onSave: (saved: readonly PartId[]) => void }) => {
  const shop = useShop();
  const choices = salvageChoices(shop, view);
  const partName = (id: PartId) => nameOf(shop.registers, { register: 'part', id });
  const label = (saved: readonly PartId[]) => {
    if (saved.length === 0) return words.saveNone;
    return saved.length === 1 && saved[0] ? words.saveOne(partName(saved[0])) : words.saveAll;
  };
  return (
    <>
      {choices.map((saved) => (
        <PressButton
          key={saved.join()}
          size="bench"
          label={label(saved)}
          detail={saved.length > 1 ? saved.map(partName).join(', ') : undefined}
          onAct={() => onSave(saved)}
          testId={`save-${saved.length > 1 ? 'all' : (saved[0] ?? 'none')}`}
        />
      ))}
    </>
  );
};
