// Outlines that aren't a floor yet: one being drawn corner by corner, and one that can't be.
import type { Point, RoomPlan } from "../engine/contract";
import { number, t } from "../words/words";
import { type Board, toBoard, toPlan, type View } from "./view";

type SketchProps = { view: View; size: Board };

/** An outline being drawn, on a grid of half a metre. */
export function Sketch({ corners, view, size }: SketchProps & { corners: Point[] }) {
	const at = corners.map((corner) => toBoard(corner, view, size));
	const low = toPlan({ x: 0, y: size.height }, view, size);
	const high = toPlan({ x: size.width, y: 0 }, view, size);
	const lines: Point[][] = [];
	for (let x = Math.ceil(low.x * 2) / 2; x < high.x; x += 0.5)
		lines.push([
			{ x, y: low.y },
			{ x, y: high.y },
		]);
	for (let y = Math.ceil(low.y * 2) / 2; y < high.y; y += 0.5)
		lines.push([
			{ x: low.x, y },
			{ x: high.x, y },
		]);
	const grid = lines.map((line) => line.map((p) => toBoard(p, view, size)));
	return (
		<svg
			viewBox={`0 0 ${size.width} ${size.height}`}
			role="img"
			aria-label={t("{count} corners drawn", { count: corners.length })}
		>
			<path class="sketch-grid" d={grid.map((line) => `M${line.map((p) => `${p.x} ${p.y}`).join("L")}`).join("")} />
			{at.length > 1 && <path class="wall" d={`M${at.map((p) => `${p.x} ${p.y}`).join("L")}`} />}
			{at.map((p, i) => (
				<g key={`${p.x},${p.y},${i}`}>
					<circle class="reading-dot picked" cx={p.x} cy={p.y} r={7} />
					<text class="map-text map-text-small" x={p.x + 14} y={p.y - 8}>
						{`${i + 1}: ${number(corners[i]?.x, 2)}, ${number(corners[i]?.y, 2)} m`}
					</text>
				</g>
			))}
		</svg>
	);
}

/** An outline that can't be, with a ring round the spot where it goes wrong. */
export function Wrong({ room, problemAt, view, size }: SketchProps & { room: RoomPlan; problemAt?: Point }) {
	const at = room.sketch.map((p) => toBoard(p, view, size));
	const spot = problemAt && toBoard(problemAt, view, size);
	return (
		<svg
			viewBox={`0 0 ${size.width} ${size.height}`}
			role="img"
			aria-label={t("An outline that can’t be; the ring marks where.")}
		>
			<path class="wall wrong-wall" d={`M${at.map((p) => `${p.x} ${p.y}`).join("L")}`} />
			{at.slice(0, -1).map((p, i) => (
				<text key={`${p.x},${p.y},${i}`} class="map-text map-text-small" x={p.x + 10} y={p.y - 6} text-anchor="middle">
					{i + 1}
				</text>
			))}
			{spot && <circle class="mark-problem" cx={spot.x} cy={spot.y} r={16} />}
		</svg>
	);
}
