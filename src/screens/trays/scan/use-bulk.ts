import { useSignal } from '@preact/signals';
import { useState } from 'preact/hooks';
import { inForce } from '../../../app/acts.ts';
import { type BulkLine, type BulkMove, bulkLines } from '../../../domain/command/bulk-move.ts';
import type { TrayId } from '../../../domain/log/ids.ts';
import { useSession, useShop } from '../../parts/app-context.ts';
import { useNow } from '../../parts/use-now.ts';
import { type Done, doLine } from './scan-view.ts';

/** A tray of the list: what would become of it, or what has. */
export interface ListedTray {
  readonly tray: TrayId;
  readonly line: BulkLine;
  readonly done: Done | null;
  /** That its pieces come out before their least time was asked for. */
  readonly early: boolean;
}

export interface Bulk {
  readonly listed: readonly ListedTray[];
  /** How many trays the button would move. */
  readonly ready: number;
  readonly busy: boolean;
  /** Adds a tray; false when it is in the list already. */
  readonly add: (tray: TrayId) => boolean;
  readonly leaveOut: (tray: TrayId) => void;
  /** Whether pieces of it come out before their least time too. */
  readonly takeEarly: (tray: TrayId, asked: boolean) => void;
  /** Does all that can be done; whether every tray of it was moved. */
  readonly doAll: () => Promise<boolean>;
  /** Takes back what was done with a tray: it then stands in the list as before. */
  readonly undo: (tray: TrayId) => Promise<void>;
  /** Forgets what was done; what was not stays in the list when `keep` says so. */
  readonly renew: (keep: 'open' | 'nothing') => void;
}

/** The list of trays that are scanned in a row and moved by one tap. */
export function useBulk(move: BulkMove): Bulk {
  const session = useSession();
  const shop = useShop();
  const now = useNow();
  // Two labels of one picture are added before the list is drawn again.
  const trays = useSignal<readonly TrayId[]>([]);
  const [done, setDone] = useState<ReadonlyMap<TrayId, Done>>(new Map());
  const [early, setEarly] = useState<ReadonlySet<TrayId>>(new Set());
  const [busy, setBusy] = useState(false);
  const isDone = (tray: TrayId) => done.get(tray)?.problem === null;
  const open = trays.value.filter((tray) => !isDone(tray));
  const lines = new Map(
    bulkLines(shop, { move, trays: open, early, now }).map((line, index) => [open[index], line]),
  );
  const listed = trays.value.flatMap((tray): ListedTray[] => {
    const was = done.get(tray) ?? null;
    const line = was && isDone(tray) ? was.line : lines.get(tray);
    return line ? [{ tray, line, done: was, early: early.has(tray) }] : [];
  });
  const would = listed.flatMap(({ tray, line }) => (!isDone(tray) && line.kind === 'would' ? [line] : []));

  const takeEarly = (tray: TrayId, asked: boolean) =>
    setEarly((before) => (asked ? new Set(before).add(tray) : without(before, tray)));

  return {
    listed,
    ready: would.length,
    busy,
    add(tray) {
      if (trays.peek().includes(tray)) return false;
      trays.value = [...trays.peek(), tray];
      return true;
    },
    leaveOut(tray) {
      trays.value = trays.peek().filter((each) => each !== tray);
      takeEarly(tray, false);
    },
    takeEarly,
    async doAll() {
      setBusy(true);
      const results: Done[] = [];
      for (const line of would) {
        const result = await doLine(session, line);
        results.push(result);
        setDone((before) => new Map(before).set(line.tray.tray, result));
      }
      setBusy(false);
      return results.every(({ problem }) => problem === null);
    },
    async undo(tray) {
      const was = done.get(tray);
      if (!was) return;
      const events = inForce(was, session.view.value.shop.voids);
      // Taken back elsewhere in the meantime, it stands as it was before all the same.
      if (events.length > 0) {
        const result = await session.act({ kind: 'undo', events });
        if (result.kind === 'refused') {
          setDone((before) => new Map(before).set(tray, { ...was, problem: result.problem }));
          return;
        }
      }
      takeEarly(tray, false);
      setDone((before) => new Map([...before].filter(([each]) => each !== tray)));
    },
    renew(keep) {
      trays.value = keep === 'open' ? open : [];
      setDone(new Map());
      setEarly(new Set());
    },
  };
}

function without(trays: ReadonlySet<TrayId>, tray: TrayId): ReadonlySet<TrayId> {
  return new Set([...trays].filter((each) => each !== tray));
}
