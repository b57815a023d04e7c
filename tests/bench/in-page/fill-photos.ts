/** Puts photos of a tray, and what the log says of them, into the shop of the app that is served at this origin. */
import * as v from 'valibot';
import { photoHash } from '../../../src/domain/log/photo-facts.ts';
import { openIndexedDbLog } from '../../../src/store/indexeddb-log.ts';
import { openPhotoStore } from '../../../src/store/photos/photo-store.ts';

const shop = 'tallywright';
/** About what a photo of 1600 pixels has, and a small one (bytes). */
const [large, small] = [200_000, 8_000];

export async function fillPhotos({ photos, now }: { photos: number; now: number }): Promise<number> {
  const log = await openIndexedDbLog({
    name: shop,
    newStation: () => {
      throw new Error('the app has not begun the shop');
    },
    news: { blocked: () => {}, outdated: () => {}, lost: () => {} },
  });
  const { events } = await log.latestOwn(50);
  const pass = events.findLast((event) => 'of' in event);
  if (!pass || !('of' in pass) || !('stage' in pass)) throw new Error('the app has not tapped yet');
  const { of, stage, zone, day, person } = pass;
  const store = openPhotoStore(shop);
  for (let at = 0; at < photos; at += 1) {
    const hash = v.parse(photoHash, at.toString(16).padStart(64, '0'));
    const facts = { hash, width: 1600, height: 1200, bytes: large };
    const bytes = (length: number) => {
      const filled = new Uint8Array(length);
      // At most 65,536 at once (Web Cryptography API, getRandomValues).
      for (let from = 0; from < length; from += 65_536)
        crypto.getRandomValues(filled.subarray(from, from + 65_536));
      return filled;
    };
    await store.keep({ facts, bytes: bytes(large), small: bytes(small) }, now);
    await log.append({
      act: `photo ${at}`,
      now,
      drafts: [
        { zone, day, person, kind: 'piece-photographed', of, moves: [], stage, reasons: [], photo: facts },
      ],
    });
  }
  const kept = (await store.notes()).length;
  store.close();
  log.close();
  return kept;
}
