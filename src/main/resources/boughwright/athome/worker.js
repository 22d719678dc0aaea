// Keeps each plan that was opened on this phone, and answers with it when the shop cannot be reached.
const STORE = 'plans-1';

self.addEventListener('install', event => event.waitUntil(self.skipWaiting()));
self.addEventListener('activate', event => event.waitUntil(self.clients.claim().then(keepOpenPages)));

// The page that brought this worker was fetched before it, so it is fetched once more to be kept.
async function keepOpenPages() {
  const cache = await caches.open(STORE);
  for (const client of await self.clients.matchAll({ type: 'window' })) {
    await cache.add(client.url.split('#')[0]).catch(() => { /* next time */ });
  }
}

self.addEventListener('fetch', event => {
  if (event.request.method !== 'GET') return;
  const url = new URL(event.request.url);
  if (url.origin !== self.location.origin || url.search) return;
  event.respondWith(fresh(event.request));
});

async function fresh(request) {
  const cache = await caches.open(STORE);
  try {
    const answer = await fetch(request);
    if (answer.ok) await cache.put(request, answer.clone());
    // A plan that was withdrawn must not come back from the store.
    if (answer.status === 404 || answer.status === 410) await cache.delete(request);
    return answer;
  } catch (unreachable) {
    const kept = await cache.match(request);
    if (kept) return kept;
    throw unreachable;
  }
}
