// The strict policy: nothing that is built needs more, and page, worker and service worker stand under it, also on a host that sends no headers.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join } from "node:path";
import { test } from "node:test";
import { browse, dist, open, root, serve } from "../browser/harness.mjs";

const policy = readFileSync(join(root, "site/serve/policy.txt"), "utf8").trim();
const page = readFileSync(join(dist, "index.html"), "utf8");
const scripts = readdirSync(dist).filter((name) => name.endsWith(".js"));
const ready = "[data-engine=ready]";

test("the policy allows nothing but the page's own files", () => {
	const rules = Object.fromEntries(policy.split("; ").map((rule) => [rule.split(" ")[0], rule.split(" ").slice(1).join(" ")]));
	assert.equal(rules["default-src"], "'none'");
	assert.equal(rules["script-src"], "'self' 'wasm-unsafe-eval'");
	for (const [kind, from] of Object.entries(rules)) {
		const allowed = kind === "script-src" ? /^'self' 'wasm-unsafe-eval'$/ : kind === "img-src" ? /^'self' blob:$/ : /^'(self|none)'$/;
		assert.match(from, allowed, kind);
	}
	for (const kind of ["worker-src", "style-src", "connect-src", "manifest-src", "base-uri", "form-action"]) assert.ok(rules[kind], kind);
});

test("the page carries the policy and has no inline script, style or handler", () => {
	assert.ok(page.includes(`http-equiv="Content-Security-Policy" content="${policy}"`));
	assert.ok(page.indexOf("Content-Security-Policy") < page.indexOf("<script"), "it stands before what it governs");
	assert.doesNotMatch(page, /<script(?![^>]*\ssrc=)|<style|\sstyle=|\son\w+=|javascript:/i);
	for (const [, address] of page.matchAll(/(?:src|href)="([^"]*)"/g)) assert.match(address, /^[\w.-]+$/, "its own files only");
});

test("no built script makes code or markup of text, or names another host", () => {
	assert.ok(scripts.length > 4);
	for (const name of scripts) {
		const text = readFileSync(join(dist, name), "utf8");
		assert.doesNotMatch(text, /\beval\(|new Function\b|Function\("|setTimeout\("|document\.write|importScripts|javascript:/, name);
		// The view library knows innerHTML for those who ask for it; nobody here does, see below.
		const others = [...text.matchAll(/\b(?:https?|wss?):\/\/[\w.-]+/g)].map(([address]) => address);
		assert.deepEqual(others.filter((address) => address !== "http://www.w3.org"), [], `${name}: names of namespaces only`);
	}
});

test("no source asks for markup of text", () => {
	const sources = readdirSync(join(root, "site/src"), { recursive: true }).filter((name) => /\.tsx?$/.test(name));
	assert.ok(sources.length > 50);
	for (const name of sources) {
		const text = readFileSync(join(root, "site/src", name), "utf8");
		assert.doesNotMatch(text, /dangerouslySetInnerHTML|\.innerHTML|outerHTML|insertAdjacentHTML|createContextualFragment|srcdoc/, name);
	}
});

/** Tries what the policy forbids, out of reach of the debugger's own rights. Runs in a page or in a worker. */
function tryForbidden() {
	const attempt = (work) => new Promise((resolve) => setTimeout(() => Promise.resolve().then(work).then(() => resolve("done"), () => resolve("refused"))));
	return Promise.all([attempt(() => (0, eval)("1")), attempt(() => new Function("return 1")()), attempt(() => fetch("http://127.0.0.1:9/", { mode: "no-cors" })), attempt(() => import("data:text/javascript,1"))]);
}
const allRefused = ["refused", "refused", "refused", "refused"];

/** The page's answers, and those of every worker that it has started. */
async function answers(page) {
	const workers = page.workers().filter((worker) => /worker-\w+\.js$/.test(worker.url()));
	assert.ok(workers.length > 0, "the engine runs in a worker");
	return Promise.all([page, ...workers].map((one) => one.evaluate(tryForbidden)));
}

test("page, worker and service worker refuse what the policy forbids", async (t) => {
	const server = await serve();
	t.after(() => server.end());
	const browser = await browse();
	t.after(() => browser.end());
	const { page } = await open(browser.context, server.address);
	await page.waitForSelector(ready);
	for (const given of await answers(page)) assert.deepEqual(given, allRefused);
	await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
	const [serviceWorker] = browser.context.serviceWorkers();
	assert.deepEqual((await serviceWorker.evaluate(tryForbidden)).slice(0, 3), allRefused.slice(0, 3));
	for (const name of readdirSync(dist).filter((name) => !/\.(br|gz)$/.test(name))) {
		const { headers } = await fetch(`${server.address}${name}`);
		assert.equal(headers.get("Content-Security-Policy"), `${policy}; frame-ancestors 'none'`, name);
	}
});

test("on a host that sends no headers the page keeps the policy, and its workers do once the service worker serves them", async (t) => {
	const types = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css", ".svg": "image/svg+xml", ".webmanifest": "application/manifest+json" };
	const plain = createServer((request, response) => {
		const name = new URL(request.url, "http://host").pathname.slice(1) || "index.html";
		const known = readdirSync(dist).includes(name);
		response.writeHead(known ? 200 : 404, { "Content-Type": types[extname(name)] ?? "application/octet-stream" });
		response.end(known ? readFileSync(join(dist, name)) : "");
	});
	await new Promise((resolve) => plain.listen(0, "127.0.0.1", resolve));
	t.after(() => plain.close());
	const browser = await browse();
	t.after(() => browser.end());
	const { page } = await open(browser.context, `http://127.0.0.1:${plain.address().port}/`);
	await page.waitForSelector(ready);
	assert.deepEqual(await page.evaluate(tryForbidden), allRefused);
	await page.waitForFunction(() => navigator.serviceWorker.controller);
	await page.reload();
	await page.waitForSelector(ready);
	for (const given of await answers(page)) assert.deepEqual(given, allRefused);
	await page.close();
});
