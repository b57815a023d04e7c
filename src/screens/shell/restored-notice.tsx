import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { filesWords as words } from '../../words/files-words.ts';
import { restoredPhotos } from '../../words/restored-words.ts';
import { useApp } from '../parts/app-context.ts';

/** What the last restore did, in view until it was read. */
export const RestoredNotice = () => {
  const { restored } = useApp().copies;
  if (!restored.value) return null;
  const { added, here, unreadable, unplaced, photos } = restored.value;
  const isComing = photos !== undefined && photos.left > 0;
  return (
    <Notice
      tone="saved"
      title={photos && added + here === 0 ? words.restoredOnlyPhotos : words.restoredTitle(added, here)}
      testId="restored"
      actions={
        isComing ? undefined : (
          <PressButton
            label={words.understood}
            onAct={() => {
              restored.value = null;
            }}
            testId="restored-good"
          />
        )
      }
    >
      {unreadable > 0 && <p>{words.restoredUnreadable(unreadable)}</p>}
      {unplaced > 0 && <p>{words.restoredUnplaced(unplaced)}</p>}
      {photos && <p data-testid="restored-photos">{restoredPhotos(photos)}</p>}
    </Notice>
  );
};
