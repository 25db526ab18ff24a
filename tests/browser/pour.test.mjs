// The pour on the page and pour day on a phone: planned, played, tapped, kept through a reload in the middle of it and without a network.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import ICAL from "ical.js";
import { atHand, open } from "./harness.mjs";

const { server, browser } = await atHand({ viewport: { width: 360, height: 740 }, hasTouch: true });

async function demo(view) {
	const { page, complaints } = await open(browser.context, server.address);
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".band");
	if (view === "pour") await page.getByRole("link", { name: "Pour", exact: true }).click();
	else await page.evaluate((to) => (location.hash = location.hash.replace("/job/", `/${to}/`)), view);
	await page.waitForSelector(view === "day" ? ".day-main" : ".patch");
	return { page, complaints };
}

const press = (page, name) => page.getByRole("button", { name, exact: true }).click();

test("the demo pour is drawn in numbered patches, with water in marks and a clock that keeps the wet edge", async () => {
	const { page, complaints } = await demo("pour");
	const patches = await page.locator(".patch").count();
	assert.ok(patches > 8);
	assert.equal(await page.locator(".batches tbody tr").count(), patches);
	assert.equal(await page.locator(".patch-number").first().textContent(), "1");
	assert.match(await page.locator(".batches tbody tr").first().innerText(), /5 L\s+50/);
	assert.ok((await page.locator(".timeline .task-mix").count()) > patches);
	assert.match(await page.locator(".pour-figures").innerText(), /2 people, 1 mixer, 2 buckets/);
	assert.equal(await page.locator(".pour-verdict .weight-kept").count(), 1);
	await page.locator("input[type=range]").fill("600");
	await page.waitForSelector(".patch[data-batch='1'][data-state=down]");
	assert.ok((await page.locator(".patch[data-state=to-come]").count()) > 0);
	assert.deepEqual(complaints, []);
	await page.close();
});

test("one person with one bucket is told so, and bays are offered", async () => {
	const { page } = await demo("pour");
	await page.evaluate(() => (location.hash = location.hash.replace("/pour/", "/job/")));
	await page.locator("#air summary").first().click();
	await page.getByLabel("Hands on pour day", { exact: true }).fill("1");
	await page.getByLabel("Mixing buckets", { exact: true }).fill("1");
	await page.getByRole("link", { name: "Pour", exact: true }).click();
	await page.locator(".finding[data-rule=wet-edge-kept][data-state=broken]").waitFor();
	await press(page, "Plan it in bays with this crew");
	await page.getByRole("group", { name: "Pours" }).waitFor();
	const bays = await page.getByRole("group", { name: "Pours" }).getByRole("button").allInnerTexts();
	assert.ok(bays.length > 1);
	assert.match(bays[0], /^bay 1 of \d$/);
	assert.ok((await page.locator(".patch-dam").count()) > 0);
	await page.locator("[data-step=bay-2]", { hasText: "Take out the dam" }).waitFor();
	await page.getByRole("link", { name: "Pour day on this phone" }).click();
	await page.locator(".day-line", { hasText: "Dams to set before this bay" }).waitFor();
	await page.locator(".day-main").click();
	await pourAll(page);
	await page.getByRole("button", { name: /^Next pour: bay 2/ }).click();
	await page.locator(".day-line", { hasText: "the dam taken out" }).waitFor();
	await page.locator(".day-main").click();
	await page.locator(".day-edge").waitFor();
	await page.waitForTimeout(400);
	await page.reload();
	await page.locator(".day-rooms button[aria-pressed=true]", { hasText: "bay 1" }).waitFor();
	await page.getByRole("link", { name: "Leave" }).click();
	await press(page, "Pour it in one go");
	await page.getByRole("group", { name: "Pours" }).waitFor({ state: "detached" });
	await page.close();
});

/** Taps every batch of a pour through to its end. */
async function pourAll(page) {
	const buttons = page.locator("button.day-button", { hasText: /^(Start batch \d+|Batch \d+ is (poured|spread))$/ });
	await buttons.first().waitFor();
	while ((await page.getByText("All batches are down.").count()) === 0) {
		if ((await buttons.count()) > 0) await buttons.first().click({ timeout: 5000 }).catch(() => {});
		await page.waitForTimeout(350);
	}
}

test("a deep floor is poured lift by lift, with the primer between on the run sheet", async () => {
	const { page, complaints } = await demo("pour");
	await page.evaluate(() => (location.hash = location.hash.replace("/pour/", "/job/")));
	await page.getByLabel("height of reading 8", { exact: true }).fill("1262");
	await page.locator('.study[data-study="here"] #study-lifts').waitFor({ timeout: 60_000 });
	await page.locator("#study-lifts > summary").click();
	assert.match(await page.locator("#study-lifts").innerText(), /Aggregate[\s\S]*Primer over it[\s\S]*kg/);
	await page.getByRole("link", { name: "Pour", exact: true }).click();
	const pours = page.getByRole("group", { name: "Pours" });
	await pours.waitFor();
	assert.match(await pours.innerText(), /lift 1 of 2[\s\S]*lift 2 of 2/);
	assert.match(await page.locator(".batches thead").innerText(), /Aggregate/i);
	await page.locator("[data-step=prime-over-1]", { hasText: "Primer dries" }).waitFor();
	assert.match(await page.locator("[data-step=pour-2]").innerText(), /mixes/);
	await pours.getByRole("button", { name: /lift 2/ }).click();
	await page.locator(".batches tbody tr").nth(3).waitFor();
	assert.deepEqual(complaints, []);
	await page.close();
});

test("a floor that nobody has read has batches and a clock, and says what is missing", async () => {
	const { page, complaints } = await open(browser.context, new URL("#/counter", server.address).href);
	await page.locator("[data-field='rooms/0/outline/area']").fill("12 m²");
	await page.locator("[data-field='rooms/0/rough/mean']").fill("10 mm");
	await page.getByText("It may take").first().waitFor();
	await page.getByRole("link", { name: "Pour", exact: true }).click();
	await page.locator(".pour-why", { hasText: "Nobody has read this floor" }).waitFor();
	// 120 L with 3 % of waste, in the US sheet's bags of 0.45 cu ft each: 9.7.
	assert.equal(await page.locator(".batches tbody tr").count(), 10);
	assert.equal(await page.locator(".patch-map").count(), 0);
	assert.ok((await page.locator(".timeline .task-mix").count()) >= 10);
	assert.deepEqual(complaints, []);
	await page.close();
});

test("from a chosen start the run sheet has days, and its holds go into a calendar file", async () => {
	const { page } = await demo("pour");
	assert.match(await page.locator("[data-step=strip]").innerText(), /Day 1/);
	assert.equal(await page.getByRole("button", { name: "Save the holds as a calendar file" }).isDisabled(), true);
	await page.getByLabel("The work begins").fill("2026-05-04T08:00");
	await page.locator("[data-step=strip]", { hasText: "May" }).waitFor();
	assert.match(await page.locator("[data-step=strip]").innerText(), /asbestos/);
	const [download] = await Promise.all([page.waitForEvent("download"), press(page, "Save the holds as a calendar file")]);
	assert.equal(download.suggestedFilename(), "laundry-and-back-hall.ics");
	const text = readFileSync(await download.path(), "utf8");
	assert.match(text, /^BEGIN:VCALENDAR\r\n/);
	const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((one) => new ICAL.Event(one));
	const held = await page.locator(".run-sheet tbody tr").evaluateAll((rows) => rows.filter((row) => row.cells[4].innerText.trim()).map((row) => row.cells[2].querySelector("b").textContent));
	assert.deepEqual(events.map((one) => one.description.split("\n")[0].replace("After: ", "")).sort(), held.sort(), "every hold of the sheet is in the file");
	assert.ok(events.every((one) => one.endDate.compare(one.startDate) >= 0 && one.startDate.year === 2026));
	assert.ok(events.every((one) => one.component.getFirstSubcomponent("valarm")));
	await page.close();
});

test("buttons of pour day are large enough for gloves, and nothing runs off a phone", async () => {
	const { page } = await demo("day");
	await page.locator(".day-main").click();
	await page.locator(".day-edge").waitFor();
	const small = await page.locator(".day button, .day a.button").evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height < 64).map((one) => one.textContent));
	assert.deepEqual(small, []);
	assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), 360);
	await page.close();
});

test("a pour under way survives a reload and a lost network: taps, countdown, skip, take back", async () => {
	const { page, complaints } = await demo("day");
	await page.evaluate(() => navigator.serviceWorker.ready);
	await page.locator(".day-main").click();
	await press(page, "Start batch 2");
	await press(page, "Batch 1 is poured");
	await page.locator(".day-edge b").waitFor();
	assert.match(await page.locator(".day-edge").innerText(), /batch 1 closes: batch 2 must meet it/);
	assert.match(await page.locator(".day-edge b").innerText(), /^1[12]:\d\d$/);
	await page.waitForTimeout(300);
	await server.end();
	await page.reload();
	await page.locator(".day-edge b").waitFor();
	assert.match(await page.locator(".day-edge").innerText(), /batch 1 closes/);
	assert.equal(await page.locator(".patch[data-batch='1']").getAttribute("data-state"), "down");
	assert.equal(await page.locator(".patch[data-batch='2']").getAttribute("data-state"), "making");
	await press(page, "Batch 1 is spread");
	await press(page, "Leave batch 3 out");
	await page.locator(".patch[data-batch='3'][data-state=left-out]").waitFor();
	await press(page, "Take back the last tap");
	await page.locator(".patch[data-batch='3'][data-state=to-come]").waitFor();
	await press(page, "Start batch 3");
	await page.locator(".patch[data-batch='3'][data-state=making]").waitFor();
	assert.deepEqual(complaints, []);
	await server.again();
	await page.locator(".day-record summary").click();
	await page.getByLabel("Lot numbers on the bags").fill("A-17");
	await page.getByRole("link", { name: "Leave" }).click();
	await page.locator(".record").waitFor();
	assert.equal(await page.getByLabel("Lot numbers on the bags").inputValue(), "A-17");
	const first = page.locator(".record tr[data-batch='1']");
	assert.match(await first.innerText(), /0:00/);
	assert.equal(await first.getByLabel("Water measured for batch 1").inputValue(), "5 L");
	await page.close();
});

test("a late batch moves the rest at once", async () => {
	const { page } = await demo("day");
	await page.locator(".day-main").click();
	await page.locator("section[aria-label=Next] small").first().waitFor();
	await page.evaluate(() => {
		const real = Date.now;
		const Then = Date;
		globalThis.Date = class extends Then {
			constructor(...given) {
				super(...(given.length > 0 ? given : [real() + 15 * 60_000]));
			}
			static now() {
				return real() + 15 * 60_000;
			}
		};
	});
	await press(page, "Batch 1 is poured");
	await page.locator(".day-edge b").waitFor();
	await page.locator("section[aria-label=Next]", { hasText: "start now" }).waitFor();
	assert.match(await page.locator(".day-edge b").innerText(), /^1[12]:\d\d$/);
	await page.close();
});

test("sound and buzz can be switched off, and stay off", async () => {
	const { page } = await demo("day");
	await press(page, "Sound on");
	await press(page, "Buzz on");
	await page.getByRole("button", { name: "Buzz off" }).waitFor();
	await page.waitForTimeout(400);
	await page.reload();
	await page.getByRole("button", { name: "Sound off" }).waitFor();
	await page.getByRole("button", { name: "Buzz off" }).waitFor();
	await page.close();
});
