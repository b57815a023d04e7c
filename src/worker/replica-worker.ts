/**
 * Keeps the shop's store and the broker's copy the same, beside the window, for as long as the window is open. It writes to the
 * store as another window would, and tells the windows so.
 */
import { seededRandom } from '../domain/chance/seeded-random.ts';
import { Refused } from '../replication/exchange.ts';
import type { Joined } from '../replication/joined.ts';
import type { Invitation } from '../replication/joining-link.ts';
import { messageDesk } from '../replication/message.ts';
import { openOverWebSocket } from '../replication/over-web-socket.ts';
import { photoDesk } from '../replication/photo-message.ts';
import { type PhotoReplicator, photoReplicator } from '../replication/photo-replicator.ts';
import type { SetAside } from '../replication/replica-status.ts';
import { type Replicator, replicator } from '../replication/replicator.ts';
import { takeSeat } from '../replication/seat-claim.ts';
import { eventsKeyOf, seatSeedOf } from '../replication/shop-key.ts';
import { tellWindows, windowFeed } from '../store/feed.ts';
import { openIndexedDbLog } from '../store/indexeddb-log.ts';
import { newId } from '../store/new-id.ts';
import { openPhotoStore } from '../store/photos/photo-store.ts';
import { allowOwnScripts } from './own-scripts.ts';
import type { FromReplica, NotJoined, ToReplica } from './replica-protocol.ts';
import { takeInPhoto } from './take-in-photo.ts';
import { workerNow } from './worker-clock.ts';

// It starts a worker for each photo that comes in.
allowOwnScripts();
const worker = globalThis as unknown as DedicatedWorkerGlobalScope;
const say = (message: FromReplica) => worker.postMessage(message);
const random = (length: number) => crypto.getRandomValues(new Uint8Array(length));
const timer = {
  after(ms: number, run: () => void) {
    const handle = setTimeout(run, ms);
    return () => clearTimeout(handle);
  },
};

interface Running {
  readonly replica: Replicator;
  readonly photos: PhotoReplicator;
  readonly leave: () => void;
}
let running: Promise<Running> | undefined;

/** Does nothing where the store cannot be opened. */
function withRunning(act: (started: Running) => void): void {
  void running?.then(act, () => undefined);
}

async function join({
  invitation,
  tablet,
  mayInvite,
}: Extract<ToReplica, { kind: 'join' }>): Promise<FromReplica> {
  try {
    const open = async (seat: Joined['seat']) =>
      openOverWebSocket({ ...where(invitation), seat, seed: await seatSeedOf(invitation.key, seat) });
    const seat = await takeSeat({ invitation, tablet, random, open });
    if (!seat) return notJoined({ kind: 'no-seat' });
    const { address, shop, key } = invitation;
    const keys = { seed: await seatSeedOf(key, seat), events: await eventsKeyOf(key) };
    const joined = { address, shop, seat, tablet, ...keys, key: mayInvite ? key : null, photos: true };
    return { kind: 'joined', joined };
  } catch (error) {
    return notJoined(
      error instanceof Refused ? { kind: 'refused', why: error.why } : { kind: 'unreachable' },
    );
  }
}

const where = ({ address, shop }: Pick<Invitation, 'address' | 'shop'>) => ({ address, shop });
const notJoined = (because: NotJoined): FromReplica => ({ kind: 'not-joined', because });

async function run({ store: name, joined }: Extract<ToReplica, { kind: 'run' }>) {
  const nobody = () => undefined;
  const news = { blocked: nobody, outdated: () => worker.close(), lost: nobody };
  const store = await openIndexedDbLog({ name, newStation: newId, news });
  const { seat, seed, tablet, shop, events } = joined;
  const sealing = { shop, seat, key: events, random };
  const parts = {
    ...{ store, seat, timer },
    random: seededRandom(new DataView(random(4).buffer).getUint32(0)),
    onAside: (message: SetAside) => say({ kind: 'aside', message }),
  };
  const photoStore = openPhotoStore(name);
  const photos = photoReplicator({
    ...parts,
    open: () => openOverWebSocket({ ...where(joined), seat, seed, kind: 'photos' }),
    desk: photoDesk(sealing),
    shelf: {
      held: async () => new Set((await photoStore.notes()).map(({ hash }) => hash)),
      bytes: photoStore.bytes,
      async keep(hash, bytes) {
        const made = await takeInPhoto({ hash, bytes });
        if (!made) return false;
        await photoStore.keep(made, workerNow());
        say({ kind: 'photo-came' });
        return true;
      },
    },
    onStatus: (status) => say({ kind: 'photos-status', status }),
  });
  photos.setWanted(joined.photos);
  const replica = replicator({
    ...parts,
    open: () => openOverWebSocket({ ...where(joined), seat, seed }),
    desk: messageDesk(sealing),
    ...{ tablet, now: workerNow },
    onStatus(status) {
      say({ kind: 'status', status });
      photos.logIs(status);
    },
    onMerged({ renewed }) {
      tellWindows(name);
      say({ kind: 'merged', renewed });
      photos.news();
    },
  });
  const feed = windowFeed(name);
  feed.onNews(() => {
    replica.news();
    photos.news();
  });
  return {
    replica,
    photos,
    leave() {
      photoStore.close();
      feed.close();
      store.close();
    },
  };
}

async function stop(): Promise<void> {
  const started = await running?.catch(() => undefined);
  await Promise.all([started?.replica.stop(), started?.photos.stop()]);
  started?.leave();
  say({ kind: 'stopped' });
}

worker.addEventListener('message', ({ data }: MessageEvent<ToReplica>) => {
  switch (data.kind) {
    case 'join':
      void join(data).then(say);
      break;
    case 'run':
      running = run(data);
      // A store that cannot be opened is told of by the window.
      running.catch(() => undefined);
      break;
    case 'hurry':
      withRunning(({ replica, photos }) => {
        replica.hurry();
        photos.hurry();
      });
      break;
    case 'stop':
      void stop();
      break;
  }
});
