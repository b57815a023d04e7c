// @vitest-environment happy-dom
import { act, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { address, readAddress } from '../../../src/screens/parts/address.ts';
import { followInvitation } from '../../../src/screens/parts/join/joining-place.ts';
import { Tablets } from '../../../src/screens/set-up/tablets.tsx';
import { ReplicaSign } from '../../../src/screens/shell/replica-sign.tsx';
import { fakeReplica, link } from '../../support/fake-replica.ts';
import { mount, press, settle, take, type } from './mount.tsx';

const there = (testId: string) => screen.queryByTestId(testId) !== null;
const textOf = (testId: string) => screen.getByTestId(testId).textContent;

afterEach(() => {
  address.value = { place: 'set-up', rest: ['tablets'] };
});

async function tablets(replica = fakeReplica()) {
  await mount(<Tablets />, { replica: replica.desk });
  await settle();
  return replica;
}

describe('a tablet that works alone', () => {
  test('joins by a link, and may invite others when it brings the shop', async () => {
    const { asked } = await tablets();
    type('join-link', `  ${link} `);
    await press('join-go');
    expect(asked).toEqual([{ invited: { link }, mayInvite: true }]);
    expect(there('standing-panel')).toBe(true);
    expect(there('join-panel')).toBe(false);
  });

  test('joins by what is typed', async () => {
    const { asked } = await tablets();
    type('join-address', 'wss://bench-pc.lan:8443/sync');
    type('join-shop', 'kx7p2m');
    type('join-key', 'twelve words');
    await take('join-may-invite');
    await press('join-go');
    expect(asked[0]?.invited).toEqual({
      ...{ address: 'wss://bench-pc.lan:8443/sync', shop: 'kx7p2m', words: 'twelve words' },
    });
  });

  test('joins by the address that it was opened with, which then forgets the key', async () => {
    location.hash = link.slice(link.indexOf('#'));
    followInvitation();
    await settle();
    address.value = readAddress(location.hash);
    const { asked } = await tablets();
    await press('join-go');
    expect(asked[0]?.invited).toEqual({ link: link.slice(link.indexOf('#')) });
    expect(address.value).toEqual({ place: 'set-up', rest: ['tablets'] });
    expect(location.hash).not.toContain('join');
  });

  test('asks for an invitation before anything else', async () => {
    const { asked } = await tablets();
    await press('join-go');
    expect(textOf('join-problem')).toContain('Scan a sign, or enter a link.');
    expect(asked).toEqual([]);
  });

  test.each([
    [{ kind: 'unreachable' }, 'cannot be reached'],
    [{ kind: 'no-seat' }, 'All thirteen seats are taken'],
    [{ kind: 'no-invitation' }, 'no link that invites'],
    [{ kind: 'refused', why: 'key' }, 'does not know this key'],
  ] as const)('that is refused says why: %j', async (answer, why) => {
    await tablets(fakeReplica(answer));
    type('join-link', link);
    await press('join-go');
    expect(textOf('join-problem')).toContain(why);
    expect(there('standing-panel')).toBe(false);
    type('join-link', `${link}x`);
    expect(there('join-problem')).toBe(false);
  });
});

describe('a tablet that has joined', () => {
  async function joined() {
    const replica = fakeReplica();
    await replica.desk.join({ link }, { mayInvite: true });
    return tablets(replica);
  }

  test('says how it stands, and tries at once when it is told to', async () => {
    const { status, said } = await joined();
    const says = (state: typeof status.value) => {
      act(() => {
        status.value = state;
      });
      return textOf('replica-status');
    };
    expect(says({ kind: 'up-to-date' })).toBe('Up to date');
    expect(says({ kind: 'to-send', entries: 1200 })).toBe('1,200 to send');
    expect(says({ kind: 'unreachable', since: Date.UTC(2026, 2, 2, 9, 30), entries: 3 })).toContain(
      'Not reached since',
    );
    expect(screen.getByText('3 wait to be sent.')).toBeTruthy();
    expect(says({ kind: 'refused', why: 'full' })).toBe('Refused by the PC');
    expect(screen.getByText('The disk of the PC is full.')).toBeTruthy();
    await press('replica-again');
    expect(said).toEqual(['hurry']);
  });

  test('shows what was set aside, with the reason', async () => {
    const { setAside } = await joined();
    expect(there('set-aside')).toBe(false);
    act(() => {
      setAside.value = [{ at: 17, seat: 'C', reason: 'not-sealed-here', problem: 'OperationError' }];
    });
    expect(textOf('set-aside')).toContain('One message could not be taken in.');
    expect(textOf('set-aside')).toContain('not sealed with the key of this shop');
  });

  test('shows the sign only when it is asked for, with the key in twelve words', async () => {
    await joined();
    expect(there('invite-sign')).toBe(false);
    await press('invite-show');
    expect(there('invite-sign')).toBe(true);
    expect(document.querySelector('.tablets-key')?.textContent?.split(' ')).toHaveLength(12);
    await press('invite-show');
    expect(there('invite-sign')).toBe(false);
  });

  test('leaves when it is told so twice', async () => {
    const { joined: to } = await joined();
    await press('leave');
    await press('leave-not');
    expect(to.value).not.toBeNull();
    await press('leave');
    await press('leave-now');
    expect(to.value).toBeNull();
    expect(there('join-panel')).toBe(true);
  });
});

test('a window that keeps nothing says so, and the demo shop meets nobody', async () => {
  await mount(<Tablets />);
  expect(screen.getByText(/keeps nothing/)).toBeTruthy();
  await mount(<Tablets />, { replica: fakeReplica().desk, which: 'demo' });
  expect(screen.getByText(/meets nobody/)).toBeTruthy();
});

test('the sign beside the places is there for a tablet that has joined', async () => {
  const { desk, joined, status } = fakeReplica();
  await mount(<ReplicaSign now={0} zone="UTC" />, { replica: desk });
  await settle();
  expect(there('replica-sign')).toBe(false);
  act(() => {
    joined.value = { address: 'wss://a/sync', shop: 'kx7p2m', seat: 'A', mayInvite: false };
    status.value = { kind: 'to-send', entries: 2 };
  });
  expect(textOf('replica-sign')).toBe('Other tablets:2 to send');
});

describe('photos', () => {
  async function joinedTablet() {
    const replica = fakeReplica();
    replica.joined.value = {
      address: 'wss://bench-pc.lan:8443/sync',
      shop: 'kx7p2m',
      seat: 'B',
      mayInvite: false,
    };
    return tablets(replica);
  }

  test('go by themselves, until a person says that they shall not', async () => {
    const { desk } = await joinedTablet();
    expect(desk.photos.value).toBe(true);
    screen.getByTestId('photos-too').querySelector<HTMLInputElement>('input[value=no]')?.click();
    await settle();
    expect(desk.photos.value).toBe(false);
  });

  test('that wait are counted, and nothing is said where none do', async () => {
    const { photosStatus } = await joinedTablet();
    expect(there('photos-waiting')).toBe(false);
    await act(async () => {
      photosStatus.value = { toSend: 2, toFetch: 1200, refused: null };
    });
    expect(textOf('photos-waiting')).toBe('2 to send, 1,200 to fetch');
    await act(async () => {
      photosStatus.value = { toSend: 0, toFetch: 1, refused: 'full' };
    });
    expect(textOf('photos-waiting')).toBe('1 to fetch');
    expect(textOf('photos-refused')).toContain('no room for more photos');
  });
});
