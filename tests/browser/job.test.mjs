// The main job on the page: a room and its readings in, a drawn floor, bags and findings out, kept through a reload and without a network.
import assert from "node:assert/strict";
import { test } from "node:test";
import { atHand, open } from "./harness.mjs";

const { server, browser } = await atHand();

const bags = (page) => page.locator(".total-main dd").innerText();

async function start(page) {
	await page.getByRole("button", { name: "Start a new job" }).click();
	await page.getByLabel("Length", { exact: true }).first().fill("4");
	await page.getByLabel("Width", { exact: true }).first().fill("3");
	for (const [i, row] of [["0.5", "0.5", "1200"], ["3.5", "0.5", "1204"], ["2", "2.5", "1210"]].entries()) {
		await page.getByRole("button", { name: "Add a reading" }).click();
		for (const [j, name] of ["x", "y", "height"].entries()) await page.getByLabel(`${name} of reading ${i + 1}`, { exact: true }).fill(row[j]);
	}
}

test("the demo job is one tap away and is drawn, counted and judged", async () => {
	const { page, complaints } = await open(browser.context, server.address);
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".band");
	assert.match(await bags(page), /^\d+$/);
	assert.ok((await page.locator(".finding[data-state=broken]").count()) > 0);
	await page.locator(".finding[data-state=broken] summary", { hasText: "Why: the rule" }).first().click();
	await page.waitForSelector(".finding .trace tbody tr");
	assert.match(await page.locator(".finding .trace").first().innerText(), /worked out/);
	assert.deepEqual(complaints, []);
	await page.close();
});

test("on a phone what stands in the way of the pour is told over the floor, and leads down to the findings", async () => {
	const { page, complaints } = await open(browser.context, server.address);
	await page.setViewportSize({ width: 360, height: 740 });
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".band");
	const stops = await page.locator(".finding[data-state=broken] .weight-stop").count();
	await page.getByRole("button", { name: `${stops} Don’t pour` }).click();
	await page.waitForFunction(() => document.activeElement?.id === "findings");
	assert.ok((await page.locator(".finding").first().boundingBox()).y < 740, "they are in view");
	assert.deepEqual(complaints, []);
	await page.close();
});

test("after an address of a job that is gone, another job opens", async () => {
	const { page } = await open(browser.context, server.address);
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".band");
	const demo = await page.evaluate(() => location.hash);
	await page.evaluate(() => { location.hash = "#/job/gone"; });
	await page.getByRole("heading", { name: "This job isn’t here" }).waitFor();
	await page.evaluate((hash) => { location.hash = hash; }, demo);
	await page.waitForSelector(".band");
	await page.close();
});

test("length, width and three readings make a plan, which is still there after a reload and with no network", async () => {
	const { page, complaints } = await open(browser.context, server.address);
	await start(page);
	await page.waitForSelector(".band");
	await page.waitForFunction(() => /^\d+$/.test(document.querySelector(".total-main dd")?.textContent ?? ""));
	const counted = await bags(page);
	await page.locator(".bar-kept", { hasText: "kept" }).waitFor();
	await page.waitForTimeout(500);
	await page.reload();
	await page.waitForSelector(".band");
	assert.equal(await bags(page), counted);
	assert.equal(await page.getByLabel("height of reading 3", { exact: true }).inputValue(), "1210");
	await page.evaluate(() => navigator.serviceWorker.ready);
	await server.end();
	await page.reload();
	await page.waitForSelector(".band");
	assert.equal(await bags(page), counted);
	assert.deepEqual(complaints, []);
	await page.close();
	await server.again();
});

test("a length that can't be read is told beside its field, and nothing typed is lost", async () => {
	const { page } = await open(browser.context, server.address);
	await page.getByRole("button", { name: "Start a new job" }).click();
	const length = page.getByLabel("Length", { exact: true }).first();
	await length.fill("4 kg");
	await page.locator(".field-error").first().waitFor();
	assert.match(await page.locator(".field-error").first().innerText(), /length/);
	assert.equal(await length.inputValue(), "4 kg");
	await page.close();
});

test("undo takes back the last edit and redo makes it again", async () => {
	const { page } = await open(browser.context, server.address);
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".band");
	const before = await bags(page);
	await page.getByLabel("height of reading 13", { exact: true }).fill("1316");
	await page.waitForFunction((text) => document.querySelector(".total-main dd")?.textContent !== text, before);
	await page.getByRole("button", { name: "Undo" }).click();
	await page.waitForFunction((text) => document.querySelector(".total-main dd")?.textContent === text, before);
	await page.getByRole("button", { name: "Redo" }).click();
	await page.waitForFunction((text) => document.querySelector(".total-main dd")?.textContent !== text, before);
	await page.close();
});

test("pasted readings are taken line by line: bad ones named, good ones kept", async () => {
	const { page } = await open(browser.context, server.address);
	await page.getByRole("button", { name: "Start a new job" }).click();
	await page.getByText("Paste or open a list (CSV)").click();
	await page.getByLabel("x, y, reading: one to a line").fill("x (m);y (m);staff (mm)\n0,5;0,5;1200\n3,5;abc;1204\n2,0;2,5;1210\n");
	await page.getByRole("button", { name: "Take these readings" }).click();
	await page.getByText("2 readings taken, 1 line left out.").waitFor();
	assert.match(await page.locator("ul.field-error").first().innerText(), /line 3/);
	assert.equal(await page.locator(".readings tbody tr").count(), 2);
	await page.close();
});

test("a job copied, deleted, undone, saved as a file and opened again is the same job", async () => {
	const { page } = await open(browser.context, server.address);
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".band");
	await page.locator(".bar-kept", { hasText: "kept" }).waitFor();
	await page.getByRole("link", { name: "Lowspot, first screen" }).click();
	const entry = page.locator(".jobs li", { hasText: "Laundry and back hall" }).first();
	await entry.waitFor();
	const count = await page.locator(".jobs li").count();
	await entry.getByRole("button", { name: "Copy" }).click();
	await page.waitForFunction((n) => document.querySelectorAll(".jobs li").length === n + 1, count);
	const [download] = await Promise.all([page.waitForEvent("download"), entry.getByRole("button", { name: "Save as file" }).click()]);
	const file = await download.path();
	await page.locator(".jobs li", { hasText: "Copy of" }).first().getByRole("button", { name: "Delete" }).click();
	await page.waitForFunction((n) => document.querySelectorAll(".jobs li").length === n, count);
	await page.getByRole("button", { name: "Undo" }).click();
	await page.waitForFunction((n) => document.querySelectorAll(".jobs li").length === n + 1, count);
	await page.locator("input[type=file]").setInputFiles(file);
	await page.getByText(/jobs taken/).waitFor();
	await page.close();
});

test("an outline drawn corner by corner on the map becomes the room", async () => {
	const { page } = await open(browser.context, server.address);
	await page.getByRole("button", { name: "Start a new job" }).click();
	await page.getByRole("button", { name: "Draw the outline" }).click();
	const board = await page.locator(".map-board").boundingBox();
	for (const [x, y] of [[0.3, 0.7], [0.7, 0.7], [0.7, 0.3], [0.3, 0.3]]) await page.mouse.click(board.x + x * board.width, board.y + y * board.height);
	await page.getByRole("button", { name: "Close the outline (4 corners)" }).click();
	await page.waitForSelector(".wall");
	assert.equal(await page.locator(".legs li").count(), 4);
	await page.close();
});
