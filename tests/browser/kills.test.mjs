// No edit that was called kept is lost when the engine is ended, or the whole browser is killed, in the middle of typing.
// KILLS and ENDS say how often (KILLS=200 ENDS=200 node --test browser/kills.test.mjs); a few times by default, for each costs a start.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { startEngine } from "./engine.mjs";
import { browse, folder, serve } from "./harness.mjs";

const kills = Number(process.env.KILLS ?? 5);
const ends = Number(process.env.ENDS ?? 10);

let server;
before(async () => {
	server = await serve();
});
after(() => server.end());

test(`no edit that the page showed as kept is lost in ${kills} kills of the browser`, async (t) => {
	const profile = folder("profile");
	let address = server.address;
	let edits = 0;
	let shownAsKept = 0;
	for (let round = 1; round <= kills; round++) {
		const shown = [];
		const browser = await browse({}, profile);
		const page = await browser.context.newPage();
		await page.exposeFunction("showKept", (edit) => shown.push(edit));
		await page.goto(address);
		if (round === 1) await page.getByRole("button", { name: "Start a new job" }).click();
		await page.locator(".bar-kept[data-kept=true]").first().waitFor();
		if (round > 1) edits = await inspect(page, shownAsKept, round);
		// The page that says what is kept needs no second engine, so that a start costs less.
		address = await page.evaluate(() => location.href.replace("#/job/", "#/kept/"));
		await type(page, edits);
		await until(() => shown.length > Math.random() * 10);
		await pause(Math.random() * 100);
		killBrowser(profile);
		await browser.end().catch(() => {});
		shownAsKept = shown.at(-1) ?? 0;
		t.diagnostic(`kill ${round}: edit ${shownAsKept} was shown as kept, the ${shown.length}. of this round`);
	}
	const browser = await browse({}, profile);
	const page = await browser.context.newPage();
	await page.goto(address);
	await inspect(page, shownAsKept, kills + 1);
	await browser.end();
});

const pause = (time) => new Promise((resolve) => setTimeout(resolve, time));

async function until(met) {
	for (let i = 0; i < 1000 && !met(); i++) await pause(10);
}

/** Types numbers into the job's name, each an edit, and tells each one that the page shows as kept. */
function type(page, from) {
	return page.evaluate((from) => {
		const name = document.querySelector(".bar-name input");
		const line = document.querySelector(".bar-kept");
		new MutationObserver(() => {
			if (line.dataset.kept === "true") globalThis.showKept(Number(name.value));
		}).observe(line, { attributes: true });
		let edit = from;
		const next = () => {
			name.value = String(++edit);
			name.dispatchEvent(new InputEvent("input", { bubbles: true }));
			setTimeout(next, 250 * Math.random() ** 2);
		};
		next();
	}, from);
}

/** Looks after a kill what is there, and gives it: no less than was shown as kept. */
async function inspect(page, shownAsKept, round) {
	await page.locator(".bar-kept[data-kept=true]").first().waitFor();
	const found = Number(await page.locator(".bar-name input").inputValue());
	assert.ok(found >= shownAsKept, `before kill ${round} edit ${shownAsKept} was shown as kept, found ${found}`);
	return found;
}

/** Kills every process of the browser on this profile at once. */
function killBrowser(profile) {
	for (const id of readdirSync("/proc").filter((name) => /^\d+$/.test(name))) {
		try {
			const command = readFileSync(`/proc/${id}/cmdline`, "utf8");
			if (command.includes(`--user-data-dir=${profile}`)) process.kill(Number(id), "SIGKILL");
		} catch {} // it ended meanwhile
	}
}

test(`no acknowledged edit is lost in ${ends} ends of the engine in the middle of keeping`, async (t) => {
	const browser = await browse();
	const page = await browser.context.newPage();
	await page.goto(`${server.address}none`); // an empty page, so that no engine but the test's own runs
	let engine = await startEngine(page);
	let total = 0;
	for (let round = 0; round < ends; round++) {
		await engine.have("jobs.keep", { job: { format: 1, id: "a", name: "-1", notes: "x".repeat((round % 50) * 1000), rooms: [] } });
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
		}, Math.random() * 500);
		total += last + 1;
		engine = await startEngine(page);
		const { name } = (await engine.have("jobs.open", { id: "a" })).job;
		assert.ok(Number(name) >= last, `end ${round}: acknowledged ${last}, found ${name}`);
		assert.equal((await engine.have("jobs.list")).jobs[0].name, name, "the list says the same");
	}
	t.diagnostic(`${total} edits were acknowledged before the ends`);
	await browser.end();
});
