// The trade desk: from an empty page to a printed quote by keys alone, prices from a spreadsheet's file, the list on paper, the job in a link.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { atHand, open } from "./harness.mjs";

const { server, browser } = await atHand({ locale: "en-GB" });

// As a spreadsheet program in a country of decimal commas saves it: semicolons, quotes, the old encoding.
const priceList = [
	"Item;Pack;Price;Tax class;Stock code;Cost",
	"Leveller;25 kg;24,50;standard;L-25;17,00",
	"Primer;5 L;38,90;standard;P-5;25,00",
	"Patch;10 kg;19,90;standard;F-10;",
	'"Sp\xE4chtel ""extra""; fein";5 kg;1.012,50;standard;;',
].join("\r\n");

async function counter() {
	const opened = await open(browser.context, new URL("#/counter", server.address).href);
	await opened.page.evaluate(() => {
		window.printed = 0;
		window.print = () => window.printed++;
	});
	await area(opened.page).waitFor();
	return opened;
}

const area = (page) => page.locator("[data-field='rooms/0/outline/area']");
const total = (page) => page.locator(".quote-total dd");

async function bringPrices(page) {
	await page.getByText("Prices and shop").click();
	const file = { name: "prices.csv", mimeType: "text/csv", buffer: Buffer.from(priceList, "latin1") };
	await page.locator(".shop input[type=file]").setInputFiles(file);
	await page.getByText("4 prices taken, 0 rows left out.").waitFor();
	await page.getByLabel("Rate of tax class 1").fill("19 %");
	await page.waitForTimeout(300);
}

async function quoteForty(page) {
	await area(page).fill("40");
	await page.locator("[data-field='rooms/0/rough/mean']").fill("10");
	await page.getByLabel("Deck", { exact: true }).selectOption("chipboard");
	await page.getByText("It may take 29 bags or 51").waitFor();
}

test("a price list from a spreadsheet is read to the last letter and comes back as it was", async () => {
	const { page, complaints } = await counter();
	await bringPrices(page);
	const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save it as CSV" }).click()]);
	const text = readFileSync(await download.path(), "utf8");
	assert.ok(text.startsWith("\uFEFFitem,pack,price,tax class,stock code,cost\r\n"));
	assert.match(text, /Leveller,25 kg,24\.50,standard,L-25,17\.00\r\n/);
	assert.match(text, /"Spächtel ""extra""; fein",5 kg,1012\.50,standard,,/);
	assert.deepEqual(complaints, []);
	await page.close();
});

test("from the empty page to the printed quote in twelve keys beyond the numbers", async () => {
	const { page, complaints } = await counter();
	let keys = 0;
	const press = async (key) => {
		keys++;
		await page.keyboard.press(key);
	};
	assert.equal(await page.evaluate(() => document.activeElement.dataset.field), "rooms/0/outline/area");
	await page.keyboard.type("40");
	await press("Tab");
	await page.keyboard.type("10");
	await press("Tab");
	await press("Tab");
	await press("c"); // chipboard
	await press("Tab");
	await press("l"); // large tile
	await total(page).filter({ hasText: "EUR" }).waitFor();
	await page.getByText("It may take 29 bags or 51").waitFor();
	await press("Control+Enter");
	await page.waitForFunction(() => window.printed === 1);
	keys++; // Ctrl and Enter are two
	assert.ok(keys <= 12, `${keys} keys`);
	// 40 bags at 24.50, a tin at 38.90, two bags of patch at 19.90, and 19 % on the sum of 1058.70
	assert.equal(await total(page).innerText(), "1259.85 EUR");
	assert.deepEqual(complaints, []);
	await page.close();
});

test("the questions that ought to be asked stand beside the quote and change it when answered", async () => {
	const { page } = await counter();
	await quoteForty(page);
	const asked = page.getByRole("region", { name: "Ask before you sell" });
	await asked.getByText("Over chipboard").first().waitFor();
	await asked.getByText("How thick is it?").waitFor();
	await page.getByRole("region", { name: "How sure the bags are" }).getByText("8 fewer").waitFor();
	const patch = page.locator(".quote-lines tr", { hasText: "Patch" });
	assert.equal(await patch.count(), 1);
	await asked.locator("li", { hasText: "Are all gaps and holes closed?" }).getByText("Yes", { exact: true }).click();
	await page.waitForFunction(() => !document.querySelector(".quote-lines").textContent.includes("Patch"));
	await page.close();
});

test("several rooms add up, and least with greatest depth is surer than a guess", async () => {
	const { page } = await counter();
	await area(page).fill("5x4");
	await page.locator("[data-field='rooms/0/rough/mean']").fill("10");
	await page.locator("[data-field='rooms/0/rough/greatest']").fill("18");
	await page.getByLabel("Deck", { exact: true }).selectOption("plywood");
	await page.getByText("It may take 21 bags or 26").waitFor();
	await page.keyboard.press("Alt+r");
	await page.waitForFunction(() => document.activeElement.dataset.field === "rooms/1/outline/area");
	await page.keyboard.type("20");
	await page.waitForFunction(() => Number(document.querySelector(".sureness b")?.textContent) > 40);
	await page.close();
});

test("how sure the bags should last is chosen at the desk, and quoted", async () => {
	const { page, complaints } = await counter();
	await quoteForty(page);
	const leveller = page.locator(".quote-lines tr", { hasText: "Leveller" }).locator(".quote-packs");
	assert.equal(await leveller.innerText(), "40");
	for (const [says, bags] of [["99 in 100", "51"], ["one time in two", "29"], ["nine times in ten", "40"]]) {
		await page.locator(".sureness-one", { hasText: says }).click();
		await leveller.filter({ hasText: bags }).waitFor();
		assert.equal(await page.locator(".sureness-one:has(:checked) b").innerText(), bags);
	}
	assert.deepEqual(complaints, []);
	await page.close();
});

test("a quote opens as a job without retyping", async () => {
	const { page } = await counter();
	await quoteForty(page);
	await page.keyboard.press("Alt+j");
	await page.waitForSelector(".bench");
	assert.equal(await page.getByLabel("Area, or length × width").inputValue(), "40 m²");
	assert.equal(await page.getByLabel("Depth, about").inputValue(), "10 mm");
	await page.waitForFunction(() => document.querySelector(".total-main dd")?.textContent === "30");
	assert.match(await page.locator("#deck").innerText(), /chipboard/);
	await page.close();
});

test("quote and list print as one clean page, A4 and Letter, without the margin", async () => {
	const { page } = await counter();
	await quoteForty(page);
	await page.getByLabel("Customer, kept on this device only").fill("A. Neighbour");
	await page.locator(".quote-margin").first().waitFor();
	await page.emulateMedia({ media: "print" });
	for (const hidden of [".quote-margin", ".price-box", ".counter-entry", ".bar", ".shop"]) assert.equal(await page.locator(hidden).first().isVisible(), false, hidden);
	assert.equal(await page.getByText("For A. Neighbour").isVisible(), true);
	for (const format of ["A4", "Letter"]) {
		const pages = (await page.pdf({ format })).toString("latin1").match(/\/Type\s*\/Page\b/g);
		assert.equal(pages.length, 1, format);
	}
	await page.close();
});

test("a link holds the whole job but not the customer, and shows it before it is kept", async () => {
	const { page } = await counter();
	await quoteForty(page);
	await page.getByLabel("Customer, kept on this device only").fill("A. Neighbour");
	await page.evaluate(() => {
		Object.defineProperty(navigator, "clipboard", { value: { writeText: async (text) => void (window.copied = text) } });
	});
	await page.getByRole("link", { name: "List, file and link" }).click();
	await page.getByRole("button", { name: "Copy a link to the job" }).click();
	const link = await page.waitForFunction(() => window.copied).then((handle) => handle.jsonValue());
	assert.match(link, /#\/share\/[\w-]+$/);
	const { page: other, complaints } = await open(browser.context, link);
	await other.getByText("This job came in a link.").waitFor();
	await other.getByText("about 10 mm deep").waitFor();
	await other.getByRole("button", { name: "Take it as a job of mine" }).click();
	await other.waitForSelector(".bench");
	await other.getByRole("link", { name: "To buy" }).click();
	await other.getByText("It may take 29 bags or 51").waitFor();
	assert.doesNotMatch(await other.locator("body").innerText(), /Neighbour/);
	assert.deepEqual(complaints, []);
	await other.goto(`${link.slice(0, -40)}`);
	await other.getByRole("alert").getByText("This link holds no job that can be read.").waitFor();
	await other.close();
	await page.close();
});

test("bags counted after the pour become a figure of one's own", async () => {
	const { page } = await counter();
	await quoteForty(page);
	await page.getByRole("link", { name: "List, file and link" }).click();
	await page.getByText("After the pour").first().click();
	await page.getByLabel("Bags opened").fill("32");
	await page.getByText("Each bag filled 12.5 L").waitFor();
	await page.getByLabel("Bags left over").fill("8");
	await page.getByText("planned 40").waitFor();
	await page.getByText("planned 10 mm").waitFor();
	await page.getByLabel("Mean depth as measured").fill("11");
	await page.getByText("came out 11 mm").waitFor();
	await page.getByText("Each bag filled 13.8 L").waitFor(); // 40 m² × 11 mm in 32 bags
	await page.getByLabel("Mean depth as measured").fill("10");
	await page.getByText("Each bag filled 12.5 L").waitFor();
	await page.getByRole("button", { name: "Plan this job with it: 12.9 L" }).click();
	await page.getByText("its sheet says 12.9 L").waitFor();
	await page.close();
});

test("tins of two sizes are quoted in the mix that costs least, a row a size, and their shelf life is told", async () => {
	const { page } = await counter();
	await page.getByText("Prices and shop").click();
	const tins = "Item;Pack;Price\r\nPrimer;5 L;38,90\r\nPrimer;1 L;9,90";
	await page.locator(".shop input[type=file]").setInputFiles({ name: "p.csv", mimeType: "text/csv", buffer: Buffer.from(tins) });
	await page.getByText("2 prices taken").waitFor();
	await area(page).fill("56");
	await page.locator("[data-field='rooms/0/rough/mean']").fill("12");
	await page.getByLabel("Deck", { exact: true }).selectOption("plywood");
	const rows = page.locator(".quote-lines tbody tr", { hasText: /tin of/ });
	await rows.nth(1).waitFor();
	assert.match(await rows.nth(0).innerText(), /Primer[\s\S]*7 L\s+1\s+tin of 5 L\s+38\.90/);
	assert.match(await rows.nth(1).innerText(), /2\s+tin of 1 L\s+19\.80/);
	await rows.nth(0).getByRole("button", { name: "Why 7 L of Primer" }).click();
	const because = page.locator(".quote-because");
	await because.getByText("Whole packs, the cheapest mix: 1 × 5 L and 2 × 1 L").waitFor();
	await because.getByText("Keeps 365 d unopened: look at the date on the pack.").waitFor();
	await page.getByRole("link", { name: "List, file and link" }).click();
	const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save the list as CSV" }).click()]);
	const text = readFileSync(await download.path(), "utf8");
	assert.ok(text.startsWith("\uFEFFgroup,item,need,packs,pack,pack holds,left over,mass,quoted,stock code,price of one,amount,because\r\n"), text);
	assert.match(text, /\r\nprepare,Primer,7 L,1,tin,5 L,0 mL,7\.21 kg,yes,,38\.90,38\.90,/);
	assert.match(text, /\r\nprepare,Primer,,2,tin,1 L,,,yes,,9\.90,19\.80,\r\n/, "the need stands once");
	assert.doesNotMatch(text, /undefined|NaN/);
	await page.close();
});
