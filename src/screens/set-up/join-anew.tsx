import type { ReplicaDesk } from '../../app/replica.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { tabletsWords as words } from '../../words/tablets-words.ts';
import { address } from '../parts/address.ts';
import { forgetInvitation } from '../parts/join/joining-place.ts';

/** The app was opened with an invitation to another shop than the one it has joined: as after a change of the key. */
export const JoinAnew = ({ desk }: { desk: ReplicaDesk }) => (
  <Notice
    tone="warn"
    title={words.otherInvitation}
    testId="join-anew"
    actions={
      <>
        <PressButton
          tone="go"
          icon="join"
          label={words.joinAnew}
          onAct={() => void desk.leave()}
          testId="join-anew-go"
        />
        <PressButton
          label={words.joinClose}
          onAct={() => forgetInvitation(address.value)}
          testId="join-anew-not"
        />
      </>
    }
  >
    <p>{words.otherInvitationHelp}</p>
  </Notice>
);
