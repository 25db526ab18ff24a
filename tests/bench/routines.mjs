// The engine's routines in WebAssembly beside scipy's, on the same input and to the same result.
import { strict as assert } from "node:assert";
import { join } from "node:path";
import { compare, ratioRow, short } from "./figures.mjs";
import { bench, buildGo, startChild, startInPage } from "./sides.mjs";
import { root } from "../browser/harness.mjs";

/** Starts the engine's routines, native and in a page. */
export async function startRoutines() {
	const native = startChild(buildGo(root, "./tests/bench/routines"));
	const inPage = await startInPage(buildGo(root, "./tests/bench/routines", true));
	return { native, inPage, end: () => Promise.all([native.end(), inPage.end()]) };
}

/** What scipy does in its place, what is measured, how near the results must come (relative), and how many times as fast the engine is to be. The
 * engine's distances are those as the crow flies, dijkstra's along the grid: by eight neighbours a tenth too long at most, by four far too long. */
const comparisons = [
	{ name: "plane", reference: "plane", says: "linprog (HiGHS)", what: "finish plane of least volume", size: 2000, unit: "readings", near: 1e-4, wanted: 30 },
	{ name: "triangles", reference: "triangles", says: "Delaunay", what: "Delaunay surface", size: 2000, unit: "readings", near: 1e-9, wanted: 5 },
	{ name: "march", reference: "march", says: "dijkstra, 4 neighbours", what: "walking distance", size: 480, unit: "× 320 nodes", wanted: 4 },
	{ name: "march", reference: "march-slanting", says: "dijkstra, 8 neighbours", what: "walking distance", size: 480, unit: "× 320 nodes", near: 0.1, wanted: 4 },
];

export async function againstScipy({ routines: { inPage } }) {
	const scipy = startChild(process.env.PYTHON || "/usr/bin/python3", join(bench, "scipy_side.py"));
	const rows = [];
	for (const { name, reference, says, what, size, unit, near, wanted } of comparisons) {
		const { input } = await inPage.ask({ name, size, times: 0 });
		await scipy.ask({ name: reference, input, times: 1 });
		const [here, there] = await compare(
			(times) => inPage.ask({ name, size, times }),
			(times) => scipy.ask({ name: reference, times }),
		);
		if (near) assert.ok(Math.abs(here.result / there.result - 1) < near, `${what}: ${here.result} here, ${there.result} by scipy`);
		rows.push(ratioRow(`${what}, ${size} ${unit}`, `${short(here.ms)} ms`, `${short(there.ms)} ms ${says}`, "faster", there.ratio, wanted));
	}
	scipy.end();
	return rows;
}

/** Order and clock against a bound in milliseconds. */
export async function pourTimes({ routines: { inPage, native } }) {
	const rows = [];
	for (const [name, size, what] of [["pour", 60, "order and clock, 60 m² hall"], ["pour-round", 58, "order and clock, 58 m², two arms, island"]]) {
		const [here, there] = await compare(
			(times) => inPage.ask({ name, size, times }),
			(times) => native.ask({ name, size, times }),
		);
		assert.equal(here.result, there.result, what);
		rows.push([what, `${short(here.ms)} ms`, `${short(there.ms)} ms native`, `${short(1 / there.ratio)} ×`, "< 50 ms", here.ms < 50 ? "kept" : "missed"]);
	}
	return rows;
}
