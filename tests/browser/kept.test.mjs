// What the page says of keeping is true: one tab writes a job, the line in the bar says where it stands, earlier states and whole backups come back.
import assert from "node:assert/strict";
import { readFileSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { startEngine } from "./engine.mjs";
import { browse, folder, open, serve } from "./harness.mjs";

let server;
before(async () => {
	server = await serve();
});
after(() => server.end());

/** Runs steps in a browser of their own. */
async function inBrowser(steps) {
	const browser = await browse();
	try {
		await steps(browser.context);
	} finally {
		await browser.end();
	}
}

const named = (page) => page.getByLabel("Name of the job");
const allKept = (page) => page.locator(".bar-kept[data-kept=true]").first().waitFor();
const idOf = (page) => page.evaluate(() => location.hash.split("/")[2]);

async function newJob(page, name) {
	await page.getByRole("button", { name: "Start a new job" }).click();
	await named(page).fill(name);
	await allKept(page);
	return idOf(page);
}

test("a second tab on the same job looks on, says so, and takes over when the first closes", () =>
	inBrowser(async (context) => {
		const { page: first } = await open(context, server.address);
		const id = await newJob(first, "Hall");
		const { page: second } = await open(context, `${server.address}#/job/${id}`);
		await second.getByText("This job is open in another tab or window").waitFor();
		await named(second).pressSequentially(" changed in the second tab");
		await second.getByRole("button", { name: "Add a reading" }).click();
		assert.equal(await named(second).inputValue(), "Hall");
		assert.equal(await second.locator(".readings tbody tr").count(), 0);
		await named(first).fill("Hall, changed in the first tab");
		await allKept(first);
		await second.waitForFunction(() => document.querySelector(".bar-name input").value === "Hall, changed in the first tab");
		await first.close();
		await second.getByText("This job is open in another tab or window").waitFor({ state: "detached" });
		await named(second).fill("Hall, changed in the second tab");
		await allKept(second);
		await second.reload();
		await second.waitForFunction(() => document.querySelector(".bar-name input")?.value === "Hall, changed in the second tab");
		assert.equal(await second.getByText("This job is open in another tab or window").count(), 0);
	}));

test("the browser is asked to keep it once the first change is kept, not before, and its answer is shown", () =>
	inBrowser(async (context) => {
		await context.addInitScript(() => {
			let promised = false;
			globalThis.asked = 0;
			navigator.storage.persisted = async () => promised;
			navigator.storage.persist = async () => {
				globalThis.asked++;
				promised = true;
				return true;
			};
		});
		const { page } = await open(context, server.address);
		await page.getByRole("button", { name: "Open the demo job" }).click();
		await page.waitForSelector(".band");
		await allKept(page);
		assert.equal(await page.evaluate(() => globalThis.asked), 0);
		await named(page).fill("A job of my own");
		await page.waitForFunction(() => globalThis.asked === 1);
		await named(page).fill("A job of my own, changed");
		await allKept(page);
		await page.locator(".bar-kept").click();
		await page.locator("[data-lasting=yes]").waitFor();
		assert.equal(await page.evaluate(() => globalThis.asked), 1);
	}));

test("last kept and last exported stand on every page of a job", () =>
	inBrowser(async (context) => {
		const { page } = await open(context, server.address);
		await page.getByRole("button", { name: "Open the demo job" }).click();
		await page.waitForSelector(".band");
		const id = await idOf(page);
		for (const exported of ["Never exported", "Exported "]) {
			for (const view of ["job", "pour", "day", "buy", "steps", "sheet", "counter", "kept"]) {
				for (const width of [1280, 390]) {
					await page.setViewportSize({ width, height: 800 });
					await page.goto(`${server.address}#/${view}/${id}`);
					const line = page.locator(".bar-kept:visible").first();
					await line.waitFor();
					assert.match(await line.innerText(), /Kept \d/, `${view} ${width}`);
					assert.match(await line.innerText(), new RegExp(exported), `${view} ${width}`);
				}
			}
			const [download] = await Promise.all([
				page.waitForEvent("download"),
				page.getByRole("button", { name: "Save as file" }).click(),
			]);
			assert.equal(JSON.parse(readFileSync(await download.path(), "utf8")).jobs[0].id, id);
			await page.locator(".bar-kept", { hasText: "Exported" }).first().waitFor();
		}
	}));

test("after many changes a person is reminded to save a file, may put it off, and saving ends it", () =>
	inBrowser(async (context) => {
		const page = await context.newPage();
		await page.goto(`${server.address}none`);
		const engine = await startEngine(page);
		const { job } = await engine.have("jobs.new", { units: "metric" });
		await page.evaluate(async (job) => {
			for (let i = 0; i <= 500; i++) await globalThis.testEngine.ask("jobs.keep", { job: { ...job, name: `Hall ${i}` } });
		}, job);
		await page.goto(`${server.address}#/job/${job.id}`);
		const reminder = page.getByText("In no file of yours: 500 changes of this job");
		await reminder.waitFor();
		await page.getByRole("button", { name: "Remind me in a few days" }).click();
		await reminder.waitFor({ state: "detached" });
		await page.reload();
		await page.locator(".bar-kept").first().waitFor();
		assert.equal(await reminder.count(), 0);
		await page.locator(".bar-kept").first().click();
		await page.getByText("500 changes are in no file yet").waitFor();
		const [download] = await Promise.all([
			page.waitForEvent("download"),
			page.getByRole("button", { name: "Save as file" }).click(),
		]);
		assert.match(readFileSync(await download.path(), "utf8"), /Hall 500/);
		await page.getByText("Last exported").waitFor();
		assert.equal(await page.getByText("are in no file yet").count(), 0);
	}));

test("an earlier state of a job can be made its own again, and that can be taken back", () =>
	inBrowser(async (context) => {
		const { page, complaints } = await open(context, server.address);
		await newJob(page, "Before");
		await named(page).fill("After");
		await allKept(page);
		await page.locator(".bar-kept").click();
		await page.locator(".kept-states li").first().waitFor();
		const count = await page.locator(".kept-states li").count();
		await page.locator(".kept-states li").last().getByRole("button", { name: "Go back to this" }).click();
		await page.getByText("The job is as it was").waitFor();
		assert.equal(await named(page).inputValue(), "");
		await page.waitForFunction((n) => document.querySelectorAll(".kept-states li").length === n + 1, count);
		await page.reload();
		await page.locator(".kept-states li").first().getByRole("button", { name: "Go back to this" }).click();
		await page.waitForFunction(() => document.querySelector(".bar-name input").value === "After");
		assert.deepEqual(complaints, []);
	}));

test("everything goes into one file on the page and comes back in an empty browser", async () => {
	let backup;
	await inBrowser(async (context) => {
		const { page } = await open(context, server.address);
		await newJob(page, "Hall");
		const engine = await startEngine(page);
		const { text } = await engine.have("books.shipped");
		await engine.have("books.keep", { id: "mine", title: "My rulebook", text, base: text });
		await engine.have("sheets.keep", { id: "s", kind: "leveller", sheet: { name: "Own", generic: false, values: {} } });
		const { shop } = await engine.have("shop.open");
		await engine.have("shop.keep", { shop: { ...shop, name: "Corner shop" } });
		await page.getByRole("link", { name: "Lowspot, first screen" }).click();
		await page.getByText("Jobs with something in them that is in no file of yours: 1 of 1.").waitFor();
		const [download] = await Promise.all([
			page.waitForEvent("download"),
			page.getByRole("button", { name: "Save everything as one file" }).click(),
		]);
		backup = readFileSync(await download.path());
	});
	await inBrowser(async (context) => {
		const { page, complaints } = await open(context, server.address);
		const file = { name: "all.json", mimeType: "application/json", buffer: backup };
		await page.locator("input[type=file]").setInputFiles(file);
		await page.getByText("1 job taken; here already: 0. Taken: 1 sheet, 1 rulebook. The price list was taken.").waitFor();
		await page.locator(".jobs li", { hasText: "Hall" }).waitFor();
		await page.locator("input[type=file]").setInputFiles(file);
		await page.getByText("0 jobs taken; here already: 1.").waitFor();
		await page.getByRole("link", { name: "Rulebook", exact: true }).click();
		await page.getByText("Your own, kept on this device").waitFor();
		const engine = await startEngine(page);
		assert.equal((await engine.have("shop.open")).shop.name, "Corner shop");
		assert.equal((await engine.have("sheets.list")).sheets[0].sheet.name, "Own");
		assert.deepEqual(complaints, []);
	});
});

test("a full disk is told on the page as long as it lasts; what is on the page stays there and can be saved as a file", () =>
	inBrowser(async (context) => {
		const { page } = await open(context, server.address);
		await newJob(page, "Hall");
		const cdp = await context.newCDPSession(page);
		const origin = new URL(server.address).origin;
		await cdp.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1000 }); // bytes: less than is there
		const told = page.getByRole("alert").filter({ hasText: "Not kept: the browser has no room left for this page." });
		// Chromium asks only every half minute how much room there is.
		for (let edit = 0; edit < 60 && !(await told.isVisible()); edit++) {
			await named(page).fill(`Hall on a full disk ${edit}`);
			await page.waitForTimeout(1000);
		}
		await named(page).fill("Hall on a full disk");
		await told.getByText("Export your jobs to a file, then remove old jobs or free space on the device.").waitFor();
		await page.locator(".bar-kept[data-kept=false]").first().waitFor();
		const saved = async () => {
			const [download] = await Promise.all([
				page.waitForEvent("download"),
				page.getByRole("button", { name: "Save as file" }).click(),
			]);
			return JSON.parse(readFileSync(await download.path(), "utf8")).jobs[0].name;
		};
		await page.locator(".bar-kept").first().click();
		assert.equal(await saved(), "Hall on a full disk");
		assert.equal(await named(page).inputValue(), "Hall on a full disk");
		await told.waitFor();
		await cdp.send("Storage.overrideQuotaForOrigin", { origin });
		await named(page).fill("Hall with room again");
		await allKept(page);
		await told.waitFor({ state: "detached" });
		await page.reload();
		await page.waitForFunction(() => document.querySelector(".bar-name input")?.value === "Hall with room again");
	}));

test("a file that isn't one, nests without end or is too large is refused in words, and what is here is untouched", () =>
	inBrowser(async (context) => {
		const { page } = await open(context, server.address);
		const id = await newJob(page, "Hall");
		const engine = await startEngine(page);
		const before = await engine.have("jobs.open", { id });
		await page.getByRole("link", { name: "Lowspot, first screen" }).click();
		const deep = "[".repeat(5_000_000);
		const job = (parts) => `{"lowspot": 1, "jobs": [{"format": 1, "id": "x", "name": "", "rooms": [${parts}]}]}`;
		const room = `{"readings": {"rows": [${"{},".repeat(260_000)}{}]}}`;
		const refused = {
			"It does not hold jobs of this tool.": "a,b\n1,2",
			"Its brackets are nested too deep.": `{"lowspot": 1, "jobs": ${deep}`,
			"more than 1000 rooms": job(`${"{},".repeat(1000)}{}`),
			"more than 250000 readings in a room": job(room),
		};
		for (const [why, text] of Object.entries(refused)) {
			const file = { name: "stranger.json", mimeType: "application/json", buffer: Buffer.from(text) };
			await page.locator("input[type=file]").setInputFiles(file);
			await page.getByRole("status").filter({ hasText: why }).waitFor({ timeout: 60_000 });
		}
		const huge = join(folder("huge"), "huge.json");
		writeFileSync(huge, "{");
		truncateSync(huge, (64 << 20) + 1);
		await page.locator("input[type=file]").setInputFiles(huge);
		await page.getByText("This file is larger than any job. Choose a job file.").waitFor();
		assert.equal((await engine.have("jobs.list")).jobs.length, 1);
		assert.deepEqual(await engine.have("jobs.open", { id }), before);
	}));
