import { useState } from 'preact/hooks';
import type { ReplicaDesk } from '../../app/replica.ts';
import { qrSymbol, symbolPath } from '../../domain/label/qr-symbol.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { tabletsWords as words } from '../../words/tablets-words.ts';

type Invitation = NonNullable<Awaited<ReturnType<ReplicaDesk['invitation']>>>;

/** The sign that lets another tablet join; shown when it is asked for, since it has the key of the shop in it. */
export const InvitePanel = ({ desk }: { desk: ReplicaDesk }) => {
  const [shown, setShown] = useState<Invitation | null>(null);
  if (!desk.joined.value?.mayInvite)
    return (
      <Panel title={words.invite}>
        <p>{words.mayNot}</p>
      </Panel>
    );
  return (
    <Panel title={words.invite} lead={words.inviteLead} testId="invite-panel">
      <div class="set-up-acts">
        <PressButton
          size="bench-small"
          icon="label"
          label={shown ? words.hide : words.show}
          onAct={() =>
            shown ? setShown(null) : void desk.invitation().then((said) => setShown(said ?? null))
          }
          testId="invite-show"
        />
      </div>
      {shown && <Sign invitation={shown} joined={desk.joined.value} />}
    </Panel>
  );
};

interface SignProps {
  readonly invitation: Invitation;
  readonly joined: { readonly address: string; readonly shop: string };
}

/** ISO/IEC 18004 asks for a blank margin of four modules. */
const margin = 4;

const Sign = ({ invitation: { link, words: key }, joined: { address, shop } }: SignProps) => {
  const modules = qrSymbol(link, 'L');
  const side = modules.length + 2 * margin;
  return (
    <>
      <Notice tone="warn" title={words.inviteWarn}>
        {words.inviteWarnHelp}
      </Notice>
      <svg
        class="tablets-sign"
        viewBox={`${-margin} ${-margin} ${side} ${side}`}
        role="img"
        aria-label={words.sign}
        data-testid="invite-sign"
      >
        <rect x={-margin} y={-margin} width={side} height={side} class="tablets-sign-ground" />
        <path d={symbolPath(modules)} />
      </svg>
      <p>{words.orType}</p>
      <dl class="tablets-facts">
        <dt>{words.address}</dt>
        <dd class="code">{address}</dd>
        <dt>{words.shop}</dt>
        <dd class="code">{shop}</dd>
        <dt>{words.key}</dt>
        <dd class="tablets-key">{key.join(' ')}</dd>
      </dl>
    </>
  );
};
