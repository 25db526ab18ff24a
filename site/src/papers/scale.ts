// Drawing scales for paper: which one a floor is drawn at, how large it then is, and the bar that shows whether the printer kept to it.
import type { Point } from "../engine/contract";
import { bounds } from "../map/view";

export type Scale = { denominator: number; text: string };

/** A bar under the drawing: metres of floor, in how many parts, and what stands at its end. */
export type ScaleBar = { length: number; parts: number; text: string };

/** CSS pixels a millimetre of paper. */
export const pixels = 96 / 25.4;

const foot = 0.3048;

const metric: Scale[] = [10, 20, 25, 50, 100, 200, 500, 1000].map((n) => ({ denominator: n, text: `1:${n}` }));

// As architects' rules have them.
const customary: Scale[] = [
	{ denominator: 12, text: "1 in = 1 ft (1:12)" },
	{ denominator: 16, text: "3/4 in = 1 ft (1:16)" },
	{ denominator: 24, text: "1/2 in = 1 ft (1:24)" },
	{ denominator: 32, text: "3/8 in = 1 ft (1:32)" },
	{ denominator: 48, text: "1/4 in = 1 ft (1:48)" },
	{ denominator: 96, text: "1/8 in = 1 ft (1:96)" },
	{ denominator: 192, text: "1/16 in = 1 ft (1:192)" },
	{ denominator: 384, text: "1/32 in = 1 ft (1:384)" },
	{ denominator: 1200, text: "1 in = 100 ft (1:1200)" },
];

/** What the narrower and the lower of A4 and Letter leave for a drawing within their margins and under its head, mm. */
export const most = { width: 186, height: 165 };

/** Paper kept free round the floor for what is written outside its walls, mm. */
export const around = 8;

export type Extent = { left: number; below: number; width: number; height: number };

export function extentOf(spots: Point[]): Extent {
	const { low, high } = bounds(spots);
	return { left: low.x, below: low.y, width: high.x - low.x, height: high.y - low.y };
}

/** The largest of the usual scales at which a floor fits the paper; undefined where none does. */
export function scaleFor(extent: Extent, us: boolean): Scale | undefined {
	return (us ? customary : metric).find(
		({ denominator }) =>
			sizeOn(extent.width, denominator) <= most.width && sizeOn(extent.height, denominator) <= most.height,
	);
}

/** What so many metres of floor take on paper with what is written round them, mm. */
export function sizeOn(metres: number, denominator: number): number {
	return (1000 * metres) / denominator + 2 * around;
}

const metricBars: ScaleBar[] = [0.5, 1, 2, 5, 10, 20, 50, 100].map((m) => ({
	length: m,
	parts: String(m).startsWith("2") ? 4 : 5,
	text: `${m} m`,
}));

const customaryBars: ScaleBar[] = [1, 2, 5, 10, 20, 50, 100, 200].map((ft) => ({
	length: ft * foot,
	parts: ft <= 2 ? 4 : 5,
	text: `${ft} ft`,
}));

/** The longest of the round bars that is no longer than a hand is wide, 100 mm. */
export function barFor(scale: Scale, us: boolean): ScaleBar {
	const bars = us ? customaryBars : metricBars;
	const fits = bars.filter((bar) => (1000 * bar.length) / scale.denominator <= 100);
	return fits.at(-1) ?? (bars[0] as ScaleBar);
}
