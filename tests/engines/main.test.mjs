// The same errands in three browser engines: the main path, what is kept, and a start with no network.
import assert from "node:assert/strict";
import { test } from "node:test";
import { serve } from "../browser/harness.mjs";
import { openFirefox } from "./bidi.mjs";
import { openChromium } from "./chromium.mjs";
import { openWebKit } from "./classic.mjs";
import { fill, filled, press, quiet, settled, shown } from "./hands.mjs";

const engines = { Chromium: openChromium, Firefox: openFirefox, WebKitGTK: openWebKit };

const bags = () => document.querySelector(".total-main dd")?.textContent.match(/^\d+$/)?.[0];
const drawn = () => document.querySelectorAll(".band").length;
const judged = () => document.querySelectorAll(".finding[data-state=broken]").length;
const readings = [
	["0.5", "0.5", "1200"],
	["3.5", "0.5", "1204"],
	["2", "2.5", "1210"],
];

for (const [name, openTab] of Object.entries(engines)) {
	test(name, async (t) => {
		const server = await serve();
		t.after(() => server.end(), { timeout: 10_000 });
		const tab = await openTab(server.address);
		t.after(() => tab.end(), { timeout: 60_000 });
		let counted;

		await t.test(`${name}: the demo job is one tap away and is drawn, counted and judged`, async () => {
			await press(tab, "Open the demo job");
			assert.ok(Number(await shown(tab, bags)) > 0);
			assert.ok((await shown(tab, drawn)) > 0);
			assert.ok((await shown(tab, judged)) > 0);
			assert.equal(await tab.run(() => document.querySelector(".notice")?.textContent ?? ""), "", "no notice at a first visit");
			await quiet(tab);
		});

		await t.test(`${name}: length, width and three readings make a plan`, async () => {
			await press(tab, "Lowspot, first screen");
			await press(tab, "Start a new job");
			await fill(tab, "Length", "4");
			await fill(tab, "Width", "3");
			for (const [i, row] of readings.entries()) {
				await press(tab, "Add a reading");
				for (const [j, of] of ["x", "y", "height"].entries()) await fill(tab, `${of} of reading ${i + 1}`, row[j]);
			}
			counted = await settled(tab, bags);
			assert.ok(Number(counted) > 0);
			assert.ok((await shown(tab, drawn)) > 0);
			assert.ok((await shown(tab, judged)) > 0);
			await quiet(tab);
		});

		const isAllThere = async () => {
			assert.ok((await shown(tab, drawn)) > 0);
			assert.equal(await settled(tab, bags), counted);
			assert.match(await filled(tab, "Length"), /^4 (m|ft)$/, "in the units of the browser's region");
			assert.equal(await filled(tab, "height of reading 3"), "1210");
		};

		await t.test(`${name}: all of it is there after a reload`, async () => {
			await shown(tab, () => !!document.querySelector(".bar-kept[data-kept=true]"));
			await tab.reload();
			await isAllThere();
			await quiet(tab);
		});

		await t.test(`${name}: all of it is there with no network`, async () => {
			await tab.run(() => navigator.serviceWorker.ready.then(() => true));
			await server.end();
			await tab.reload();
			await isAllThere();
			await press(tab, "Lowspot, first screen");
			await press(tab, "Open the demo job");
			assert.ok((await shown(tab, judged)) > 0, "and a job is planned");
			await quiet(tab);
		});
	});
}
