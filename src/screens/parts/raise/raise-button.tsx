import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { PressButton, type PressButtonProps } from '../../../ui/press/press-button.tsx';
import { raiseWords as words } from '../../../words/raise-words.ts';
import { RaiseSheet, type RaiseSheetProps } from './raise-sheet.tsx';

export interface RaiseButtonProps extends Pick<RaiseSheetProps, 'what' | 'seconds'> {
  readonly size?: PressButtonProps['size'];
  readonly testId: string;
}

/** Opens the sheet that raises seconds; not there where there is no second. */
export const RaiseButton = ({ what, seconds, size, testId }: RaiseButtonProps): JSX.Element | null => {
  const [open, setOpen] = useState(false);
  if (seconds.length === 0 && !open) return null;
  return (
    <>
      <PressButton
        size={size}
        // At the foot of the stage screen the words need the room.
        icon={size === undefined ? 'up' : undefined}
        label={words.open}
        detail={words.openDetail}
        name={words.openName}
        onAct={() => setOpen(true)}
        testId={testId}
      />
      {open && <RaiseSheet what={what} seconds={seconds} onClose={() => setOpen(false)} />}
    </>
  );
};
