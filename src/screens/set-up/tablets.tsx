import { useEffect } from 'preact/hooks';
import { type ReplicaDesk, shopInvitedTo } from '../../app/replica.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { tabletsWords as words } from '../../words/tablets-words.ts';
import { address } from '../parts/address.ts';
import { useApp } from '../parts/app-context.ts';
import { JoinForm } from '../parts/join/join-form.tsx';
import { forgetInvitation, invitationIn } from '../parts/join/joining-place.ts';
import { useReplica } from '../parts/join/use-replica.ts';
import { InvitePanel } from './invite-panel.tsx';
import { JoinAnew } from './join-anew.tsx';
import { LeavePanel } from './leave-panel.tsx';
import { PhotosTooPanel } from './photos-too-panel.tsx';
import { StandingPanel } from './standing-panel.tsx';

/** What this tablet has to do with the others of the shop: joining them, how it stands, letting others in, leaving. */
export const Tablets = () => {
  const { opening, leisure } = useApp();
  const desk = useReplica();
  const now = opening.value;
  if (!leisure) return <Notice tone="warn" title={words.forgets} />;
  if (now.kind === 'open' && now.which === 'demo') return <Notice tone="info" title={words.demo} />;
  if (!desk) return <p aria-busy="true">{words.loading}</p>;
  return desk.joined.value ? <Joined desk={desk} /> : <Alone desk={desk} />;
};

const Alone = ({ desk }: { desk: ReplicaDesk }) => (
  <Panel title={words.join} lead={words.lead} testId="join-panel">
    <p>{words.howHelp}</p>
    <JoinForm
      desk={desk}
      link={invitationIn(address.value)}
      onJoined={() => forgetInvitation(address.value)}
    />
  </Panel>
);

const Joined = ({ desk }: { desk: ReplicaDesk }) => {
  const link = invitationIn(address.value);
  const shop = link && shopInvitedTo(link);
  const isOther = shop !== undefined && shop !== desk.joined.value?.shop;
  // The app may be opened with its own invitation once more.
  useEffect(() => {
    if (!isOther) forgetInvitation(address.value);
  }, [isOther]);
  return (
    <>
      {isOther && <JoinAnew desk={desk} />}
      <StandingPanel desk={desk} />
      <PhotosTooPanel desk={desk} />
      <InvitePanel desk={desk} />
      <LeavePanel desk={desk} />
    </>
  );
};
