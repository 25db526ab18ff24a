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
	await demo(page);
	await page.evaluate(() => {
		for (const details of document.querySelectorAll("details")) details.open = true;
	});
	await page.waitForTimeout(1000);
}

const states = { "first screen": async () => {}, bench: demo, "bench with everything open": allOpen };

for (const colorScheme of ["light", "dark"]) {
	for (const [width, height] of [[1280, 900], [360, 740]]) {
		test(`no violation in ${colorScheme} at ${width} pixels`, async () => {
			const { context, end } = await browse({ colorScheme, viewport: { width, height } });
			const found = [];
			for (const [name, reach] of Object.entries(states)) {
				const { page } = await open(context, server.address);
				await page.waitForSelector("[data-engine=ready]");
				await reach(page);
				await page.evaluate(axe);
				const { violations } = await page.evaluate((values) => window.axe.run({ runOnly: { type: "tag", values } }), tags);
				for (const v of violations) found.push(`${name}: ${v.id}: ${v.nodes.slice(0, 3).map((n) => `${n.target} ${n.any[0]?.message ?? ""}`).join(" | ")}`);
				await page.close();
			}
			await end();
			assert.deepEqual(found, []);
		});
	}
}
