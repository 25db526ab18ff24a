// The floor drawn to scale for paper: batch patches in their order, height indicators with their heads, dams, doors and what comes up through it.
import { useId } from "preact/hooks";
import type { IndicatorStudy, Point, RoomPlan, RoomPour } from "../engine/contract";
import { bandClass } from "../map/drawing";
import { around, beside, boxOf, type Placed, place, type Wanted } from "../map/labels";
import { doorWord, wallBoxes, wallWords } from "../map/marking";
import { Words } from "../map/marks";
import { path, toBoard } from "../map/view";
import { Patch, PatchPatterns } from "../pour/PatchMap";
import { said, t } from "../words/words";
import { extentOf, pixels, type Scale, sizeOn } from "./scale";

type ScaleMapProps = {
	room: RoomPlan;
	pour: RoomPour | undefined; // nothing to pour yet: the depths are drawn
	pins: IndicatorStudy[];
	scale: Scale;
};

export function ScaleMap(props: ScaleMapProps) {
	const { room, pour, pins, scale } = props;
	const extent = extentOf(room.outline.outer);
	const [width, height] = [sizeOn(extent.width, scale.denominator), sizeOn(extent.height, scale.denominator)];
	// Whole pixels: a browser rounds a drawing's size to them, and would stretch what is in it.
	const board = { width: Math.ceil(width * pixels), height: Math.ceil(height * pixels) };
	const view = {
		scale: (1000 * pixels) / scale.denominator,
		x: extent.left + extent.width / 2,
		y: extent.below + extent.height / 2,
	};
	const at = (p: Point) => toBoard(p, view, board);
	const origin = at({ x: 0, y: 0 });
	const words = place(wanted(props, at, view.scale), drawn(props, at), board);
	return (
		<svg
			class="scale-map"
			width={board.width}
			height={board.height}
			viewBox={`0 0 ${board.width} ${board.height}`}
			data-denominator={scale.denominator}
			role="img"
			aria-label={t("Floor of {area}, drawn {scale}", { area: said(room.area.text), scale: scale.text })}
		>
			<g transform={`translate(${origin.x} ${origin.y}) scale(${view.scale / 1000})`}>
				<Ground room={room} pour={pour} />
			</g>
			{room.penetrations.map((p) => (
				<circle key={p.id} class="penetration" cx={at(p.at).x} cy={at(p.at).y} r={Math.max(3, p.radius * view.scale)} />
			))}
			<circle class="scale-origin" cx={origin.x} cy={origin.y} r={4} />
			{pins.map((pin) => (
				<Pin key={`${pin.at.x} ${pin.at.y}`} at={at(pin.at)} />
			))}
			<Boxes words={words} />
			<Words words={words} />
		</svg>
	);
}

/** What scales with the floor, in its millimetres. */
function Ground({ room, pour }: { room: RoomPlan; pour: RoomPour | undefined }) {
	const patterns = useId();
	const { outer, holes } = room.outline;
	return (
		<>
			<PatchPatterns id={patterns} />
			<path class="floor-ground" d={path([outer, ...holes], true)} fill-rule="evenodd" />
			{pour
				? pour.batches.map((batch) => (
						<Patch key={batch.number} batch={batch} of={pour.batches.length} state="down" patterns={patterns} />
					))
				: room.pour?.bands.map((band) => (
						<path key={band.step} class={`band ${bandClass(band.step, band.steps)}`} d={band.path} />
					))}
			<path class="keep-out" d={path(holes, true)} />
			<path class="wall scale-wall" d={path([outer], true)} />
			{room.doors.map((door) => (
				<g key={door.id}>
					<path class="door" d={path([[door.from, door.to]], false)} />
					<path class="door-line" d={path([[door.from, door.to]], false)} />
				</g>
			))}
			{pour?.dams.map((dam) => (
				<path key={`${dam.from.x},${dam.from.y},${dam.to.x}`} class="patch-dam" d={path([[dam.from, dam.to]], false)} />
			))}
		</>
	);
}

function Pin({ at: { x, y } }: { at: Point }) {
	return <path class="pin" d={`M${x} ${y + 5}V${y - 7}M${x - 5} ${y - 7}H${x + 5}`} />;
}

/** A batch's number stands in a box, so that nobody takes it for an indicator's. */
function Boxes({ words }: { words: Placed[] }) {
	const boxes = words.filter((word) => word.boxed).map((word) => ({ key: word.key, ...boxOf(word, word.at) }));
	return (
		<>
			{boxes.map(({ key, left, right, top, bottom }) => (
				<rect key={key} class="scale-box" x={left} y={top} width={right - left} height={bottom - top} />
			))}
		</>
	);
}

type At = (p: Point) => Point;

/** Batches first, then indicators, doors and pipes; what isn't needed is left out where there is no room. */
function wanted({ room, pour, pins }: ScaleMapProps, at: At, scale: number): Wanted[] {
	const batches = (pour?.batches ?? []).map((batch) => ({
		key: `batch ${batch.number}`,
		text: String(batch.number),
		tone: "scale-batch",
		boxed: 2,
		needed: true,
		places: [{ ...at(batch.label), anchor: "middle" as const }, ...nearby(at(batch.label))],
	}));
	const heads = pins.map((pin, i) => ({
		key: `pin ${i}`,
		text: `${i + 1}: ${said(pin.head.text)}`,
		small: true,
		needed: true,
		places: [11, 20, 32].flatMap((away) => beside(at(pin.at), away)),
	}));
	const pipes = room.penetrations.map((p) => ({
		key: `pipe ${p.id}`,
		text: p.name || said(p.kind),
		small: true,
		places: beside(at(p.at), Math.max(3, p.radius * scale) + 4),
	}));
	const doors = room.doors.map((door) => doorWord(door, room.outline.outer, at));
	return [...batches, ...wallWords(room, at), ...heads, ...doors, ...pipes];
}

/** Places for a box that is wider than a mark. */
function nearby({ x, y }: Point) {
	const places = [];
	for (const away of [16, 28]) {
		for (const [dx, dy] of [
			[1, 0],
			[-1, 0],
			[0, 1],
			[0, -1],
			[1, 1],
			[-1, 1],
			[1, -1],
			[-1, -1],
		])
			places.push({ x: x + away * (dx ?? 0), y: y + away * (dy ?? 0), anchor: "middle" as const });
	}
	return places;
}

function drawn({ room, pins }: ScaleMapProps, at: At) {
	return [
		...pins.map((pin) => around({ x: at(pin.at).x, y: at(pin.at).y - 1 }, 7)),
		...room.penetrations.map((p) => around(at(p.at), 6)),
		...wallBoxes(room, at),
	];
}
