// Markup is text like any other: put into every text there is, and looked at on every page and as printed, none of it becomes part of the page.
import assert from "node:assert/strict";
import { test } from "node:test";
import { startEngine } from "../browser/engine.mjs";
import { atHand, open } from "../browser/harness.mjs";

const markup = `"'><script data-hostile>window.hostile=1</script><img data-hostile src=x onerror="window.hostile=1"><svg data-hostile onload="window.hostile=1"><a data-hostile href="javascript:window.hostile=1">{{7*7}}\${7*7}</a>`;

const { server, browser } = await atHand();

/** Every text in a document but those that name things to the engine becomes markup. */
function hostile(value, key = "") {
	if (typeof value === "string") return named.has(key) ? value : markup;
	if (Array.isArray(value)) return value.map((item) => hostile(item, key));
	if (value === null || typeof value !== "object") return value;
	return Object.fromEntries(Object.entries(value).map(([name, item]) => [name, hostile(item, name)]));
}
const named = new Set(["id", "how", "sense", "units", "positionUnit", "heightUnit", "kind", "currency", "rounding", "room"]);

/** The texts that only people read become markup; what is measured stays, so that every part of every page is drawn. */
function inWords(job) {
	const notes = { notes: markup, name: markup };
	const people = (list) => list.map((one) => ({ ...one, name: markup }));
	const room = (one) => ({ ...one, ...{ name: markup }, doors: people(one.doors), keepOuts: people(one.keepOuts), penetrations: people(one.penetrations), decks: people(one.decks) });
	const sheets = Object.fromEntries(Object.entries(job.sheets).map(([kind, sheet]) => [kind, { ...sheet, name: markup, generic: false }]));
	const batches = [{ batch: 1, started: "2026-05-02T08:00:00Z", done: "2026-05-02T08:05:00Z", note: markup, water: markup }];
	const record = [{ room: job.rooms[0].id, started: "2026-05-02T08:00:00Z", batches, lots: markup, who: markup, notes: markup, air: markup, mix: markup, spread: markup }];
	const offer = { number: markup, date: "2026-05-02", customer: markup, discount: "5 %", delivered: true, labour: true, lines: {} };
	return { ...job, ...notes, rooms: job.rooms.map(room), sheets, record, offer, after: { used: "9", left: "1", depth: "8 mm", notes: markup } };
}

const shop = {
	name: markup, address: markup, terms: markup, valid: "30 d", next: 1, currency: "EUR", digits: 2, inclusive: false, rounding: "line",
	classes: [{ name: markup, rate: "19 %" }], delivery: "20", deliveryClass: markup, hour: "50", hourClass: markup,
	prices: [{ item: markup, pack: markup, price: 100, class: markup, code: markup, cost: 0 }],
};
const rule = `theme: ${markup}\n\ncheck hostile\n  for: job\n  weight: stop\n  holds: 1 > 2\n  says: ${markup.replaceAll(/[{}]/g, "")}\n  remedy: ${markup.replaceAll(/[{}]/g, "")}\n  source: ${markup}\n  caution: ${markup}\n`;

const views = ["job", "steps", "pour", "day", "buy", "sheet", "kept"];

/** Looks at a page on the screen and as printed, with everything on it opened. */
async function look(page, complaints, where) {
	await page.waitForLoadState();
	await page.locator("main").first().waitFor();
	for (const media of ["screen", "print"]) {
		await page.emulateMedia({ media });
		await page.evaluate(() => {
			for (const fold of document.querySelectorAll("details")) fold.open = true;
		});
		await page.waitForTimeout(400);
		const found = await page.evaluate(() => ({ ran: "hostile" in window, parts: document.querySelectorAll("[data-hostile]").length, links: document.querySelectorAll("[href^='javascript']").length }));
		assert.deepEqual(found, { ran: false, parts: 0, links: 0 }, `${where}, ${media}`);
	}
	await page.emulateMedia({ media: "screen" });
	assert.deepEqual(complaints, [], where);
}


test("a file whose every text is markup is drawn as text on every page and as printed", async () => {
	const blank = await browser.context.newPage();
	await blank.goto(`${server.address}none`);
	const engine = await startEngine(blank);
	const { job: demo } = await engine.have("jobs.demo");
	const shipped = (await engine.have("books.shipped")).text;
	await blank.close();
	const jobs = [{ ...inWords(demo), id: "told" }, { ...hostile(inWords(demo)), id: "whole" }];
	const sheets = [{ id: "s", kind: "leveller", sheet: { ...demo.sheets.leveller, name: markup, generic: false } }];
	const books = [{ id: "mine", title: markup, text: `${shipped}\n${rule}`, base: shipped }];
	const text = JSON.stringify({ lowspot: 1, made: "", jobs, sheets, books, shop, settings: {} });

	const { page, complaints } = await open(browser.context, server.address);
	await page.locator("input[type=file]").first().setInputFiles({ name: "all.json", mimeType: "application/json", buffer: Buffer.from(text) });
	await page.locator(".jobs li").nth(1).waitFor();
	assert.match(await page.locator(".jobs").innerText(), /<script data-hostile>/, "it is shown as it was typed");
	await look(page, complaints, "first screen");
	await page.reload();
	for (const id of ["told", "whole"])
		for (const view of views) {
			await page.goto(`${server.address}#/${view}/${id}`);
			await look(page, complaints, `${view} of ${id}`);
		}
	await page.goto(`${server.address}#/job/told`);
	await page.locator(".finding[data-rule=hostile]").first().waitFor();
	for (const view of ["rules", "rules/hostile", "rules/least_depth", "counter", "help", `job/${encodeURIComponent(markup)}`, `rules/${encodeURIComponent(markup)}`, `share/${encodeURIComponent(markup)}`, `${encodeURIComponent(markup)}`, "job/%", "steps/told/%zz"]) {
		await page.goto(`${server.address}#/${view}`);
		await look(page, complaints, view);
	}
	await page.close();
});
