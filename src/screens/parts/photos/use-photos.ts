import { type Photos, photosOf } from '../../../app/photos.ts';
import { useApp } from '../app-context.ts';

/** The photos of the open shop; null where this window keeps nothing on the tablet. */
export function usePhotos(): Photos | null {
  const database = useApp().database();
  return database === null ? null : photosOf(database);
}
