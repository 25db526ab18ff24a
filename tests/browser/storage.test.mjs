// What the engine calls kept is kept: through reloads, restarts, the engine's death, the browser's, and a full disk.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
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

test("no acknowledged edit is lost when the engine is ended in the middle of keeping", async () => {
	await withEngine(undefined, async (engine, page) => {
		for (let round = 0; round < 10; round++) {
			await engine.have("jobs.keep", { job: job("a", `round ${round}`, "x".repeat(round * 1000)) });
			const last = await page.evaluate(async (delay) => {
				let acknowledged = -1;
				for (let edit = 0; edit < 40; edit++) {
					const body = { job: { format: 1, id: "a", name: String(edit), rooms: [] } };
					window.testEngine.ask("jobs.keep", body).then((reply) => {
						if (reply.ok) acknowledged = edit;
					});
				}
				await new Promise((resolve) => setTimeout(resolve, delay));
				window.testEngine.end();
				return acknowledged;
			}, round * 12);
			engine = await startEngine(page);
			const { name } = (await engine.have("jobs.open", { id: "a" })).job;
			assert.ok(last < 0 || Number(name) >= last, `acknowledged ${last}, found ${name}`);
			assert.equal((await engine.have("jobs.list")).jobs[0].name, name, "the list says the same");
		}
	});
});

test("no acknowledged edit is lost when the browser is killed", async () => {
	const profile = folder("profile");
	for (let round = 0; round < 3; round++) {
		const browser = await browse({}, profile);
		const engine = await startEngine(await emptyPage(browser));
		await engine.have("jobs.keep", { job: job("a", `round ${round}`) });
		killBrowser(profile);
		await browser.end().catch(() => {});
		await withEngine(profile, async (engine) => {
			assert.equal((await engine.have("jobs.open", { id: "a" })).job.name, `round ${round}`);
		});
	}
});

/** Kills every process of the browser on this profile, as a crash of the machine would. */
function killBrowser(profile) {
	for (const id of readdirSync("/proc").filter((name) => /^\d+$/.test(name))) {
		try {
			const command = readFileSync(`/proc/${id}/cmdline`, "utf8");
			if (command.includes(`--user-data-dir=${profile}`)) process.kill(Number(id), "SIGKILL");
		} catch {} // it ended meanwhile
	}
}

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
