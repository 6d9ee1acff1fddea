// Keeps every file of the page at the first visit, each checked against its hash, and answers from there: no network is needed
// again. A new edition has another list of files; it is fetched whole beside the old one, and taken when the page is next opened.
self.importScripts('./service-worker-assets.js');
const name = `plot-sheet-${self.assetsManifest.version}`;
const left = [/^service-worker\.js$/];
const files = self.assetsManifest.assets.filter(a => !left.some(l => l.test(a.url)));

self.addEventListener('install', event => event.waitUntil(fill()));
self.addEventListener('activate', event => event.waitUntil(clear()));
self.addEventListener('fetch', event => { if (event.request.method === 'GET') event.respondWith(answer(event.request)); });

async function fill() {
  const cache = await caches.open(name);
  await cache.addAll(files.map(f => new Request(f.url, { integrity: f.hash, cache: 'no-cache' })));
}

async function clear() {
  const names = await caches.keys();
  await Promise.all(names.filter(n => n.startsWith('plot-sheet-') && n !== name).map(n => caches.delete(n)));
}

async function answer(request) {
  const cache = await caches.open(name);
  return await cache.match(request.mode === 'navigate' ? 'index.html' : request) ?? fetch(request);
}
