import type { PhotoNote } from './photo-database.ts';

/** Photos that go into one file. */
export interface Volume {
  /** From 1. */
  readonly number: number;
  readonly photos: readonly PhotoNote[];
  readonly bytes: number;
}

/** What a tablet packs and unpacks in its memory at once. */
const mostInVolume = 60_000_000;

/** Photos by when they were kept: what is added comes last. */
export function inOrderOfKeeping(notes: readonly PhotoNote[]): readonly PhotoNote[] {
  return [...notes].sort((a, b) => a.kept - b.kept || (a.hash < b.hash ? -1 : 1));
}

/**
 * Photos cut into files by when they were kept: a full file stays as it is whatever is photographed later, so that only the
 * last one has to be saved again.
 */
export function volumesOf(notes: readonly PhotoNote[], most = mostInVolume): readonly Volume[] {
  const volumes: { number: number; photos: PhotoNote[]; bytes: number }[] = [];
  for (const note of inOrderOfKeeping(notes)) {
    const last = volumes.at(-1);
    if (last && last.bytes + note.bytes <= most) {
      last.photos.push(note);
      last.bytes += note.bytes;
    } else volumes.push({ number: volumes.length + 1, photos: [note], bytes: note.bytes });
  }
  return volumes;
}
