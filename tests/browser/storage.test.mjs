// What the engine calls kept is kept: through reloads, restarts and a full disk. Its death and the browser's are in kills.test.mjs.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { startEngine } from "./engine.mjs";
import { browse, folder, serve } from "./harness.mjs";

let server;
before(async () => {
	server = await serve();
});
after(() => server.end());

const job = (id, name, notes = "") => ({ format: 1, id, name, units: "us", rooms: [], answers: {}, sheets: {}, notes });

/** Opens an empty page of the server's, so that no engine but the test's own runs. */
async function emptyPage(browser) {
	const page = await browser.context.newPage();
	await page.goto(`${server.address}none`);
	return page;
}

/** Runs steps with an engine in a browser on the profile. */
async function withEngine(profile, steps) {
	const browser = await browse({}, profile);
	try {
		const page = await emptyPage(browser);
		return await steps(await startEngine(page), page, browser);
	} finally {
		await browser.end();
	}
}

test("a kept job is there after the browser was closed and opened again", async () => {
	const profile = folder("profile");
	await withEngine(profile, (engine) => engine.have("jobs.keep", { job: job("a", `3/8 in, "Hall" — 2. OG`) }));
	await withEngine(profile, async (engine) => {
		const { jobs } = await engine.have("jobs.list");
		assert.deepEqual(
			jobs.map((entry) => entry.name),
			[`3/8 in, "Hall" — 2. OG`],
		);
		assert.deepEqual((await engine.have("jobs.open", { id: "a" })).job, job("a", `3/8 in, "Hall" — 2. OG`));
	});
});

test("delete, undo, erase, copy, export and import work on the real store", async () => {
	const text = await withEngine(undefined, async (engine) => {
		await engine.have("jobs.keep", { job: job("a", "Hall") });
		await engine.have("jobs.delete", { id: "a" });
		assert.notEqual((await engine.have("jobs.list", { deleted: true })).jobs[0].deleted, "");
		await engine.have("jobs.undelete", { id: "a" });
		await engine.have("jobs.copy", { id: "a", name: "Hall again" });
		await engine.have("jobs.delete", { id: "a" });
		await engine.have("jobs.erase", { id: "a" });
		assert.equal((await engine.ask("jobs.open", { id: "a" })).error.code, "missing");
		await engine.have("sheets.keep", { id: "s", kind: "leveller", sheet: { name: "Own", generic: false, values: {} } });
		return (await engine.have("jobs.export", { ids: [] })).text;
	});
	await withEngine(undefined, async (engine) => {
		const done = await engine.have("jobs.import", { text });
		assert.deepEqual([done.jobs.length, done.same, done.sheets], [1, 0, 1]);
		assert.equal((await engine.have("jobs.import", { text })).same, 1);
		assert.equal((await engine.have("jobs.list")).jobs[0].name, "Hall again");
	});
});

test("a full disk is told and loses nothing that was kept before", async () => {
	const browser = await browse();
	const page = await emptyPage(browser);
	const cdp = await browser.context.newCDPSession(page);
	await cdp.send("Storage.overrideQuotaForOrigin", { origin: new URL(server.address).origin, quotaSize: 3_000_000 });
	const engine = await startEngine(page);
	await engine.have("jobs.keep", { job: job("a", "Hall") });
	const notes = Array.from({ length: 800_000 }, () => Math.random().toString(36).slice(2)).join("");
	const reply = await engine.ask("jobs.keep", { job: job("a", "Hall, with long notes", notes) });
	assert.equal(reply.error?.code, "full");
	assert.match(reply.error.message, /Not kept/);
	assert.equal((await engine.have("jobs.open", { id: "a" })).job.name, "Hall");
	assert.equal((await engine.have("jobs.list")).jobs[0].name, "Hall");
	await engine.have("jobs.keep", { job: job("a", "Hall, shorter") });
	await browser.end();
});

test("two tabs keep into one store", async () => {
	await withEngine(undefined, async (first, _, browser) => {
		const second = await startEngine(await emptyPage(browser));
		await Promise.all([
			...Array.from({ length: 15 }, (_, i) => first.have("jobs.keep", { job: job(`first-${i}`, "first") })),
			...Array.from({ length: 15 }, (_, i) => second.have("jobs.keep", { job: job(`second-${i}`, "second") })),
		]);
		assert.equal((await first.have("jobs.list")).jobs.length, 30);
		assert.equal((await second.have("jobs.list")).jobs.length, 30);
	});
});
