// Every page of paper on A4 and on Letter: as many pages as it should be, nothing wider than the sheet, the map to its scale, nothing of the desk's own.
import assert from "node:assert/strict";
import { test } from "node:test";
import { atHand, open } from "./harness.mjs";

const pixels = 96 / 25.4; // CSS pixels a millimetre
const margin = 12; // mm, all round
const formats = { A4: 210, Letter: 215.9 }; // mm wide

const { server, browser } = await atHand({ locale: "en-GB" });

/** The demo job, with a pour begun and noted. */
async function poured() {
	const { page, complaints } = await open(browser.context, server.address);
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".bench .band");
	await view(page, "day");
	await page.locator(".day-main").click();
	await page.getByRole("button", { name: "Start batch 2", exact: true }).click();
	await page.getByRole("button", { name: "Batch 1 is poured", exact: true }).click();
	await page.locator(".day-record summary").click();
	for (const [label, text] of Object.entries(noted)) await page.getByLabel(label).fill(text);
	return { page, complaints };
}

const noted = {
	"Who poured": "Ana and Tom",
	"Lot numbers on the bags": "A-17, A-18",
	"Air, measured": "17.5 °C",
	"Deck, measured": "14.5 °C",
	"Water, measured": "11 °C",
	"Mix, measured": "15 °C",
	"Flow ring, measured": "140 mm",
	Notes: "Door to the yard kept shut.",
};

async function view(page, name, part = "") {
	await page.evaluate(([to, rest]) => {
		location.hash = `#/${to}/${sessionStorage.getItem("last job")}${rest && `/${rest}`}`;
	}, [name, part]);
}

async function paper(page, kind, shows) {
	await view(page, "papers", kind);
	await page.locator(shows).first().waitFor({ timeout: 60_000 });
}

/** Pages of the printed paper, and what stands out of the sheet at the right, for each format. */
async function printed(page) {
	await page.emulateMedia({ media: "print" });
	const found = {};
	for (const [format, width] of Object.entries(formats)) {
		await page.setViewportSize({ width: Math.floor((width - 2 * margin) * pixels), height: 900 });
		const out = await page.evaluate(() =>
			[...document.querySelectorAll("main *")].filter((one) => one.checkVisibility() && one.getBoundingClientRect().right > innerWidth + 1).map((one) => one.outerHTML.slice(0, 120)),
		);
		assert.deepEqual(out, [], `${format}: wider than the paper`);
		found[format] = (await page.pdf({ format })).toString("latin1").match(/\/Type\s*\/Page\b/g).length;
	}
	await page.emulateMedia({ media: "screen" });
	await page.setViewportSize({ width: 1280, height: 720 });
	return found;
}

/** How long the first wall is on the paper, mm. */
async function firstWall(page) {
	const length = await page.locator(".scale-wall").evaluate((wall) => {
		const [x1, y1, x2, y2] = wall.getAttribute("d").match(/-?[\d.]+/g).map(Number);
		return Math.hypot(x2 - x1, y2 - y1) * wall.getScreenCTM().a;
	});
	return length / pixels;
}

test("the floor map is one page, to the scale that it names, with every batch and every indicator numbered", async () => {
	const { page, complaints } = await poured();
	await paper(page, "map", ".scale-map .pin");
	assert.deepEqual(await printed(page), { A4: 1, Letter: 1 });
	await page.emulateMedia({ media: "print" });
	assert.match(await page.locator(".paper-title").innerText(), /Laundry and hall[\s\S]*Scale 1:25/);
	// The wall by the kitchen is 4.203 m once the walk is closed: 168.1 mm at 1:25. The bar is 2 m: 80 mm.
	assert.ok(Math.abs((await firstWall(page)) - 168.1) < 0.1);
	const bar = await page.locator(".scale-part").evaluateAll((parts) => parts.reduce((sum, part) => sum + part.getBBox().width * part.getScreenCTM().a, 0));
	assert.ok(Math.abs(bar / pixels - 80) < 0.1, `${bar / pixels} mm`);
	const batches = await page.locator(".scale-box").count();
	assert.ok(batches > 8 && batches === (await page.locator(".scale-map .patch").count()));
	const pins = await page.locator(".scale-map .pin").count();
	assert.ok(pins > 3 && pins === (await page.locator(".paper-tables tbody tr").count()));
	assert.match(await page.locator(".scale-map").textContent(), /1: \d+(\.\d)? mm/);
	assert.deepEqual(complaints, []);
	await page.close();
});

test("in inches the scale is one of an architect's rule", async () => {
	const { page } = await poured();
	await view(page, "job");
	await page.locator(".bar").getByText("in, lb").click();
	await paper(page, "map", ".scale-map .pin");
	await page.emulateMedia({ media: "print" });
	assert.match(await page.locator(".paper-title").innerText(), /3\/8 in = 1 ft \(1:32\)/);
	assert.ok(Math.abs((await firstWall(page)) - 4203 / 32) < 0.1);
	await page.close();
});

test("the record has what pour day kept, with the plan beside it", async () => {
	const { page, complaints } = await poured();
	await paper(page, "record", ".paper-record");
	assert.deepEqual(await printed(page), { A4: 1, Letter: 1 });
	const says = await page.locator(".paper-record").innerText();
	for (const text of Object.values(noted)) assert.ok(says.includes(text), text);
	assert.match(says, /Air\s+17 °C\s+10 °C to 30 °C\s+17\.5 °C/);
	assert.deepEqual(complaints, []);
	await page.close();
});

test("run sheet, shopping list and quote are clean pages without the desk's margin", async () => {
	const { page, complaints } = await poured();
	await paper(page, "run", "[data-step=strip]");
	const run = await printed(page);
	assert.ok(run.A4 <= 3 && run.Letter <= 3, JSON.stringify(run));
	await paper(page, "list", ".quote-lines");
	assert.deepEqual(await printed(page), { A4: 1, Letter: 1 });
	await view(page, "buy");
	await page.getByText("Prices and shop").click();
	const prices = "Item;Pack;Price;Tax class;Stock code;Cost\r\nLeveller;25 kg;24,50;standard;L-25;17,00";
	await page.locator(".shop input[type=file]").setInputFiles({ name: "p.csv", mimeType: "text/csv", buffer: Buffer.from(prices) });
	await page.locator(".quote-margin").first().waitFor();
	await paper(page, "quote", ".quote-margin");
	assert.deepEqual(await printed(page), { A4: 1, Letter: 1 });
	await page.emulateMedia({ media: "print" });
	const says = await page.locator("body").innerText();
	assert.doesNotMatch(says, /Margin|17\.00/);
	for (const hidden of [".quote-margin", ".price-box", ".bar", ".paper-kinds"]) assert.equal(await page.locator(hidden).first().isVisible(), false, hidden);
	assert.deepEqual(complaints, []);
	await page.close();
});
