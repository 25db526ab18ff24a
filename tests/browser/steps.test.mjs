// The homeowner's way: from a blank page to bags, a marked-up floor and what to put right, one question at a time, in a counted number of actions.
import assert from "node:assert/strict";
import { test } from "node:test";
import { atHand, open } from "./harness.mjs";

const { server, browser } = await atHand({ locale: "en-GB" });

/** A person's actions, counted: a tap, a field filled in, a key. */
function counted(page) {
	let actions = 0;
	const act = (work) => {
		actions++;
		return work;
	};
	return {
		tap: (name) => act(page.getByRole("button", { name, exact: true }).first().click()),
		fill: (label, text) => act(page.getByLabel(label, { exact: true }).first().fill(text)),
		press: (key) => act(page.keyboard.press(key)),
		tick: (label) => act(page.getByLabel(label).first().check()),
		actions: () => actions,
	};
}

const title = (page) => page.locator(".step h1");

/** Waits until the question has changed. */
async function next(page, work) {
	const before = await page.locator(".step").getAttribute("data-step");
	await work();
	await page.waitForFunction((id) => document.querySelector(".step")?.dataset.step !== id, before);
}

/** What this homeowner knows: plywood in an old house; nothing of moisture. */
const knows = {
	"deck.kind": "plywood", "deck.absorbency": "normal", "deck.thickness": "21 mm", "deck.sound": "Yes", "floor.disturbed": "No", "room.heated": "No", "room.wet": "Yes",
	"finish.kind": "large tile", "finish.thickness": "12 mm", "crew.people": "2", "crew.mixers": "1", "crew.buckets": "2", "order.confidence": "90 %",
};

async function answerWords(page, hand) {
	for (let i = 0; i < 60; i++) {
		const step = await page.locator(".step").getAttribute("data-step");
		if (step === "result~0") return;
		if (step === "leveller~0") {
			assert.deepEqual(await page.locator(".steps-foot button").allInnerTexts(), ["Next"], "typical values are something, not nothing");
			await next(page, () => hand.tap("Typical values for now"));
			continue;
		}
		const answer = knows[step.split("~")[0]];
		const choice = page.locator(".answers button", { hasText: new RegExp(`^${answer}$`) });
		if (answer === undefined) await next(page, () => hand.tap("Don’t know"));
		else if ((await choice.count()) > 0) await next(page, () => hand.tap(answer));
		else {
			const box = page.locator(".step form input");
			await hand.fill(await page.locator(".step form label").innerText(), answer);
			await box.focus();
			await next(page, () => hand.press("Enter"));
		}
	}
}

const budget = 53; // for a room of 4 m by 3 m with a door: 24 for twelve readings, the rest for the questions that change the plan; three to spare

test(`a homeowner comes from a blank page to the result in at most ${budget} actions`, async () => {
	const { page, complaints } = await open(browser.context, server.address);
	page.setDefaultTimeout(15000);
	await page.waitForSelector("[data-engine=ready]");
	const hand = counted(page);
	await hand.tap("Plan it step by step");
	await title(page).filter({ hasText: "How big is the room?" }).waitFor();
	await hand.fill("Length", "4");
	await hand.fill("Width", "3");
	await page.waitForSelector(".step .wall");
	await next(page, () => hand.tap("Next"));
	await next(page, () => hand.tap("Go on without")); // nothing stands in the room
	await hand.tap("Add a door");
	await hand.fill("Door to", "Hall");
	await hand.fill("From its start", "1");
	await next(page, () => hand.tap("Next"));
	await next(page, () => hand.tap("Go on without")); // no drains
	await next(page, () => hand.tap(/A laser and a staff/));
	await hand.tap(/Use these \d+ spots/);
	const spots = await page.locator(".spot").count();
	assert.ok(spots >= 12, `${spots} spots for 12 m²`);
	for (let i = 0; i < spots; i++) {
		await page.locator(".read-place", { hasText: `Spot ${i + 1} of` }).waitFor();
		await hand.fill(`Reading at spot ${i + 1}`, String(1200 + ((i * 7) % 13)));
		await hand.press("Enter");
	}
	await title(page).filter({ hasText: "What is the deck made of?" }).waitFor();
	await page.locator(".steps-bags", { hasText: /\d+ bags/ }).waitFor();
	await answerWords(page, hand);
	await page.locator(".result-bags").waitFor();
	assert.match(await page.locator(".result-bags").innerText(), /^[1-9]\d*$/);
	assert.ok((await page.locator(".step .band").count()) > 0, "the floor is drawn");
	await page.getByText("Are all gaps", { exact: false }).first().waitFor({ state: "attached" });
	assert.ok((await page.locator(".step .finding").count()) > 0, "what to put right is told");
	assert.match(await page.locator(".shopping").innerText(), /Leveller: \d+ bags/);
	assert.match(await page.locator(".behind").first().innerText(), /Checks that stay open then: \d+\. Of these, might say “Don’t pour”: \d+/, "what nobody checked is told");
	assert.ok(hand.actions() <= budget, `${hand.actions()} actions`);
	assert.deepEqual(complaints, []);
	await page.close();
});

test("the bench and the questions show one job: switching loses nothing, and undo reaches back over the switch", async () => {
	const { page } = await open(browser.context, server.address);
	await page.getByRole("button", { name: "Plan it step by step" }).click();
	await page.getByLabel("Length", { exact: true }).fill("5");
	await page.getByLabel("Width", { exact: true }).fill("2");
	await page.getByRole("link", { name: "See everything" }).click();
	await page.waitForSelector(".bench");
	assert.equal(await page.getByLabel("Length", { exact: true }).first().inputValue(), "5 m");
	await page.getByLabel("Width", { exact: true }).first().fill("2.5 m");
	await page.getByRole("link", { name: "Help", exact: true }).click();
	await page.getByRole("link", { name: "Back to the job" }).click();
	await page.waitForSelector(".bench");
	await page.getByRole("button", { name: "Undo" }).click();
	await page.getByRole("link", { name: "Step by step" }).click();
	await page.waitForSelector(".step");
	await page.getByText("All questions").click();
	await page.getByRole("link", { name: "How big is the room?" }).click();
	assert.equal(await page.getByLabel("Width", { exact: true }).inputValue(), "2 m");
	await page.close();
});

/** Waits until the question's heading has the focus, which it takes once it is painted. */
const headed = (page) => page.waitForFunction(() => document.activeElement?.matches(".step h1"));

test("each question takes the focus to its heading, and the keyboard alone answers it", async () => {
	const { page } = await open(browser.context, server.address);
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".band");
	await page.getByRole("link", { name: "Step by step" }).click();
	await page.waitForSelector(".step");
	await page.getByText("All questions").press("Enter");
	await page.getByRole("link", { name: "Is the deck solid everywhere?" }).first().press("Enter");
	await title(page).filter({ hasText: "Is the deck solid everywhere?" }).waitFor();
	await headed(page);
	const before = await page.locator(".step").getAttribute("data-step");
	await page.keyboard.press("Tab");
	await page.keyboard.press("Enter");
	await page.waitForFunction((id) => document.querySelector(".step")?.dataset.step !== id, before);
	await headed(page);
	await page.goBack();
	await page.waitForFunction((id) => document.querySelector(".step")?.dataset.step === id, before);
	assert.equal(await title(page).innerText(), "Is the deck solid everywhere?");
	await page.close();
});

test("a chapter may be skipped; what stays unchecked is told before and after", async () => {
	const { page } = await open(browser.context, server.address);
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".band");
	await page.getByRole("link", { name: "Step by step" }).click();
	await page.locator(".behind", { hasText: "Before the first bag" }).getByRole("link", { name: /^Go through them/ }).click();
	await page.locator(".steps-skip", { hasText: /Checks that stay open/ }).waitFor();
	await next(page, () => page.getByRole("button", { name: "Skip this chapter" }).click());
	await title(page).filter({ hasText: "What it comes to" }).waitFor();
	await page.close();
});

test("what a person doesn’t know is not asked again, and the result names what nobody checked", async () => {
	const { page } = await open(browser.context, server.address);
	await page.getByRole("button", { name: "Plan it step by step" }).click();
	await page.getByLabel("Length", { exact: true }).fill("4");
	await page.getByLabel("Width", { exact: true }).fill("3");
	await page.getByText("All questions").click();
	await page.getByRole("link", { name: "How warm will the room be?" }).click();
	await title(page).filter({ hasText: "How warm will the room be?" }).waitFor();
	await next(page, () => page.getByRole("button", { name: "Don’t know" }).click());
	await page.getByRole("link", { name: "What it comes to" }).click();
	assert.match(await page.locator(".nobody-checked").textContent(), /Nobody checked: .*Warm enough/);
	await page.close();
});

test("the field sheet prints the room, its spots and blank cells on one page", async () => {
	const { page } = await open(browser.context, server.address);
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".band");
	const address = await page.evaluate(() => location.href.replace("#/job/", "#/sheet/"));
	await page.goto(address);
	await page.waitForSelector(".paper-tables tbody tr");
	assert.equal(await page.locator(".spot").count(), await page.locator(".paper-tables tbody tr").count());
	for (const format of ["A4", "Letter"]) {
		const pdf = (await page.pdf({ format })).toString("latin1");
		assert.equal(pdf.match(/\/Type\s*\/Page\b/g)?.length, 1, `one ${format} page`);
	}
	await page.close();
});

test("help opens at the entry asked for, with no network", async () => {
	const { page, complaints } = await open(browser.context, server.address);
	await page.waitForSelector("[data-engine=ready]");
	await page.evaluate(() => navigator.serviceWorker.ready);
	await server.end();
	await page.goto(`${server.address}#/help/bag`);
	await page.reload();
	await page.waitForFunction(() => document.activeElement?.textContent === "How to read a bag");
	await page.getByLabel("Find a word").fill("drop of water");
	await page.getByText("deck.absorbency").waitFor();
	assert.deepEqual(complaints, []);
	await page.close();
	await server.again();
});
