// What is made of the times: rounds in which the sides take turns, the median of the rounds' ratios, how steeply a cost grows, and tables.

/** A quick look: one round, small sizes. It shows that everything runs; its figures count for little. */
export const quick = Boolean(process.env.QUICK);
export const rounds = quick ? 1 : 4;

const span = quick ? 5 : 1000; // milliseconds of runs in a sample, at least: the browser tells all of a page's threads to ten
const warming = quick ? 0 : 10_000; // milliseconds of runs before any counts: a browser makes its best code only of what has run a hundred times

export const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** Warms a side up and tells how many runs fill a sample. */
async function runsFor(side) {
	for (let [times, spent] = [1, 0]; ; ) {
		const { ms } = await side(times);
		spent += ms;
		if (ms < span) times *= 2;
		else if (spent >= warming) return Math.ceil((span * times) / ms);
	}
}

/** Lets the sides take turns. Each is a function that runs so many times and gives { ms, result }. Gives each side's median milliseconds of one
 * run and last result, and for each side after the first the median of its rounds' ratios to the first. */
export async function compare(...sides) {
	const times = [];
	for (const side of sides) times.push(await runsFor(side));
	const seen = sides.map(() => ({ ms: [], ratio: [], result: 0 }));
	for (let round = 0; round < rounds; round++) {
		for (const [i, side] of sides.entries()) {
			const { ms, result } = await side(times[i]);
			seen[i].ms.push(ms / times[i]);
			seen[i].result = result;
		}
		for (const one of seen) one.ratio.push(one.ms[round] / seen[0].ms[round]);
	}
	return seen.map(({ ms, ratio, result }) => ({ ms: median(ms), ratio: median(ratio), result }));
}

/** The exponent of the power of the size by which the cost grows: the slope of a straight line through the logarithms. */
export function growth(sizes, costs) {
	const [x, y] = [sizes.map(Math.log), costs.map(Math.log)];
	const mean = (values) => values.reduce((a, b) => a + b, 0) / values.length;
	const [mx, my] = [mean(x), mean(y)];
	const along = x.map((v, i) => (v - mx) * (y[i] - my)).reduce((a, b) => a + b, 0);
	return along / x.map((v) => (v - mx) ** 2).reduce((a, b) => a + b, 0);
}

/** Three figures that count. */
export function short(value) {
	if (value >= 100) return value.toFixed(0);
	return value >= 10 ? value.toFixed(1) : value >= 1 ? value.toFixed(2) : value.toPrecision(2);
}

export function table(head, rows) {
	const line = (cells) => `| ${cells.join(" | ")} |`;
	return [line(head), line(head.map(() => "---")), ...rows.map(line)].join("\n");
}

/** A line of the table of ratios. The ratio is how many times as fast the engine is as the reference ("faster"), or how many times as much it
 * takes ("more"); wanted is its bound. */
export function ratioRow(what, here, reference, sense, ratio, wanted) {
	const kept = sense === "faster" ? ratio >= wanted : ratio <= wanted;
	const bound = wanted === undefined ? "" : `${sense === "faster" ? "≥" : "≤"} ${wanted}`;
	return [what, here, reference, `${short(ratio)} ×`, bound, bound && (kept ? "kept" : "missed")];
}
