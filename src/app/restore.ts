import { type ReadonlySignal, signal } from '@preact/signals';
import { countIn, linksIn } from '../domain/packed/parcel.ts';
import { plainText } from '../domain/set-up/text.ts';
import type { OpenedBackup } from '../store/backup/open-sealed.ts';
import type { RefusedBackup, UnreadableLine } from '../store/backup/read-backup.ts';
import type { Secret } from '../store/backup/sealing-keys.ts';
import type { Preview } from '../store/backup/what-it-would-add.ts';
import type { FileReading } from '../store/copy-jobs.ts';
import type { ReadParcel } from '../store/log-store.ts';
import type { CopyWork, LogToCopy } from './copy-work.ts';
import type { CopyResult } from './keeper.ts';
import type { Session } from './session.ts';
import type { Restored } from './session-errands.ts';
import { unwrapped } from './text-copy.ts';

/** What a file holds and what adding it would do. Names in it are as hostile as the file. */
export interface Offer {
  /** What the file is called. */
  readonly file: string;
  readonly shop: string | null;
  /** When it was made, ms UTC; null when its first line is damaged. */
  readonly made: number | null;
  readonly preview: Preview;
  /** The first of the lines that could not be read. */
  readonly problems: readonly UnreadableLine[];
  readonly damage: 'none' | 'cut' | 'changed';
  /** It shares nothing with the log of this tablet, which is not empty: it may be of another shop. */
  readonly foreign: boolean;
  /** The log has nothing yet: there is no state worth a copy. */
  readonly intoEmpty: boolean;
  readonly parcel: ReadParcel;
}

/** What a restore did, and how many lines of the copy could not be read. */
export interface RestoredCopy extends Restored {
  readonly unreadable: number;
}

type NotOpened = Extract<OpenedBackup, { kind: 'refused' }>['why'];

export type RestoreStep =
  | { readonly kind: 'choose' }
  | { readonly kind: 'reading'; readonly file: string }
  /** It wants its passphrase or its words; `refused` is what was wrong with those given last. */
  | { readonly kind: 'sealed'; readonly file: string; readonly refused: NotOpened | null }
  | {
      readonly kind: 'refused';
      readonly file: string;
      readonly why: RefusedBackup | NotOpened | 'cannot-read';
    }
  | { readonly kind: 'offered'; readonly offer: Offer }
  | { readonly kind: 'copying' | 'adding'; readonly offer: Offer }
  /** No copy of the present state could be made: the person says whether to go on. */
  | { readonly kind: 'no-copy'; readonly offer: Offer; readonly why: CopyResult['kind'] }
  /** It broke off; what is in stays in, and going on adds the rest. */
  | { readonly kind: 'broken-off'; readonly offer: Offer; readonly inLog: number | null };

export interface RestoreParts {
  readonly session: Pick<Session, 'entries' | 'restore'>;
  readonly work: Pick<CopyWork, 'read' | 'open'>;
  /** The log that a copy is held against. */
  readonly log: () => Promise<LogToCopy>;
  /** Copies the present state. */
  readonly keepBefore: () => Promise<CopyResult>;
  readonly onDone: (restored: RestoredCopy) => void;
}

export interface Restoring {
  readonly step: ReadonlySignal<RestoreStep>;
  /** Reads a file. Nothing in the shop changes. */
  readonly read: (file: CopyFile) => Promise<void>;
  /** Opens a sealed file and reads it. */
  readonly unseal: (secret: Secret) => Promise<void>;
  /** Adds what was offered: first a copy of the present state, then one merge. */
  readonly add: () => Promise<void>;
  /** Adds what was offered without a copy of the present state. */
  readonly addAllTheSame: () => Promise<void>;
  readonly startOver: () => void;
}

/** A file of the person's choice, or of the tablet's own shelf. */
export interface CopyFile {
  readonly name: string;
  readonly size: number;
  readonly bytes: () => Promise<Uint8Array>;
}

/** A file past this (bytes) is not even looked at: the limit of what a backup may be, with room for its text form. */
const largestFile = 240_000_000;
const problemsShown = 5;

/** The way of a file into the log. One step is taken at a time; a press in the wrong step does nothing. */
export function openRestore({ session, work, log, keepBefore, onDone }: RestoreParts): Restoring {
  const step = signal<RestoreStep>({ kind: 'choose' });

  let sealed: Uint8Array | undefined;

  async function read({ name: given, size, bytes }: CopyFile): Promise<void> {
    const name = plainText(given);
    if (size > largestFile) {
      step.value = { kind: 'refused', file: name, why: 'too-big' };
      return;
    }
    const unwrap = async () => unwrapped(await bytes());
    await reading(name, async () => {
      const next = await look(name, { bytes: await unwrap(), cut: false });
      // The bytes that were read are gone with the reader.
      if (next.kind === 'sealed') sealed = await unwrap();
      return next;
    });
  }

  /** Does what takes its time, unless the person goes back meanwhile. */
  async function reading(file: string, work: () => Promise<RestoreStep>): Promise<void> {
    const now = { kind: 'reading', file } as const;
    step.value = now;
    const next = await work().catch(() => ({ kind: 'refused', file, why: 'cannot-read' }) as const);
    if (step.value === now) step.value = next;
  }

  async function look(
    file: string,
    { bytes, cut }: { bytes: Uint8Array; cut: boolean },
  ): Promise<RestoreStep> {
    const result = await work.read({ bytes, log: await log() });
    if (result.kind === 'refused' && result.why === 'sealed') return { kind: 'sealed', file, refused: null };
    const whole = result.kind === 'read' && cut ? { ...result, cut } : result;
    return afterReading(file, whole);
  }

  async function unseal(secret: Secret): Promise<void> {
    const now = step.value;
    const bytes = sealed;
    if (now.kind !== 'sealed' || !bytes) return;
    const { file } = now;
    await reading(file, async () => {
      const opened = await work.open({ bytes, secret });
      if (opened.kind === 'opened') return look(file, opened);
      return opened.why === 'wrong-secret'
        ? { kind: 'sealed', file, refused: opened.why }
        : { kind: 'refused', file, why: opened.why };
    });
  }

  async function add(): Promise<void> {
    const now = step.value;
    if (now.kind !== 'offered') return;
    step.value = { kind: 'copying', offer: now.offer };
    const { kind } = await copyBefore(now.offer).catch(() => ({ kind: 'failed' as const }));
    if (kind === 'kept' || kind === 'guarded') await merge(now.offer);
    else step.value = { kind: 'no-copy', offer: now.offer, why: kind };
  }

  const copyBefore = async ({ intoEmpty }: Offer): Promise<CopyResult> =>
    intoEmpty ? { kind: 'kept', entries: 0 } : keepBefore();

  async function merge(offer: Offer): Promise<void> {
    step.value = { kind: 'adding', offer };
    try {
      const result = await session.restore(offer.parcel);
      step.value = { kind: 'choose' };
      onDone({ ...result, unreadable: offer.preview.unreadable });
    } catch {
      step.value = { kind: 'broken-off', offer, inLog: await countHeld(session, offer) };
    }
  }

  return {
    step,
    read,
    unseal,
    add,
    async addAllTheSame() {
      const now = step.value;
      if (now.kind === 'no-copy' || now.kind === 'broken-off') await merge(now.offer);
    },
    startOver() {
      const { kind } = step.value;
      if (kind !== 'copying' && kind !== 'adding') step.value = { kind: 'choose' };
    },
  };
}

function afterReading(file: string, reading: FileReading): RestoreStep {
  if (reading.kind === 'refused') return { kind: 'refused', file, why: reading.why };
  const { manifest, parcel, unreadable, cut, digestFits, preview, held } = reading;
  if (countIn(parcel) === 0 && unreadable.length === 0) return { kind: 'refused', file, why: 'empty' };
  const offer: Offer = {
    file,
    shop: manifest?.shop ? plainText(manifest.shop) : null,
    made: manifest?.made.wall ?? null,
    preview,
    problems: unreadable.slice(0, problemsShown).map(({ line, problems }) => ({
      line,
      problems: problems.map(plainText),
    })),
    damage: cut ? 'cut' : digestFits ? 'none' : 'changed',
    foreign: held > 0 && preview.here === 0 && preview.adds > 0,
    intoEmpty: held === 0,
    parcel,
  };
  return { kind: 'offered', offer };
}

/** How many of the offered entries the log holds by now; null when it cannot be read. */
async function countHeld(session: Pick<Session, 'entries'>, { parcel }: Offer): Promise<number | null> {
  try {
    const held = new Set((await session.entries()).map(({ link }) => link));
    let count = 0;
    for (const link of linksIn(parcel)) if (held.has(link)) count += 1;
    return count;
  } catch {
    return null;
  }
}
