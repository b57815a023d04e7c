import type { PhotoHash } from '../domain/log/photo-facts.ts';
import type { Exchange, Glance, LaneOf } from './exchange.ts';
import { readPhotoLane } from './photo-message.ts';

/** How many messages stand on the lane of a photo, of as many as there ought to be. */
export interface LaneThere extends LaneOf {
  readonly photo: PhotoHash;
  readonly of: number;
  readonly count: number;
}

/**
 * What a broker was seen to hold of photos: pieces are put in their order, one after the other, so that their number on a lane
 * says which are there.
 */
export function photosThere() {
  let seen: Glance | undefined;
  const lanes = new Map<PhotoHash, Map<string, LaneThere>>();

  function add(lane: LaneThere): void {
    const ofPhoto = lanes.get(lane.photo) ?? new Map<string, LaneThere>();
    lanes.set(lane.photo, ofPhoto.set(`${lane.seat}/${lane.of}`, lane));
  }

  const isSame = (now: Glance) =>
    seen?.created === now.created && seen.last === now.last && seen.messages === now.messages;

  return {
    /** Looks at all lanes where anything has changed; whether the broker began anew since the last look. */
    async look(exchange: Exchange): Promise<boolean> {
      if (isSame(await exchange.glance())) return false;
      const { counts, ...now } = await exchange.look();
      lanes.clear();
      for (const [key, count] of counts) {
        const [seat = '', lane = ''] = key.split('/');
        const said = readPhotoLane(lane);
        if (said) add({ seat, lane, photo: said.hash, of: said.of, count });
      }
      const isAnew = seen?.created !== now.created;
      seen = now;
      return isAnew;
    },
    add,
    isWhole: (photo: PhotoHash): boolean =>
      [...(lanes.get(photo)?.values() ?? [])].some(({ count, of }) => count === of),
    /** Lanes that may have the whole photo. */
    lanesOf: (photo: PhotoHash): readonly LaneThere[] =>
      [...(lanes.get(photo)?.values() ?? [])].filter(({ count, of }) => count >= of),
    lanesOn: (seat: string): readonly LaneThere[] =>
      [...lanes.values()].flatMap((ofPhoto) => [...ofPhoto.values()]).filter((lane) => lane.seat === seat),
  };
}
