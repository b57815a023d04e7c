/** Keeps the page and answers with it, and does nothing else. */
const files = ['./', 'static-page.css', 'register-worker.js'];

self.addEventListener('install', (event) => {
  event.waitUntil(caches.open('static').then((cache) => cache.addAll(files)));
});
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
self.addEventListener('fetch', (event) => {
  event.respondWith(caches.match(event.request).then((kept) => kept ?? fetch(event.request)));
});
