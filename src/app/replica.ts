import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import { type Joined, readJoined } from '../replication/joined.ts';
import { joiningLink } from '../replication/joining-link.ts';
import type { PhotosStatus, ReplicaStatus, SetAside } from '../replication/replica-status.ts';
import { forgetJoined, keepJoined, loadJoined } from '../store/kept-replica.ts';
import { newId } from '../store/new-id.ts';
import type { FromReplica, NotJoined } from '../worker/replica-protocol.ts';
import { type Invited, invitationOf, isJoiningLink, shopInvitedTo, shopWords } from './invited.ts';
import type { Locks } from './one-at-a-time.ts';
import { type OneWindow, oneWindow } from './one-window.ts';
import { replicaRunner, type StartReplicaWorker, takeSeatInWorker } from './replica-runner.ts';
import { replicaWindows, type SaidOfReplica } from './replica-windows.ts';
import type { Timer } from './saver.ts';

export { type Invited, isJoiningLink, type PhotosStatus, type ReplicaStatus, type SetAside, shopInvitedTo };

export type JoinResult =
  | { readonly kind: 'joined' }
  /** What was given invites to nothing. */
  | { readonly kind: 'no-invitation' }
  /** Joined already: leave first. */
  | { readonly kind: 'joined-before' }
  | NotJoined;

/** What a person may be shown of the shop that this tablet has joined. */
export interface JoinedTo {
  readonly address: string;
  readonly shop: string;
  readonly seat: string;
  readonly mayInvite: boolean;
}

/** This tablet and the other tablets of the shop, by way of a broker. */
export interface ReplicaDesk {
  readonly joined: ReadonlySignal<JoinedTo | null>;
  readonly status: ReadonlySignal<ReplicaStatus>;
  /** Messages that were set aside since the app was opened, with why. */
  readonly setAside: ReadonlySignal<readonly SetAside[]>;
  /** Whether this tablet's photos go to the others, and theirs come here. */
  readonly photos: ReadonlySignal<boolean>;
  readonly photosStatus: ReadonlySignal<PhotosStatus>;
  /** Rises with each photo that comes in. */
  readonly photosCame: ReadonlySignal<number>;
  /** Resolves once the choice is kept for good. */
  readonly setPhotos: (wanted: boolean) => Promise<void>;
  /** Joins, and keeps what is needed for good. `mayInvite` keeps the key of the shop, too. */
  readonly join: (invited: Invited, how: { readonly mayInvite: boolean }) => Promise<JoinResult>;
  /** Leaves off for good. The log stays as it is, here and there. */
  readonly leave: () => Promise<void>;
  /** The link that invites another tablet, and the key in words; undefined where this tablet may not invite. */
  readonly invitation: () => Promise<
    { readonly link: string; readonly words: readonly string[] } | undefined
  >;
  /** Tries at once what would be tried after a while. */
  readonly hurry: () => void;
  readonly close: () => void;
}

export interface ReplicaParts {
  /** The store of the shop that joins, while it is open in this window and may be written to. */
  readonly store: ReadonlySignal<string | null>;
  /** Something came in from the broker; the store took a new station when it is renewed. */
  readonly onMerged: (what: { readonly renewed: boolean }) => void;
  readonly timer: Timer;
  /** The address of the app, for links that invite. */
  readonly page: string;
  readonly start?: StartReplicaWorker | undefined;
  /** By which the windows of the tablet take turns. */
  readonly locks?: Locks | undefined;
}

const startReplicaWorker: StartReplicaWorker | undefined =
  typeof Worker === 'undefined'
    ? undefined
    : () => new Worker(new URL('../worker/replica-worker.ts', import.meta.url), { type: 'module' });

const noPhotos: PhotosStatus = { toSend: 0, toFetch: 0, refused: null };
/** More than these nobody reads. */
const mostAside = 100;

export async function openReplica({
  store,
  onMerged,
  timer,
  page,
  start = startReplicaWorker,
  locks = globalThis.navigator?.locks,
}: ReplicaParts): Promise<ReplicaDesk> {
  const loadKept = async () => readJoined(await loadJoined().catch(() => undefined)) ?? null;
  const kept = signal(await loadKept());
  const joined = computed(() => shownOf(kept.value));
  const status = signal<ReplicaStatus>({ kind: 'off' });
  const photos = computed(() => kept.value?.photos ?? true);
  const photosStatus = signal<PhotosStatus>(noPhotos);
  const photosCame = signal(0);
  const setAside = signal<readonly SetAside[]>([]);
  let turn: OneWindow | undefined;
  let tablet = kept.peek()?.tablet ?? newId();
  const windows = replicaWindows(hearWindow);
  const runner = replicaRunner({ start, timer, hear });

  function sayHowItStands(): void {
    if (!runner.isRunning()) return;
    windows?.say({
      kind: 'standing',
      status: status.peek(),
      photos: photosStatus.peek(),
      setAside: [...setAside.peek()],
    });
  }

  function hear(data: FromReplica): void {
    if (data.kind === 'merged') {
      onMerged({ renewed: data.renewed });
      if (data.renewed) windows?.say({ kind: 'renewed' });
      return;
    }
    if (data.kind === 'photo-came') {
      photosCame.value += 1;
      windows?.say({ kind: 'photo-came' });
      return;
    }
    if (data.kind === 'status') status.value = data.status;
    else if (data.kind === 'photos-status') photosStatus.value = data.status;
    else if (data.kind === 'aside') setAside.value = [...setAside.peek(), data.message].slice(-mostAside);
    sayHowItStands();
  }

  function hearWindow(said: SaidOfReplica): void {
    switch (said.kind) {
      case 'standing':
        turn?.heard();
        if (runner.isRunning() || !turn) return;
        status.value = said.status;
        photosStatus.value = said.photos;
        setAside.value = said.setAside;
        break;
      case 'renewed':
        if (turn && !runner.isRunning()) onMerged({ renewed: true });
        break;
      case 'photo-came':
        photosCame.value += 1;
        break;
      case 'how-does-it-stand':
        sayHowItStands();
        break;
      case 'hurry':
        runner.hurry();
        break;
      case 'kept-another':
        void loadKept().then((now) => {
          kept.value = now;
        });
        break;
    }
  }

  /** Keeps the store and the broker the same while this window has the turn; else another window does. */
  function run(as: Joined, name: string): void {
    turn = oneWindow({
      name: `other tablets of ${as.shop}`,
      // Whoever cannot hear from another window does not wait for it.
      locks: windows && locks,
      timer,
      onTurn(isMine) {
        if (isMine) runner.begin(as, name);
        else runner.end();
      },
      ask: () => windows?.say({ kind: 'how-does-it-stand' }),
    });
  }

  function end(): void {
    turn?.close();
    turn = undefined;
    runner.end();
    status.value = { kind: 'off' };
    photosStatus.value = noPhotos;
  }

  const stopRunning = effect(() => {
    const [as, name] = [kept.value, store.value];
    end();
    if (as && name !== null) run(as, name);
  });

  async function keep(next: Joined): Promise<void> {
    await keepJoined(next);
    kept.value = next;
    windows?.say({ kind: 'kept-another' });
  }

  return {
    joined,
    status,
    setAside,
    photos,
    photosStatus,
    photosCame,
    async setPhotos(wanted) {
      const now = kept.peek();
      if (now) await keep({ ...now, photos: wanted });
    },
    async join(invited, { mayInvite }) {
      if (kept.peek()) return { kind: 'joined-before' };
      const invitation = await invitationOf(invited);
      if (!invitation) return { kind: 'no-invitation' };
      const taken = await takeSeatInWorker(start, { kind: 'join', invitation, tablet, mayInvite });
      if ('kind' in taken) return taken;
      await keep(taken);
      return { kind: 'joined' };
    },
    async leave() {
      await forgetJoined();
      tablet = kept.peek()?.tablet ?? tablet;
      kept.value = null;
      setAside.value = [];
      windows?.say({ kind: 'kept-another' });
    },
    async invitation() {
      const now = kept.peek();
      if (!now?.key) return undefined;
      const { address, shop, key } = now;
      return { link: joiningLink({ address, shop, key }, page), words: (await shopWords()).wordsOfShop(key) };
    },
    hurry() {
      if (runner.isRunning()) runner.hurry();
      else windows?.say({ kind: 'hurry' });
    },
    close() {
      stopRunning();
      end();
      windows?.close();
    },
  };
}

const shownOf = (kept: Joined | null): JoinedTo | null =>
  kept && { address: kept.address, shop: kept.shop, seat: kept.seat, mayInvite: kept.key !== null };
