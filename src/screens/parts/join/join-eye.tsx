import { useState } from 'preact/hooks';
import { isJoiningLink } from '../../../app/replica.ts';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { tabletsWords as words } from '../../../words/tablets-words.ts';
import { CameraEye } from '../camera/camera-eye.tsx';

/** Looks for a sign that invites, once it is asked to; the camera is off else. */
export const JoinEye = ({ onLink }: { onLink: (link: string) => void }) => {
  const [open, setOpen] = useState(false);
  const [isOther, setOther] = useState(false);
  const read = (texts: readonly string[]) => {
    const link = texts.find(isJoiningLink);
    setOther(link === undefined);
    if (link === undefined) return;
    setOpen(false);
    onLink(link);
  };
  return (
    <>
      <div>
        <PressButton
          size="bench-small"
          icon="scan"
          label={open ? words.stopScan : words.scan}
          onAct={() => setOpen(!open)}
          testId="join-scan"
        />
      </div>
      {open && (
        <>
          <p>{words.scanHelp}</p>
          <CameraEye onRead={read} />
          <p role="status">{isOther && words.noSign}</p>
        </>
      )}
    </>
  );
};
