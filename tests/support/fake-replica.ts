import { signal } from '@preact/signals';
import type {
  Invited,
  JoinedTo,
  JoinResult,
  PhotosStatus,
  ReplicaDesk,
  ReplicaStatus,
  SetAside,
} from '../../src/app/replica.ts';
import { joiningLink } from '../../src/replication/joining-link.ts';
import { wordsOfShop } from '../../src/replication/shop-words.ts';

const address = 'wss://bench-pc.lan:8443/sync';
const key = Uint8Array.from({ length: 16 }, (_, at) => at);
const invitation = { address, shop: 'kx7p2m', key };
export const link = joiningLink(invitation, 'https://bench-pc.lan:8443/');

/** A desk without a broker: it joins whom it is told to, and notes what it was asked for. */
export function fakeReplica(answer: JoinResult = { kind: 'joined' }) {
  const joined = signal<JoinedTo | null>(null);
  const status = signal<ReplicaStatus>({ kind: 'off' });
  const setAside = signal<readonly SetAside[]>([]);
  const photos = signal(true);
  const photosStatus = signal<PhotosStatus>({ toSend: 0, toFetch: 0, refused: null });
  const asked: { invited: Invited; mayInvite: boolean }[] = [];
  const said: string[] = [];
  const desk: ReplicaDesk = {
    ...{ joined, status, setAside, photos, photosStatus, photosCame: signal(0) },
    async setPhotos(wanted) {
      photos.value = wanted;
    },
    async join(invited, { mayInvite }) {
      asked.push({ invited, mayInvite });
      if (answer.kind === 'joined') joined.value = { address, shop: invitation.shop, seat: 'B', mayInvite };
      return answer;
    },
    async leave() {
      joined.value = null;
    },
    invitation: async () => (joined.value?.mayInvite ? { link, words: wordsOfShop(key) } : undefined),
    hurry: () => void said.push('hurry'),
    close: () => undefined,
  };
  return { desk, joined, status, setAside, photosStatus, asked, said };
}
