// The page starts its engine, keeps to its policy, can be installed, and does everything with no network.
import assert from "node:assert/strict";
import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { atHand, dist, folder, open, serve } from "./harness.mjs";

const { server, browser } = await atHand();

const ready = "[data-engine=ready]";

test("the page starts its engine and breaks no policy", async () => {
	const { page, complaints } = await open(browser.context, server.address);
	await page.waitForSelector(ready);
	assert.deepEqual(complaints, []);
	await page.close();
});

test("the page starts with no network once it was open", async () => {
	const { page, complaints } = await open(browser.context, server.address);
	await page.waitForSelector(ready);
	await page.evaluate(() => navigator.serviceWorker.ready);
	await server.end();
	await page.reload();
	await page.waitForSelector(ready);
	assert.deepEqual(complaints, []);
	await page.close();
	await server.again();
});

test("with no network every page works, those with an engine or a file of their own too", async () => {
	const { page, complaints } = await open(browser.context, server.address);
	page.setDefaultTimeout(60_000);
	await page.waitForSelector(ready);
	await page.evaluate(() => navigator.serviceWorker.ready);
	await server.end();
	await page.reload(); // nothing but the first screen was ever opened with a network
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".band");
	await page.locator(".study-table").first().waitFor(); // by the second engine
	const id = await page.evaluate(() => location.hash.split("/")[2]);
	const pages = {
		[`pour/${id}`]: ".pour-figures",
		[`day/${id}`]: ".day-card",
		[`buy/${id}`]: ".counter-quote",
		[`steps/${id}`]: ".step h1",
		[`sheet/${id}`]: "main.paper svg",
		[`kept/${id}`]: ".kept h1",
		[`counter/${id}`]: ".counter",
		"rules/least_depth": ".cm-content",
		"help/survey-laser": ".help-part",
	};
	for (const [place, shown] of Object.entries(pages)) {
		await page.goto(`${server.address}#/${place}`);
		await page.locator(shown).first().waitFor();
	}
	await page.getByLabel("Language").selectOption("es");
	await page.getByRole("navigation", { name: "Temas de la ayuda" }).waitFor();
	await page.getByLabel("Idioma").selectOption("en");
	assert.deepEqual(complaints, []);
	await page.close();
	await server.again();
});

test("a page and an engine of different builds don't work together, and the page says what to do", async () => {
	const site = folder("mixed");
	cpSync(dist, site, { recursive: true });
	const scripts = readdirSync(site).filter((name) => name.endsWith(".js") && name !== "sw.js");
	const bears = (name) => readFileSync(join(site, name), "utf8").includes(buildName());
	for (const name of scripts.filter(bears)) {
		const file = join(site, name);
		writeFileSync(file, readFileSync(file, "utf8").replaceAll(buildName(), "another build"));
		for (const packed of [".br", ".gz"]) rmSync(file + packed);
	}
	const mixed = await serve(site);
	const { page } = await open(browser.context, mixed.address);
	await page.getByText("The page and its engine are of different versions.").first().waitFor();
	await page.getByText("Reload the page; what was kept is still there.").waitFor();
	await page.close();
	await mixed.end();
});

/** The name of the build, as its service worker's cache bears it. */
const buildName = () => readFileSync(join(dist, "sw.js"), "utf8").match(/"([0-9a-f]{12})"/)[1];

test("the browser offers to install the page", async () => {
	const { page } = await open(browser.context, server.address);
	await page.waitForFunction(() => navigator.serviceWorker.controller);
	const cdp = await browser.context.newCDPSession(page);
	const { errors } = await cdp.send("Page.getAppManifest");
	assert.deepEqual(errors, []);
	const { installabilityErrors } = await cdp.send("Page.getInstallabilityErrors");
	// A profile of a test's counts as a private window, which installs nothing.
	assert.deepEqual(
		installabilityErrors.map((error) => error.errorId).filter((id) => id !== "in-incognito"),
		[],
	);
	await page.close();
});

test("the service worker answers with the policy", async () => {
	const { page } = await open(browser.context, server.address);
	await page.waitForFunction(() => navigator.serviceWorker.controller);
	const policies = await page.evaluate(async () => {
		const names = ["./", ...performance.getEntriesByType("resource").map((entry) => entry.name)];
		return Promise.all(names.map(async (name) => [name, (await fetch(name)).headers.get("Content-Security-Policy")]));
	});
	assert.ok(policies.length > 3);
	for (const [name, policy] of policies)
		assert.match(policy ?? "", /^default-src 'none'; script-src 'self' 'wasm-unsafe-eval'/, name);
	await page.close();
});
