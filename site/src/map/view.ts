// Where the map looks: metres in plan to pixels on the board, y upwards in plan and downwards on the board.
import type { Point } from "../engine/contract";

export type View = { scale: number; x: number; y: number }; // pixels a metre; the plan spot at the board's middle

export type Board = { width: number; height: number };

const least = 2;
const most = 4000;

/** The lowest and the highest x and y of some spots. */
export function bounds(spots: Point[]): { low: Point; high: Point } {
	const xs = spots.map((p) => p.x);
	const ys = spots.map((p) => p.y);
	return { low: { x: Math.min(...xs), y: Math.min(...ys) }, high: { x: Math.max(...xs), y: Math.max(...ys) } };
}

/** The middle of some spots' bounds. */
export function middleOf(spots: Point[]): Point {
	const { low, high } = bounds(spots);
	return { x: (low.x + high.x) / 2, y: (low.y + high.y) / 2 };
}

/** Fits some spots onto the board with room for labels. */
export function fit(spots: Point[], board: Board): View {
	const { low, high } = bounds(spots);
	const margin = Math.min(48, board.width / 8, board.height / 8);
	const scale = Math.min(
		(board.width - 2 * margin) / Math.max(high.x - low.x, 0.1),
		(board.height - 2 * margin) / Math.max(high.y - low.y, 0.1),
	);
	return { scale: bound(scale), ...middleOf(spots) };
}

function bound(scale: number): number {
	return Math.min(most, Math.max(least, scale));
}

export function toBoard(p: Point, view: View, board: Board): Point {
	return { x: board.width / 2 + (p.x - view.x) * view.scale, y: board.height / 2 - (p.y - view.y) * view.scale };
}

export function toPlan(p: Point, view: View, board: Board): Point {
	return { x: view.x + (p.x - board.width / 2) / view.scale, y: view.y - (p.y - board.height / 2) / view.scale };
}

/** Zooms about a spot on the board, which stays where it is. */
export function zoom(view: View, by: number, at: Point, board: Board): View {
	const held = toPlan(at, view, board);
	const scale = bound(view.scale * by);
	return { scale, x: held.x - (at.x - board.width / 2) / scale, y: held.y + (at.y - board.height / 2) / scale };
}

export function pan(view: View, dx: number, dy: number): View {
	return { ...view, x: view.x - dx / view.scale, y: view.y + dy / view.scale };
}

/** An SVG path through plan spots in millimetres, which keeps the numbers short; the group's transform does the rest. */
export function path(lines: Point[][], closed: boolean): string {
	return lines.map((line) => `M${line.map((p) => `${mm(p.x)} ${mm(-p.y)}`).join("L")}${closed ? "Z" : ""}`).join("");
}

function mm(metres: number): string {
	return (Math.round(metres * 10000) / 10).toString();
}
