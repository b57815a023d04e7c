// @vitest-environment happy-dom
import { signal } from '@preact/signals';
import { afterEach, expect, test, vi } from 'vitest';
import type { Offer } from '../../src/app/update-offer.ts';
import { openUpdateWatch } from '../../src/app/update-watch.ts';

afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

/** A browser that renews its registration as asked, and never says that a version waits. */
async function aSilentBrowser() {
  const renewed = { waits: false, times: 0 };
  const registration = Object.assign(new EventTarget(), {
    active: new EventTarget(),
    waiting: null as EventTarget | null,
    async update() {
      renewed.times += 1;
      if (renewed.waits) registration.waiting = new EventTarget();
    },
  });
  const container = Object.assign(new EventTarget(), {
    controller: registration.active,
    ready: Promise.resolve(registration),
    getRegistration: async () => registration,
    register: async () => registration,
  });
  vi.stubGlobal('navigator', { ...navigator, serviceWorker: container });
  const offer = signal<Offer>({ kind: 'none' });
  const offlineReady = signal(false);
  await openUpdateWatch('sw.js', {
    offer,
    offlineReady,
    busyHere: () => undefined,
    beforeApply: async () => {},
  });
  await vi.waitFor(() => expect(offlineReady.value).toBe(true));
  return { offer, renewed };
}

test('a version whose news was never heard is offered at the next return to view', async () => {
  const { offer, renewed } = await aSilentBrowser();
  expect(offer.value).toEqual({ kind: 'none' });
  const before = renewed.times;
  renewed.waits = true;
  document.dispatchEvent(new Event('visibilitychange'));
  await vi.waitFor(() => expect(offer.value).toEqual({ kind: 'waiting' }));
  expect(renewed.times).toBe(before + 1);
});

test('and an hour later, when nobody has looked away', async () => {
  vi.useFakeTimers({ toFake: ['setInterval'] });
  const { offer, renewed } = await aSilentBrowser();
  renewed.waits = true;
  vi.advanceTimersByTime(60 * 60 * 1000 - 1);
  expect(offer.value).toEqual({ kind: 'none' });
  vi.advanceTimersByTime(1);
  await vi.waitFor(() => expect(offer.value).toEqual({ kind: 'waiting' }));
});
