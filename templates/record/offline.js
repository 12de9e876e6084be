// Keeps the pages of one record for when there is no signal. Fresh from the host if it answers in time, else the copy.
'use strict';

const KEPT = '%KEPT%';
const RECORD = '%RECORD%';
const PAGES = ['%PAGES%'];
const MORE = ['%MORE%'];
const PATIENCE = 4000;

self.addEventListener('install', event => {
  event.waitUntil(caches.open(KEPT).then(kept => kept.addAll(PAGES)
    .then(() => self.skipWaiting())
    .then(() => Promise.allSettled(MORE.map(file => kept.add(file))))));
});

self.addEventListener('activate', event => {
  event.waitUntil(caches.keys()
    .then(names => Promise.all(names.filter(name => name.startsWith(RECORD) && name !== KEPT)
      .map(name => caches.delete(name))))
    .then(() => self.clients.claim()));
});

self.addEventListener('fetch', event => {
  const address = new URL(event.request.url);
  const ours = [...PAGES, ...MORE].some(page => new URL(page, self.registration.scope).pathname === address.pathname);
  if (event.request.method === 'GET' && address.origin === self.location.origin && ours) {
    event.respondWith(freshOrKept(event.request));
  }
});

async function freshOrKept(request) {
  const kept = await caches.open(KEPT);
  try {
    const fresh = await inTime(fetch(request));
    if (fresh.ok) {
      await kept.put(request, fresh.clone());
      return fresh;
    }
    // A host that has lost the record must not take away the copy; one that withdrew it says so.
    const copy = fresh.status === 410 ? undefined : await kept.match(request, { ignoreSearch: true });
    return copy === undefined ? fresh : marked(copy);
  } catch (unreachable) {
    const copy = await kept.match(request, { ignoreSearch: true });
    return copy === undefined ? Response.error() : marked(copy);
  }
}

function inTime(answer) {
  return Promise.race([
    answer,
    new Promise((_, refuse) => setTimeout(() => refuse(new Error('no answer in time')), PATIENCE))
  ]);
}

// Shows the line which says that this is a copy; in a sealed file there is no such line to be seen.
async function marked(copy) {
  if (new URL(copy.url).pathname.endsWith('.sealed')) {
    return copy;
  }
  const page = (await copy.text()).replace('class="saved" hidden="hidden"', 'class="saved"');
  return new Response(page, { status: 200, headers: copy.headers });
}
