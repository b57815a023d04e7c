/**
 * Keeps the whole app on the tablet, so that it opens with no network at all. It knows nothing of the shop, and a new
 * version waits until the page lets it in: the files of the running version stay in place until then.
 */
import {
  cleanupOutdatedCaches,
  PrecacheController,
  type PrecacheEntry,
  PrecacheRoute,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import { formerFile, keepFormerFiles } from './former-files.ts';
import { wholeFile } from './whole-file.ts';

declare const self: ServiceWorkerGlobalScope & {
  readonly __WB_MANIFEST: readonly (PrecacheEntry | string)[];
};

const files = new PrecacheController({ plugins: [wholeFile] });
const { cacheName } = files.strategy;
const rescuePage = /[/]rescue[.]html$/;
const namedByContent = /[/]assets[/]/;

files.addToCacheList([...self.__WB_MANIFEST]);
cleanupOutdatedCaches();

// One file that cannot be had, or is not as it was built, fails the whole install: the version in use then goes on.
self.addEventListener('install', files.install);
self.addEventListener('activate', (event) => event.waitUntil(takeOver(event)));

async function takeOver(event: ExtendableEvent): Promise<void> {
  await keepFormerFiles(cacheName, new Set(files.getURLsToCacheKeys().values()));
  await files.activate(event);
  // From the first visit on a part that is wanted later comes from the tablet, not from a network that may be gone.
  await self.clients.claim();
}

registerRoute(new PrecacheRoute(files));
registerRoute(
  ({ url }) => url.pathname.endsWith('/rescue.html'),
  files.createHandlerBoundToURL('rescue.html'),
);
registerRoute(
  ({ url, sameOrigin }) => sameOrigin && namedByContent.test(url.pathname),
  ({ request }) => formerFile(cacheName, request),
);
registerRoute(new NavigationRoute(files.createHandlerBoundToURL('index.html'), { denylist: [rescuePage] }));

self.addEventListener('message', (event) => {
  if (event.data?.type === 'SKIP_WAITING') void self.skipWaiting();
  if (event.data?.type === 'COUNT_WINDOWS') event.waitUntil(countWindows(event.ports[0]));
});

/** Tells how many windows of the app are open, those that sleep included. */
async function countWindows(answer: MessagePort | undefined): Promise<void> {
  const all = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const ours = all.filter(({ url }) => url.startsWith(self.registration.scope));
  answer?.postMessage(ours.filter(({ url }) => !rescuePage.test(new URL(url).pathname)).length);
}

// A notice of the system leads back to the app: to a window that is open, or to a new one.
self.addEventListener('notificationclick', (event) => {
  event.notification.close();
  event.waitUntil(showApp());
});

async function showApp(): Promise<void> {
  const all = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const ours = all.find(({ url }) => url.startsWith(self.registration.scope));
  await (ours ? ours.focus() : self.clients.openWindow(self.registration.scope));
}
