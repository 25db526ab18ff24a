// Measures what the tool promises, each figure beside its reference in one run, and writes the tables to the screen and to tests/artefacts/bench.md.
import { mkdirSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";
import { root } from "../browser/harness.mjs";
import { quick, rounds, table } from "./figures.mjs";
import { growthByJobs, growthByReadings, growthByRooms, growthByRules } from "./growth.mjs";
import { planTimes } from "./plan.mjs";
import { restartTimes } from "./restart.mjs";
import { againstScipy, pourTimes, startRoutines } from "./routines.mjs";
import { rulesTimes, startRules } from "./rules.mjs";
import { startInWorker } from "./sides.mjs";
import { startTimes } from "./start.mjs";

process.setMaxListeners(0); // each browser's folder is removed when all ends
const sides = { routines: await startRoutines(), rules: await startRules(), engine: await startInWorker() };
const heading = `Measured ${new Date().toISOString().slice(0, 10)} on ${cpus().length} × ${cpus()[0].model.trim()}, Node ${process.versions.node}, in ${rounds} interleaved rounds.
Times are the processor's, one thread a side; a start, and what waits for a disk, is by the clock on the wall. A ratio is the median of the rounds' own.`;
// Parts named on the command line are measured alone.
const wanted = (part) => process.argv.length < 3 || process.argv.includes(part.name);

async function measured() {
	const ratios = [];
	for (const part of [planTimes, againstScipy, pourTimes, rulesTimes, startTimes, restartTimes].filter(wanted)) {
		const rows = await part(sides);
		for (const row of rows) console.log(row.join(" · "));
		ratios.push(...rows);
	}
	const tables = [table(["measured", "here", "reference", "ratio", "wanted", ""], ratios)];
	for (const part of [growthByReadings, growthByRooms, growthByRules, growthByJobs].filter(wanted)) {
		tables.push(await part(sides));
		console.log(`\n${tables.at(-1)}`);
	}
	return tables;
}

try {
	const parts = [heading, ...(await measured())];
	if (quick) parts.unshift("A quick look: one round each, nothing warm. These figures count for nothing.");
	console.log(`\n${parts.join("\n\n")}`);
	mkdirSync(join(root, "tests/artefacts"), { recursive: true });
	writeFileSync(join(root, "tests/artefacts/bench.md"), `${parts.join("\n\n")}\n`);
} finally {
	await Promise.allSettled(Object.values(sides).map((side) => side.end()));
}
process.exit(0);
