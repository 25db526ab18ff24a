// Makes the README's pictures from the real page: "make pictures".
import { mkdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { browse, open, serve } from "./browser/harness.mjs";

const folder = join(dirname(dirname(fileURLToPath(import.meta.url))), "site/pictures");
mkdirSync(folder, { recursive: true });
const server = await serve();

async function picture(name, viewport, steps) {
	const browser = await browse({ viewport });
	const { page } = await open(browser.context, server.address);
	await steps(page);
	await page.screenshot({ path: join(folder, `${name}.png`) });
	await browser.end();
}

async function demo(page) {
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".band");
	await page.locator(".bar-kept", { hasText: /kept/i }).waitFor();
	await page.waitForFunction(() => /\d/.test(document.querySelector(".total-buy dd")?.textContent ?? ""), null, { timeout: 90_000 });
}

const phone = { width: 360, height: 740 };

const view = (name, shows) => async (page) => {
	await demo(page);
	await page.evaluate((name) => {
		location.hash = location.hash.replace("/job/", `/${name}/`);
	}, name);
	await page.waitForSelector(shows, { timeout: 90_000 });
	await page.waitForTimeout(500);
};

/** The floor cut through its thinnest and its deepest spot, with the read-out in the middle. */
async function section(page) {
	await demo(page);
	await page.getByRole("button", { name: "Cut a section", exact: true }).click();
	await page.getByRole("button", { name: "Thinnest to deepest", exact: true }).click();
	await page.getByLabel("Place along the line").fill("60");
	await page.locator(".cut-panel [role=status]", { hasText: "deck reads" }).waitFor();
	await page.locator(".cut-panel").evaluate((panel) => panel.scrollIntoView({ block: "end" }));
	await page.waitForTimeout(500);
}

await picture("bench", { width: 1440, height: 900 }, demo);
await picture("pour", { width: 1200, height: 820 }, view("pour", ".patch"));
await picture("section", { width: 820, height: 1000 }, section);
await picture("phone", phone, demo);
await picture("result", phone, view("steps", ".result-bags"));
await picture("day", phone, view("day", ".day-main"));
await picture("rules", { width: 1200, height: 820 }, async (page) => {
	await demo(page);
	await page.evaluate(() => {
		location.hash = "#/rules/thin-over-wood";
	});
	await page.waitForSelector(".rules-one h2, .rules-one h1");
	await page.waitForTimeout(1000);
});
await server.end();
process.exit(0);
