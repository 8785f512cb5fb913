// @ts-check
// Service worker: after the first visit the page comes from a copy that the browser keeps, all of one build. A newer build
// is kept beside it, whole or not at all, and serves from when the user says so. Pages that are open go on with the files
// of their own build.

const scope = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self)); // as what the browser runs it

// The build puts in its own name, which the page bears too, and the names of its other files.
const base = new URL("./", scope.location.href);
const family = `finwright ${base.pathname} `;
const current = family + BUILD;
const pages = PAGES.map((name) => new URL(name, base).href); // one a language

scope.addEventListener("install", (event) => event.waitUntil(install()));
scope.addEventListener("activate", (event) => event.waitUntil(scope.clients.claim()));
scope.addEventListener("message", (event) => event.waitUntil(scope.skipWaiting())); // the page has one thing to say

scope.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(base.href) || request.cache === "no-store") return;
  const address = pageOf(request.url);
  const page = request.mode === "navigate" && pages.includes(address);
  if (page) event.waitUntil(tidy());
  event.respondWith(page ? ownPage(address, request) : copyOf(request));
});

/** @param {string} url */
const pageOf = (url) => url.split(/[?#]/)[0].replace(/\/index\.html$/, "/");

/** What the browser or a host on the way keeps of an older build must not get in. The pages come last: with them the copy is whole. */
async function install() {
  const past = (/** @type {string} */ name) => new Request(new URL(name, base), { cache: "reload" });
  const own = await Promise.all(pages.map((address) => fetch(past(address))));
  for (const page of own) {
    if (!page.ok || !(await page.clone().text()).includes(BUILD)) throw new Error("the host does not serve this build yet");
  }
  const cache = await caches.open(current);
  await cache.addAll(FILES.map(past));
  await Promise.all(own.map((page, i) => cache.put(pages[i], page)));
}

/** @param {string} address @param {Request} request */
async function ownPage(address, request) {
  const cache = await caches.open(current);
  return (await cache.match(address, { ignoreVary: true })) ?? fetch(request);
}

/** Names change with the content, so that a file is right whatever build it is from. @param {Request} request */
async function copyOf(request) {
  if (request.cache === "reload") return renewed(request); // the copy was found damaged
  const kept = await caches.match(request, { ignoreVary: true });
  if (!kept) return fetch(request);
  // A stream that a page leaves unread keeps this worker at work for minutes, and a newer build from taking over. What is whole does not;
  // scripts stay as they are, since a browser keeps them compiled.
  return request.url.endsWith(".gz") ? new Response(await kept.blob(), { headers: kept.headers }) : kept;
}

/** @param {Request} request */
async function renewed(request) {
  const response = await fetch(request);
  if (response.ok) await (await caches.open(current)).put(request, response.clone());
  return response;
}

/**
 * Drops the copies of builds that no page is open of: each page holds a lock that bears the name of its build, as soon as
 * it has begun. One without a lock may be of any build, so then none is dropped.
 */
async function tidy() {
  const clients = await scope.clients.matchAll({ includeUncontrolled: true, type: "window" });
  const { held = [] } = await navigator.locks.query();
  const locks = held.map(({ name = "" }) => name).filter((name) => name.startsWith(family));
  if (locks.length < clients.filter(({ url }) => pages.includes(pageOf(url))).length) return;
  const used = new Set(locks);
  const names = await caches.keys();
  if (scope.registration.installing || scope.registration.waiting) return; // a newer copy is among them
  await Promise.all(names.filter((name) => name.startsWith(family) && name !== current && !used.has(name)).map((name) => caches.delete(name)));
}
