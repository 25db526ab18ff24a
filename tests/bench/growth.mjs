// How costs grow: the same work at sizes that grow by tens, and the power of the size by which it grows (1: twice the size, twice the
// cost), read off the slope of the logarithms.
import { startEngine } from "../browser/engine.mjs";
import { growth, quick, short, table } from "./figures.mjs";

/** A table: a line a routine with its cost at each size. */
function grown(what, sizes, costs) {
	const row = ([name, ms]) => [name, ...ms.map((one) => `${short(one)} ms`), growth(sizes, ms).toFixed(2)];
	return table([what, ...sizes, "power"], Object.entries(costs).map(row));
}

async function each(sizes, cost) {
	const costs = [];
	for (const size of sizes) costs.push(await cost(size));
	return costs;
}

/** The milliseconds of one run, the least of a few: warm, and rid of what disturbs. */
async function leastOf(ask) {
	let least = Number.POSITIVE_INFINITY;
	let spent = 0;
	for (let times = 1; spent < (quick ? 1 : 300); times *= 2) {
		const { ms } = await ask(times);
		spent += ms;
		least = Math.min(least, ms / times);
	}
	return least;
}

/** A plan by the page's engine, of a job that the native side makes. */
const planned = ({ routines, engine }, name) => async (size) => {
	const { input } = await routines.native.ask({ name, size, times: 0 });
	await engine.ready({ job: input });
	return leastOf((times) => engine.repeat("plan", times));
};

const inside = (side, name) => (size) => leastOf((times) => side.inPage.ask({ name, size, times }));

export async function growthByReadings(sides) {
	const sizes = quick ? [100, 1000] : [100, 1000, 10000, 100000];
	return grown("readings", sizes, {
		"plan, the page's engine": await each(sizes, planned(sides, "plan")),
		"Delaunay surface": await each(sizes, inside(sides.routines, "triangles")),
		"finish plane of least volume": await each(sizes, inside(sides.routines, "plane")),
	});
}

export async function growthByRooms(sides) {
	const sizes = quick ? [1, 10] : [1, 10, 50, 200];
	return grown("rooms of 30 readings", sizes, { "plan, the page's engine": await each(sizes, planned(sides, "rooms")) });
}

export async function growthByRules({ rules }) {
	const sizes = quick ? [10, 80] : [10, 40, 160, 480];
	return grown("heavy rules", sizes, {
		"working them out": await each(sizes, inside(rules, "lowspot")),
		"compiling them": await each(sizes, inside(rules, "compile")),
	});
}

/**
 * Lists, finds, opens and keeps among ever more jobs kept in the browser; by the clock on the wall, since the disk is part of it. The first list
 * is a fresh engine's, which has read nothing yet; the page shows a hundred jobs.
 */
export async function growthByJobs({ engine }) {
	const sizes = quick ? [100, 1000] : [100, 1000, 10000, 100000];
	const { job } = await engine.have("jobs.new", { units: "metric" });
	const costs = { "first list of jobs": [], "list of jobs": [], "jobs found by words": [], "a job opened": [], "a job kept": [] };
	let stored = 0;
	for (const size of sizes) {
		await fill(engine, job, stored, size);
		stored = size;
		costs["first list of jobs"].push(await firstList(engine));
		costs["list of jobs"].push(await wall(engine, "jobs.list", { most: 100 }));
		costs["jobs found by words"].push(await wall(engine, "jobs.list", { find: "job 7", most: 100 }));
		costs["a job opened"].push(await wall(engine, "jobs.open", { id: "stored-7" }));
		costs["a job kept"].push(await wall(engine, "jobs.keep", { job: { ...job, id: "stored-7" } }));
	}
	return grown("stored jobs", sizes, costs);
}

/** Brings jobs in as a person would: from files. */
async function fill(engine, job, from, to) {
	for (let first = from; first < to; first += 5000) {
		await engine.page.evaluate(
			async ([job, first, last]) => {
				const jobs = [];
				for (let i = first; i < last; i++) jobs.push({ ...job, id: `stored-${i}`, name: `Job ${i}` });
				const reply = await window.testEngine.ask("jobs.import", { text: JSON.stringify({ lowspot: 1, jobs }) });
				if (!reply.ok) throw new Error(reply.error.message);
			},
			[job, first, Math.min(to, first + 5000)],
		);
	}
}

async function firstList(engine) {
	const taken = [];
	for (let i = 0; i < (quick ? 1 : 5); i++) {
		await engine.page.evaluate(() => window.testEngine.end());
		const fresh = await startEngine(engine.page);
		await fresh.have("jobs.new", { units: "metric" }); // it has started
		taken.push(await wall(engine, "jobs.list", { most: 100 }, 1));
	}
	return taken.sort((a, b) => a - b)[Math.floor(taken.length / 2)];
}

async function wall(engine, kind, body, times = quick ? 1 : 7) {
	return engine.page.evaluate(
		async ([kind, body, times]) => {
			const taken = [];
			for (let i = 0; i < times; i++) {
				const start = performance.now();
				const reply = await window.testEngine.ask(kind, body);
				if (!reply.ok) throw new Error(reply.error.message);
				taken.push(performance.now() - start);
			}
			return taken.sort((a, b) => a - b)[Math.floor(times / 2)];
		},
		[kind, body, times],
	);
}
