// Takes a picture of every page and state, at three widths, light, dark and printed, into tests/artefacts/looks: "make looks". They are for looking
// at, one by one. "node looks.mjs pour 360" takes those whose name has "pour" in it, at the sizes that have "360" in theirs.
import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { browse, open, root, serve } from "./browser/harness.mjs";
import { states } from "./browser/states.mjs";

const folder = join(root, "tests/artefacts/looks");
const widths = { 360: 740, 768: 1024, 1280: 900 };
const [wanted = "", only = ""] = process.argv.slice(2); // part of a state's name, part of a size's: all where nothing is said
if (!wanted && !only) rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const server = await serve();

/** Every state on one page of one size and scheme. */
async function walk(name, options, take) {
	if (!name.includes(only)) return;
	const { context, end } = await browse({ locale: "en-GB", timezoneId: "UTC", reducedMotion: "reduce", ...options });
	const { page } = await open(context, server.address);
	await page.waitForSelector("[data-engine=ready]");
	for (const [state, reach] of Object.entries(states)) {
		await reach(page);
		if (!state.includes(wanted)) continue;
		await take(page, join(folder, `${state.replace(/[^a-z0-9]+/gi, "-")}-${name}`));
	}
	await end();
}

const longest = 6000; // pixels: what lies lower on a very long page is left to the eye

async function full(page, path) {
	await page.evaluate(() => scrollTo(0, 0));
	const [width, height] = await page.evaluate(() => [innerWidth, document.documentElement.scrollHeight]);
	await page.screenshot({ path: `${path}.png`, fullPage: true, timeout: 90_000, clip: { x: 0, y: 0, width, height: Math.min(height, longest) } });
}

for (const [width, height] of Object.entries(widths)) {
	for (const colorScheme of ["light", "dark"]) {
		await walk(`${width}-${colorScheme}`, { viewport: { width: Number(width), height }, colorScheme }, full);
	}
}
await walk("print", { viewport: { width: 794, height: 1123 }, colorScheme: "light" }, async (page, path) => {
	await page.emulateMedia({ media: "print" });
	await full(page, path);
	await page.emulateMedia({ media: "screen" });
});
await server.end();
