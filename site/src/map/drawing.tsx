// The floor drawn: first what scales with the plan, then the marks that keep their size, then the words where there is room for them.
import { useId, useMemo } from "preact/hooks";
import type { Point, RoomPlan } from "../engine/contract";
import { Patch, PatchPatterns } from "../pour/PatchMap";
import { said, t } from "../words/words";
import { type Batches, type DrawingProps, depthShown } from "./drawn";
import { place } from "./labels";
import { GroundLayers, LayerMarks } from "./layers";
import { drawnBoxes, wantedWords } from "./marking";
import { Marks, Words } from "./marks";
import { path, toBoard } from "./view";

export function Drawing(props: DrawingProps) {
	const { room, study, view, size } = props;
	const origin = toBoard({ x: 0, y: 0 }, view, size);
	const at = (p: Point) => toBoard(p, view, size);
	const words = place(wantedWords(props, at), drawnBoxes(props, at), size);
	return (
		<svg viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={describe(room)}>
			<g transform={`translate(${origin.x} ${origin.y}) scale(${view.scale / 1000})`}>
				<Ground room={room} depth={depthShown(props)} />
				<GroundLayers room={room} study={study} />
				{props.batches && <Patches batches={props.batches} />}
				<Walls room={room} />
			</g>
			<Marks {...props} at={at} />
			<LayerMarks room={room} study={study} at={at} />
			<Words words={words} />
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

/** The ground with its depths. Drawn anew only when the plan changes. */
function Ground({ room, depth }: { room: RoomPlan; depth: boolean }) {
	return useMemo(
		() => (
			<>
				<path class="floor-ground" d={path([room.outline.outer, ...room.outline.holes], true)} fill-rule="evenodd" />
				{depth &&
					room.pour?.bands.map((band) => (
						<path key={band.step} class={`band ${bandClass(band.step, band.steps)}`} d={band.path} />
					))}
				{depth &&
					room.pour?.contours.map((contour) => <path key={contour.depth.si} class="contour" d={contour.path} />)}
				{room.decks
					.filter((deck) => !deck.covering)
					.map((deck) => (
						<path key={deck.id} class="deck-line" d={path([deck.outline.outer], true)} />
					))}
			</>
		),
		[room, depth],
	);
}

/** What is built stands over every layer. */
function Walls({ room }: { room: RoomPlan }) {
	return useMemo(
		() => (
			<>
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

function Patches({ batches }: { batches: Batches }) {
	const id = useId();
	return (
		<g class="map-patches">
			<PatchPatterns id={id} />
			{batches.list.map((batch) => (
				<Patch
					key={batch.number}
					batch={batch}
					of={batches.list.length}
					state={batches.stateOf(batch.number)}
					patterns={id}
				/>
			))}
		</g>
	);
}

/** Spreads the steps that there are over the whole ramp. */
export function bandClass(step: number, steps: number): string {
	return `band-${steps <= 1 ? 2 : Math.round((step * 8) / (steps - 1))}`;
}
