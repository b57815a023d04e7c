import { useState } from 'preact/hooks';
import type { Command } from '../../domain/command/command.ts';
import type { Outcome, OutcomeKind } from '../../domain/log/event.ts';
import type { ReasonId } from '../../domain/log/ids.ts';
import { BenchGrid } from '../../ui/bench/bench-grid.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { nameOf } from '../../words/names.ts';
import { stageWords as words } from '../../words/stage-words.ts';
import { useShop } from '../parts/app-context.ts';
import { type BenchView, salvageChoices, spotOf } from './bench-view.ts';
import { CriterionStandard } from './criterion-hint.tsx';
import { EarlyQuestion } from './early-question.tsx';
import { AlsoWrong, Outcomes, Salvage, SendBack } from './flaw-answers.tsx';
import { FlawPhoto, useFlawPhoto } from './flaw-photo.tsx';
import { HowMany } from './how-many.tsx';
import { useKeyOf } from './use-bench-keys.ts';

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
          {step === 'send-back' && (
            <SendBack view={view} onChoose={(to) => finish({ kind: 'sent-back', to })} />
          )}
          {step === 'salvage' && (
            <Salvage view={view} onSave={(saved) => finish({ kind: 'scrapped', saved: [...saved] })} />
          )}
          {step === 'also' && (
            <AlsoWrong
              reasons={view.stage.reasons.filter((each) => each !== reason)}
              chosen={also}
              onChoose={(each) => setAlso(toggled(also, each))}
            />
          )}
        </BenchGrid>
      )}
      <div class="flaw-foot bench-row">
        <WayBack
          label={step === 'also' ? words.alsoWrongDone : words.cancel}
          onBack={() => (step === 'outcome' ? onDone() : setStep('outcome'))}
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

/** Its key is that of undo, which stands in its place else. */
const WayBack = ({ label, onBack }: { label: string; onBack: () => void }) => (
  <PressButton
    size="bench-small"
    tone="quiet"
    icon="back"
    label={label}
    keyHint={useKeyOf('undo', onBack)}
    onAct={onBack}
    testId="flaw-cancel"
  />
);

function toggled<Item>(set: ReadonlySet<Item>, item: Item): ReadonlySet<Item> {
  const next = new Set(set);
  if (!next.delete(item)) next.add(item);
  return next;
}
