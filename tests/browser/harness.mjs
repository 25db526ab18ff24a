// What every browser test stands on: a server on a free port, a Chromium with an empty profile, a page whose every complaint is collected.
import { spawn } from "node:child_process";
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { createInterface } from "node:readline";
import { after } from "node:test";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";

export const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

/** A folder of the tests' own, removed when they end. */
export function folder(name) {
	const made = mkdtempSync(join(tmpdir(), `lowspot-${name}-`));
	process.on("exit", () => rmSync(made, { recursive: true, force: true, maxRetries: 5 }));
	return made;
}

/** The built page, copied, so that a build meanwhile doesn't change it under a running test. */
export const dist = folder("dist");
cpSync(join(root, "site/dist"), dist, { recursive: true });

const flags = [
	"--no-sandbox",
	"--disable-gpu",
	"--disable-quic",
	"--no-first-run",
	"--disable-background-networking",
	"--disable-component-update",
	"--disable-sync",
];

/** Serves a built page. Gives its address, what ends it, and what starts it again at the same address. */
export async function serve(site = dist) {
	const program = await builtServer();
	let child;
	const start = (port) => {
		child = spawn(program, ["-dir", site, "-port", port], { stdio: ["ignore", "pipe", "inherit"] });
		return new Promise((resolve, reject) => {
			createInterface({ input: child.stdout }).on("line", (line) => resolve(line.match(/http:\S+/)[0]));
			child.on("exit", (code) => reject(new Error(`the server ended (${code})`)));
		});
	};
	const address = await start("0");
	const runs = () => child.exitCode === null && child.signalCode === null;
	const end = () => new Promise((resolve) => (runs() ? child.on("exit", resolve).kill() : resolve()));
	return { address, end, again: () => start(new URL(address).port) };
}

let server;

/** Builds the server once a run: "go run" would leave it running when ended. */
function builtServer() {
	server ??= new Promise((resolve, reject) => {
		const program = join(folder("serve"), "serve");
		const build = spawn("go", ["build", "-o", program, "./site/serve"], { cwd: root, stdio: "inherit" });
		build.on("exit", (code) => (code === 0 ? resolve(program) : reject(new Error("the server does not build"))));
	});
	return server;
}

/** Opens a browser on a profile: an empty one unless one is given. */
export async function browse(options = {}, profile = folder("profile")) {
	const executablePath = process.env.CHROMIUM || "/usr/bin/chromium";
	const context = await chromium.launchPersistentContext(profile, {
		executablePath,
		headless: true,
		args: flags,
		...options,
	});
	return { context, end: () => context.close() };
}

/** A server and a browser for all the tests of a file, ended after the last of them. */
export async function atHand(options) {
	const [server, browser] = [await serve(), await browse(options)];
	after(async () => {
		await browser.end();
		await server.end();
	});
	return { server, browser };
}

/** Opens a page and collects what goes wrong in it: errors, failed requests, breaches of the policy. */
export async function open(context, address) {
	const page = await context.newPage();
	const complaints = [];
	await page.addInitScript(() => {
		addEventListener("securitypolicyviolation", (event) =>
			console.error(`policy: ${event.violatedDirective} ${event.blockedURI}`),
		);
	});
	page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
	page.on("pageerror", (error) => complaints.push(String(error)));
	page.on("requestfailed", (request) => {
		const error = request.failure()?.errorText;
		// A page that is left while the second engine is still being fetched breaks that off; nobody misses it.
		if (error !== "net::ERR_ABORTED") complaints.push(`${request.url()} ${error}`);
	});
	page.on("request", (request) => {
		if (!request.url().startsWith(new URL(address).origin) && !request.url().startsWith("blob:"))
			complaints.push(`asked ${request.url()}`);
	});
	await page.goto(address);
	return { page, complaints };
}
