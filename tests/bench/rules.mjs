// Eighty heavy rules on the engine's machine, on CEL's and on a JavaScript interpreter's, all written in Go: native, and in WebAssembly in one page.
import { strict as assert } from "node:assert";
import { join } from "node:path";
import { compare, short } from "./figures.mjs";
import { bench, buildGo, startChild, startInPage } from "./sides.mjs";

const module = join(bench, "rules");

export async function startRules() {
	const native = startChild(buildGo(module, "."));
	const inPage = await startInPage(buildGo(module, ".", true));
	return { native, inPage, end: () => Promise.all([native.end(), inPage.end()]) };
}

export async function rulesTimes({ rules }) {
	const rows = [];
	for (const [where, side, bound] of [["native", rules.native], ["WebAssembly", rules.inPage, 1]]) {
		const run = (name) => (times) => side.ask({ name, size: 80, times });
		const [here, cel, goja] = await compare(run("lowspot"), run("cel"), run("goja"));
		for (const other of [cel, goja]) assert.ok(Math.abs(here.result - other.result) < 1e-9, "the same rules");
		for (const [name, other, wanted] of [["cel-go", cel, bound], ["goja", goja]])
			rows.push([`80 heavy rules, ${where}`, `${short(here.ms)} ms`, `${short(other.ms)} ms ${name}`, `${short(1 / other.ratio)} ×`, wanted ? "< 1 ms" : "", wanted ? (here.ms < wanted ? "kept" : "missed") : ""]);
	}
	return rows;
}
