import type { TrayId } from '../../domain/log/ids.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { nameOf } from '../../words/names.ts';
import { stageWords as words } from '../../words/stage-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import type { BenchView } from './bench-view.ts';
import { RaiseDoor } from './raise-door.tsx';
import { useKeyOf } from './use-bench-keys.ts';

export interface StageFootProps {
  readonly view: BenchView;
  readonly onUndo: () => Promise<void>;
  readonly onPutBack: () => Promise<void>;
  readonly onNext: (tray: TrayId) => void;
}

/** Undo at one end; at the other what leaves the tray. */
export const StageFoot = ({ view, onUndo, onPutBack, onNext }: StageFootProps) => {
  const session = useSession();
  const { registers } = useShop();
  const { next, nextStage, stage, tray, grade } = view;
  const nothing = session.canUndo.value ? undefined : words.nothingToUndo;
  const undoKey = useKeyOf('undo', () => nothing === undefined && void onUndo());
  // The next tray of this stage; and when no other one waits and this one is done, the tray goes on to its next stage.
  const onTo = next === null ? nextStage : null;
  const goOn = () => (next === null ? onTo && goTo('bench', onTo, tray.tray) : onNext(next));
  const nextKey = useKeyOf('next', goOn, { closing: true });
  const pauseKey = useKeyOf('pause', () => void session.pause(), { closing: true });
  const running = session.spell.value?.begun ?? false;
  return (
    <>
      <div class="stage-undo bench-row">
        <PressButton
          size="bench"
          icon={nothing === undefined ? 'undo' : undefined}
          label={words.undo}
          disabledReason={nothing}
          keyHint={undoKey}
          onAct={() => void onUndo()}
          testId="undo"
        />
        {session.canPutBack.value && (
          <PressButton
            size="bench-small"
            tone="quiet"
            label={words.putBack}
            onAct={() => void onPutBack()}
            testId="put-back"
          />
        )}
        {grade === 'second' && <RaiseDoor tray={tray.tray} stage={stage.id} />}
      </div>
      <div class="stage-leave bench-row">
        <PressButton
          size="bench-small"
          icon="back"
          label={words.back}
          name={words.chooseTray}
          onAct={() => goTo('bench', stage.id)}
          testId="to-trays"
        />
        <PressButton
          size="bench-small"
          icon="pause"
          label={words.pause}
          tone={running ? 'plain' : 'quiet'}
          keyHint={pauseKey}
          closing
          onAct={() => void session.pause()}
          testId="pause"
        />
        <PressButton
          size="bench-small"
          icon="next"
          tone={view.waiting[view.grade] > 0 || (next ?? onTo) === null ? 'plain' : 'go'}
          label={onTo ? words.nextStage : words.next}
          name={onTo ? words.nextStageIs(nameOf(registers, { register: 'stage', id: onTo })) : undefined}
          disabledReason={(next ?? onTo) === null ? words.noNext : undefined}
          keyHint={nextKey}
          closing
          onAct={goOn}
          testId="next-tray"
        />
      </div>
    </>
  );
};
