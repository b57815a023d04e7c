import { useEffect, useState } from 'preact/hooks';
import { openStudy } from '../../../app/study.ts';
import type { StageId } from '../../../domain/log/ids.ts';
import { liveStages } from '../../../domain/route/live-stages.ts';
import type { Registers } from '../../../domain/shop/registers.ts';
import type { StageTime } from '../../../domain/study/piece-times.ts';
import { routesIn } from '../../../domain/study/study-routes.ts';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { mixWords as words } from '../../../words/mix-words.ts';
import { useApp, useSession, useShop } from '../../parts/app-context.ts';

export interface LearntTimeProps {
  readonly stage: StageId;
  /** Seconds for one piece. */
  readonly onLearnt: (seconds: number) => void;
}

/**
 * Asks the log how long a piece takes to be loaded here, or where that is not known at the stage before, which glues it up: of
 * the slowest wood, since the pot life waits for none.
 */
export const LearntTime = ({ stage, onLearnt }: LearntTimeProps) => {
  const session = useSession();
  const app = useApp();
  const { registers } = useShop();
  const [said, setSaid] = useState<string>();
  const [door] = useState(() => openStudy({ subject: 'study', session, store: app.database() }));
  useEffect(() => () => door.close(), [door]);
  const ask = async () => {
    setSaid(words.learning);
    const routes = routesIn(registers);
    await door.ask({ routes, filter: {}, comparison: null, answered: [], charted: null });
    const state = door.state.value;
    const seconds = state.kind === 'ready' ? learnt(state.last.study.times, { stage, registers }) : null;
    setSaid(seconds === null ? words.notLearnt : undefined);
    if (seconds !== null) onLearnt(seconds);
  };
  return (
    <div class="mix-learnt">
      <PressButton
        size="bench-small"
        tone="quiet"
        label={words.learnt}
        onAct={() => void ask()}
        testId="mix-learnt"
      />
      <p role="status">{said}</p>
    </div>
  );
};

function learnt(
  times: readonly StageTime[],
  { stage, registers }: { stage: StageId; registers: Registers },
): number | null {
  const order = liveStages(registers);
  const before = order[order.indexOf(stage) - 1];
  return (
    slowest(times.filter((each) => each.stage === stage && each.of === 'loading')) ??
    slowest(times.filter((each) => each.stage === before && each.of === 'work'))
  );
}

/** Whole seconds; null where nothing is known. */
function slowest(times: readonly StageTime[]): number | null {
  const minutes = times.map(({ time }) => time.median);
  return minutes.length === 0 ? null : Math.max(1, Math.ceil(Math.max(...minutes) * 60));
}
