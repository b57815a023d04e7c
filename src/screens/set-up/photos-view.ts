import type { PhotoNotes } from '../../app/photos.ts';
import type { Session } from '../../app/session.ts';
import type { ShopEvent } from '../../domain/log/event.ts';
import type { PhotoHash } from '../../domain/log/photo-facts.ts';
import { oldFlawPhotos } from '../../domain/rollup/photos.ts';

const monthMs = 30.44 * 24 * 3_600_000;

/** Flaw photos of so many months ago that lie on this tablet. */
export async function oldPhotosHere(
  session: Pick<Session, 'allEvents' | 'now' | 'view'>,
  { months, notes }: { readonly months: number; readonly notes: PhotoNotes },
): Promise<readonly PhotoHash[]> {
  const events = (await session.allEvents()).filter(
    (event): event is ShopEvent =>
      event.kind === 'piece-photographed' || event.kind === 'photo-taken' || event.kind === 'photo-let-go',
  );
  const { voids } = session.view.peek().shop;
  const old = oldFlawPhotos(events, { before: session.now() - months * monthMs, voids });
  return notes.map(({ hash }) => hash).filter((hash) => old.has(hash));
}
