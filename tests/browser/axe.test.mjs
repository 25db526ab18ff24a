// Every page and state is held against WCAG 2.2 AA by axe-core, in light and in dark.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { browse, open, serve } from "./harness.mjs";
import { states } from "./states.mjs";

const axe = readFileSync(new URL("../node_modules/axe-core/axe.min.js", import.meta.url), "utf8");
const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

let server;
before(async () => {
	server = await serve();
});
after(async () => {
	await server.end();
});

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
