// The plan in Chromium beside the plan native, by readings: interleaved rounds on one machine, and the median of the rounds' ratios. Machines
// are noisy; trust the ratios. "make bench" writes the table.
import { execFileSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startEngine } from "../browser/engine.mjs";
import { browse, open, root, serve } from "../browser/harness.mjs";

const rounds = 4;
const folder = mkdtempSync(join(tmpdir(), "lowspot-bench-"));
const native = join(folder, "native");
execFileSync("go", ["build", "-o", native, "./tests/bench/native"], { cwd: root, stdio: "inherit" });
const server = await serve();
const browser = await browse();
const { page } = await open(browser.context, server.address);
await startEngine(page);

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

console.log("| readings | native, ms | Chromium, ms | ratio |\n|---|---|---|---|");
for (const readings of [20, 200, 2000, 20000]) {
	const text = execFileSync(native, ["-job", String(readings)], { encoding: "utf8", maxBuffer: 1 << 28 });
	const file = join(folder, "job.json");
	writeFileSync(file, text);
	const times = readings > 5000 ? 2 : 5;
	const seen = { native: [], browser: [], ratio: [] };
	await inPage(text, 2);
	for (let round = 0; round < rounds; round++) {
		const outside = median(execFileSync(native, [file, String(times)], { encoding: "utf8" }).trim().split("\n").map((line) => Number(line.split(" ")[0])));
		const inside = median(await inPage(text, times));
		seen.native.push(outside);
		seen.browser.push(inside);
		seen.ratio.push(inside / outside);
	}
	console.log(`| ${readings} | ${median(seen.native).toFixed(1)} | ${median(seen.browser).toFixed(1)} | ${median(seen.ratio).toFixed(2)} |`);
}
await browser.end();
await server.end();
process.exit(0);

/** Times plans in the page's own engine, from the message sent to the reply come. */
function inPage(text, times) {
	return page.evaluate(
		async ([text, times]) => {
			const job = JSON.parse(text);
			const taken = [];
			for (let i = 0; i < times; i++) {
				const start = performance.now();
				const reply = await window.testEngine.ask("plan", { job });
				if (!reply.ok) throw new Error(reply.error.message);
				taken.push(performance.now() - start);
			}
			return taken;
		},
		[text, times],
	);
}
