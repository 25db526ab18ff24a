// The sides of a comparison: a program native, the same program in a page of Chromium's, the engine in the page's own worker. Each is asked for so
// many runs and tells the processor's time that they took, one thread a side: what else the machine is doing then counts on neither.
import { execFileSync, spawn } from "node:child_process";
import { copyFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { createInterface } from "node:readline";
import { startEngine } from "../browser/engine.mjs";
import { browse, folder, open, root, serve } from "../browser/harness.mjs";

const work = folder("bench");
export const bench = join(root, "tests/bench");

/** Builds a Go program of a module; for the browser too where asked. */
export function buildGo(module, program, browser = false) {
	const file = join(work, `${basename(join(module, program))}${browser ? ".wasm" : ""}`);
	const env = browser ? { ...process.env, GOOS: "js", GOARCH: "wasm" } : process.env;
	execFileSync("go", ["build", "-trimpath", "-ldflags=-s -w", "-o", file, program], { cwd: module, env, stdio: "inherit" });
	return file;
}

/** A program that answers requests line by line. */
export function startChild(command, ...args) {
	const env = { ...process.env, GOMAXPROCS: "1", OMP_NUM_THREADS: "1", OPENBLAS_NUM_THREADS: "1" };
	const child = spawn(command, args, { stdio: ["pipe", "pipe", "inherit"], env });
	const waiting = [];
	createInterface({ input: child.stdout }).on("line", (line) => waiting.shift().resolve(JSON.parse(line)));
	child.on("exit", (code) => waiting.splice(0).forEach(({ reject }) => reject(new Error(`${command} ended (${code})`))));
	return {
		ask(request) {
			child.stdin.write(`${JSON.stringify(request)}\n`);
			return new Promise((resolve, reject) => waiting.push({ resolve, reject }));
		},
		end: () => child.stdin.end(),
	};
}

/** A Go program in a page of its own, asked by a function of the page's, without messages to and fro. */
export async function startInPage(wasm) {
	const site = folder("bench-page");
	const goRoot = execFileSync("go", ["env", "GOROOT"], { cwd: root, encoding: "utf8" }).trim();
	copyFileSync(join(goRoot, "lib/wasm/wasm_exec.js"), join(site, "go.js"));
	copyFileSync(wasm, join(site, "program.wasm"));
	writeFileSync(join(site, "index.html"), '<!doctype html><title>bench</title><script src="go.js"></script>');
	const server = await serve(site);
	const browser = await browse();
	const { page } = await open(browser.context, server.address);
	await page.evaluate(async () => {
		const go = new Go();
		const { instance } = await WebAssembly.instantiateStreaming(fetch("program.wasm"), go.importObject);
		go.run(instance);
	});
	const used = await processorClock(page, "ThreadTime");
	return {
		async ask(request) {
			const before = await used();
			const reply = JSON.parse(await page.evaluate((text) => window.benchAsk(text), JSON.stringify(request)));
			return { ...reply, ms: (await used()) - before };
		},
		end: () => Promise.all([browser.end(), server.end()]),
	};
}

/** The page's own engine in its worker, asked by messages: the time is that of all of the page's threads, from the message to the reply read. */
export async function startInWorker() {
	const server = await serve();
	const browser = await browse();
	const { page } = await open(browser.context, server.address);
	const engine = await startEngine(page);
	const used = await processorClock(page, "ProcessTime");
	return {
		...engine,
		/** Asks for the same so many times, with the bodies standing ready in the page. */
		async repeat(kind, times) {
			const before = await used();
			await page.evaluate(
				async ([kind, times]) => {
					for (let i = 0; i < times; i++) {
						const reply = await window.testEngine.ask(kind, window.benchBody);
						if (!reply.ok) throw new Error(`${kind}: ${reply.error.message}`);
					}
				},
				[kind, times],
			);
			return { ms: (await used()) - before };
		},
		ready: (body) => page.evaluate((body) => { window.benchBody = body; }, body),
		page,
		end: () => Promise.all([browser.end(), server.end()]),
	};
}

/** The processor's time, in milliseconds, that a page's main thread ("ThreadTime") or all of its threads ("ProcessTime") have used. */
async function processorClock(page, which) {
	const session = await page.context().newCDPSession(page);
	await session.send("Performance.enable");
	return async () => {
		const { metrics } = await session.send("Performance.getMetrics");
		return metrics.find(({ name }) => name === which).value * 1000;
	};
}
