/**
 * The page's keeper (a service worker): takes in every file of its build, each held against its hash, and hands them
 * out without a network. A newer keeper waits until the page is asked to change over. Built by scripts/offline.mjs.
 */

/** Every file of the build but this one and its SHA-256 in base 64; '' is the page. Set by the build. */
declare const BUILT_FILES: Record<string, string>;
/** Another one for other files. Set by the build. */
declare const BUILT_VERSION: string;

const keeper = globalThis as unknown as ServiceWorkerGlobalScope;
const { scope } = keeper.registration;
const prefix = 'tankful-';
const name = prefix + BUILT_VERSION;
const asIs = { ignoreVary: true };

keeper.addEventListener('install', (event) => event.waitUntil(takeIn()));
keeper.addEventListener('activate', (event) => event.waitUntil(tidy()));
keeper.addEventListener('message', ({ data }) => {
  if (data === 'use') void keeper.skipWaiting();
});
keeper.addEventListener('fetch', (event) => {
  const { method, url } = event.request;
  if (method === 'GET' && url.startsWith(scope)) event.respondWith(answer(event.request));
});

async function takeIn(): Promise<void> {
  const cache = await caches.open(name);
  await Promise.all(
    Object.entries(BUILT_FILES).map(async ([path, hash]) => {
      const address = new URL(path, scope).href;
      // These names change with what is in them: what an older version holds need not be fetched again.
      const held = path.startsWith('assets/') ? await caches.match(address, asIs) : undefined;
      await cache.put(address, held ?? (await fetched(address, hash)));
    }),
  );
}

/** The file of this very build: another one under the same address, or none, fails the whole. */
async function fetched(address: string, hash: string): Promise<Response> {
  const response = await fetch(address, { cache: 'no-cache', integrity: `sha256-${hash}` });
  if (!response.ok) throw new Error(`${address} - expected the file - got status ${response.status}`);
  return response;
}

/** Older versions stay while another window may still show one of them and ask for its later parts. */
async function tidy(): Promise<void> {
  const windows = await keeper.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const older = (await caches.keys()).filter((each) => each.startsWith(prefix) && each !== name);
  if (windows.length < 2) await Promise.all(older.map((each) => caches.delete(each)));
  await keeper.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const isPage =
    request.mode === 'navigate' && /^(index\.html)?([?#]|$)/.test(request.url.slice(scope.length));
  const wanted = isPage ? scope : request;
  const own = await (await caches.open(name)).match(wanted, asIs);
  return own ?? (await caches.match(wanted, asIs)) ?? fetch(request);
}

// A module to the compiler; the build makes it a plain script.
export {};
