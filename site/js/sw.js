// @ts-check
// Service worker: after the first visit the page works without a network.

// The build puts in the names of all files and a version that changes with any of their content.
const base = new URL("./", self.location.href);
const family = `finwright ${base.pathname} `;
const current = family + VERSION;

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(current).then((cache) => cache.addAll(FILES)));
});

// The browser activates a new version only when no page of the old one is open, so old copies are safe to drop.
self.addEventListener("activate", (event) => {
  const drop = (/** @type {string[]} */ names) =>
    Promise.all(names.filter((name) => name.startsWith(family) && name !== current).map((name) => caches.delete(name)));
  event.waitUntil(caches.keys().then(drop));
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(base.href)) return;
  event.respondWith(request.mode === "navigate" ? networkFirst(request) : cacheFirst(request));
});

/** Pages keep their names, so the network may have a newer one. @param {Request} request */
async function networkFirst(request) {
  try {
    return await fetch(request);
  } catch (error) {
    const copy = await caches.match(request, { ignoreSearch: true });
    if (copy) return copy;
    throw error;
  }
}

/** All else has its content in its name. @param {Request} request */
async function cacheFirst(request) {
  return (await caches.match(request)) ?? fetch(request);
}
