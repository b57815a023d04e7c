import { useEffect, useRef } from 'preact/hooks';
import type { CopyDesk } from '../../../app/copy-desk.ts';
import { logSize } from '../../../app/log-size.ts';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { filesWords as words } from '../../../words/files-words.ts';
import { useSession } from '../app-context.ts';
import { MoreFiles } from './more-files.tsx';
import { PhotosChoice, usePhotosChoice } from './photos-choice.tsx';
import { TextOut } from './text-out.tsx';
import { type HandOut, useHandOut } from './use-hand-out.ts';

/** The big button that takes a plain copy out of the tablet, by the way that this browser has. */
export const HandOutButton = ({ desk, size }: { desk: CopyDesk; size?: 'normal' | 'bench-small' }) => {
  const { state, way, handed, make, hand, asText, textTaken } = useHandOut(desk);
  const chosen = usePhotosChoice(desk);
  const log = logSize(useSession());
  const share = way === 'share';
  const photos = way !== 'text' && chosen.taken;
  // Sharing must happen in the tap itself, so the file is made before it, and again when the log has grown. With photos that
  // would be too much to do unasked: there a second tap shares.
  const madeFor = useRef(-1);
  useEffect(() => {
    if (!share || photos || madeFor.current === log) return;
    madeFor.current = log;
    void make({ photos });
  }, [share, photos, log, make]);
  const isWaiting = 'made' in state && state.made.log === log && share && state.made.withPhotos === photos;
  const act = async () => {
    const made = isWaiting ? state.made : await make({ photos });
    // Where that took longer than a tap lasts, sharing is refused, and one more tap is asked for.
    if (made) await hand(made);
  };
  const isMadeAhead = share && !photos && (state.kind === 'idle' || state.kind === 'making');
  return (
    <div class="files-block" aria-busy={isMadeAhead}>
      {way !== 'text' && <PhotosChoice chosen={chosen} />}
      <PressButton
        size={size}
        tone="go"
        icon="export"
        label={share ? words.shareFile : words.saveFile}
        detail={share ? words.shareDetail : photos ? words.saveAllDetail : words.saveFileDetail}
        onAct={() => void act()}
        testId="save-copy"
      />
      <p role="status" data-testid="save-copy-said">
        {saidOf(state, isMadeAhead)}
      </p>
      {'made' in state && (
        <MoreFiles made={state.made} handed={handed} onHand={(file) => void hand(state.made, file)} />
      )}
      {state.kind === 'not-shared' && (
        <PressButton label={words.asText} onAct={() => void asText()} testId="take-text" />
      )}
      {state.kind === 'text' && <TextOut made={state.made} onTaken={textTaken} />}
    </div>
  );
};

/** What is said of a copy on its way out; of one that nobody has asked for yet, nothing. */
export function saidOf(state: HandOut, isMadeAhead: boolean): string {
  switch (state.kind) {
    case 'idle':
    case 'text':
      return '';
    case 'making':
      return isMadeAhead ? '' : words.preparing;
    case 'ready':
      return '';
    case 'tap-again':
      return words.ready;
    case 'not-made':
      return words.notMade;
    case 'not-shared':
      return words.notShared;
    case 'saved':
      return words.handedOver(state.file.name);
    case 'shared':
      return words.sharedNow(state.file.name);
  }
}
