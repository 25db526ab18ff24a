// What a thumb must hit on site is at least 44 px high and wide, on a phone with a touch screen.
import assert from "node:assert/strict";
import { test } from "node:test";
import { atHand, open } from "./harness.mjs";
import { states } from "./states.mjs";

const { server, browser } = await atHand({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true, locale: "en-GB", reducedMotion: "reduce" });

/** What is smaller than a thumb. Links within a sentence go by the sentence's own line, as WCAG 2.5.8 lets them. */
function small() {
	const least = 43.5;
	const all = document.querySelectorAll("button, a[href], input, select, textarea, summary");
	return [...all]
		.filter((element) => element.checkVisibility() && !element.closest(".unseen, .skip") && !element.matches(".unseen, .skip"))
		.map((element) => (element.matches("input[type=radio], input[type=checkbox], input[type=file]") ? (element.closest("label") ?? element) : element))
		.filter((element) => !(element.matches("a") && getComputedStyle(element).display === "inline"))
		.filter((element) => {
			const { width, height } = element.getBoundingClientRect();
			return width > 0 && (height < least || width < least);
		})
		.map((element) => `${element.tagName.toLowerCase()}.${element.className} “${(element.textContent || element.getAttribute("aria-label") || "").trim().slice(0, 30)}” ${Math.round(element.getBoundingClientRect().width)} × ${Math.round(element.getBoundingClientRect().height)}`);
}

test("every target on the screens that are used on site is 44 px or more", async () => {
	const { page } = await open(browser.context, server.address);
	await page.waitForSelector("[data-engine=ready]");
	const found = [];
	for (const [state, reach] of Object.entries(states)) {
		await reach(page);
		if (["the demo job with everything open", "rulebook", "the counter", "a quote", "the list to buy", "help"].includes(state)) continue; // desk screens, and tables
		for (const what of await page.evaluate(small)) found.push(`${state}: ${what}`);
	}
	await page.close();
	assert.deepEqual([...new Set(found)], []);
});
