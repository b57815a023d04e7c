import { useEffect, useRef } from 'preact/hooks';
import type { CopyDesk } from '../../../app/copy-desk.ts';
import { logSize } from '../../../app/log-size.ts';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { filesWords as words } from '../../../words/files-words.ts';
import { useSession } from '../app-context.ts';
import { TextOut } from './text-out.tsx';
import { type HandOut, useHandOut } from './use-hand-out.ts';

/** The big button that takes a plain copy out of the tablet, by the way that this browser has. */
export const HandOutButton = ({ desk, size }: { desk: CopyDesk; size?: 'normal' | 'bench-small' }) => {
  const { state, way, make, hand, textTaken } = useHandOut(desk);
  const log = logSize(useSession());
  // Sharing must happen in the tap itself, so the file is made before it, and again when the log has grown.
  const madeFor = useRef(-1);
  useEffect(() => {
    if (way !== 'share' || madeFor.current === log) return;
    madeFor.current = log;
    void make();
  }, [way, log, make]);
  const act = async () => {
    const waiting = 'made' in state && state.made.log === log && way === 'share' ? state.made : undefined;
    const made = waiting ?? (await make());
    // Where that took longer than a tap lasts, sharing is refused, and one more tap is asked for.
    if (made) await hand(made);
  };
  const share = way === 'share';
  const isMadeAhead = share && (state.kind === 'idle' || state.kind === 'making');
  return (
    <div class="files-block" aria-busy={isMadeAhead}>
      <PressButton
        size={size}
        tone="go"
        icon="export"
        label={share ? words.shareFile : words.saveFile}
        detail={share ? words.shareDetail : words.saveFileDetail}
        onAct={() => void act()}
        testId="save-copy"
      />
      <p role="status" data-testid="save-copy-said">
        {saidOf(state, share)}
      </p>
      {state.kind === 'not-shared' && (
        <PressButton label={words.asText} onAct={() => void hand(state.made, 'text')} testId="take-text" />
      )}
      {state.kind === 'text' && <TextOut made={state.made} onTaken={textTaken} />}
    </div>
  );
};

/** What is said of a copy on its way out. */
export function saidOf(state: HandOut, share: boolean): string {
  switch (state.kind) {
    case 'idle':
    case 'text':
      return '';
    case 'making':
      return share ? '' : words.preparing;
    case 'ready':
      return '';
    case 'tap-again':
      return words.ready;
    case 'not-made':
      return words.notMade;
    case 'not-shared':
      return words.notShared;
    case 'saved':
      return words.handedOver(state.made.name);
    case 'shared':
      return words.sharedNow(state.made.name);
  }
}
