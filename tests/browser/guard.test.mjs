// When the engine fails or hangs, the page says so in plain words, a fresh one takes over, and nothing typed is lost.
import assert from "node:assert/strict";
import { test } from "node:test";
import { atHand, open } from "./harness.mjs";

const { server, browser } = await atHand({ permissions: ["clipboard-read", "clipboard-write"] });

const named = (page) => page.getByLabel("Name of the job");
const allKept = (page) => page.locator(".bar-kept[data-kept=true]").first().waitFor();

async function demo() {
	const opened = await open(browser.context, server.address);
	await opened.page.getByRole("button", { name: "Open the demo job" }).click();
	await opened.page.waitForSelector(".band");
	await allKept(opened.page);
	return opened.page;
}

/** Brings the page's engine down at its next reply, as running out of memory or a fault of its own would: Go panics and ends. */
const breakEngine = (page) =>
	Promise.all(
		page.workers().map((worker) =>
			worker.evaluate(() => {
				self.lowspotReply = () => {
					throw new RangeError("Maximum call stack size exceeded");
				};
			}),
		),
	);

test("an engine that fails is started again: what was typed is kept, the plan is there, a report can be copied", async () => {
	const page = await demo();
	const bags = await page.locator(".total-main dd").innerText();
	await breakEngine(page);
	await named(page).fill("Typed while the engine failed");
	await page.getByText("The engine failed and was started again. Nothing you typed is lost.").waitFor();
	await allKept(page);
	assert.equal(await page.locator(".total-main dd").innerText(), bags);
	await page.getByRole("button", { name: "Copy a report" }).click();
	const report = await page.evaluate(() => navigator.clipboard.readText());
	assert.match(report, /\nbuild \w+, asked for: \w/);
	await page.getByLabel("height of reading 13", { exact: true }).fill("1330");
	await page.waitForFunction((before) => document.querySelector(".total-main dd")?.textContent !== before, bags);
	await allKept(page);
	await page.reload();
	await page.waitForSelector(".band");
	assert.equal(await named(page).inputValue(), "Typed while the engine failed");
	assert.equal(await page.getByLabel("height of reading 13", { exact: true }).inputValue(), "1330");
	await page.close();
});

test("an engine that hangs is ended, and what was typed meanwhile is kept by the next one", async () => {
	const page = await demo();
	for (const worker of page.workers())
		worker
			.evaluate(() => {
				for (;;);
			})
			.catch(() => {}); // it is ended
	await named(page).fill("Typed while the engine hung");
	await page.getByText("The engine failed and was started again. Nothing you typed is lost.").waitFor({ timeout: 60_000 });
	await page.locator(".bar-kept[data-kept=true]").first().waitFor({ timeout: 60_000 });
	await page.reload();
	await page.waitForSelector(".band");
	assert.equal(await named(page).inputValue(), "Typed while the engine hung");
	await page.close();
});
