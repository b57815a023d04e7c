import type { ReplicaDesk, SetAside } from '../../app/replica.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { wholeNumber } from '../../words/number-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { tabletsWords as words } from '../../words/tablets-words.ts';
import { useShop } from '../parts/app-context.ts';
import { standingWords } from '../parts/join/standing-words.ts';
import { useNow } from '../parts/use-now.ts';

/** Whether the tablet has what the others have, and what could not be taken in. */
export const StandingPanel = ({ desk }: { desk: ReplicaDesk }) => {
  const { registers } = useShop();
  const now = useNow();
  const zone = factOf(registers, { register: 'shop', id: 'shop' })?.zone ?? 'UTC';
  const status = desk.status.value;
  const joined = desk.joined.value;
  const aside = desk.setAside.value;
  return (
    <Panel
      title={words.standing}
      actions={<Means label={studyWords.means}>{words.statusMeans}</Means>}
      testId="standing-panel"
    >
      <p class="tablets-standing" role="status" data-testid="replica-status" data-kind={status.kind}>
        {standingWords(status, { zone, now })}
      </p>
      {status.kind === 'unreachable' && status.entries !== null && status.entries > 0 && (
        <p>{words.status.waiting(status.entries)}</p>
      )}
      {status.kind === 'refused' && (
        <Notice tone="error" title={words.refused[status.why]} testId="replica-refused">
          <p>{words.worksAlone}</p>
          {status.why === 'key' && <p>{words.joinWithNewKey}</p>}
        </Notice>
      )}
      {joined && (
        <dl class="tablets-facts">
          <dt>{words.at}</dt>
          <dd class="code">{joined.address}</dd>
          <dt>{words.shop}</dt>
          <dd class="code">{joined.shop}</dd>
          <dt>{words.seat}</dt>
          <dd class="code">{joined.seat}</dd>
        </dl>
      )}
      <div class="set-up-acts">
        <PressButton icon="retry" label={words.again} onAct={desk.hurry} testId="replica-again" />
      </div>
      {aside.length > 0 && <Aside messages={aside} />}
    </Panel>
  );
};

const columns: Column<SetAside>[] = [
  { key: 'reason', head: words.asideReason, cell: ({ reason }) => words.reasons[reason] },
  { key: 'seat', head: words.asideSeat, cell: ({ seat }) => seat },
  { key: 'at', head: words.asideNumber, numeric: true, cell: ({ at }) => wholeNumber(at) },
];

const Aside = ({ messages }: { messages: readonly SetAside[] }) => (
  <Notice tone="warn" title={words.asideLead(messages.length)} testId="set-aside">
    <p>{words.asideHelp}</p>
    <DataTable
      caption={words.aside}
      captionUnseen
      columns={columns}
      rows={messages}
      rowKey={({ at, seat }) => `${seat} ${at}`}
    />
  </Notice>
);
