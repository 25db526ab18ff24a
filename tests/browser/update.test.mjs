// A new build waits until it is asked for, takes over whole, and a broken one leaves the old one working.
import assert from "node:assert/strict";
import { createServer, request } from "node:http";
import { cpSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { browse, dist, folder, open, serve } from "./harness.mjs";

const site = folder("deploy");
let server;
before(async () => {
	cpSync(dist, site, { recursive: true });
	for (const name of ["index.html", "sw.js"]) for (const packed of [".br", ".gz"]) rmSync(join(site, name + packed));
	server = await serve(site);
});
after(() => server.end());

/** Puts a build of another name in the place of the one that is served; the page's title tells which one it is. */
function deploy(title, { broken = false } = {}) {
	const worker = readFileSync(join(dist, "sw.js"), "utf8").replace(/"[0-9a-f]{12}"/, `"${title}"`);
	writeFileSync(join(site, "sw.js"), broken ? worker.replace(/"icon-/, '"gone-') : worker);
	writeFileSync(
		join(site, "index.html"),
		readFileSync(join(dist, "index.html"), "utf8").replace(/<title>.*<\/title>/, `<title>${title}</title>`),
	);
}

const look = (page) => page.evaluate(async () => (await navigator.serviceWorker.ready).update().catch(() => {}));
const states = (page) =>
	page.evaluate(async () => {
		const { waiting, installing, active } = await navigator.serviceWorker.ready;
		return { waiting: !!waiting, installing: !!installing, active: active?.state, caches: await caches.keys() };
	});

/** Waits until the page has all it fetches: a service worker gives way to the next only when it has answered every request. */
async function loaded(page) {
	await page.waitForSelector('[data-engine="ready"]', { timeout: 60_000 });
	await page.waitForLoadState("networkidle");
}

/** Waits until the service worker has settled into a state. */
async function settled(page, wanted) {
	for (let i = 0; i < 600; i++) {
		const found = await states(page);
		if (wanted(found)) return found;
		await new Promise((resolve) => setTimeout(resolve, 100));
	}
	assert.fail(JSON.stringify(await states(page)));
}

/** Stands before the server and counts what is fetched over the network. */
async function counted(t) {
	const fetched = new Map();
	const gate = createServer((ask, answer) => {
		fetched.set(ask.url, (fetched.get(ask.url) ?? 0) + 1);
		const onward = request(new URL(ask.url, server.address), { headers: ask.headers }, (reply) => {
			answer.writeHead(reply.statusCode, reply.headers);
			reply.pipe(answer);
		});
		onward.end();
	});
	await new Promise((resolve) => gate.listen(0, "127.0.0.1", resolve));
	t.after(() => gate.close().closeAllConnections());
	return { address: `http://127.0.0.1:${gate.address().port}/`, fetched };
}

test("a first visit fetches each file once, and the second none", async (t) => {
	deploy("first");
	const { address, fetched } = await counted(t);
	const browser = await browse();
	t.after(() => browser.end());
	const { page } = await open(browser.context, address);
	await loaded(page);
	await settled(page, (s) => s.active === "activated");
	const engine = [...fetched.keys()].filter((path) => path.includes("engine-"));
	assert.equal(engine.length, 1);
	assert.deepEqual([...fetched].filter(([path, times]) => times > 1 && !["/", "/sw.js"].includes(path)), []);
	fetched.clear();
	await page.reload();
	await loaded(page);
	assert.deepEqual([...fetched.keys()].filter((path) => path !== "/sw.js"), []);
});

test("a new build waits, takes over when asked to, and a broken one never does", async (t) => {
	deploy("first");
	const browser = await browse();
	t.after(() => browser.end());
	const { page } = await open(browser.context, server.address);
	await loaded(page);
	await settled(page, (s) => s.active === "activated" && s.caches.includes("lowspot-first"));

	deploy("broken", { broken: true });
	await look(page);
	await settled(page, (s) => !s.installing && !s.waiting && s.caches.length === 1);
	await page.reload();
	await loaded(page);
	assert.equal(await page.evaluate(() => document.querySelector("title").text), "first");

	deploy("second");
	await look(page);
	await settled(page, (s) => s.waiting);
	await page.reload();
	await loaded(page);
	assert.equal(await page.evaluate(() => document.querySelector("title").text), "first", "it waits");
	await page.evaluate(async () => (await navigator.serviceWorker.ready).waiting.postMessage("take over"));
	await settled(page, (s) => !s.waiting && s.caches.length === 1 && s.caches[0] === "lowspot-second");
	await page.reload();
	await loaded(page);
	assert.equal(await page.evaluate(() => document.querySelector("title").text), "second");
});
