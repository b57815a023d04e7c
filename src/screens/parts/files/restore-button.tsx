import { useState } from 'preact/hooks';
import type { CopyDesk } from '../../../app/copy-desk.ts';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { filesWords as words } from '../../../words/files-words.ts';
import { RestoreSheet } from './restore-sheet.tsx';

/** Opens the way back from a copy. */
export const RestoreButton = ({
  desk,
  size,
  label = words.restore,
  detail,
}: {
  desk: CopyDesk;
  size: 'bench' | 'bench-small';
  label?: string | undefined;
  detail?: string | undefined;
}) => {
  const [open, setOpen] = useState(false);
  return (
    <>
      <PressButton
        size={size}
        icon="import"
        label={label}
        detail={detail}
        closing
        onAct={() => setOpen(true)}
        testId="restore"
      />
      {open && <RestoreSheet desk={desk} onClose={() => setOpen(false)} />}
    </>
  );
};
