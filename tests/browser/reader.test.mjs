// What a screen reader finds on the main path: names, roles, headings in order, what is told by itself.
import assert from "node:assert/strict";
import { test } from "node:test";
import { atHand, open } from "./harness.mjs";
import { states } from "./states.mjs";

const { server, browser } = await atHand({ locale: "en-GB", reducedMotion: "reduce" });

/** What can be acted on and has no name, by the page's accessibility tree. */
async function nameless(page) {
	const tree = await page.locator("body").ariaSnapshot();
	const acts = /^\s*- (button|link|textbox|combobox|checkbox|radio|slider|searchbox|spinbutton)\b(?! ")/;
	return tree.split("\n").filter((line) => acts.test(line));
}

/** Headings that leave out a level, and pages without a first one. */
async function headings(page) {
	const levels = await page.evaluate(() =>
		[...document.querySelectorAll("h1, h2, h3, h4")].filter((h) => h.checkVisibility()).map((h) => [Number(h.tagName[1]), h.textContent.trim()]),
	);
	const wrong = [];
	if (levels.filter(([level]) => level === 1).length !== 1) wrong.push(`${levels.filter(([level]) => level === 1).length} first headings`);
	levels.forEach(([level, text], i) => {
		const before = levels[i - 1]?.[0] ?? 1;
		if (level > before + 1) wrong.push(`“${text}” leaves out a level`);
	});
	return wrong;
}

test("every page and state has one first heading, headings in order, one main part, and a name for all that can be acted on", async () => {
	const { page } = await open(browser.context, server.address);
	await page.waitForSelector("[data-engine=ready]");
	const found = [];
	for (const [state, reach] of Object.entries(states)) {
		await reach(page);
		for (const line of await nameless(page)) found.push(`${state}: no name: ${line.trim()}`);
		for (const wrong of await headings(page)) found.push(`${state}: ${wrong}`);
		const mains = await page.locator("main").count();
		if (mains !== 1) found.push(`${state}: ${mains} main parts`);
	}
	await page.close();
	assert.deepEqual(found, []);
});

test("the demo job's tree: bar, parts of the job, map with its tools, totals that tell of themselves, findings", async () => {
	const { page } = await open(browser.context, server.address);
	await states["the demo job"](page);
	const tree = await page.locator("body").ariaSnapshot();
	for (const part of [
		/- banner:/, /- navigation "Parts of the job":/, /- link "Floor"/, /- main:/, /- heading "Laundry and back hall" \[level=1\]/,
		/- region "Floor map":/, /- button "Read a spot"/, /- button "Cut a section"/, /group "Map board: arrows move it, plus and minus zoom"/,
		/- img "Floor of [\d.]+ m²; the pour is [\d.]+ mm at its thinnest and [\d.]+ mm at its deepest."/, /group "Shown on the map"/, /- button "Depth" \[pressed\]/,
	])
		assert.match(tree, part);
	const told = await page.evaluate(() => [...document.querySelectorAll("[role=status], [aria-live]")].map((region) => region.className));
	assert.ok(told.length >= 2, `regions that tell of changes: ${told}`);
	await page.close();
});
