// @vitest-environment happy-dom
import { act, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { address, readAddress } from '../../../src/screens/parts/address.ts';
import { JoinButton } from '../../../src/screens/parts/join/join-button.tsx';
import { justJoined } from '../../../src/screens/parts/join/just-joined.ts';
import { ArrivedNotice } from '../../../src/screens/shell/arrived-notice.tsx';
import { fakeReplica, link } from '../../support/fake-replica.ts';
import { mount, press, settle } from '../set-up/mount.tsx';

const invitedAt = `#/set-up/tablets/join/${link.split('#/join/')[1]}`;
const textOf = (testId: string) => screen.getByTestId(testId).textContent;

afterEach(() => {
  justJoined.value = false;
  location.hash = '';
});

async function openedWithInvitation(replica = fakeReplica()) {
  history.replaceState(null, '', invitedAt);
  address.value = readAddress(invitedAt);
  await mount(<JoinButton />, { replica: replica.desk });
  await settle();
  return replica;
}

test('who joins at the first start is led to the bench, and the key is left in no address', async () => {
  const { asked } = await openedWithInvitation();
  await press('join-go');
  expect(asked).toMatchObject([{ invited: { link: expect.stringContaining('#/join/') } }]);
  expect(location.hash).toBe('#/bench');
  expect(justJoined.value).toBe(true);
  expect(textOf('join-sheet')).toContain('What the others have comes in now.');
});

test('who joins where nothing is yet is told so', async () => {
  const { status } = await openedWithInvitation();
  await press('join-go');
  act(() => {
    status.value = { kind: 'up-to-date' };
  });
  expect(textOf('join-sheet')).toContain('nothing is there yet');
});

test('one who could not join stays with the invitation', async () => {
  await openedWithInvitation(fakeReplica({ kind: 'unreachable' }));
  await press('join-go');
  expect(justJoined.value).toBe(false);
  expect(textOf('join-sheet')).toContain('cannot be reached');
});

test('what has come is told until it was read, and whether more is on its way', async () => {
  const { desk, status } = fakeReplica();
  justJoined.value = true;
  await mount(<ArrivedNotice />, { replica: desk });
  await settle();
  act(() => {
    status.value = { kind: 'meeting' };
  });
  expect(textOf('arrived')).toContain('The shop comes in …');
  act(() => {
    status.value = { kind: 'up-to-date' };
  });
  expect(textOf('arrived')).toMatch(/The shop has come in\d+ stages?, 0 trays in work\./);
  await press('arrived-good');
  expect(justJoined.value).toBe(false);
});
