import { useState } from 'preact/hooks';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { Sheet } from '../../../ui/sheet/sheet.tsx';
import { tabletsWords as words } from '../../../words/tablets-words.ts';
import { address } from '../address.ts';
import { JoinForm } from './join-form.tsx';
import { forgetInvitation, invitationIn } from './joining-place.ts';
import { useReplica } from './use-replica.ts';

/** Opens the way to other tablets; by itself where the app was opened with an invitation. */
export const JoinButton = () => {
  const desk = useReplica();
  const link = invitationIn(address.value);
  const [open, setOpen] = useState(false);
  const stayOpen = () => {
    setOpen(true);
    forgetInvitation(address.value);
  };
  const close = () => {
    setOpen(false);
    forgetInvitation(address.value);
  };
  if (!desk) return null;
  return (
    <>
      <PressButton
        size="bench"
        icon="join"
        label={words.join}
        detail={words.joinDetail}
        closing
        onAct={() => setOpen(true)}
        testId="join"
      />
      {(open || link !== undefined) && (
        <Sheet
          title={words.join}
          shape="whole"
          closeLabel={words.joinClose}
          onClose={close}
          testId="join-sheet"
        >
          {desk.joined.value ? (
            <p role="status">{words.joined}</p>
          ) : (
            <JoinForm desk={desk} link={link} onJoined={stayOpen} />
          )}
        </Sheet>
      )}
    </>
  );
};
