// The floor cut along a line: deck, finish plane and lifts from the side, to a stated exaggeration, with a place to read it at and a table.
import { useEffect, useState } from "preact/hooks";
import { call } from "../engine/client";
import type { Point, RoomPlan, SectionPlace, SectionPlan } from "../engine/contract";
import { job } from "../state/job";
import { said, t } from "../words/words";
import { type Line, spotSays, useSection, useSpot } from "./ground";
import { bounds, middleOf } from "./view";

type SectionProps = {
	room: RoomPlan;
	line: Line | null;
	width: number;
	onLine: (line: Line | null) => void;
	onPlace: (at: Point | null) => void;
};

export function SectionPanel(props: SectionProps) {
	const { room, line, onLine } = props;
	const section = useSection(room.id, line);
	const depths = room.pour?.depths;
	const across = middleLines(room);
	return (
		<section class="cut-panel" aria-label={t("Section")}>
			<p class="small no-print">
				{line
					? t("Drag on the floor for another line, or give its two ends.")
					: t("Drag a line over the floor, or choose one here.")}
			</p>
			<div class="row no-print">
				{depths && (
					<button type="button" onClick={() => onLine({ from: depths.leastAt, to: depths.greatestAt })}>
						{t("Thinnest to deepest")}
					</button>
				)}
				<button type="button" onClick={() => onLine(across.along)}>
					{t("Left to right")}
				</button>
				<button type="button" onClick={() => onLine(across.over)}>
					{t("Top to bottom")}
				</button>
			</div>
			{line && section?.least && <Profile {...props} line={line} section={section} />}
			{line && section && !section.least && <p role="status">{t("This line crosses no poured floor.")}</p>}
			<Ends line={line} onLine={onLine} />
		</section>
	);
}

/** The lines through the middle of the room, wall to wall. */
function middleLines(room: RoomPlan): { along: Line; over: Line } {
	const { low, high } = bounds(room.outline.outer);
	const { x, y } = middleOf(room.outline.outer);
	return {
		along: { from: { x: low.x, y }, to: { x: high.x, y } },
		over: { from: { x, y: high.y }, to: { x, y: low.y } },
	};
}

type EndName = "fromX" | "fromY" | "toX" | "toY";

const length = { Length: 1, Mass: 0, Time: 0, Temperature: 0, Money: 0, Point: false };

/** The line's two ends, typed. */
function Ends({ line, onLine }: { line: Line | null; onLine: (line: Line) => void }) {
	const units = job.value?.units ?? "metric";
	const unit = units === "us" ? "ft" : "m";
	const [typed, setTyped] = useState<Record<EndName, string>>({ fromX: "", fromY: "", toX: "", toY: "" });
	const [wrong, setWrong] = useState<Partial<Record<EndName, string>>>({});
	useEffect(() => {
		if (line) void writeEnds(line, units).then(setTyped);
	}, [line, units]);
	const field = (name: EndName, label: string) => (
		<div class={`field${wrong[name] ? " field-wrong" : ""}`}>
			<label for={`cut-${name}`}>{label}</label>
			<input
				id={`cut-${name}`}
				type="text"
				autocomplete="off"
				value={typed[name]}
				aria-invalid={wrong[name] ? true : undefined}
				aria-describedby={`cut-${name}-note`}
				onInput={(event) => setTyped({ ...typed, [name]: event.currentTarget.value })}
			/>
			<p id={`cut-${name}-note`} class="field-error">
				{said(wrong[name])}
			</p>
		</div>
	);
	return (
		<form
			class="row row-even cut-ends no-print"
			onSubmit={async (event) => {
				event.preventDefault();
				const read = await readEnds(typed, unit);
				setWrong(read.wrong);
				if (read.line) onLine(read.line);
			}}
		>
			{field("fromX", t("A: from the left"))}
			{field("fromY", t("A: from below"))}
			{field("toX", t("B: from the left"))}
			{field("toY", t("B: from below"))}
			<button type="submit">{t("Cut here")}</button>
		</form>
	);
}

async function writeEnds(line: Line, units: "metric" | "us"): Promise<Record<EndName, string>> {
	const write = async (si: number) => (await call("quantity.write", { si, dimension: length, units })).text;
	const [fromX, fromY, toX, toY] = await Promise.all([line.from.x, line.from.y, line.to.x, line.to.y].map(write));
	return { fromX: fromX ?? "", fromY: fromY ?? "", toX: toX ?? "", toY: toY ?? "" };
}

type ReadEnds = { line: Line | null; wrong: Partial<Record<EndName, string>> };

async function readEnds(typed: Record<EndName, string>, bareUnit: string): Promise<ReadEnds> {
	const values: Partial<Record<EndName, number>> = {};
	const wrong: Partial<Record<EndName, string>> = {};
	for (const name of ["fromX", "fromY", "toX", "toY"] as const) {
		try {
			values[name] = (await call("quantity.read", { typed: typed[name], dimension: length, bareUnit })).si;
		} catch (error) {
			wrong[name] = (error as Error).message;
		}
	}
	const { fromX, fromY, toX, toY } = values;
	if (fromX === undefined || fromY === undefined || toX === undefined || toY === undefined)
		return { line: null, wrong };
	return { line: { from: { x: fromX, y: fromY }, to: { x: toX, y: toY } }, wrong };
}

const margin = { left: 24, right: 24, top: 30, bottom: 26 };
const tallest = 130; // pixels of the profile
const exaggerations = [1, 2, 5, 10, 20, 50, 100, 200, 500];

function Profile({ room, line, section, width, onPlace }: SectionProps & { line: Line; section: SectionPlan }) {
	const [share, setShare] = useState(0.5);
	const [read, setRead] = useState(false);
	const scale = Math.max(60, width - margin.left - margin.right) / section.length.si; // pixels a metre
	const most = tallest / Math.max(section.high * scale, 0.001);
	const taller = exaggerations.filter((times) => times <= most).at(-1) ?? 1;
	const board = (p: Point): Point => ({
		x: margin.left + p.x * scale,
		y: margin.top + (section.high - p.y) * scale * taller,
	});
	const height = margin.top + section.high * scale * taller + margin.bottom;
	const spot = read ? pointAt(line, share) : null;
	const found = useSpot(room.id, spot);
	const move = (to: number) => {
		const next = Math.min(1, Math.max(0, to));
		setShare(next);
		setRead(true);
		onPlace(pointAt(line, next));
	};
	return (
		<>
			<svg
				class="profile"
				viewBox={`0 0 ${width} ${height + 14}`}
				style={{ height: `${height + 14}px` }}
				role="img"
				aria-label={t("Section {length} long: the pour is {least} at its thinnest and {greatest} at its deepest.", {
					length: said(section.length.text),
					least: said(section.least?.depth.text),
					greatest: said(section.greatest?.depth.text),
				})}
				onPointerMove={(event) => {
					const box = event.currentTarget.getBoundingClientRect();
					move((event.clientX - box.left - margin.left) / (section.length.si * scale));
				}}
			>
				<Layers section={section} board={board} foot={height} />
				<Measure place={section.least} board={board} section={section} class="mark-high" />
				<Measure place={section.greatest} board={board} section={section} class="mark-low" />
				{read && (
					<path
						class="profile-place"
						d={`M${margin.left + share * section.length.si * scale} ${margin.top - 12}V${height}`}
					/>
				)}
				<text class="map-text" x={margin.left - 6} y={margin.top - 12} text-anchor="end">
					A
				</text>
				<text class="map-text" x={margin.left + section.length.si * scale + 6} y={margin.top - 12}>
					B
				</text>
			</svg>
			<p class="small">
				<span class="profile-key profile-key-plane" aria-hidden="true" /> {t("finish plane")}{" "}
				<span class="profile-key profile-key-deck" aria-hidden="true" /> {t("deck")}
			</p>
			<p class="small">
				<b>
					{taller === 1
						? t("Drawn as it is.")
						: t("Heights are drawn {times} times as tall as they are.", { times: taller })}
				</b>{" "}
				{section.lifts.length > 1 &&
					t("{count} lifts, numbered in the order of pouring.", { count: section.lifts.length })}
			</p>
			<label class="play-slider no-print">
				<span class="small">{t("Place along the line")}</span>
				<input
					type="range"
					min="0"
					max="100"
					step="1"
					value={Math.round(100 * share)}
					aria-valuetext={found ? spotSays(found) : undefined}
					onInput={(event) => move(Number(event.currentTarget.value) / 100)}
				/>
			</label>
			<p class="map-read" role="status">
				{found ? spotSays(found) : ""}
			</p>
			<Stations section={section} />
		</>
	);
}

function pointAt(line: Line, share: number): Point {
	return {
		x: line.from.x + share * (line.to.x - line.from.x),
		y: line.from.y + share * (line.to.y - line.from.y),
	};
}

type Boarding = { section: SectionPlan; board: (p: Point) => Point };

function Layers({ section, board, foot }: Boarding & { foot: number }) {
	const d = (points: Point[]) =>
		`M${points
			.map(board)
			.map((p) => `${p.x.toFixed(1)} ${p.y.toFixed(1)}`)
			.join("L")}`;
	return (
		<>
			{section.lifts.map((lift) => (
				<path
					key={lift.number}
					class={`profile-lift profile-lift-${lift.number % 2}`}
					d={`${lift.shapes.map(d).join("Z")}Z`}
				/>
			))}
			{section.decks.map((deck, i) => {
				const [first, last] = [deck[0], deck.at(-1)];
				if (!first || !last) return null;
				return (
					<g key={i}>
						<path class="profile-ground" d={`${d(deck)}V${foot}H${board(first).x}Z`} />
						<path class="profile-deck" d={d(deck)} />
					</g>
				);
			})}
			{section.planes.map((plane, i) => (
				<path key={i} class="profile-plane" d={d(plane)} />
			))}
			{section.lifts.length > 1 &&
				section.lifts.map((lift) => {
					const top = lift.shapes[0]?.[0];
					return top ? (
						<text key={lift.number} class="map-text map-text-small" x={board(top).x + 4} y={board(top).y + 12}>
							{t("lift {number}", { number: lift.number })}
						</text>
					) : null;
				})}
		</>
	);
}

/** A depth, written over the plane where it is. */
function Measure(props: Boarding & { place: SectionPlace | null; class: string }) {
	const { place, board, section } = props;
	if (!place) return null;
	const x = board({ x: place.along.si, y: 0 }).x;
	const middle = section.length.si / 2;
	return (
		<g>
			<path class={props.class} d={`M${x} ${margin.top - 10}V${margin.top - 2}`} />
			<text class="map-text map-text-small" x={x} y={12} text-anchor={place.along.si > middle ? "end" : "start"}>
				{said(place.depth.text)}
			</text>
		</g>
	);
}

function Stations({ section }: { section: SectionPlan }) {
	return (
		<details class="cut-table">
			<summary>{t("The section as a table")}</summary>
			<div class="wide" tabIndex={0}>
				<table class="study-table">
					<caption>{t("From A to B; heights as they would be read in the room")}</caption>
					<thead>
						<tr>
							<th scope="col">{t("From A")}</th>
							<th scope="col">{t("Deck reads")}</th>
							<th scope="col">{t("Finish reads")}</th>
							<th scope="col">{t("Depth")}</th>
						</tr>
					</thead>
					<tbody>
						{section.stations.map((place) => (
							<tr key={place.along.si}>
								<th scope="row">{said(place.along.text)}</th>
								<td>{said(place.deck.text)}</td>
								<td>{said(place.plane.text)}</td>
								<td>{said(place.depth.text)}</td>
							</tr>
						))}
					</tbody>
				</table>
			</div>
		</details>
	);
}
