import './files.css';
import { useEffect, useState } from 'preact/hooks';
import type { CopyDesk } from '../../../app/copy-desk.ts';
import { openRestore, type Restoring } from '../../../app/restore.ts';
import { Notice } from '../../../ui/notice/notice.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { Sheet } from '../../../ui/sheet/sheet.tsx';
import { filesWords as words } from '../../../words/files-words.ts';
import { useApp, useSession } from '../app-context.ts';
import { usePhotos } from '../photos/use-photos.ts';
import { ChooseCopy } from './choose-copy.tsx';
import { OfferStep } from './offer-step.tsx';
import { UnsealStep } from './unseal-step.tsx';

/** From a copy into the shop, step by step; nothing changes before the last one. */
export const RestoreSheet = ({ desk, onClose }: { desk: CopyDesk; onClose: () => void }) => {
  const { copies, database } = useApp();
  const session = useSession();
  const photos = usePhotos();
  const [restoring] = useState(() =>
    openRestore({
      session,
      work: desk.work,
      log: desk.log,
      keepBefore: () => desk.keep('before-restore'),
      photos: photos && { addFrom: photos.addFrom, shop: database() ?? '' },
      onDone(restored) {
        // Said by the shell: this sheet may be gone with the shop as it was.
        copies.restored.value = restored;
        onClose();
      },
      onPhotos(coming) {
        const { value } = copies.restored;
        if (value) copies.restored.value = { ...value, photos: coming };
      },
    }),
  );
  useEffect(() => desk.work.ahead(), [desk]);
  const { kind } = restoring.step.value;
  const isBusy = kind === 'copying' || kind === 'adding';
  return (
    <Sheet
      shape="whole"
      title={words.restoreTitle}
      closeLabel={words.close}
      onClose={() => !isBusy && onClose()}
      testId="restore-sheet"
    >
      <RestoreStepView desk={desk} restoring={restoring} />
    </Sheet>
  );
};

const RestoreStepView = ({ desk, restoring }: { desk: CopyDesk; restoring: Restoring }) => {
  const step = restoring.step.value;
  const again = (
    <PressButton icon="back" label={words.otherFile} onAct={restoring.startOver} testId="restore-again" />
  );
  switch (step.kind) {
    case 'choose':
      return <ChooseCopy desk={desk} restoring={restoring} />;
    case 'reading':
      return (
        <div class="files-block" aria-busy="true">
          <p class="files-name" role="status">
            {words.reading(step.file)}
          </p>
          <p>{words.readingHere}</p>
          {again}
        </div>
      );
    case 'sealed':
      return <UnsealStep restoring={restoring} wrong={step.refused !== null} />;
    case 'refused':
      return (
        <div class="files-block">
          <Notice tone="error" title={words.refusals[step.why]} testId="restore-refused">
            <p class="files-name">{step.file}</p>
            <p>{words.refusedTitle}</p>
          </Notice>
          {again}
        </div>
      );
    case 'offered':
    case 'copying':
    case 'adding':
    case 'no-copy':
    case 'broken-off':
      return <OfferStep restoring={restoring} step={step} />;
  }
};
