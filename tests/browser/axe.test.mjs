// Every page and state is held against WCAG 2.2 AA by axe-core, at a desk and on a phone, in light and in dark, in English and in Spanish.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { atHand, browse, open } from "./harness.mjs";
import { states } from "./states.mjs";

const axe = readFileSync(new URL("../node_modules/axe-core/axe.min.js", import.meta.url), "utf8");
const everything = { type: "tag", values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] };
const colours = { type: "rule", values: ["color-contrast"] }; // all that a scheme changes

const { server } = await atHand();

async function violations(page, runOnly) {
	const { violations } = await page.evaluate((only) => window.axe.run({ runOnly: only }), runOnly);
	return violations.map((v) => `${v.id}: ${v.nodes.slice(0, 3).map((n) => `${n.target} ${n.any[0]?.message ?? ""}`).join(" | ")}`);
}

/** Says the page in another language. Pour day has no choice at hand: it is opened anew. */
async function speak(page, language) {
	const choice = page.locator(".bar-language");
	if ((await choice.count()) > 0) {
		await choice.evaluate((select, value) => {
			select.value = value;
			select.dispatchEvent(new Event("change"));
		}, language);
	} else {
		await page.evaluate((value) => localStorage.setItem("language", value), language);
		await page.reload();
		await page.locator("main h1, main h2").first().waitFor();
		await page.evaluate(axe);
	}
	await page.waitForFunction((wanted) => document.documentElement.lang === wanted, language);
}

for (const [name, viewport, language] of [
	["at a desk", { width: 1280, height: 900 }, "en"],
	["on a phone, in Spanish", { width: 360, height: 740 }, "es"],
]) {
	test(`no violation ${name}, light and dark`, async () => {
		const { context, end } = await browse({ viewport, locale: "en-GB", colorScheme: "light", reducedMotion: "reduce" });
		const { page } = await open(context, server.address);
		await page.waitForSelector("[data-engine=ready]");
		await page.evaluate(axe);
		const found = [];
		for (const [state, reach] of Object.entries(states)) {
			await reach(page);
			if (language !== "en") await speak(page, language);
			for (const what of await violations(page, everything)) found.push(`${state}: ${what}`);
			await page.emulateMedia({ colorScheme: "dark" });
			for (const what of await violations(page, colours)) found.push(`${state}, dark: ${what}`);
			await page.emulateMedia({ colorScheme: "light" });
			if (language !== "en") await speak(page, "en");
		}
		await end();
		assert.deepEqual(found, []);
	});
}
