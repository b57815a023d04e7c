import type { StageId } from '../../../domain/log/ids.ts';
import { Panel } from '../../../ui/panel/panel.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { countDown, mixWords as words } from '../../../words/mix-words.ts';
import { useApp, useSession } from '../../parts/app-context.ts';
import { useNow } from '../../parts/use-now.ts';

export interface PotClockProps {
  readonly stage: StageId;
  readonly minutes: number;
}

/** How long the mix can still be worked, counted from a tap; it goes on while one is elsewhere in the app. */
export const PotClock = ({ stage, minutes }: PotClockProps) => {
  const { pot } = useApp().preferences;
  const session = useSession();
  const now = Math.max(useNow(1000), session.now());
  const run = pot.value?.stage === stage ? pot.value : null;
  const left = run ? run.ends - now : null;
  return (
    <Panel title={words.pot} lead={words.potOf(minutes)} testId="mix-pot">
      {left !== null && (
        <p class="mix-big" data-over={left <= 0 || undefined} data-testid="pot-left">
          {left > 0 ? `${countDown(left)} ${words.left}` : words.over}
        </p>
      )}
      <div class="tray-choice-ways">
        <PressButton
          size="bench-small"
          tone="go"
          label={run ? words.again : words.begin}
          onAct={() => {
            pot.value = { stage, ends: session.now() + minutes * 60_000 };
          }}
          testId="pot-begin"
        />
        {run && (
          <PressButton
            size="bench-small"
            tone="quiet"
            label={words.clear}
            onAct={() => {
              pot.value = null;
            }}
            testId="pot-clear"
          />
        )}
      </div>
    </Panel>
  );
};
