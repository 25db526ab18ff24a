// The floor map by hand and by key: a section along any line, a read-out anywhere, layers, the pour in time, two fingers.
import assert from "node:assert/strict";
import { test } from "node:test";
import { atHand, open } from "./harness.mjs";

const { server, browser } = await atHand({ viewport: { width: 360, height: 740 }, hasTouch: true, locale: "en-GB", reducedMotion: "reduce" });

async function demo() {
	const opened = await open(browser.context, server.address);
	opened.page.setDefaultTimeout(60_000);
	await opened.page.getByRole("button", { name: "Open the demo job" }).click();
	await opened.page.waitForSelector(".band");
	return opened;
}

/** Where the board is, once it is in view. */
async function boardOf(page) {
	const board = page.locator(".map-board");
	await board.evaluate((element) => element.scrollIntoView({ block: "center" }));
	return board.boundingBox();
}

const press = (page, name) => page.getByRole("button", { name, exact: true }).click();
const readOut = (page) => page.locator(".map > .map-read").first();

/** Fingers on the screen: one point each. */
async function fingers(page) {
	const client = await page.context().newCDPSession(page);
	return (type, ...points) => client.send("Input.dispatchTouchEvent", { type, touchPoints: points.map(([x, y], id) => ({ x, y, id })) });
}

/** A length behind some words of the read-out, mm. */
function millimetres(text, words) {
	const [, number, unit] = text.match(new RegExp(`${words} ([\\d.,]+) (mm|m)`));
	return Number(number.replace(",", ".")) * (unit === "m" ? 1000 : 1);
}

test("a line dragged over the floor shows deck and finish plane from the side, at a stated exaggeration, and stands in a table", async () => {
	const { page, complaints } = await demo();
	await press(page, "Cut a section");
	const board = await boardOf(page);
	await page.mouse.move(board.x + 0.2 * board.width, board.y + 0.5 * board.height);
	await page.mouse.down();
	await page.mouse.move(board.x + 0.5 * board.width, board.y + 0.5 * board.height, { steps: 4 });
	await page.mouse.move(board.x + 0.8 * board.width, board.y + 0.5 * board.height, { steps: 4 });
	await page.mouse.up();
	await page.locator(".profile-deck").first().waitFor();
	await page.locator(".profile-plane").first().waitFor({ state: "attached" });
	assert.match(await page.locator(".cut-panel").innerText(), /Heights are drawn (2|5|10|20|50|100) times as tall/);
	await page.getByText("The section as a table").click();
	assert.ok((await page.locator(".cut-table tbody tr").count()) >= 5);
	await press(page, "Drag a line…");
	assert.equal(await page.locator(".cut-panel").count(), 0);
	assert.deepEqual(complaints, []);
	await page.close();
});

test("a section needs no pointer: two typed ends, a slider along it, an end that can't be read told beside its field", async () => {
	const { page } = await demo();
	await page.getByRole("button", { name: "Cut a section" }).focus();
	await page.keyboard.press("Enter");
	for (const [label, typed] of [["A: from the left", "0.5"], ["A: from below", "1 m"], ["B: from the left", "far"], ["B: from below", "1 m"]])
		await page.getByLabel(label).fill(typed);
	await page.keyboard.press("Enter");
	await page.locator("#cut-toX-note", { hasText: /\S/ }).waitFor();
	await page.getByLabel("B: from the left").fill("2.5 m");
	await page.keyboard.press("Enter");
	await page.locator(".profile-deck").first().waitFor();
	const place = page.getByLabel("Place along the line");
	await place.focus();
	await place.press("ArrowRight");
	await page.locator(".cut-panel [role=status]", { hasText: /pour [\d.]+ mm · deck reads/ }).waitFor();
	await press(page, "Thinnest to deepest");
	await page.waitForFunction(() => document.querySelectorAll(".cut-line").length === 1);
	await page.close();
});

test("the cross-hair reads depth, deck and finish by the keys, and they fit each other", async () => {
	const { page } = await demo();
	await press(page, "Read a spot");
	await page.locator(".map-board").focus();
	await readOut(page).filter({ hasText: "deck reads" }).waitFor();
	const before = await readOut(page).innerText();
	await page.keyboard.press("Shift+ArrowLeft");
	await page.waitForFunction((text) => document.querySelector(".map > .map-read").innerText !== text, before);
	const said = await readOut(page).innerText();
	assert.ok(Math.abs(millimetres(said, "deck reads") - millimetres(said, "finish reads") - millimetres(said, "pour")) < 1.1, said);
	await page.close();
});

test("a finger draws a section where a mouse would, the page stays where it is, and a second finger still zooms", async () => {
	const { page } = await demo();
	const touch = await fingers(page);
	await press(page, "Cut a section");
	const board = await boardOf(page);
	const at = (across, down) => [board.x + across * board.width, board.y + down * board.height];
	const scrolled = () => page.evaluate(() => [scrollY, document.querySelector(".bench-floor").scrollTop]);
	const before = await scrolled();
	await touch("touchStart", at(0.2, 0.3));
	for (let i = 1; i <= 6; i++) await touch("touchMove", at(0.2 + 0.1 * i, 0.3 + 0.05 * i));
	await touch("touchEnd");
	await page.locator(".profile-deck").first().waitFor();
	assert.deepEqual(await scrolled(), before);
	const line = await page.locator(".cut-line").getAttribute("d");
	const [x1, y1, x2, y2] = line.match(/-?[\d.]+/g).slice(0, 4).map(Number);
	for (const [is, meant] of [[x1, 0.2 * board.width], [y1, 0.3 * board.height], [x2, 0.8 * board.width], [y2, 0.6 * board.height]])
		assert.ok(Math.abs(is - meant) < 2, line);
	const scale = await page.locator(".map-board svg > g").first().getAttribute("transform");
	await touch("touchStart", at(0.4, 0.5), at(0.6, 0.5));
	for (let i = 1; i <= 4; i++) await touch("touchMove", at(0.4 - 0.05 * i, 0.5), at(0.6 + 0.05 * i, 0.5));
	await touch("touchEnd");
	await page.waitForFunction((was) => document.querySelector(".map-board svg > g").getAttribute("transform") !== was, scale);
	await page.close();
});

test("two fingers zoom, one moves the floor when it is zoomed, and with the whole floor in view one finger scrolls the page", async () => {
	const { page } = await demo();
	const touch = await fingers(page);
	const board = await boardOf(page);
	const [x, y] = [board.x + board.width / 2, board.y + board.height / 2];
	const ground = () => page.locator(".map-board svg > g").first().getAttribute("transform");
	const scale = async () => Number((await ground()).match(/scale\(([\d.]+)/)[1]);
	const before = await scale();
	await touch("touchStart", [x - 30, y], [x + 30, y]);
	for (let i = 1; i <= 6; i++) await touch("touchMove", [x - 30 - 8 * i, y], [x + 30 + 8 * i, y]);
	await touch("touchEnd");
	await page.waitForFunction((was) => Number(document.querySelector(".map-board svg > g").getAttribute("transform").match(/scale\(([\d.]+)/)[1]) > 1.5 * was, before);
	const zoomed = await ground();
	await touch("touchStart", [x, y]);
	for (let i = 1; i <= 5; i++) await touch("touchMove", [x, y + 8 * i]);
	await touch("touchEnd");
	await page.waitForFunction((was) => document.querySelector(".map-board svg > g").getAttribute("transform") !== was, zoomed);
	await press(page, "Whole floor");
	assert.equal(await page.locator(".map-board").evaluate((element) => getComputedStyle(element).touchAction), "pan-y");
	assert.ok(Math.abs((await scale()) - before) < 1e-6);
	await page.close();
});

test("the batches appear by the clock, and without motion one press a batch", async () => {
	const { page, complaints } = await demo();
	await press(page, "Batches");
	await page.waitForSelector(".map-board .patch[data-state=down]");
	await page.locator(".map .play-slider input").first().fill("600");
	await page.waitForSelector(".map-board .patch[data-state=to-come]");
	const down = () => page.locator(".map-board .patch[data-state=down]").count();
	const before = await down();
	await press(page, "Next batch");
	await page.waitForFunction((was) => document.querySelectorAll(".map-board .patch[data-state=down]").length > was, before);
	await press(page, "Depth");
	assert.equal(await page.locator(".map-board .band").count(), 0);
	assert.deepEqual(complaints, []);
	await page.close();
});

test("no word on the map lies on a reading's dot", async () => {
	const { page } = await demo();
	await page.waitForTimeout(500);
	const covered = await page.evaluate(() => {
		const dots = [...document.querySelectorAll(".map-board .reading-dot")].map((dot) => dot.getBoundingClientRect());
		const words = [...document.querySelectorAll(".map-board .map-text:not(.map-text-wall)")];
		return words.filter((word) => {
			const box = word.getBBox();
			const at = word.ownerSVGElement.getBoundingClientRect();
			const [left, top] = [at.x + box.x, at.y + box.y + 3];
			return dots.some((dot) => dot.right > left + 1 && dot.left < left + box.width - 1 && dot.bottom > top && dot.top < top + box.height - 6);
		}).map((word) => word.textContent);
	});
	assert.deepEqual(covered, []);
	await page.close();
});
