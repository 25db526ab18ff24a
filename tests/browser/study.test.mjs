// What comes after the plan: how sure the bags are, planes to choose from, flatness, height indicators, on the page and on the map.
import assert from "node:assert/strict";
import { test } from "node:test";
import { atHand, open } from "./harness.mjs";

const { server, browser } = await atHand();

async function demo(page) {
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".band");
	await here(page);
}

const here = (page) => page.waitForSelector('.study[data-study="here"] #study-survey', { timeout: 60_000 });
const unfold = (page, id) => page.locator(`#${id} > summary`).click();
const number = async (locator) => Number((await locator.innerText()).match(/[\d.]+/)[0]);

test("the study comes after the plan, says so while it is coming, and tells how sure the bags are", async () => {
	const { page, complaints } = await open(browser.context, server.address);
	page.setDefaultTimeout(90_000);
	await page.evaluate(() => {
		window.said = new Set(); // all that the page says of the study, however shortly
		new MutationObserver(() => window.said.add(document.querySelector(".study-says")?.textContent)).observe(document.body, { childList: true, subtree: true, characterData: true });
	});
	await demo(page);
	assert.ok(await page.evaluate(() => [...window.said].some((text) => text?.includes("working it out"))));
	const enough = await page.locator("#study-survey tbody tr td").allInnerTexts();
	const [half, ninety, ninetyNine] = enough.slice(0, 3).map(Number);
	assert.ok(half <= ninety && ninety <= ninetyNine && half > 0);
	assert.equal(await number(page.locator(".total-buy dd")), ninety);
	assert.match(await page.locator(".totals-says").innerText(), new RegExp(`${half} at 50 %, ${ninety} at 90 %, ${ninetyNine} at 99 %`));
	assert.match(await page.locator(".next-says").innerText(), /readings|Read next/);
	assert.deepEqual(complaints, []);
	await page.close();
});

test("choosing another plane plans the job anew", async () => {
	const { page } = await open(browser.context, server.address);
	page.setDefaultTimeout(90_000);
	await demo(page);
	await unfold(page, "study-planes");
	const row = page.locator("#study-planes tbody tr", { hasText: "Through Kitchen, up to" });
	const expected = await number(row.locator("td").first());
	await row.getByRole("button", { name: "Choose" }).click();
	await page.waitForFunction((bags) => document.querySelector(".totals-says")?.textContent.includes(`${bags} worked out`), expected.toFixed(1));
	await here(page);
	assert.equal(await row.getByRole("button").innerText(), "Chosen");
	await page.close();
});

test("a mistyped reading is named, and leaving it out takes it off the map and the list", async () => {
	const { page } = await open(browser.context, server.address);
	page.setDefaultTimeout(90_000);
	await demo(page);
	await page.getByLabel("height of reading 13", { exact: true }).fill("1128");
	const suspect = page.locator("[data-suspect='13']");
	await suspect.waitFor({ timeout: 60_000 });
	await page.waitForSelector("circle.suspect");
	await suspect.getByRole("button", { name: "Leave out" }).click();
	await suspect.waitFor({ state: "detached", timeout: 60_000 });
	await page.close();
});

test("every layer of the map is a button, and what it shows stands in a table too", async () => {
	const { page } = await open(browser.context, server.address);
	page.setDefaultTimeout(90_000);
	await demo(page);
	for (const [button, mark] of [
		["Doubt", "path.doubt"],
		["Flatness", "line.edge"],
		["Indicators", "path.pin"],
		["Finish plane", "rect.carrier"],
		["Next reading", "path.next-reading"],
	]) {
		await page.getByRole("button", { name: button, exact: true }).click();
		await page.locator(mark).first().waitFor({ state: "attached" });
	}
	await unfold(page, "study-indicators");
	assert.equal(await page.locator("#study-indicators tbody tr").count(), await page.locator("path.pin").count());
	await unfold(page, "study-flatness");
	assert.ok((await page.locator("#study-flatness tbody tr").count()) >= (await page.locator("line.edge").count()));
	await unfold(page, "study-heights");
	assert.match(await page.locator("#study-heights").innerText(), /Kitchen/);
	await page.emulateMedia({ media: "print" });
	assert.ok(await page.locator(".print-only tbody tr").first().isVisible());
	await page.close();
});

test("moisture tests are entered one by one, each held against its method, and stand on the map", async () => {
	const { page, complaints } = await open(browser.context, server.address);
	page.setDefaultTimeout(90_000);
	await demo(page);
	await page.locator("#deck > summary").click();
	const screed = page.locator("#deck .card", { has: page.locator("[data-field='rooms/0/decks/1/name']") });
	await screed.locator("[data-field$='moisture.method']").evaluate((field) => field.closest("details").setAttribute("open", ""));
	await screed.locator("[data-field$='moisture.method']").selectOption("probes");
	await screed.locator("[data-field$='slab.sides']").selectOption("one");
	const tests = screed.locator("[data-group=moisture-tests]");
	await tests.locator("summary").first().click();
	await tests.getByRole("button", { name: "Tested here" }).first().click();
	await tests.getByLabel("Humidity at test 1").fill("70");
	await tests.getByLabel("Depth of test 1").fill("5");
	await tests.getByLabel("How long test 1 stood").fill("26");
	await tests.getByText("The probe sat 5 mm deep; it needs 18 mm.").waitFor();
	await tests.getByLabel("Depth of test 1").fill("18");
	await tests.getByText("It counts.").waitFor();
	await here(page);
	await page.getByRole("button", { name: "Moisture tests", exact: true }).click();
	await page.locator("path.test-made").first().waitFor({ state: "attached" });
	assert.deepEqual(complaints, []);
	await page.close();
});

test("each plane's cost stands beside it once there is a price list, and so does what a remedy costs", async () => {
	const { page } = await open(browser.context, server.address);
	page.setDefaultTimeout(90_000);
	await demo(page);
	await unfold(page, "study-planes");
	await page.locator("#study-planes", { hasText: "A price list gives what each plane costs" }).waitFor();
	const job = await page.evaluate(() => location.hash);
	await page.evaluate(() => (location.hash = "#/counter"));
	await page.getByText("Prices and shop").click();
	const text = "Item;Pack;Price;Tax class;Stock code;Cost\r\nLeveller;25 kg;24,50;standard;L-25;17,00\r\n";
	await page.locator(".shop input[type=file]").setInputFiles({ name: "prices.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
	await page.getByText("1 price taken, 0 rows left out.").waitFor();
	await page.waitForTimeout(500);
	await page.evaluate((hash) => (location.hash = hash), job);
	await here(page);
	if (!(await page.locator("#study-planes table").isVisible())) await unfold(page, "study-planes");
	const level = page.locator("#study-planes tbody tr[data-plane=Level] [data-cost]");
	await level.filter({ hasText: /\d+\.\d\d EUR/ }).waitFor();
	const costs = await page.locator("#study-planes [data-cost]").allInnerTexts();
	assert.ok(costs.every((cost) => /^\d[\d,]*\.\d\d EUR$/.test(cost)), costs.join());
	await page.locator("#study-planes tbody tr", { hasText: "Level through Kitchen" }).getByRole("button", { name: "Choose" }).click();
	const thin = page.locator('.finding[data-rule="thin-over-wood"][data-state="broken"]');
	await thin.getByText("What would clear it").click();
	await thin.getByText(/Price: \d+\.\d\d EUR becomes \d+\.\d\d EUR \(\+\d+\.\d\d EUR\)/).first().waitFor();
	await page.close();
});
