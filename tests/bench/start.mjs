// Size and start of the engine beside an empty Go program's, in the same Chromium. Each start is cold: a browser of its own with an empty profile.
import { execFileSync } from "node:child_process";
import { copyFileSync, cpSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";
import { browse, dist, folder, open, root, serve } from "../browser/harness.mjs";
import { median, quick, ratioRow, short } from "./figures.mjs";
import { bench, buildGo } from "./sides.mjs";

const rounds = quick ? 1 : 6;
const kilobytes = (bytes) => `${short(bytes / 1000)} kB`;

/** The built page with the empty program beside it, and a page that starts nothing of its own. */
function site() {
	const made = folder("bench-start");
	cpSync(dist, made, { recursive: true });
	const goRoot = execFileSync("go", ["env", "GOROOT"], { cwd: root, encoding: "utf8" }).trim();
	copyFileSync(join(goRoot, "lib/wasm/wasm_exec.js"), join(made, "go.js"));
	copyFileSync(join(bench, "empty-worker.js"), join(made, "empty-worker.js"));
	const empty = readFileSync(buildGo(root, "./tests/bench/empty", true));
	writeFileSync(join(made, "empty.wasm.gz"), gzipSync(empty, { level: 9 }));
	// As the build packs the engine.
	const params = { [constants.BROTLI_PARAM_QUALITY]: 9, [constants.BROTLI_PARAM_LGWIN]: 24 };
	writeFileSync(join(made, "empty.wasm.br"), brotliCompressSync(empty, { params }));
	writeFileSync(join(made, "blank.html"), "<!doctype html><title>bench</title>");
	return made;
}

export async function startTimes({ routines }) {
	const made = site();
	const sizeOf = (pattern) => readFileSync(join(made, readdirSync(made).find((name) => pattern.test(name)))).length;
	const [engine, empty] = [sizeOf(/^engine-\w+\.wasm\.br$/), sizeOf(/^empty\.wasm\.br$/)];
	const page = readdirSync(made).filter((name) => /^(index|main|worker|chunk|sw)[-.\w]*\.(html|js|css)\.br$/.test(name));
	const rest = page.map((name) => readFileSync(join(made, name)).length).reduce((a, b) => a + b, 0);
	const rows = [
		ratioRow("size of the engine, brotli", kilobytes(engine), `${kilobytes(empty)} empty Go program`, "more", engine / empty, 3.1),
		ratioRow("… with the page, its styles and workers", kilobytes(engine + rest), `${kilobytes(empty)} empty Go program`, "more", (engine + rest) / empty),
	];
	const { input: job } = await routines.native.ask({ name: "plan-demo", size: 0, times: 0 });
	const worker = readdirSync(made).find((name) => /^worker-\w+\.js$/.test(name));
	const server = await serve(made);
	const seen = { engine: [], empty: [], ratio: [] };
	for (let round = 0; round < rounds; round++) {
		// The order changes round about, so that neither is always the second.
		const order = round % 2 ? ["engine", "empty"] : ["empty", "engine"];
		for (const which of order)
			seen[which].push(await coldStart(server.address, which === "engine" ? firstPlan : firstRun, [worker, job]));
		seen.ratio.push(seen.engine[round] / seen.empty[round]);
	}
	await server.end();
	rows.push(ratioRow("cold start to the first plan", `${short(median(seen.engine))} ms`, `${short(median(seen.empty))} ms empty Go program`, "more", median(seen.ratio), 4.5));
	return rows;
}

async function coldStart(address, start, given) {
	const browser = await browse();
	const { page } = await open(browser.context, `${address}blank.html`);
	const took = await page.evaluate(start, given);
	await browser.end();
	return took;
}

/** From the worker made to the empty program run, milliseconds. */
function firstRun() {
	const start = performance.now();
	const worker = new Worker("empty-worker.js");
	return new Promise((resolve) => {
		worker.onmessage = () => resolve(performance.now() - start);
	});
}

/** From the worker made to the demo job's plan in the page, milliseconds. */
function firstPlan([file, job]) {
	const start = performance.now();
	const worker = new Worker(file);
	worker.postMessage(new TextEncoder().encode(`${JSON.stringify({ id: 1, kind: "plan" })}\n${JSON.stringify({ job })}`));
	return new Promise((resolve, reject) => {
		worker.onmessage = ({ data }) => {
			if (data.kind !== "reply") return;
			const reply = JSON.parse(new TextDecoder().decode(data.bytes));
			if (reply.ok) resolve(performance.now() - start);
			else reject(new Error(reply.error.message));
		};
	});
}
