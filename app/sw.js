// Keeps the whole app on the device. The build fills in the two names in capitals (app/tools/offline.ts).
const files = __FILES__;
const cacheName = `groundstrap-${__VERSION__}`;

self.addEventListener("install", (event) => {
  event.waitUntil(
    caches.open(cacheName).then((cache) => cache.addAll(files.map((file) => new Request(file, { cache: "reload" })))),
  );
});

// A page that runs an older version may still ask for its own files: the new one takes over only on the person's word.
self.addEventListener("message", (event) => {
  if (event.data === "take-over") self.skipWaiting();
});

self.addEventListener("activate", (event) => {
  event.waitUntil(dropOlderCaches().then(() => self.clients.claim()));
});

self.addEventListener("fetch", (event) => {
  const { method, mode, url } = event.request;
  if (method !== "GET" || new URL(url).origin !== self.location.origin) return;
  event.respondWith(answer(mode === "navigate" ? "./" : event.request, event.request));
});

async function answer(key, request) {
  const cache = await caches.open(cacheName);
  return (await cache.match(key, { ignoreSearch: true, ignoreVary: true })) ?? fetch(request);
}

async function dropOlderCaches() {
  const names = await caches.keys();
  const older = names.filter((name) => name.startsWith("groundstrap-") && name !== cacheName);
  await Promise.all(older.map((name) => caches.delete(name)));
}
