// How soon a fresh engine works in the place of one that failed: by the clock on the wall, in the page that had the first, since a person waits for it.
import { startEngine } from "../browser/engine.mjs";
import { median, quick, short } from "./figures.mjs";

const wanted = 1000; // ms

export async function restartTimes({ routines, engine }) {
	const { input: job } = await routines.native.ask({ name: "plan-demo", size: 0, times: 0 });
	await engine.have("vocabulary"); // the one that fails has worked
	const { page } = engine;
	const answered = [];
	const planned = [];
	for (let i = 0; i < (quick ? 1 : 10); i++) {
		const start = await page.evaluate(() => {
			window.testEngine.end();
			return performance.now();
		});
		const fresh = await startEngine(page);
		const now = () => page.evaluate(() => performance.now());
		await fresh.have("vocabulary");
		answered.push((await now()) - start);
		await fresh.have("plan", { job });
		planned.push((await now()) - start);
	}
	return [row("an engine ended, a fresh one answers", answered), row("… and has the demo job's plan", planned)];
}

function row(what, taken) {
	const middle = median(taken);
	return [what, `${short(middle)} ms`, `longest ${short(Math.max(...taken))} ms`, "", `< ${wanted} ms`, middle < wanted ? "kept" : "missed"];
}
