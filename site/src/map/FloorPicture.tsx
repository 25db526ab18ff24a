// The floor as a still picture: for the step by step view and for paper. It scales with its box; a tap tells where in the room it was.
import { useId } from "preact/hooks";
import type { FieldSheetRoom, Point, RoomPlan } from "../engine/contract";
import { said, t } from "../words/words";
import { bandClass } from "./drawing";
import { around, place } from "./labels";
import { doorWord, extremeWords, wallBoxes, wallWords } from "./marking";
import { Extremes, Words } from "./marks";
import { type Board, bounds, fit, path, toBoard, toPlan, type View } from "./view";

type PictureProps = {
	room: RoomPlan;
	sheet?: FieldSheetRoom;
	walls?: boolean; // count them
	picked?: number; // row
	width?: number; // of the drawing, in pixels of its words and dots: the column's, where nothing is said
	onTap?: (spot: Point, row: number | null) => void;
};

export function FloorPicture(props: PictureProps) {
	const { room, sheet } = props;
	const clip = useId();
	const board = boardOf(room, props.width ?? Math.min(640, innerWidth - 32));
	const view = fit(room.outline.outer, board);
	const at = (p: Point) => toBoard(p, view, board);
	const origin = at({ x: 0, y: 0 });
	return (
		<svg
			class={`picture${props.onTap ? " picture-tap" : ""}`}
			viewBox={`0 0 ${board.width} ${board.height}`}
			role="img"
			aria-label={t("Floor of {area}", { area: said(room.area.text) })}
			onPointerUp={(event) => props.onTap && tapped(event, props, view, board)}
		>
			<g transform={`translate(${origin.x} ${origin.y}) scale(${view.scale / 1000})`}>
				<path class="floor-ground" d={path([room.outline.outer, ...room.outline.holes], true)} fill-rule="evenodd" />
				{room.pour?.bands.map((band) => (
					<path key={band.step} class={`band ${bandClass(band.step, band.steps)}`} d={band.path} />
				))}
				{sheet && (
					<>
						<clipPath id={clip}>
							<path d={path([room.outline.outer], true)} />
						</clipPath>
						<path class="sketch-grid" clip-path={`url(#${clip})`} d={path(squares(room, sheet.grid.si), false)} />
					</>
				)}
				<path class="keep-out" d={path(room.outline.holes, true)} />
				<path class="wall" d={path([room.outline.outer], true)} />
				{room.doors.map((door) => (
					<g key={door.id}>
						<path class="door" d={path([[door.from, door.to]], false)} />
						<path class="door-line" d={path([[door.from, door.to]], false)} />
					</g>
				))}
			</g>
			{sheet && <Spots sheet={sheet} at={at} picked={props.picked} />}
			<Things room={room} at={at} board={board} sheet={sheet} numbered={props.walls} />
		</svg>
	);
}

/** A board of the room's own proportions, so that little paper is wasted. */
function boardOf(room: RoomPlan, width: number): Board {
	const { low, high } = bounds(room.outline.outer);
	const height = 96 + ((width - 96) * (high.y - low.y)) / Math.max(high.x - low.x, 0.1);
	return { width, height: Math.min(Math.max(height, width * 0.4), width * 1.1) };
}

const near = 22; // drawing units: a thumb's width

function tapped(event: PointerEvent, props: PictureProps, view: View, board: Board): void {
	const box = (event.currentTarget as Element).getBoundingClientRect();
	const tap = {
		x: ((event.clientX - box.left) * board.width) / box.width,
		y: ((event.clientY - box.top) * board.height) / box.height,
	};
	const away = (p: Point) => {
		const spot = toBoard(p, view, board);
		return Math.hypot(spot.x - tap.x, spot.y - tap.y);
	};
	const spots = [...(props.sheet?.spots ?? [])].sort((a, b) => away(a.at) - away(b.at));
	const nearest = spots[0];
	props.onTap?.(toPlan(tap, view, board), nearest && away(nearest.at) < near ? nearest.row : null);
}

function squares(room: RoomPlan, side: number): Point[][] {
	const { low, high } = bounds(room.outline.outer);
	const lines: Point[][] = [];
	for (let x = low.x + side; x < high.x; x += side)
		lines.push([
			{ x, y: low.y },
			{ x, y: high.y },
		]);
	for (let y = low.y + side; y < high.y; y += side)
		lines.push([
			{ x: low.x, y },
			{ x: high.x, y },
		]);
	return lines;
}

type Placed = { room: RoomPlan; at: (p: Point) => Point };

/** What comes up through the floor, and the doors' names where they cover nothing. */
function Things({
	room,
	at,
	board,
	sheet,
	numbered,
}: Placed & { board: Board; sheet?: FieldSheetRoom; numbered?: boolean }) {
	const depths = sheet ? undefined : room.pour?.depths;
	const drawn = [
		...(sheet?.spots ?? []).map((spot) => around(at(spot.at), 11)),
		...room.penetrations.map((one) => around(at(one.at), 7)),
		...wallBoxes(room, at),
		...(depths ? [around(at(depths.leastAt), 9), around(at(depths.greatestAt), 9)] : []),
	];
	const words = place(
		[
			...(depths ? extremeWords(depths, at) : []),
			...wallWords(room, at, numbered),
			...room.doors.map((door) => doorWord(door, room.outline.outer, at)),
		],
		drawn,
		board,
	);
	return (
		<g>
			{room.penetrations.map((one) => (
				<circle key={one.id} class="penetration" cx={at(one.at).x} cy={at(one.at).y} r={6} />
			))}
			{depths && <Extremes depths={depths} at={at} />}
			<Words words={words} />
		</g>
	);
}

function Spots({ sheet, at, picked }: { sheet: FieldSheetRoom; at: (p: Point) => Point; picked?: number }) {
	return (
		<g>
			{sheet.spots.map((spot, i) => {
				const { x, y } = at(spot.at);
				const state = spot.row === picked ? " spot-picked" : spot.height ? " spot-read" : "";
				return (
					<g key={spot.row} class={`spot${state}`}>
						<circle cx={x} cy={y} r={11} />
						<text x={x} y={y + 4} text-anchor="middle">
							{i + 1}
						</text>
					</g>
				);
			})}
		</g>
	);
}
