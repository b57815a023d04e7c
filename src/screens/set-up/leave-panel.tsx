import { useState } from 'preact/hooks';
import type { ReplicaDesk } from '../../app/replica.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { tabletsWords as words } from '../../words/tablets-words.ts';

/** Leaves the other tablets, once it was asked twice. */
export const LeavePanel = ({ desk }: { desk: ReplicaDesk }) => {
  const [asked, setAsked] = useState(false);
  return (
    <Panel title={words.leave} lead={words.leaveHelp}>
      <div class="set-up-acts">
        {asked ? (
          <>
            <PressButton tone="go" label={words.stay} onAct={() => setAsked(false)} testId="leave-not" />
            <PressButton label={words.leaveNow} onAct={() => void desk.leave()} testId="leave-now" />
          </>
        ) : (
          <PressButton label={words.leave} onAct={() => setAsked(true)} testId="leave" />
        )}
      </div>
    </Panel>
  );
};
