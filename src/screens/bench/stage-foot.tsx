import type { TrayId } from '../../domain/log/ids.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { stageWords as words } from '../../words/stage-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession } from '../parts/app-context.ts';
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
  const { next, stage, tray, grade } = view;
  const nothing = session.canUndo.value ? undefined : words.nothingToUndo;
  const undoKey = useKeyOf('undo', () => nothing === undefined && void onUndo());
  const nextKey = useKeyOf('next', () => next !== null && onNext(next), { closing: true });
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
          tone={view.waiting[view.grade] > 0 || next === null ? 'plain' : 'go'}
          label={words.next}
          disabledReason={next === null ? words.noNext : undefined}
          keyHint={nextKey}
          closing
          onAct={() => next && onNext(next)}
          testId="next-tray"
        />
      </div>
    </>
  );
};
