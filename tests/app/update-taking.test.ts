import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import type { Busy, Offer } from '../../src/app/update-offer.ts';
import { updateTaking } from '../../src/app/update-taking.ts';
import { handClock } from '../support/hand-clock.ts';
import { settled } from '../support/settled.ts';

/** A window with a version that waits. The browser lets it in at once unless it is `deaf`. */
function aVersionWaits({ deaf = false, notes = true, windows = 1 as number | null } = {}) {
  const hands = handClock();
  const offer = signal<Offer>({ kind: 'none' });
  const here = signal<Busy | undefined>(undefined);
  const there = signal<{ by: Busy; at: string } | undefined>(undefined);
  const copies = { fail: false, hang: false, made: 0, during: () => {} };
  const done: string[] = [];
  const taking = updateTaking({
    browser: {
      waits: () => true,
      letIn() {
        done.push('let in');
        if (!deaf) taking.onTakeOver();
      },
      countWindows: async () => windows ?? undefined,
      reload(asked) {
        if (!notes && asked === 'unasked') return false;
        done.push('reload');
        return true;
      },
    },
    windows: { ask: async () => there.value },
    timer: hands.timer,
    offer,
    busyHere: () => here.value,
    beforeApply: async () => {
      copies.during();
      if (copies.hang) await new Promise(() => {});
      if (copies.fail) throw new Error('no room');
      copies.made += 1;
    },
  });
  taking.onWaiting();
  return { hands, offer, here, there, copies, done, taking };
}

test('a version that waits is offered and nothing more', () => {
  const { offer, done } = aVersionWaits();
  expect(offer.value).toEqual({ kind: 'waiting' });
  expect(done).toEqual([]);
});

test('asked for, it is let in after a copy of the records, and the page is loaded anew once', async () => {
  const { taking, copies, done } = aVersionWaits();
  await taking.apply();
  taking.onTakeOver();
  expect(copies.made).toBe(1);
  expect(done).toEqual(['let in', 'reload']);
});

test.each(['tapping', 'not-saved', 'typing'] as const)(
  'while this window is busy (%s) it is not let in, and the offer says why',
  async (busy) => {
    const { taking, here, offer, done, copies } = aVersionWaits();
    here.value = busy;
    await taking.apply();
    expect(copies.made).toBe(0);
    expect(offer.value).toEqual({ kind: 'held', by: busy, at: undefined });
    expect(done).toEqual([]);
  },
);

test('another window in mid-work is named, asked again by itself, and then the way is free for a tap', async () => {
  const { taking, there, offer, done, hands } = aVersionWaits();
  there.value = { by: 'tapping', at: '#/bench/sand/t1' };
  await taking.apply();
  expect(offer.value).toEqual({ kind: 'held', by: 'tapping', at: '#/bench/sand/t1' });
  hands.pass(10_000);
  await settled();
  expect(offer.value.kind).toBe('held');
  there.value = undefined;
  hands.pass(10_000);
  await settled();
  expect(offer.value).toEqual({ kind: 'waiting' });
  expect(done).toEqual([]);
});

test('without a copy of the records nothing is changed', async () => {
  const { taking, copies, offer, done } = aVersionWaits();
  copies.fail = true;
  await taking.apply();
  expect(offer.value).toEqual({ kind: 'no-copy' });
  expect(done).toEqual([]);
});

test('a copy that never comes to an end keeps no shop shut', async () => {
  const { taking, copies, offer, done, hands } = aVersionWaits();
  copies.hang = true;
  const started = taking.atColdStart();
  await settled();
  hands.pass(20_000);
  expect(await started).toBe(false);
  expect(offer.value).toEqual({ kind: 'no-copy' });
  expect(done).toEqual([]);
});

test('a tap that falls into the copying holds the version back', async () => {
  const { taking, copies, here, offer, done } = aVersionWaits();
  copies.during = () => {
    here.value = 'not-saved';
  };
  await taking.apply();
  expect(offer.value).toEqual({ kind: 'held', by: 'not-saved', at: undefined });
  expect(done).toEqual([]);
});

test('a browser that does not let it in within 5 s is given up, and this version goes on', async () => {
  const { taking, offer, done, hands } = aVersionWaits({ deaf: true });
  const applied = taking.apply();
  await settled();
  expect(offer.value).toEqual({ kind: 'applying' });
  hands.pass(4999);
  expect(offer.value).toEqual({ kind: 'applying' });
  hands.pass(1);
  await applied;
  expect(offer.value).toEqual({ kind: 'did-not-take' });
  expect(done).toEqual(['let in']);
});

test('a second tap while it comes in does not let it in twice', async () => {
  const { taking, done } = aVersionWaits({ deaf: true });
  void taking.apply();
  await settled();
  await taking.apply();
  expect(done).toEqual(['let in']);
});

test('a window that is overtaken in mid-work is loaded anew when that is done, not before', () => {
  const { taking, here, done, hands } = aVersionWaits();
  here.value = 'tapping';
  taking.onTakeOver();
  hands.pass(60_000);
  expect(done).toEqual([]);
  here.value = undefined;
  hands.pass(1000);
  hands.pass(60_000);
  expect(done).toEqual(['reload']);
});

test('an idle window that is overtaken is loaded anew at once', () => {
  const { taking, done } = aVersionWaits();
  taking.onTakeOver();
  expect(done).toEqual(['reload']);
});

test('at a cold start of the only window it is let in, and the shop is not opened before the reload', async () => {
  const { taking, done, copies } = aVersionWaits();
  expect(await taking.atColdStart()).toBe(true);
  expect(copies.made).toBe(1);
  expect(done).toEqual(['let in', 'reload']);
});

test.each([2, null])(
  'at a cold start beside others (%s windows known) it is only offered',
  async (windows) => {
    const { taking, offer, done } = aVersionWaits({ windows });
    expect(await taking.atColdStart()).toBe(false);
    expect(offer.value).toEqual({ kind: 'waiting' });
    expect(done).toEqual([]);
  },
);

test('a cold start without a copy opens the shop with the version that is there', async () => {
  const { taking, copies, offer, done } = aVersionWaits();
  copies.fail = true;
  expect(await taking.atColdStart()).toBe(false);
  expect(offer.value).toEqual({ kind: 'no-copy' });
  expect(done).toEqual([]);
});

test('where a window keeps no notes, nothing is loaded anew unasked: two versions could take turns for ever', () => {
  const { taking, done } = aVersionWaits({ notes: false });
  taking.onTakeOver();
  expect(done).toEqual([]);
});
