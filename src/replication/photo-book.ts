import type { ShopEvent } from '../domain/log/event.ts';
import type { PhotoHash } from '../domain/log/photo-facts.ts';
import { markSeen, type VersionVector } from '../domain/log/version-vector.ts';
import { type Shot, shotsAmong } from '../domain/rollup/photos.ts';
import { enforce, isVoided, type Voids } from '../domain/shop/voids.ts';
import type { LogStore } from '../store/log-store.ts';

/** What the log says of photos. */
export interface PhotosNamed {
  /** Those that are wanted, the newest first; own ones were taken on this tablet. */
  readonly wanted: ReadonlyMap<PhotoHash, { readonly isOwn: boolean }>;
  /** Those whose bytes are wanted no longer. */
  readonly letGo: ReadonlySet<PhotoHash>;
  /** Another number once the log says something else of photos. */
  readonly edition: number;
}

type AboutPhoto = Shot | Extract<ShopEvent, { kind: 'photo-let-go' }>;

const isAboutPhoto = (event: ShopEvent): event is AboutPhoto =>
  event.kind === 'piece-photographed' || event.kind === 'photo-taken' || event.kind === 'photo-let-go';

/** Reads what the log says of photos, each time only what is new in it. */
export function photoBook(store: Pick<LogStore, 'since' | 'station'>): () => Promise<PhotosNamed> {
  const seen: VersionVector = new Map();
  const voids: Voids = new Map();
  const own = new Set<string>();
  const about: AboutPhoto[] = [];
  let named: PhotosNamed = { wanted: new Map(), letGo: new Set(), edition: 0 };

  function sum(): PhotosNamed {
    const letGo = new Set<PhotoHash>();
    for (const event of about)
      if (event.kind === 'photo-let-go' && !isVoided(voids, event)) letGo.add(event.photo);
    const wanted = new Map<PhotoHash, { isOwn: boolean }>();
    const shots = shotsAmong(about, voids).toSorted((a, b) => b.stamp.wall - a.stamp.wall);
    for (const { photo, station } of shots) {
      const isOwn = own.has(station) || wanted.get(photo.hash)?.isOwn === true;
      if (!letGo.has(photo.hash)) wanted.set(photo.hash, { isOwn });
    }
    return { wanted, letGo, edition: named.edition + 1 };
  }

  return async () => {
    const { events, newer } = await store.since(seen);
    let isNews = own.size === 0 || !own.has(store.station());
    own.add(store.station());
    for (const event of newer) markSeen(seen, event);
    for (const event of events) {
      markSeen(seen, event);
      if (isAboutPhoto(event)) {
        about.push(event);
        isNews = true;
      } else if (event.kind === 'voided') {
        if (!isVoided(voids, event)) enforce({ seen, voids, post: () => undefined }, { event, sign: 1 });
        isNews ||= event.event.kind === 'voided' || isAboutPhoto(event.event);
      }
    }
    if (isNews) named = sum();
    return named;
  };
}
