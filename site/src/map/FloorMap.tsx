// The floor map: the room in plan with its depths, readings and what stands in it. Everything that can be done here can be done in a table too.
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Point, RoomPlan } from "../engine/contract";
import { layers, roomStudy } from "../state/study";
import { number, said, t } from "../words/words";
import { GroundLayers, LayerButtons, MarkLayers } from "./layers";
import { type Board, fit, pan, path, toBoard, toPlan, type View, zoom } from "./view";

type MapProps = {
	room: RoomPlan;
	picked: number | null;
	onPick: (row: number) => void;
	onAdd: (spot: Point) => void;
	onOutline: (corners: Point[]) => void;
	problemAt?: Point;
};

/** What a tap on the board does. */
type Task = "look" | "readings" | "outline";

/** The map with its bar and key. */
export function FloorMap(props: MapProps) {
	const board = useRef<HTMLDivElement>(null);
	const [size, setSize] = useState<Board>({ width: 0, height: 0 });
	const [view, setView] = useState<View | null>(null);
	const [task, setTask] = useState<Task>("look");
	const [sketch, setSketch] = useState<Point[]>([]);
	const [under, setUnder] = useState<Point | null>(null);
	useEffect(() => watchSize(board.current, setSize), []);
	const outline = props.room.outline.outer;
	const shape = outline.map((p) => `${p.x},${p.y}`).join(" ");
	const whole = outline.length > 0 ? outline : props.room.sketch.length > 0 ? props.room.sketch : emptyBoard;
	useEffect(() => {
		if (size.width > 0) setView(fit(whole, size));
	}, [shape, props.room.sketch.length, size.width, size.height]);
	const hands = useHands(size, view, setView, (at) => {
		if (!view) return;
		if (task === "readings") props.onAdd(toPlan(at, view, size));
		if (task === "outline") setSketch([...sketch, snapped(toPlan(at, view, size))]);
	});
	const change = (next: Task) => {
		setTask(next === task ? "look" : next);
		setSketch([]);
	};
	return (
		<section class="map" aria-label={t("Floor map")}>
			<div class="map-bar no-print">
				<button
					type="button"
					aria-pressed={task === "readings"}
					onClick={() => change("readings")}
					disabled={!props.room.drawn}
				>
					{task === "readings" ? t("Tap the floor…") : t("Add readings by tapping")}
				</button>
				<button type="button" aria-pressed={task === "outline"} onClick={() => change("outline")}>
					{task === "outline" ? t("Tap the corners in order…") : t("Draw the outline")}
				</button>
				{task === "outline" && (
					<>
						<button type="button" onClick={() => setSketch(sketch.slice(0, -1))} disabled={sketch.length === 0}>
							{t("Take back a corner")}
						</button>
						<button
							type="button"
							class="button-main"
							disabled={sketch.length < 3}
							onClick={() => {
								props.onOutline(sketch);
								change("look");
							}}
						>
							{t("Close the outline ({count} corners)", { count: sketch.length })}
						</button>
					</>
				)}
				<button
					type="button"
					aria-label={t("Zoom in")}
					onClick={() => view && setView(zoom(view, 1.4, middle(size), size))}
				>
					+
				</button>
				<button
					type="button"
					aria-label={t("Zoom out")}
					onClick={() => view && setView(zoom(view, 1 / 1.4, middle(size), size))}
				>
					−
				</button>
				<button type="button" onClick={() => setView(fit(whole, size))}>
					{t("Whole floor")}
				</button>
			</div>
			<div
				class={`map-board${task === "look" ? "" : " adding"}`}
				ref={board}
				tabIndex={0}
				role="group"
				aria-label={t("Map board: arrows move it, plus and minus zoom")}
				{...hands}
				onPointerMove={(event) => {
					hands.onPointerMove(event);
					if (view) setUnder(toPlan(local(event), view, size));
				}}
				onPointerLeave={() => setUnder(null)}
			>
				{view && props.room.drawn && task !== "outline" && <Drawing {...props} view={view} size={size} />}
				{view && task === "outline" && <Sketch corners={sketch} view={view} size={size} />}
				{view && task !== "outline" && props.room.sketch.length > 0 && <Wrong {...props} view={view} size={size} />}
				{!props.room.drawn && props.room.sketch.length === 0 && task !== "outline" && (
					<p class="map-empty soft">
						{t("The floor appears here as soon as its length and width are given, or draw it here corner by corner.")}
					</p>
				)}
			</div>
			{props.room.pour && <LayerButtons study={roomStudy(props.room.id)} />}
			<Key room={props.room} under={under} />
		</section>
	);
}

/** What an empty board shows: a room of 6 m by 5 m would fit. */
const emptyBoard: Point[] = [
	{ x: 0, y: 0 },
	{ x: 6, y: 5 },
];

/** Corners fall on a grid of 5 cm: nobody taps finer, and what is wanted finer is typed. */
function snapped(p: Point): Point {
	return { x: Math.round(p.x * 20) / 20, y: Math.round(p.y * 20) / 20 };
}

/** An outline being drawn, on a grid of half a metre. */
function Sketch({ corners, view, size }: { corners: Point[]; view: View; size: Board }) {
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
					<Word
						at={{ x: p.x + 14, y: p.y - 12 }}
						text={`${i + 1}: ${number(corners[i]?.x, 2)}, ${number(corners[i]?.y, 2)} m`}
						anchor="start"
						small
					/>
				</g>
			))}
		</svg>
	);
}

/** An outline that can't be, with a ring round the spot where it goes wrong. */
function Wrong({ room, problemAt, view, size }: DrawingProps) {
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
				<Word key={`${p.x},${p.y},${i}`} at={{ x: p.x + 10, y: p.y - 10 }} text={String(i + 1)} small />
			))}
			{spot && <circle class="mark-problem" cx={spot.x} cy={spot.y} r={16} />}
		</svg>
	);
}

function watchSize(element: HTMLDivElement | null, set: (size: Board) => void): (() => void) | undefined {
	if (!element) return undefined;
	const observer = new ResizeObserver(
		([entry]) => entry && set({ width: entry.contentRect.width, height: entry.contentRect.height }),
	);
	observer.observe(element);
	return () => observer.disconnect();
}

function middle(size: Board): Point {
	return { x: size.width / 2, y: size.height / 2 };
}

function local(event: PointerEvent | WheelEvent): Point {
	const box = (event.currentTarget as Element).getBoundingClientRect();
	return { x: event.clientX - box.left, y: event.clientY - box.top };
}

/** Pointer, wheel and keys: one finger moves, two zoom, a tap that didn't move is a tap. */
function useHands(size: Board, view: View | null, setView: (view: View) => void, onTap: (at: Point) => void) {
	const fingers = useRef(new Map<number, Point>());
	const moved = useRef(0);
	return {
		onPointerDown: (event: PointerEvent) => {
			(event.currentTarget as Element).setPointerCapture(event.pointerId);
			fingers.current.set(event.pointerId, local(event));
			moved.current = 0;
		},
		onPointerMove: (event: PointerEvent) => {
			const before = fingers.current.get(event.pointerId);
			if (!before || !view) return;
			const now = local(event);
			moved.current += Math.hypot(now.x - before.x, now.y - before.y);
			const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1];
			if (other) {
				const by =
					Math.hypot(now.x - other.x, now.y - other.y) /
					Math.max(1, Math.hypot(before.x - other.x, before.y - other.y));
				setView(zoom(view, by, { x: (now.x + other.x) / 2, y: (now.y + other.y) / 2 }, size));
			} else if (moved.current > 6) {
				setView(pan(view, now.x - before.x, now.y - before.y));
			}
			fingers.current.set(event.pointerId, now);
		},
		onPointerUp: (event: PointerEvent) => {
			if (fingers.current.size === 1 && moved.current <= 6) onTap(local(event));
			fingers.current.delete(event.pointerId);
		},
		onPointerCancel: (event: PointerEvent) => fingers.current.delete(event.pointerId),
		onWheel: (event: WheelEvent) => {
			if (!view || !(event.ctrlKey || event.metaKey || document.activeElement === event.currentTarget)) return;
			event.preventDefault();
			setView(zoom(view, event.deltaY < 0 ? 1.15 : 1 / 1.15, local(event), size));
		},
		onKeyDown: (event: KeyboardEvent) => {
			const next = view && byKey(event.key, view, size);
			if (next) {
				event.preventDefault();
				setView(next);
			}
		},
	};
}

function byKey(key: string, view: View, size: Board): View | null {
	switch (key) {
		case "ArrowLeft":
			return pan(view, 40, 0);
		case "ArrowRight":
			return pan(view, -40, 0);
		case "ArrowUp":
			return pan(view, 0, 40);
		case "ArrowDown":
			return pan(view, 0, -40);
		case "+":
		case "=":
			return zoom(view, 1.25, middle(size), size);
		case "-":
			return zoom(view, 0.8, middle(size), size);
	}
	return null;
}

type DrawingProps = MapProps & { view: View; size: Board };

function Drawing(props: DrawingProps) {
	const { room, view, size } = props;
	const origin = toBoard({ x: 0, y: 0 }, view, size);
	const scale = view.scale / 1000;
	const study = roomStudy(room.id);
	return (
		<svg viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={describe(room)}>
			<g transform={`translate(${origin.x} ${origin.y}) scale(${scale})`}>
				<Ground room={room} />
				<GroundLayers room={room} study={study} />
			</g>
			<Labels {...props} />
			<MarkLayers study={study} at={(p) => toBoard(p, view, size)} />
		</svg>
	);
}

function describe(room: RoomPlan): string {
	const pour = room.pour;
	return pour
		? t("Floor of {area}; the pour is {least} at its thinnest and {greatest} at its deepest.", {
				area: said(room.area.text),
				least: said(pour.depths.least.text),
				greatest: said(pour.depths.greatest.text),
			})
		: t("Floor of {area}, not measured yet.", { area: said(room.area.text) });
}

/** What scales with the plan. Drawn anew only when the plan changes. */
function Ground({ room }: { room: RoomPlan }) {
	return useMemo(
		() => (
			<>
				<path class="floor-ground" d={path([room.outline.outer, ...room.outline.holes], true)} fill-rule="evenodd" />
				{room.pour?.bands.map((band) => (
					<path key={band.step} class={`band ${bandClass(band.step, band.steps)}`} d={band.path} />
				))}
				{room.pour?.contours.map((contour) => (
					<path key={contour.depth.si} class="contour" d={contour.path} />
				))}
				{room.decks
					.filter((deck) => !deck.covering)
					.map((deck) => (
						<path key={deck.id} class="deck-line" d={path([deck.outline.outer], true)} />
					))}
				<path class="keep-out" d={path(room.outline.holes, true)} />
				<path class="wall" d={path([room.outline.outer], true)} />
				{room.doors.map((door) => (
					<g key={door.id}>
						<path class="door" d={path([[door.from, door.to]], false)} />
						<path class="door-line" d={path([[door.from, door.to]], false)} />
					</g>
				))}
			</>
		),
		[room],
	);
}

/** Spreads the steps that there are over the whole ramp. */
export function bandClass(step: number, steps: number): string {
	return `band-${steps <= 1 ? 2 : Math.round((step * 8) / (steps - 1))}`;
}

/** What keeps its size on the screen: dots, marks and words. */
function Labels({ room, view, size, picked, onPick, problemAt }: DrawingProps) {
	const at = (p: Point) => toBoard(p, view, size);
	const roomy = room.readings.length <= 400 && layers.value.has("readings");
	return (
		<g>
			{room.walls.map((wall, i) => {
				const from = room.outline.outer[i];
				const to = room.outline.outer[(i + 1) % room.outline.outer.length];
				return from && to && wall.si * view.scale > 60 ? (
					<WallText
						key={`${from.x},${from.y}`}
						from={from}
						to={to}
						text={said(wall.text)}
						at={at}
						outline={room.outline.outer}
					/>
				) : null;
			})}
			{room.pour?.contours.map((contour) => (
				<Word key={contour.depth.si} at={at(contour.label)} text={said(contour.depth.text)} small />
			))}
			{room.penetrations.map((p) => (
				<g key={p.id}>
					<circle class="penetration" cx={at(p.at).x} cy={at(p.at).y} r={Math.max(6, p.radius * view.scale)} />
					<Word
						at={{ x: at(p.at).x, y: at(p.at).y + Math.max(6, p.radius * view.scale) + 13 }}
						text={p.name || said(p.kind)}
						small
					/>
				</g>
			))}
			{room.doors.map((door) => (
				<Word
					key={door.id}
					at={inward(
						at({ x: (door.from.x + door.to.x) / 2, y: (door.from.y + door.to.y) / 2 }),
						at(centre(room.outline.outer)),
						20,
					)}
					text={`${door.name || t("Door")}${door.exit ? ` · ${t("way out")}` : ""}`}
				/>
			))}
			{roomy &&
				room.readings.map((reading) => (
					<circle
						key={reading.row}
						class={`reading-dot${reading.row === picked ? " picked" : ""}`}
						cx={at(reading.at).x}
						cy={at(reading.at).y}
						r={reading.row === picked ? 8 : 4.5}
						onPointerUp={() => onPick(reading.row)}
					>
						<title>{t("Pour {depth} deep here", { depth: said(reading.depth) })}</title>
					</circle>
				))}
			{room.pour && (
				<>
					<Peak
						at={at(room.pour.depths.leastAt)}
						text={t("thinnest {depth}", { depth: said(room.pour.depths.least.text) })}
						size={size}
					/>
					<Pit
						at={at(room.pour.depths.greatestAt)}
						text={t("deepest {depth}", { depth: said(room.pour.depths.greatest.text) })}
						size={size}
					/>
				</>
			)}
			{problemAt && <circle class="mark-problem" cx={at(problemAt).x} cy={at(problemAt).y} r={14} />}
		</g>
	);
}

function centre(ring: Point[]): Point {
	return {
		x: ring.reduce((sum, p) => sum + p.x, 0) / ring.length,
		y: ring.reduce((sum, p) => sum + p.y, 0) / ring.length,
	};
}

function inward(from: Point, to: Point, by: number): Point {
	const length = Math.max(1, Math.hypot(to.x - from.x, to.y - from.y));
	return { x: from.x + ((to.x - from.x) * by) / length, y: from.y + ((to.y - from.y) * by) / length };
}

function Word(props: { at: Point; text: string; small?: boolean; anchor?: "start" | "middle" | "end" }) {
	return (
		<text
			class={`map-text${props.small ? " map-text-small" : ""}`}
			x={props.at.x}
			y={props.at.y + 4}
			text-anchor={props.anchor ?? "middle"}
		>
			{said(props.text)}
		</text>
	);
}

/** A wall's length, outside it and along it. */
function WallText(props: { from: Point; to: Point; text: string; at: (p: Point) => Point; outline: Point[] }) {
	const a = props.at(props.from);
	const b = props.at(props.to);
	const outward = turnsLeft(props.outline) ? 1 : -1;
	const length = Math.hypot(b.x - a.x, b.y - a.y);
	const x = (a.x + b.x) / 2 + (outward * -(b.y - a.y) * 16) / length;
	const y = (a.y + b.y) / 2 + (outward * (b.x - a.x) * 16) / length;
	let angle = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
	if (angle > 90.5 || angle < -90) angle += 180;
	return (
		<text
			class="map-text map-text-small map-text-wall"
			x={x}
			y={y + 4}
			text-anchor="middle"
			transform={`rotate(${angle} ${x} ${y})`}
		>
			{said(props.text)}
		</text>
	);
}

function turnsLeft(ring: Point[]): boolean {
	let sum = 0;
	ring.forEach((p, i) => {
		const q = ring[(i + 1) % ring.length] ?? p;
		sum += p.x * q.y - q.x * p.y;
	});
	return sum > 0;
}

function beside(at: Point, size: Board): { x: number; anchor: "start" | "end" } {
	return at.x > size.width * 0.6 ? { x: at.x - 14, anchor: "end" } : { x: at.x + 14, anchor: "start" };
}

function Peak(props: { at: Point; text: string; size: Board }) {
	const { x, y } = props.at;
	const word = beside(props.at, props.size);
	return (
		<>
			<path class="mark-high" d={`M${x - 9} ${y + 7}L${x} ${y - 9}L${x + 9} ${y + 7}Z`} />
			<Word at={{ x: word.x, y }} text={said(props.text)} anchor={word.anchor} />
		</>
	);
}

function Pit(props: { at: Point; text: string; size: Board }) {
	const { x, y } = props.at;
	const word = beside(props.at, props.size);
	return (
		<>
			<path class="mark-low" d={`M${x - 9} ${y - 7}L${x} ${y + 9}L${x + 9} ${y - 7}Z`} />
			<Word at={{ x: word.x, y }} text={said(props.text)} anchor={word.anchor} />
		</>
	);
}

/** The ramp with its depths, and the plan spot under the finger. */
function Key({ room, under }: { room: RoomPlan; under: Point | null }) {
	const bands = room.pour?.bands ?? [];
	return (
		<div class="map-key">
			{bands.length > 0 && (
				<ol aria-label={t("Depth of the pour")}>
					{bands.map((band) => (
						<li key={band.step}>
							<i class={bandClass(band.step, band.steps)} aria-hidden="true" />
							<span>
								{band.step === 0 || band.step === bands.length - 1 || bands.length < 7 || band.step % 2 === 0
									? said(band.from.text)
									: ""}
							</span>
						</li>
					))}
					<li>
						<i aria-hidden="true" style={{ border: 0 }} />
						<span>{bands.at(-1)?.to.text}</span>
					</li>
				</ol>
			)}
			<span class="map-read" aria-hidden="true">
				{under ? `x ${number(under.x, 2)} m, y ${number(under.y, 2)} m` : ""}
			</span>
		</div>
	);
}
