// Every page and state keeps the shape that was last accepted: "make looks" renews that. Shapes are compared, not pixels: pages are set in a typeface
// of the tests' own, so that a machine's fonts make no difference, then brought down to a coarse grey grid, of which a little may differ.
import assert from "node:assert/strict";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { after, test } from "node:test";
import { inBoxes } from "./boxfont.mjs";
import { atHand, browse, open, root } from "./harness.mjs";
import { states } from "./states.mjs";

const file = join(root, "tests/looks/accepted.json");
const renew = process.env.RENEW === "yes"; // what is seen is accepted
const accepted = existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : {};
const across = 40; // cells
const farOff = 3; // of sixteen greys
const mayDiffer = 0.06; // of a page's cells

const sizes = { "360 light": [360, 740, "light"], "1280 dark": [1280, 900, "dark"] };

const { server } = await atHand();
after(() => {
	if (!renew) return;
	mkdirSync(join(root, "tests/looks"), { recursive: true });
	writeFileSync(file, `${JSON.stringify(accepted, null, "\t")}\n`);
});

/** What is in view, as rows of greys from 0 to f. */
async function shapeOf(page) {
	const picture = (await page.screenshot({ animations: "disabled" })).toString("base64");
	return page.evaluate(async ([data, columns]) => {
		const image = await createImageBitmap(new Blob([Uint8Array.from(atob(data), (c) => c.charCodeAt(0))]));
		const rows = Math.round((columns * image.height) / image.width);
		const canvas = new OffscreenCanvas(columns, rows);
		const context = canvas.getContext("2d");
		context.imageSmoothingQuality = "high";
		context.drawImage(image, 0, 0, columns, rows);
		const { data: pixels } = context.getImageData(0, 0, columns, rows);
		const grey = (i) => Math.round((15 * (0.3 * pixels[i] + 0.6 * pixels[i + 1] + 0.1 * pixels[i + 2])) / 255).toString(16);
		return Array.from({ length: rows }, (_, y) => Array.from({ length: columns }, (_, x) => grey(4 * (y * columns + x))).join(""));
	}, [picture, across]);
}

/** The share of cells that look otherwise. */
function difference(was, is) {
	if (was.length !== is.length) return 1;
	const [a, b] = [was.join(""), is.join("")];
	let off = 0;
	for (let i = 0; i < a.length; i++) if (Math.abs(Number.parseInt(a[i], 16) - Number.parseInt(b[i], 16)) > farOff) off++;
	return off / a.length;
}

/** The share of cells that look otherwise once the page has settled: a busy machine takes its time. */
async function differs(page, was) {
	let off = 1;
	for (let looks = 0; looks < 6 && off > mayDiffer; looks++) {
		if (looks > 0) await page.waitForTimeout(1000);
		off = difference(was, await shapeOf(page));
	}
	return off;
}

for (const [name, [width, height, colorScheme]] of Object.entries(sizes)) {
	test(`every page keeps its shape, ${name}`, async () => {
		const options = { viewport: { width, height }, colorScheme, locale: "en-GB", timezoneId: "UTC", reducedMotion: "reduce" };
		const { context, end } = await browse(options);
		await context.clock.setFixedTime(new Date("2026-03-02T09:00:00Z"));
		const { page } = await open(context, server.address);
		await page.waitForSelector("[data-engine=ready]");
		await inBoxes(page);
		const changed = [];
		for (const [state, reach] of Object.entries(states)) {
			await reach(page);
			await page.evaluate(() => scrollTo(0, 0));
			const key = `${state}, ${name}`;
			if (renew) accepted[key] = await shapeOf(page);
			const off = await differs(page, accepted[key] ?? []);
			if (off <= mayDiffer) continue;
			changed.push(`${key}: ${Math.round(100 * off)} % of it`);
			await page.screenshot({ path: join(root, "tests/artefacts/differs", `${key.replace(/[^a-z0-9]+/gi, "-")}.png`) });
		}
		await end();
		assert.deepEqual(changed, [], "look at tests/artefacts/differs; where the new look is meant, accept it with make looks");
	});
}
