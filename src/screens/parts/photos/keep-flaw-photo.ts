import { photosOf } from '../../../app/photos.ts';
import type { Session } from '../../../app/session.ts';
import type { ReasonId, StageId, TrayId } from '../../../domain/log/ids.ts';
import { photoWords as words } from '../../../words/photo-words.ts';
import { keptWords } from './kept-words.ts';

interface FlawPhoto {
  readonly file: File;
  readonly tray: TrayId;
  readonly stage: StageId;
  readonly reasons: readonly ReasonId[];
}

/** Keeps the photo and takes it down in the log; what to say when it was not kept, or nothing. */
export async function keepFlawPhoto(
  { database, session }: { readonly database: string | null; readonly session: Session },
  { file, tray, stage, reasons }: FlawPhoto,
): Promise<string> {
  if (database === null) return words.noStore;
  const kept = await photosOf(database).keep(file);
  if (kept.kind !== 'kept') return keptWords(kept);
  await session.act({ kind: 'photograph-piece', tray, stage, reasons, photo: kept.photo });
  return '';
}
