// Keeps a copy of the Pack screen and its files, so that it opens without a connection. It touches nothing else: no
// answers of the program, no other screens. Each build of the program brings a worker of its own (the build stands in
// its address), which takes the place of the one before; where the program is gone, it takes itself away.

const BUILD = new URL(self.location.href).searchParams.get("build") ?? "";
const COPIES = "wadding-pack-";
const COPY = `${COPIES}${BUILD}`;
const SCREEN = "/pack";
const FILES = "/_next/static/";
/** With a copy at hand nobody waits longer for a slow answer. */
const PATIENCE_MS = 4_000;
const NOT_FOUND = 404;
const SERVER_FAILED = 500;

self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(activate()));
self.addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || origin !== self.location.origin) return;
  if (request.mode === "navigate" && pathname === SCREEN) event.respondWith(screen(event));
  else if (pathname.startsWith(FILES)) event.respondWith(file(request));
});

async function install() {
  const answer = await fetch(SCREEN, { cache: "no-store" });
  if (!(await isOfThisBuild(answer)))
    throw new Error(`The Pack screen of build ${BUILD} is no longer served`);
  await keepScreen(answer);
  await self.skipWaiting();
}

async function activate() {
  await dropCopies((name) => name !== COPY);
  await self.clients.claim();
}

/** The screen as it is now, or its last good copy where nobody answers in time. */
async function screen(event) {
  const copy = await (await caches.open(COPY)).match(SCREEN, { ignoreVary: true });
  const asked = fetch(event.request);
  event.waitUntil(asked.then(heed, () => undefined));
  if (copy === undefined) return asked;
  try {
    const answer = await Promise.race([asked, patience()]);
    return answer === null || answer.status >= SERVER_FAILED ? copy : answer.clone();
  } catch (error) {
    // fetch throws a TypeError where nobody answers.
    if (error instanceof TypeError) return copy;
    throw error;
  }
}

/** What a fresh answer means for the copy: it replaces it, or says that the worker's time is over. */
async function heed(answer) {
  const fresh = answer.clone();
  if (fresh.status === NOT_FOUND || (fresh.ok && !(await isPackScreen(fresh)))) {
    await dropCopies(() => true);
    await self.registration.unregister();
  } else if (await isOfThisBuild(fresh)) await keepScreen(fresh);
}

/** A file's name changes with its content, so a copy is as good as the file. */
async function file(request) {
  const copies = await caches.open(COPY);
  const copy = await copies.match(request, { ignoreVary: true });
  if (copy !== undefined) return copy;
  const answer = await fetch(request);
  if (answer.ok) await copies.put(request, answer.clone());
  return answer;
}

/** Keeps the files first: a screen without its files would be no copy at all. */
async function keepScreen(answer) {
  const copies = await caches.open(COPY);
  const named = (await answer.clone().text()).match(/\/_next\/static\/[\w~./%-]+/g) ?? [];
  await Promise.all([...new Set(named)].map((path) => file(new Request(path))));
  await copies.put(SCREEN, answer);
}

async function isPackScreen(answer) {
  return (await answer.clone().text()).includes('name="wadding-pack"');
}

async function isOfThisBuild(answer) {
  return answer.ok && (await answer.clone().text()).includes(`name="wadding-pack" content="${BUILD}"`);
}

async function dropCopies(isOld) {
  const names = (await caches.keys()).filter((name) => name.startsWith(COPIES) && isOld(name));
  await Promise.all(names.map((name) => caches.delete(name)));
}

function patience() {
  return new Promise((resolve) => {
    setTimeout(() => resolve(null), PATIENCE_MS);
  });
}
