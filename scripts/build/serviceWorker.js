/**
 * Service worker: keeps every file of one build, so that the trainer works without a network after the first visit. A new version
 * waits until all pages of the old one are closed (no skipWaiting), so an open page always finds the chunks it was built with.
 */
const PREFIX = 'sterile-field-';
const CACHE = PREFIX + __VERSION__;
const FILES = __FILES__;

self.addEventListener('install', (event) => {
  const requests = FILES.map((file) => new Request(file, { cache: 'reload' }));
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(requests)));
});

self.addEventListener('activate', (event) => {
  const drop = (names) => Promise.all(names.filter((name) => name.startsWith(PREFIX) && name !== CACHE).map((name) => caches.delete(name)));
  event.waitUntil(caches.keys().then(drop));
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(self.registration.scope)) return;
  // A page may be asked for with any query or under the bare folder; it is always the one page.
  const wanted = request.mode === 'navigate' ? new URL('index.html', self.registration.scope).href : request;
  const answer = caches.open(CACHE).then((cache) => cache.match(wanted, { ignoreSearch: true }));
  event.respondWith(answer.then((kept) => kept ?? fetch(request)));
});
