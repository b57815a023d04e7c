import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { PhotoHash } from '../domain/log/photo-facts.ts';
import type { Exchange } from './exchange.ts';
import type { PhotosNamed } from './photo-book.ts';
import { photoFetching } from './photo-fetching.ts';
import type { PhotoDesk } from './photo-message.ts';
import { clearLane, sendPhoto } from './photo-sending.ts';
import type { PhotoShelf } from './photo-shelf.ts';
import { photosThere } from './photos-there.ts';
import type { PhotosStatus, SetAside } from './replica-status.ts';
import type { Seat } from './shop-key.ts';

export interface PhotoTraderParts {
  readonly read: () => Promise<PhotosNamed>;
  readonly shelf: PhotoShelf;
  readonly desk: PhotoDesk;
  readonly seat: Seat;
  readonly onAside: (message: SetAside) => void;
  readonly onWaiting: (waiting: Pick<PhotosStatus, 'toSend' | 'toFetch'>) => void;
  /** Resolves once the log has nothing to send or to take in; asked before each piece. */
  readonly turn: () => Promise<void>;
}

/** What a trade could not do: photos that lie on no tablet in reach, and photos of others that are still to be sent. */
export interface PhotosLeft {
  /** What the log said of photos when all was done that could be. */
  readonly edition: number;
  readonly nowhere: number;
  readonly ofOthers: number;
}

/**
 * Sends the photos that a broker lacks and fetches those that a tablet lacks, one at a time, over one line after another. What
 * it remembers of the broker is looked at anew as soon as the broker says that anything has changed.
 */
export function photoTrader({ read, shelf, desk, seat, turn, ...tell }: PhotoTraderParts) {
  const there = photosThere();
  const fetching = photoFetching({ desk, shelf, turn, onAside: tell.onAside });
  /** Not what their names promise: they were spoilt on this tablet. */
  const spoilt = new Set<PhotoHash>();

  /** What is to be done, the newest photos first; of what was tried with this line, nothing. */
  async function plan(withOthers: boolean, tried: ReadonlySet<PhotoHash>) {
    const [{ wanted, letGo, edition }, held] = [await read(), await shelf.held()];
    const missing = [...wanted].filter(
      ([photo]) => held.has(photo) && !there.isWhole(photo) && !spoilt.has(photo) && !tried.has(photo),
    );
    const lacking = [...wanted.keys()].filter((photo) => !held.has(photo) && !tried.has(photo));
    const toSend = missing.filter(([, { isOwn }]) => isOwn || withOthers).map(([photo]) => photo);
    const toFetch = lacking.filter((photo) => there.lanesOf(photo).some(fetching.mayHave));
    return {
      toClear: there.lanesOn(seat).filter(({ photo, count }) => count > 1 && letGo.has(photo)),
      ...{ toSend, toFetch },
      left: {
        edition,
        nowhere: lacking.filter((photo) => there.lanesOf(photo).length === 0).length,
        ofOthers: missing.length - toSend.length,
      },
    };
  }

  async function send(exchange: Exchange, photo: PhotoHash): Promise<void> {
    const bytes = await shelf.bytes(photo);
    if (!bytes || bytesToHex(sha256(bytes)) !== photo) spoilt.add(photo);
    else {
      const lane = await sendPhoto({ photo, bytes }, { exchange, desk, seat, turn });
      if (lane) there.add(lane);
    }
  }

  return {
    /**
     * Resolves when there is nothing more to be done with this line. What others took is sent only when that is asked:
     * the tablet that took it is at it, most likely.
     */
    async trade(exchange: Exchange, withOthers: boolean): Promise<PhotosLeft> {
      fetching.begin(await there.look(exchange));
      const tried = new Set<PhotoHash>();
      for (;;) {
        const { toClear, toSend, toFetch, left } = await plan(withOthers, tried);
        tell.onWaiting({ toSend: toSend.length, toFetch: toFetch.length });
        const [cleared] = toClear;
        const [sent] = toSend;
        const [fetched] = fetching.isFull() ? [] : toFetch;
        await turn();
        if (cleared) {
          await clearLane(cleared, { exchange, desk });
          there.add({ ...cleared, count: 1 });
        } else if (sent) {
          tried.add(sent);
          await send(exchange, sent);
        } else if (fetched) {
          tried.add(fetched);
          await fetching.fetch(fetched, there.lanesOf(fetched), exchange);
        } else return left;
      }
    },
  };
}
