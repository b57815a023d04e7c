import { effect, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { CopyDesk, DeskParts } from './copy-desk.ts';
import { type CopyMemory, rememberCopies } from './known-copies.ts';
import type { RestoredCopy } from './restore.ts';
import type { Session } from './session.ts';

/** The copies of the maker's own shop. The demo has none. */
export interface Copies extends Pick<CopyMemory, 'known' | 'note'> {
  /** What makes, hands out and takes in copies; its code comes a moment after the shop is open, null until then. */
  readonly desk: ReadonlySignal<CopyDesk | null>;
  /** What the last restore did, until the person has read it. */
  readonly restored: Signal<RestoredCopy | null>;
}

export interface CopiesParts extends Omit<DeskParts, 'session' | 'memory' | 'shelf'> {
  /** The tablet's shelf for copies; null where it has none. */
  readonly shelf: () => Promise<DeskParts['shelf']>;
  /** The own shop's session while its log could be read and is open; null else. */
  readonly session: ReadonlySignal<Session | null>;
  readonly storage: Pick<Storage, 'getItem' | 'setItem'> | undefined;
}

/** Begins to keep copies whenever the own shop is open, and ends when it is closed. */
export function openCopies({ session, name, storage, shelf, ...parts }: CopiesParts): Copies {
  const memory = rememberCopies(name, storage);
  const desk = signal<CopyDesk | null>(null);
  effect(() => {
    const open = session.value;
    if (!open) return;
    let ended = false;
    void import('./copy-desk.ts')
      .then(async ({ openCopyDesk }) =>
        openCopyDesk({ ...parts, shelf: await shelf(), session: open, name, memory }),
      )
      .then((opened) => {
        if (ended) opened.close();
        else desk.value = opened;
      })
      // Without the code there are no copies by themselves; the next opening tries again.
      .catch(() => undefined);
    return () => {
      ended = true;
      desk.peek()?.close();
      desk.value = null;
    };
  });
  return { known: memory.known, note: memory.note, desk, restored: signal<RestoredCopy | null>(null) };
}
