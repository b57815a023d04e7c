import { useState } from 'preact/hooks';
import type { ActResult } from '../../app/session.ts';
import type { Command } from '../../domain/command/command.ts';
import type { ReasonId, StageId, TrayId } from '../../domain/log/ids.ts';
import type { Grade } from '../../domain/log/place.ts';
import { BenchFrame } from '../../ui/bench/bench-frame.tsx';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { problemWords } from '../../words/problem-words.ts';
import { stageWords as words } from '../../words/stage-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { Unsaved } from '../parts/unsaved.tsx';
import { useFeedback } from '../parts/use-feedback.ts';
import { useNow } from '../parts/use-now.ts';
import { benchView } from './bench-view.ts';
import { FlawPanel } from './flaw-panel.tsx';
import { HoldActs } from './hold-acts.tsx';
import { PassActs } from './pass-acts.tsx';
import { StageFoot } from './stage-foot.tsx';
import { StageHead } from './stage-head.tsx';
import { StageSays } from './stage-says.tsx';

export interface StageScreenProps {
  readonly stage: StageId;
  readonly tray: TrayId;
}

/** One tray at one stage: the code, what is left, and big buttons. */
export const StageScreen = ({ stage, tray }: StageScreenProps) => {
  const session = useSession();
  const shop = useShop();
  const sound = useFeedback();
  const now = useNow();
  const [grade, setGrade] = useState<Grade | null>(null);
  const [flaw, setFlaw] = useState<ReasonId | null>(null);
  const [refusal, setRefusal] = useState('');
  const view = benchView(shop, { stage, tray, grade, now });

  if (!view) {
    return (
      <main>
        <EmptyState
          title={words.unknownTray}
          action={<PressButton label={words.back} onAct={() => goTo('bench', stage)} />}
        />
      </main>
    );
  }

  const answer = (result: ActResult, tone: 'saved' | 'flaw' | 'undone') => {
    if (result.kind === 'saved') sound(tone);
    setRefusal(result.kind === 'refused' ? problemWords(result.problem, shop.registers) : '');
  };
  const act = async (command: Command) =>
    answer(await session.act(command), command.kind === 'flaw' ? 'flaw' : 'saved');
  const undo = async () => answer(await session.undoLast(), 'undone');
  const putBack = async () => answer(await session.putBack(), 'saved');
  const leaveTo = (next: TrayId) => goTo('bench', stage, next);

  const choose = { view, act, onFlaw: setFlaw };
  return (
    <BenchFrame
      label={words.tray(view.tray.code)}
      testId="stage-screen"
      head={<StageHead view={view} onGrade={setGrade} />}
      acts={
        flaw !== null ? (
          <FlawPanel view={view} reason={flaw} act={act} onDone={() => setFlaw(null)} />
        ) : view.stage.kind === 'hold' ? (
          <HoldActs {...choose} now={now} />
        ) : (
          <PassActs {...choose} />
        )
      }
      says={<StageSays refusal={refusal} />}
      foot={flaw === null && <StageFoot view={view} onUndo={undo} onPutBack={putBack} onNext={leaveTo} />}
      bar={<Unsaved />}
    />
  );
};
