import { useState } from 'preact/hooks';
import { askToKeep } from '../../../app/keeping.ts';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { Sheet } from '../../../ui/sheet/sheet.tsx';
import { tabletsWords as words } from '../../../words/tablets-words.ts';
import { address, hrefOf } from '../address.ts';
import { JoinForm } from './join-form.tsx';
import { forgetInvitation, invitationIn } from './joining-place.ts';
import { justJoined } from './just-joined.ts';
import { useReplica } from './use-replica.ts';

/** Opens the way to other tablets; by itself where the app was opened with an invitation. */
export const JoinButton = () => {
  const desk = useReplica();
  const link = invitationIn(address.value);
  const [open, setOpen] = useState(false);
  const stayOpen = () => {
    setOpen(true);
    justJoined.value = true;
    // As for a shop that is begun here: the browser is not to clear it away when the disk is full.
    void askToKeep().catch(() => undefined);
    // Who joins wants to work: the bench is there as soon as the shop is.
    forgetInvitation(address.value, hrefOf('bench'));
  };
  const close = () => {
    setOpen(false);
    forgetInvitation(address.value);
  };
  if (!desk) return null;
  const isUpToDate = desk.status.value.kind === 'up-to-date';
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
          closeLabel={desk.joined.value ? words.close : words.joinClose}
          onClose={close}
          testId="join-sheet"
        >
          {desk.joined.value ? (
            <p role="status">{isUpToDate ? words.nothingThere : words.joined}</p>
          ) : (
            <JoinForm desk={desk} link={link} onJoined={stayOpen} />
          )}
        </Sheet>
      )}
    </>
  );
};
