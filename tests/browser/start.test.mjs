// The page starts its engine, keeps to its policy, can be installed, and starts again with no network.
import assert from "node:assert/strict";
import { test } from "node:test";
import { atHand, open } from "./harness.mjs";

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
