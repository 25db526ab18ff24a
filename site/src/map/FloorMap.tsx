// The floor map: the room in plan with its depths, readings and what stands in it. Everything that can be done here can be done with keys or in a table too.
import { useEffect, useRef, useState } from "preact/hooks";
import type { Point, RoomPlan, RoomPour } from "../engine/contract";
import { PlayBar, stateAt } from "../pour/Play";
import { partName, pourDay, useWorkedPour, working } from "../pour/worked";
import { layers, roomStudy } from "../state/study";
import { t } from "../words/words";
import { Drawing } from "./drawing";
import type { Batches } from "./drawn";
import { type Line, spotSays, useSpot } from "./ground";
import { middle, useHands } from "./hands";
import { Key, LayerButtons } from "./Key";
import { SectionPanel } from "./SectionPanel";
import { Sketch, Wrong } from "./sketch";
import { type Board, bounds, fit, middleOf, toBoard, toPlan, type View, zoom } from "./view";

type MapProps = {
	room: RoomPlan;
	picked: number | null;
	onPick: (row: number) => void;
	onAdd: (spot: Point) => void;
	onOutline: (corners: Point[]) => void;
	problemAt?: Point;
	alone?: boolean; // a job that isn’t open: it can only be looked at
};

/** What a tap on the board does. */
type Task = "look" | "spot" | "section" | "readings" | "outline";

const step = 0.1; // metres that an arrow moves the cross-hair; ten times as far with Shift

export function FloorMap(props: MapProps) {
	const { room } = props;
	const board = useRef<HTMLDivElement>(null);
	const [size, setSize] = useState<Board>({ width: 0, height: 0 });
	const [view, setView] = useState<View | null>(null);
	const [whole, setWhole] = useState(true); // the whole floor is in view: a finger that moves up or down scrolls the page
	const [task, setTask] = useState<Task>("look");
	const [sketch, setSketch] = useState<Point[]>([]);
	const [under, setUnder] = useState<Point | null>(null);
	const [cursor, setCursor] = useState<Point | null>(null);
	const [line, setLine] = useState<Line | null>(null);
	const [part, setPart] = useState(0); // which of the room's pours is shown
	const [moment, setMoment] = useState(Number.POSITIVE_INFINITY);
	useEffect(() => watchSize(board.current, setSize), []);
	const extent = extentOf(room);
	const shape = extent.map((p) => `${p.x},${p.y}`).join(" ");
	const showWhole = () => {
		if (size.width > 0) setView(fit(extent, size));
		setWhole(true);
	};
	useEffect(showWhole, [shape, size.width, size.height]);
	const look = (next: View) => {
		setView(next);
		setWhole(false);
	};
	const study = roomStudy(room.id);
	const pours = layers.value.has("batches")
		? (pourDay.value?.rooms ?? []).filter((one) => one.id === room.id && !one.rough)
		: [];
	const pour = pours[Math.min(part, pours.length - 1)];
	const change = (next: Task) => {
		setTask(next === task ? "look" : next);
		setSketch([]);
		setUnder(null);
		setCursor(next === task || next !== "spot" ? null : middleOf(extent));
		if (next === task || next !== "section") setLine(null);
	};
	const hands = useHands({
		board: size,
		view,
		setView: look,
		onTap: (at, reach) => {
			if (!view) return;
			const spot = toPlan(at, view, size);
			if (task === "readings") props.onAdd(spot);
			else if (task === "outline") setSketch([...sketch, snapped(spot)]);
			else if (task === "spot") setCursor(spot);
			else if (task === "look") {
				setUnder(spot);
				const reading = nearest(room, at, (p) => toBoard(p, view, size), reach);
				if (reading !== undefined) props.onPick(reading);
			}
		},
		onOver: (at) => setUnder(at && view ? toPlan(at, view, size) : null),
		onDraw:
			task === "section"
				? (from, to) => view && setLine({ from: toPlan(from, view, size), to: toPlan(to, view, size) })
				: undefined,
		onArrow: (x, y) => {
			if (task !== "spot" || !cursor) return false;
			setCursor({ x: cursor.x + x * step, y: cursor.y + y * step });
			return true;
		},
	});
	const drawn = room.drawn && task !== "outline";
	return (
		<section class="map" aria-label={t("Floor map")}>
			<div
				class={`map-board${task === "look" ? "" : " adding"}${whole && task === "look" ? " whole" : ""}`}
				style={{ "--tall": tallness(extent) }}
				ref={board}
				tabIndex={0}
				role="group"
				aria-label={
					task === "spot"
						? t("Map board: arrows move the cross-hair, with Shift further")
						: t("Map board: arrows move it, plus and minus zoom")
				}
				{...hands}
			>
				{view && drawn && (
					<Drawing
						room={room}
						study={study}
						batches={batchesOf(pour, moment)}
						picked={props.picked}
						problemAt={props.problemAt}
						line={line}
						cursor={cursor ?? (task === "section" ? under : null)}
						view={view}
						size={size}
					/>
				)}
				{view && task === "outline" && <Sketch corners={sketch} view={view} size={size} />}
				{view && task !== "outline" && room.sketch.length > 0 && (
					<Wrong room={room} problemAt={props.problemAt} view={view} size={size} />
				)}
				{!room.drawn && room.sketch.length === 0 && task !== "outline" && <Empty />}
			</div>
			{!props.alone && <ReadOut room={room} at={cursor ?? under} spoken={task === "spot"} />}
			<MapTools
				task={task}
				room={room}
				alone={props.alone ?? false}
				corners={sketch.length}
				onTask={change}
				onTakeBack={() => setSketch(sketch.slice(0, -1))}
				onClose={() => {
					props.onOutline(sketch);
					change("look");
				}}
				onZoom={(by) => view && look(zoom(view, by, middle(size), size))}
				onWhole={showWhole}
			/>
			{layers.value.has("batches") && <WorkedBatches />}
			{pours.length > 1 && (
				<div class="layers no-print" role="group" aria-label={t("Which pour")}>
					{pours.map((one, i) => (
						<button type="button" key={one.part} aria-pressed={one === pour} onClick={() => setPart(i)}>
							{partName(one)}
						</button>
					))}
				</div>
			)}
			{pour?.clock && (
				<PlayBar plan={pour.clock} at={Math.min(moment, pour.clock.timeline.finish)} onMove={setMoment} />
			)}
			{task === "section" && (
				<SectionPanel room={room} line={line} width={size.width} onLine={setLine} onPlace={setUnder} />
			)}
			{room.pour && !props.alone && <LayerButtons study={study} />}
			{room.pour && <Key room={room} tables={!props.alone} />}
		</section>
	);
}

type ToolsProps = {
	task: Task;
	room: RoomPlan;
	alone: boolean;
	corners: number;
	onTask: (task: Task) => void;
	onTakeBack: () => void;
	onClose: () => void;
	onZoom: (by: number) => void;
	onWhole: () => void;
};

function MapTools(props: ToolsProps) {
	const { task, room } = props;
	const tool = (of: Task, name: string, busy: string, enabled: boolean) => (
		<button type="button" aria-pressed={task === of} onClick={() => props.onTask(of)} disabled={!enabled}>
			{task === of ? busy : name}
		</button>
	);
	return (
		<div class="map-bar no-print">
			{!props.alone && tool("spot", t("Read a spot"), t("Tap a spot…"), room.pour !== null)}
			{!props.alone && tool("section", t("Cut a section"), t("Drag a line…"), room.pour !== null)}
			{!props.alone && tool("readings", t("Add readings"), t("Tap the floor…"), room.drawn)}
			{!props.alone && tool("outline", t("Draw the outline"), t("Tap the corners in order…"), true)}
			{task === "outline" && (
				<>
					<button type="button" onClick={props.onTakeBack} disabled={props.corners === 0}>
						{t("Take back a corner")}
					</button>
					<button type="button" class="button-main" disabled={props.corners < 3} onClick={props.onClose}>
						{t("Close the outline ({count} corners)", { count: props.corners })}
					</button>
				</>
			)}
			<span class="map-zoom">
				<button type="button" aria-label={t("Zoom in")} onClick={() => props.onZoom(1.4)}>
					+
				</button>
				<button type="button" aria-label={t("Zoom out")} onClick={() => props.onZoom(1 / 1.4)}>
					−
				</button>
				<button type="button" aria-label={t("Whole floor")} title={t("Whole floor")} onClick={props.onWhole}>
					<svg viewBox="0 0 16 16" aria-hidden="true">
						<path d="M1 6V1h5M10 1h5v5M15 10v5h-5M6 15H1v-5" fill="none" stroke="currentColor" stroke-width="2" />
					</svg>
				</button>
			</span>
		</div>
	);
}

function Empty() {
	return (
		<div class="map-empty">
			<svg class="map-empty-picture" viewBox="0 0 120 80" aria-hidden="true">
				<path class="wall" d="M10 10H110V70H10z" />
				<path class="contour" d="M10 46C40 40 60 30 110 34M10 60C50 56 70 52 110 56" />
				<path class="mark-low" d="M62 58l8 12 8-12z" />
			</svg>
			<p>{t("The floor appears here as soon as its length and width are given, or draw it here corner by corner.")}</p>
		</div>
	);
}

/** What stands under the pointer or the cross-hair. It is spoken only where the cross-hair is moved: a pointer would never let it finish. */
function ReadOut({ room, at, spoken }: { room: RoomPlan; at: Point | null; spoken: boolean }) {
	const found = useSpot(room.id, room.pour && at ? at : null);
	if (!room.pour) return null;
	return (
		<p class="map-read no-print" role={spoken ? "status" : undefined}>
			{found ? (
				spotSays(found)
			) : (
				<span class="soft">{t("Point at the floor to read depth, deck and finish there.")}</span>
			)}
		</p>
	);
}

/** Has the pour worked out while its batches are shown. */
function WorkedBatches() {
	useWorkedPour();
	return (
		<p class="map-read" role="status">
			{working.value ? t("Batches: working them out…") : ""}
		</p>
	);
}

function batchesOf(pour: RoomPour | undefined, moment: number): Batches | null {
	if (!pour || pour.batches.length === 0) return null;
	const clock = pour.clock;
	return { list: pour.batches, stateOf: (batch) => (clock ? stateAt(clock, batch, moment) : "down") };
}

/** What the board must show: the room, or the path that can't be one, or ground for a room of 6 m by 5 m. */
function extentOf(room: RoomPlan): Point[] {
	if (room.outline.outer.length > 0) return room.outline.outer;
	return room.sketch.length > 0 ? room.sketch : emptyBoard;
}

/** How tall the floor is for its width; no board is shaped after a corridor. */
function tallness(spots: Point[]): number {
	const { low, high } = bounds(spots);
	return Math.min(1.2, Math.max(0.5, (high.y - low.y) / Math.max(high.x - low.x, 0.1)));
}

const emptyBoard: Point[] = [
	{ x: 0, y: 0 },
	{ x: 6, y: 5 },
];

/** Corners fall on a grid of 5 cm: nobody taps finer, and what is wanted finer is typed. */
function snapped(p: Point): Point {
	return { x: Math.round(p.x * 20) / 20, y: Math.round(p.y * 20) / 20 };
}

/** The row of the reading that a tap meant. */
function nearest(room: RoomPlan, tap: Point, at: (p: Point) => Point, reach: number): number | undefined {
	let [row, best]: [number | undefined, number] = [undefined, reach];
	for (const reading of room.readings) {
		const spot = at(reading.at);
		const away = Math.hypot(spot.x - tap.x, spot.y - tap.y);
		if (away <= best) [row, best] = [reading.row, away];
	}
	return layers.value.has("readings") ? row : undefined;
}

function watchSize(element: HTMLDivElement | null, set: (size: Board) => void): (() => void) | undefined {
	if (!element) return undefined;
	const observer = new ResizeObserver(
		([entry]) => entry && set({ width: entry.contentRect.width, height: entry.contentRect.height }),
	);
	observer.observe(element);
	return () => observer.disconnect();
}
