// Every page and state is held against WCAG 2.2 AA by axe-core, in light and in dark.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { browse, open, serve } from "./harness.mjs";

const axe = readFileSync(new URL("../node_modules/axe-core/axe.min.js", import.meta.url), "utf8");
const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

let server;
before(async () => {
	server = await serve();
});
after(async () => {
	await server.end();
});

async function demo(page) {
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".band");
}

async function allOpen(page) {
	await page.evaluate(() => {
		for (const details of document.querySelectorAll("details")) details.open = true;
	});
	await page.waitForTimeout(1000);
}

/** Goes from one view of the demo job to another, or to a page beside it. */
const from = (view, part, shows) => async (page) => {
	await page.evaluate(([to, rest]) => {
		const id = sessionStorage.getItem("last job");
		location.hash = to === "help" ? "#/help" : `#/${to}/${id}/${encodeURIComponent(rest)}`;
	}, [view, part]);
	await page.waitForSelector(shows);
	await page.waitForTimeout(500);
};

/** One after the other on one page. */
const states = {
	"first screen": async () => {},
	bench: demo,
	"bench with everything open": allOpen,
	"a question with answers to tap": from("steps", "deck.kind~room-1~ply", ".answers"),
	"a question for a number": from("steps", "air.temperature~~", ".step form"),
	"the room's size": from("steps", "outline~0", ".step .picture"),
	doors: from("steps", "doors~0", ".step .card"),
	"how heights are read": from("steps", "survey~0", ".method"),
	"readings spot by spot": from("steps", "readings~0", ".read-off"),
	"the leveller": from("steps", "leveller~0", ".how"),
	result: from("steps", "result~0", ".result-bags"),
	"field sheet": from("sheet", "", ".paper-tables"),
	help: from("help", "", ".help-words"),
};

for (const colorScheme of ["light", "dark"]) {
	for (const [width, height] of [[1280, 900], [360, 740]]) {
		test(`no violation in ${colorScheme} at ${width} pixels`, async () => {
			const { context, end } = await browse({ colorScheme, viewport: { width, height } });
			const found = [];
			const { page } = await open(context, server.address);
			await page.waitForSelector("[data-engine=ready]");
			await page.evaluate(axe);
			for (const [name, reach] of Object.entries(states)) {
				await reach(page);
				const { violations } = await page.evaluate((values) => window.axe.run({ runOnly: { type: "tag", values } }), tags);
				for (const v of violations) found.push(`${name}: ${v.id}: ${v.nodes.slice(0, 3).map((n) => `${n.target} ${n.any[0]?.message ?? ""}`).join(" | ")}`);
			}
			await end();
			assert.deepEqual(found, []);
		});
	}
}
