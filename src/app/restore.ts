import { type ReadonlySignal, signal } from '@preact/signals';
import { countIn, linksIn } from '../domain/packed/parcel.ts';
import { plainText } from '../domain/set-up/text.ts';
import type { OpenedBackup } from '../store/backup/open-sealed.ts';
import type { UnreadableLine } from '../store/backup/read-backup.ts';
import type { PhotosFound } from '../store/backup/read-volumes.ts';
import type { Secret } from '../store/backup/sealing-keys.ts';
import type { Preview } from '../store/backup/what-it-would-add.ts';
import type { ReadParcel } from '../store/log-store.ts';
import type { FilesReading, RefusedFile } from '../store/read-files.ts';
import type { CopyWork, LogToCopy } from './copy-work.ts';
import type { CopyResult } from './keeper.ts';
import type { ComingIn, Photos } from './photos.ts';
import type { Session } from './session.ts';
import type { Restored } from './session-errands.ts';
import { unwrapped } from './text-copy.ts';

/** What a file holds and what adding it would do. Names in it are as hostile as the file. */
export interface Offer {
  /** What the files are called. */
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
  /** Null when the copy has no photos and speaks of none. */
  readonly photos: PhotosFound | null;
}

/** What a restore did, and how many lines of the copy could not be read. */
export interface RestoredCopy extends Restored {
  readonly unreadable: number;
  /** Of the photos of the copy; left out where it has none. */
  readonly photos?: RestoredPhotos;
}

/** Photos come in after the log, which must not wait for them. */
export interface RestoredPhotos extends ComingIn, Pick<PhotosFound, 'damaged' | 'elsewhere'> {}

type NotOpened = Extract<OpenedBackup, { kind: 'refused' }>['why'];

export type RestoreStep =
  | { readonly kind: 'choose' }
  | { readonly kind: 'reading'; readonly file: string }
  /** It wants its passphrase or its words; `refused` is what was wrong with those given last. */
  | { readonly kind: 'sealed'; readonly file: string; readonly refused: NotOpened | null }
  | {
      readonly kind: 'refused';
      readonly file: string;
      readonly why: RefusedFile | NotOpened | 'cannot-read';
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
  /** The shop whose photos are here, and what adds to them; null where the tablet keeps none. */
  readonly photos: (Pick<Photos, 'addFrom'> & { readonly shop: string }) | null;
  /** The log is in. */
  readonly onDone: (restored: RestoredCopy) => void;
  /** How far the photos have come since. */
  readonly onPhotos: (photos: RestoredPhotos) => void;
}

export interface Restoring {
  readonly step: ReadonlySignal<RestoreStep>;
  /** Reads the files of a copy, in any order. Nothing in the shop changes. */
  readonly read: (files: readonly CopyFile[]) => Promise<void>;
  /** Opens what is sealed and reads it. */
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
  readonly content: () => Promise<Blob>;
}

/** A file that was chosen, opened where it had been sealed; `cut` where some of that did not open. */
interface Chosen {
  readonly name: string;
  readonly content: Blob;
  readonly cut: boolean;
}

/** A file past this (bytes) is not even looked at: the limit of what a backup may be, with room for its text form. */
const largestFile = 240_000_000;
const problemsShown = 5;

/** The way of a file into the log. One step is taken at a time; a press in the wrong step does nothing. */
export function openRestore(parts: RestoreParts): Restoring {
  const { session, work, log, keepBefore, photos } = parts;
  const step = signal<RestoreStep>({ kind: 'choose' });

  let chosen: readonly Chosen[] = [];
  /** Which of them are sealed still. */
  let sealed: readonly number[] = [];

  async function read(files: readonly CopyFile[]): Promise<void> {
    const tooBig = files.find(({ size }) => size > largestFile);
    if (tooBig) {
      step.value = { kind: 'refused', file: plainText(tooBig.name), why: 'too-big' };
      return;
    }
    await reading(namesOf(files), async () => {
      chosen = await Promise.all(
        files.map(async ({ name, content }) => ({
          ...{ name: plainText(name), content: await unwrapped(await content()), cut: false },
        })),
      );
      return look();
    });
  }

  /** Does what takes its time, unless the person goes back meanwhile. */
  async function reading(file: string, work: () => Promise<RestoreStep>): Promise<void> {
    const now = { kind: 'reading', file } as const;
    step.value = now;
    const next = await work().catch(() => ({ kind: 'refused', file, why: 'cannot-read' }) as const);
    if (step.value === now) step.value = next;
  }

  async function look(): Promise<RestoreStep> {
    const files = chosen.map(({ content }) => content);
    const result = await work.read({ files, log: await log(), photos: photos?.shop ?? null });
    if (result.kind !== 'refused') {
      const cut = result.cut || chosen.some((each) => each.cut);
      return afterReading(namesOf(chosen), { ...result, cut });
    }
    const file = namesOf(result.at.flatMap((at) => chosen[at] ?? []));
    if (result.why !== 'sealed') return { kind: 'refused', file, why: result.why };
    sealed = result.at;
    return { kind: 'sealed', file, refused: null };
  }

  async function unseal(secret: Secret): Promise<void> {
    const now = step.value;
    if (now.kind !== 'sealed') return;
    await reading(now.file, async () => {
      const opened = [...chosen];
      for (const at of sealed) {
        const file = opened[at];
        const result = file && (await work.open({ file: file.content, secret }));
        if (!result) continue;
        if (result.kind === 'opened') opened[at] = { ...file, content: result.content, cut: result.cut };
        else if (result.why === 'wrong-secret')
          return { kind: 'sealed', file: now.file, refused: result.why };
        else return { kind: 'refused', file: file.name, why: result.why };
      }
      chosen = opened;
      return look();
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

  /** Of a log that is empty, or stays as it is, there is nothing to copy. */
  const copyBefore = async ({ intoEmpty, preview }: Offer): Promise<CopyResult> =>
    intoEmpty || preview.adds === 0 ? { kind: 'kept', entries: 0 } : keepBefore();

  async function merge(offer: Offer): Promise<void> {
    step.value = { kind: 'adding', offer };
    try {
      const { adds, here, unreadable } = offer.preview;
      const result = adds > 0 ? await session.restore(offer.parcel) : { added: 0, here, unplaced: 0 };
      step.value = { kind: 'choose' };
      const coming = offer.photos && comingOf(offer.photos, photos !== null);
      parts.onDone({ ...result, unreadable, ...(coming && { photos: coming }) });
    } catch {
      step.value = { kind: 'broken-off', offer, inLog: await countHeld(session, offer) };
      return;
    }
    await addPhotos(offer);
  }

  /** After the log, so that a tablet which has no room for them has that. */
  async function addPhotos({ photos: found }: Offer): Promise<void> {
    if (!found || !photos) return;
    const files = chosen.map(({ content }) => content);
    const tell = (coming: ComingIn) => parts.onPhotos({ ...comingOf(found, true), ...coming });
    await photos.addFrom(files, found, tell).catch(() => undefined);
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

const namesOf = (files: readonly Pick<CopyFile, 'name'>[]) =>
  files.map(({ name }) => plainText(name)).join(', ');

function comingOf({ fresh, damaged, elsewhere }: PhotosFound, isKeeping: boolean): RestoredPhotos {
  const [left, refused] = isKeeping ? [fresh.length, 0] : [0, fresh.length];
  return { added: 0, refused, left, damaged, elsewhere };
}

type Read = Exclude<FilesReading, { readonly kind: 'refused' }>;

function afterReading(file: string, reading: Read): RestoreStep {
  const { manifest, parcel, unreadable, cut, digestFits, preview, held, photos } = reading;
  if (countIn(parcel) === 0 && unreadable.length === 0 && !photos)
    return { kind: 'refused', file, why: 'empty' };
  const offer: Offer = {
    file,
    shop: manifest?.shop ? plainText(manifest.shop) : null,
    made: manifest?.made.wall ?? null,
    preview,
    problems: unreadable.slice(0, problemsShown).map(({ line, problems }) => ({
      line,
      problems: problems.map(plainText),
    })),
    damage: cut ? 'cut' : digestFits && !photos?.changed ? 'none' : 'changed',
    foreign: held > 0 && preview.here === 0 && preview.adds > 0,
    intoEmpty: held === 0,
    parcel,
    photos,
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
