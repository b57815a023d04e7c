import { useState } from 'preact/hooks';
import type { ActResult } from '../../app/session.ts';
import type { Command } from '../../domain/command/command.ts';
import type { ReasonId, StageId, TrayId } from '../../domain/log/ids.ts';
import type { Grade } from '../../domain/log/place.ts';
import { BenchFrame } from '../../ui/bench/bench-frame.tsx';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { problemWords } from '../../words/problem-words.ts';
import type { SpokenCount } from '../../words/spoken-words.ts';
import { stageWords as words } from '../../words/stage-words.ts';
import { goTo } from '../parts/address.ts';
import { useApp, useSession, useShop } from '../parts/app-context.ts';
import { labelNews } from '../parts/label-news.ts';
import { Unsaved } from '../parts/unsaved.tsx';
import { useFeedback } from '../parts/use-feedback.ts';
import { useNow } from '../parts/use-now.ts';
import { benchView } from './bench-view.ts';
import { heed, useCautionLine } from './caution-line.ts';
import { FlawPanel } from './flaw-panel.tsx';
import { HoldActs } from './hold-acts.tsx';
import { PassActs } from './pass-acts.tsx';
import { StageFoot } from './stage-foot.tsx';
import { StageHead } from './stage-head.tsx';
import { StageSays } from './stage-says.tsx';
import { StageSigns } from './stage-signs.tsx';
import { stockAt, tapAnswer, tapOf } from './tap-answer.ts';

export interface StageScreenProps {
  readonly stage: StageId;
  readonly tray: TrayId;
}

/** One tray at one stage: the code, what is left, and big buttons. */
export const StageScreen = ({ stage, tray }: StageScreenProps) => {
  const session = useSession();
  const { preferences } = useApp();
  const shop = useShop();
  const feedback = useFeedback();
  const now = useNow();
  const [grade, setGrade] = useState<Grade | null>(null);
  const [flaw, setFlaw] = useState<ReasonId | null>(null);
  const [refusal, setRefusal] = useState('');
  const view = benchView(shop, { stage, tray, grade, now });
  const caution = useCautionLine(view);

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

  const answer = (result: ActResult, tap: SpokenCount['tap']) => {
    labelNews.value = '';
    setRefusal(result.kind === 'refused' ? problemWords(result.problem, shop.registers) : '');
    const { sound, count } = tapAnswer(result, {
      tap,
      after: stockAt(session.view.peek().shop, { stage, tray }),
    });
    feedback.sound(sound);
    feedback.speak(count, sound);
  };
  const act = async (command: Command) => {
    const result = await session.act(command);
    answer(result, tapOf(command));
    heed(session, caution);
    return result.kind === 'saved';
  };
  const undo = async () => answer(await session.undoLast(), 'undo');
  const putBack = async () => answer(await session.putBack(), 'pass');
  const leaveTo = (next: TrayId) => goTo('bench', stage, next);

  const choose = { view, act, onFlaw: setFlaw };
  return (
    <BenchFrame
      label={words.tray(view.tray.code)}
      testId="stage-screen"
      head={<StageHead view={view} onGrade={setGrade} />}
      acts={
        flaw !== null ? (
          <FlawPanel view={view} reason={flaw} now={now} act={act} onDone={() => setFlaw(null)} />
        ) : view.stage.kind === 'hold' ? (
          <HoldActs {...choose} now={now} />
        ) : (
          <PassActs {...choose} />
        )
      }
      says={<StageSays refusal={labelNews.value || refusal} caution={caution} />}
      foot={flaw === null && <StageFoot view={view} onUndo={undo} onPutBack={putBack} onNext={leaveTo} />}
      bar={<Unsaved />}
      signs={<StageSigns stage={stage} cautioned={caution !== ''} />}
      side={preferences.side.value}
    />
  );
};
