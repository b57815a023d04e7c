import type { PhotoNotes } from '../../../app/photos.ts';

/** How many photos of a tablet no file has that a person saved: with the tablet they would be gone. */
export function countInNoFile(notes: PhotoNotes): number {
  return notes.filter(({ out }) => out === undefined).length;
}
