import { useSignalEffect } from '@preact/signals';
import { useState } from 'preact/hooks';
import type { Session } from '../../app/session.ts';
import type { ShopEvent } from '../../domain/log/event.ts';
import { useSession } from './app-context.ts';

export type HistorySubject = Parameters<Session['historyOf']>[0];

/** All that happened to one thing, read anew at each change of the shop: the store is the only place that keeps whole histories. */
export function useHistory(of: HistorySubject): readonly ShopEvent[] {
  const session = useSession();
  const [events, setEvents] = useState<readonly ShopEvent[]>([]);
  useSignalEffect(() => {
    let current = session.view.value !== undefined;
    void session.historyOf(of).then((read) => {
      if (current) setEvents(read);
    });
    return () => {
      current = false;
    };
  });
  return events;
}
