// What keeps its size on the screen: dots, marks and words.
import type { Depths, Point, RoomPlan } from "../engine/contract";
import { layers } from "../state/study";
import { said, t } from "../words/words";
import { type DrawingProps, depthShown } from "./drawn";
import type { Placed } from "./labels";

type Placing = { at: (p: Point) => Point };

export function Marks(props: DrawingProps & Placing) {
	const { room, picked, problemAt, line, cursor, view, at } = props;
	const depths = room.pour?.depths;
	return (
		<g>
			{room.penetrations.map((p) => (
				<circle key={p.id} class="penetration" cx={at(p.at).x} cy={at(p.at).y} r={Math.max(6, p.radius * view.scale)} />
			))}
			{layers.value.has("readings") && <Readings room={room} picked={picked} at={at} />}
			{depths && depthShown(props) && <Extremes depths={depths} at={at} />}
			{problemAt && <circle class="mark-problem" cx={at(problemAt).x} cy={at(problemAt).y} r={14} />}
			{line && <SectionLine from={at(line.from)} to={at(line.to)} />}
			{cursor && <Crosshair at={at(cursor)} />}
		</g>
	);
}

function Readings({ room, picked, at }: { room: RoomPlan; picked: number | null } & Placing) {
	return (
		<>
			{room.readings.map((reading) => (
				<circle
					key={reading.row}
					class={`reading-dot${reading.row === picked ? " picked" : ""}`}
					cx={at(reading.at).x}
					cy={at(reading.at).y}
					r={reading.row === picked ? 8 : 4.5}
				>
					<title>{t("Pour {depth} deep here", { depth: said(reading.depth) })}</title>
				</circle>
			))}
		</>
	);
}

/** The thinnest spot of the pour, and the deepest. */
export function Extremes({ depths, at }: { depths: Depths } & Placing) {
	return (
		<>
			<path class="mark-high" d={triangle(at(depths.leastAt), -1)} />
			<path class="mark-low" d={triangle(at(depths.greatestAt), 1)} />
		</>
	);
}

/** A triangle that points up (−1) or down (1). */
export function triangle({ x, y }: Point, way: number, size = 9): string {
	const base = y - (size - 2) * way;
	return `M${x - size} ${base}L${x} ${y + size * way}L${x + size} ${base}Z`;
}

/** Words in the places that were found for them. */
export function Words({ words }: { words: Placed[] }) {
	return (
		<>
			{words.map((word) => (
				<text
					key={word.key}
					class={`map-text${word.small ? " map-text-small" : ""}${word.tone ? ` ${word.tone}` : ""}`}
					x={word.at.x}
					y={word.at.y + 4}
					text-anchor={word.at.anchor}
					transform={word.angle ? `rotate(${word.angle} ${word.at.x} ${word.at.y})` : undefined}
				>
					{word.text}
				</text>
			))}
		</>
	);
}

function SectionLine({ from, to }: { from: Point; to: Point }) {
	const length = Math.max(1, Math.hypot(to.x - from.x, to.y - from.y));
	const [ux, uy] = [(7 * (to.x - from.x)) / length, (7 * (to.y - from.y)) / length];
	const tick = (p: Point) => `M${p.x - uy} ${p.y + ux}L${p.x + uy} ${p.y - ux}`;
	return (
		<g class="cut">
			<path class="cut-under" d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
			<path class="cut-line" d={`M${from.x} ${from.y}L${to.x} ${to.y}${tick(from)}${tick(to)}`} />
		</g>
	);
}

function Crosshair({ at: { x, y } }: { at: Point }) {
	const arms = `M${x - 18} ${y}H${x - 4}M${x + 4} ${y}H${x + 18}M${x} ${y - 18}V${y - 4}M${x} ${y + 4}V${y + 18}`;
	return (
		<g class="crosshair">
			<path class="crosshair-under" d={arms} />
			<path class="crosshair-line" d={arms} />
		</g>
	);
}

export function turnsLeft(ring: Point[]): boolean {
	let sum = 0;
	ring.forEach((p, i) => {
		const q = ring[(i + 1) % ring.length] ?? p;
		sum += p.x * q.y - q.x * p.y;
	});
	return sum > 0;
}
