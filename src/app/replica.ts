import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import { type Joined, readJoined } from '../replication/joined.ts';
import {
  type Invitation,
  joiningLink,
  readInvitation,
  readJoiningLink,
} from '../replication/joining-link.ts';
import type { PhotosStatus, ReplicaStatus, SetAside } from '../replication/replica-status.ts';
import { forgetJoined, keepJoined, loadJoined } from '../store/kept-replica.ts';
import { newId } from '../store/new-id.ts';
import type { FromReplica, NotJoined, ToReplica } from '../worker/replica-protocol.ts';
import type { Timer } from './saver.ts';

export type { PhotosStatus, ReplicaStatus, SetAside };

/** What a person has: the link of an invitation, or the parts of one, the key in words. */
export type Invited =
  | { readonly link: string }
  | { readonly address: string; readonly shop: string; readonly words: string };

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

type StartReplicaWorker = () => Pick<Worker, 'postMessage' | 'terminate' | 'addEventListener'>;

export interface ReplicaParts {
  /** The store of the shop that joins, while it is open in this window and may be written to. */
  readonly store: ReadonlySignal<string | null>;
  /** Something came in from the broker; the store took a new station when it is renewed. */
  readonly onMerged: (what: { readonly renewed: boolean }) => void;
  readonly timer: Timer;
  /** The address of the app, for links that invite. */
  readonly page: string;
  readonly start?: StartReplicaWorker | undefined;
}

const startReplicaWorker: StartReplicaWorker | undefined =
  typeof Worker === 'undefined'
    ? undefined
    : () => new Worker(new URL('../worker/replica-worker.ts', import.meta.url), { type: 'module' });

const noPhotos: PhotosStatus = { toSend: 0, toFetch: 0, refused: null };
/** More than these nobody reads. */
const mostAside = 100;
/** A worker that does not end by itself is ended (ms). */
const untilEnded = 2000;

export async function openReplica({
  store,
  onMerged,
  timer,
  page,
  start = startReplicaWorker,
}: ReplicaParts): Promise<ReplicaDesk> {
  const kept = signal(readJoined(await loadJoined().catch(() => undefined)) ?? null);
  const joined = signal<JoinedTo | null>(null);
  const status = signal<ReplicaStatus>({ kind: 'off' });
  const photos = computed(() => kept.value?.photos ?? true);
  const photosStatus = signal<PhotosStatus>(noPhotos);
  const photosCame = signal(0);
  const setAside = signal<readonly SetAside[]>([]);
  let worker: ReturnType<StartReplicaWorker> | undefined;
  let tablet = kept.peek()?.tablet ?? newId();

  function hear({ data }: { data: FromReplica }): void {
    if (data.kind === 'status') status.value = data.status;
    else if (data.kind === 'photos-status') photosStatus.value = data.status;
    else if (data.kind === 'photo-came') photosCame.value += 1;
    else if (data.kind === 'aside') setAside.value = [...setAside.peek(), data.message].slice(-mostAside);
    else if (data.kind === 'merged') onMerged({ renewed: data.renewed });
  }

  function run(as: Joined, name: string): void {
    if (worker || !start) return;
    worker = start();
    worker.addEventListener('message', hear as unknown as EventListener);
    worker.postMessage({ kind: 'run', store: name, joined: as } satisfies ToReplica);
  }

  function end(): void {
    const ending = worker;
    worker = undefined;
    if (!ending) return;
    status.value = { kind: 'off' };
    photosStatus.value = noPhotos;
    const cancel = timer.after(untilEnded, () => ending.terminate());
    ending.addEventListener('message', ((event: { data: FromReplica }) => {
      if (event.data.kind !== 'stopped') return;
      cancel();
      ending.terminate();
    }) as unknown as EventListener);
    ending.postMessage({ kind: 'stop' } satisfies ToReplica);
  }

  const stopShowing = effect(() => {
    const now = kept.value;
    joined.value = now && {
      address: now.address,
      shop: now.shop,
      seat: now.seat,
      mayInvite: now.key !== null,
    };
  });
  const stopRunning = effect(() => {
    if (kept.value && store.value !== null) run(kept.value, store.value);
    else end();
  });

  async function keep(next: Joined): Promise<void> {
    await keepJoined(next);
    kept.value = next;
  }

  function takeSeat(invitation: Invitation, mayInvite: boolean): Promise<Joined | NotJoined> {
    const asked = start?.();
    if (!asked) return Promise.resolve({ kind: 'unreachable' });
    return new Promise<Joined | NotJoined>((resolve) => {
      asked.addEventListener('message', (({ data }: { data: FromReplica }) => {
        if (data.kind === 'joined') resolve(data.joined);
        if (data.kind === 'not-joined') resolve(data.because);
      }) as unknown as EventListener);
      asked.addEventListener('error', () => resolve({ kind: 'unreachable' }));
      asked.postMessage({ kind: 'join', invitation, tablet, mayInvite } satisfies ToReplica);
    }).finally(() => asked.terminate());
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
      if (!now) return;
      await keep({ ...now, photos: wanted });
      worker?.postMessage({ kind: 'photos', wanted } satisfies ToReplica);
    },
    async join(invited, { mayInvite }) {
      if (kept.peek()) return { kind: 'joined-before' };
      const invitation = await invitationIn(invited);
      if (!invitation) return { kind: 'no-invitation' };
      const taken = await takeSeat(invitation, mayInvite);
      if ('kind' in taken) return taken;
      await keep(taken);
      return { kind: 'joined' };
    },
    async leave() {
      await forgetJoined();
      tablet = kept.peek()?.tablet ?? tablet;
      kept.value = null;
      setAside.value = [];
    },
    async invitation() {
      const now = kept.peek();
      if (!now?.key) return undefined;
      const { address, shop, key } = now;
      return { link: joiningLink({ address, shop, key }, page), words: (await words()).wordsOfShop(key) };
    },
    hurry: () => worker?.postMessage({ kind: 'hurry' } satisfies ToReplica),
    close() {
      stopRunning();
      stopShowing();
      end();
    },
  };
}

/** Whether a text that was read invites to a shop. */
export const isJoiningLink = (text: string): boolean => readJoiningLink(text) !== undefined;

/** The list of words is long: it comes when a person uses them. */
const words = () => import('../replication/shop-words.ts');

async function invitationIn(invited: Invited): Promise<Invitation | undefined> {
  if ('link' in invited) return readJoiningLink(invited.link);
  const key = (await words()).keyOfWords(invited.words);
  return key && readInvitation({ address: invited.address.trim(), shop: invited.shop.trim(), key });
}
