// The service worker: serves one build whole, from a cache of its own, with or without a network.
//
// A new build is fetched completely beside the running one and waits. It takes over when the page asks for it, or when no tab uses the old
// one any more. If anything of it can't be fetched, it is dropped and the old build goes on working.
declare const self: ServiceWorkerGlobalScope;
declare const BUILD: string;
declare const FILES: string[];
declare const POLICY: string;

const prefix = "lowspot-";
const cacheName = prefix + BUILD;
const start = "./";

self.addEventListener("install", (event) => event.waitUntil(fetchBuild()));
self.addEventListener("activate", (event) => event.waitUntil(takeOver()));
self.addEventListener("fetch", (event) => {
	const url = new URL(event.request.url);
	if (event.request.method === "GET" && url.origin === self.location.origin) event.respondWith(answer(event.request));
});
self.addEventListener("message", (event) => {
	if (event.data === "take over") void self.skipWaiting();
});

async function fetchBuild(): Promise<void> {
	const cache = await caches.open(cacheName);
	try {
		// A file with a hash in its name is as good from the browser's own cache: a first visit fetches nothing twice.
		const requests = [new Request(start, { cache: "reload" }), ...FILES.map((file) => new Request(file))];
		await Promise.all(requests.map((request) => keep(cache, request)));
	} catch (error) {
		await caches.delete(cacheName);
		throw error;
	}
}

/**
 * Keeps a file of the build under the policy, for hosts that send no headers of their own. It is put on here, so that what is kept is answered as
 * it is: a body that went through this script would hold up the next build for as long as a page that is gone has left it half read.
 */
async function keep(cache: Cache, request: Request): Promise<void> {
	const found = await fetch(request);
	if (!found.ok) throw new Error(`${request.url}: ${found.status}`);
	const headers = new Headers(found.headers);
	headers.set("Content-Security-Policy", POLICY);
	headers.set("X-Content-Type-Options", "nosniff");
	await cache.put(request, new Response(found.body, { headers }));
}

async function takeOver(): Promise<void> {
	for (const name of await caches.keys()) {
		if (name.startsWith(prefix) && name !== cacheName) await caches.delete(name);
	}
	await self.clients.claim();
}

async function answer(request: Request): Promise<Response> {
	const cache = await caches.open(cacheName);
	const found = await cache.match(request.mode === "navigate" ? start : request, { ignoreSearch: true });
	return found ?? fetch(request);
}

export {};
