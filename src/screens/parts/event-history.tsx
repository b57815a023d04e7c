import './event-history.css';
import { useState } from 'preact/hooks';
import { factOf } from '../../domain/shop/registers.ts';
import type { Voidable } from '../../domain/shop/voids.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { clockWords } from '../../words/clock-words.ts';
import { clockTime } from '../../words/date-words.ts';
import { eventWords } from '../../words/event-words.ts';
import { historyWords as words } from '../../words/history-words.ts';
import { nameOf } from '../../words/names.ts';
import { problemWords } from '../../words/problem-words.ts';
import { useSession, useShop } from './app-context.ts';
import { type HistoryEntry, historyEntries } from './history-entries.ts';
import { type HistorySubject, useHistory } from './use-history.ts';
import { useNow } from './use-now.ts';

export interface EventHistoryProps {
  /** A tray, or something of the stores. */
  readonly of: HistorySubject;
  /** Said when there is nothing yet. */
  readonly nothing?: string | undefined;
}

/** All that happened to one thing, the newest first; an entry is taken back, never removed. */
export const EventHistory = ({ of, nothing }: EventHistoryProps) => {
  const session = useSession();
  const shop = useShop();
  const [refusal, setRefusal] = useState('');
  const events = useHistory(of);
  const takeBack = async (event: Voidable) => {
    const result = await session.act({ kind: 'undo', events: [event] });
    setRefusal(result.kind === 'refused' ? problemWords(result.problem, shop.registers) : '');
  };
  return (
    <Panel title={words.title}>
      {refusal && <p role="alert">{refusal}</p>}
      {events.length === 0 && nothing && <p>{nothing}</p>}
      <ol class="event-history" data-testid="history">
        {historyEntries(shop, events).map((entry) => (
          <li key={`${entry.event.station}:${entry.event.seq}`} data-taken-back={!entry.inForce || undefined}>
            <Entry entry={entry} onTakeBack={takeBack} />
          </li>
        ))}
      </ol>
    </Panel>
  );
};

const Entry = ({
  entry,
  onTakeBack,
}: {
  entry: HistoryEntry;
  onTakeBack: (event: Voidable) => Promise<void>;
}) => {
  const { registers } = useShop();
  const now = useNow();
  const { event, inForce, voidable } = entry;
  const said = eventWords(event, registers);
  const letter = factOf(registers, { register: 'station', id: event.station })?.letter ?? event.station;
  const who = event.person ? nameOf(registers, { register: 'person', id: event.person }) : '';
  const when = clockTime(event.stamp.wall, { zone: event.zone.name, now });
  return (
    <>
      <div>
        <p class="event-said">{inForce ? said : <s>{said}</s>}</p>
        <p class="event-when">
          {[
            when,
            event.clock === 'doubtful' ? clockWords.inDoubt : '',
            who,
            words.station(letter),
            inForce ? '' : words.takenBack,
          ]
            .filter(Boolean)
            .join(' · ')}
        </p>
      </div>
      {voidable && (
        <PressButton
          icon="undo"
          tone="quiet"
          label={voidable.kind === 'voided' ? words.putBack : words.takeBack}
          name={`${voidable.kind === 'voided' ? words.putBack : words.takeBack}: ${said}`}
          onAct={() => void onTakeBack(voidable)}
          testId={`history-undo-${event.station}-${event.seq}`}
        />
      )}
    </>
  );
};
