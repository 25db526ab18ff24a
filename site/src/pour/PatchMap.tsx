// The patches of a pour in plan: numbered in order, coloured from first to last, and marked by what has happened to each.
import { useId } from "preact/hooks";
import type { BatchPlan, Point, RoomPlan, RoomPour } from "../engine/contract";
import { bounds, path } from "../map/view";
import { said, t } from "../words/words";

/** What has happened to a patch: nothing yet, its batch is being made, it is being poured, it is down, or it was left out. */
export type PatchState = "to-come" | "making" | "pouring" | "down" | "left-out";

type PatchMapProps = {
	room: RoomPlan;
	pour: RoomPour;
	stateOf: (batch: number) => PatchState;
	label: string;
};

export function PatchMap(props: PatchMapProps) {
	const { room, stateOf } = props;
	const { outline, batches, exits, dams } = props.pour;
	const patterns = useId();
	if (room.outline.outer.length < 3) return null; // a room that can't be drawn: the plan says why
	const box = frame(room.outline.outer);
	const text = Math.max(box.width, box.height) / 26;
	return (
		<svg
			class="patch-map"
			viewBox={`${box.x} ${box.y} ${box.width} ${box.height}`}
			style={{ aspectRatio: `${box.width} / ${box.height}` }}
			role="img"
			aria-label={props.label}
		>
			<PatchPatterns id={patterns} />
			<path class="floor-ground" d={path([outline.outer, ...outline.holes], true)} fill-rule="evenodd" />
			{batches.map((batch) => (
				<Patch key={batch.number} batch={batch} of={batches.length} state={stateOf(batch.number)} patterns={patterns} />
			))}
			<path class="keep-out" d={path(room.outline.holes, true)} />
			<path class="wall" d={path([room.outline.outer], true)} />
			{room.doors.map((door) => (
				<path key={door.id} class="door-line" d={path([[door.from, door.to]], false)} />
			))}
			{dams.map((dam) => (
				<path key={`${dam.from.x},${dam.from.y},${dam.to.x}`} class="patch-dam" d={path([[dam.from, dam.to]], false)} />
			))}
			{exits.map((exit) => (
				<text
					key={`${exit.x},${exit.y}`}
					class="patch-text"
					x={exit.x * 1000}
					y={-exit.y * 1000 + text * 1.5}
					font-size={text * 0.8}
				>
					{t("way out")}
				</text>
			))}
			{batches.map((batch) => (
				<text
					key={batch.number}
					class="patch-text patch-number"
					x={batch.label.x * 1000}
					y={-batch.label.y * 1000 + text * 0.36}
					font-size={text}
				>
					{batch.number}
				</text>
			))}
		</svg>
	);
}

function frame(outer: Point[]): { x: number; y: number; width: number; height: number } {
	const { low, high } = bounds(outer);
	const [across, deep] = [(high.x - low.x) * 1000, (high.y - low.y) * 1000];
	const margin = Math.max(across, deep) * 0.09;
	return {
		x: low.x * 1000 - margin,
		y: -high.y * 1000 - margin,
		width: across + 2 * margin,
		height: deep + 2 * margin,
	};
}

/** The two hatches that tell what is happening to a patch, in millimetres of floor: thin while its batch is made. Dots are readings. */
export function PatchPatterns({ id }: { id: string }) {
	return (
		<defs>
			<pattern id={`${id}-hatch`} width="120" height="120" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
				<path d="M0 0V120" class="patch-hatch" />
			</pattern>
			<pattern id={`${id}-thin`} width="90" height="90" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
				<path d="M0 0V90" class="patch-hatch patch-thin" />
			</pattern>
		</defs>
	);
}

type PatchProps = { batch: BatchPlan; of: number; state: PatchState; patterns: string };

export function Patch({ batch, of, state, patterns }: PatchProps) {
	const shape = path(batch.polygons, true);
	const share = of > 1 ? (100 * (batch.number - 1)) / (of - 1) : 50;
	return (
		<g class={`patch patch-${state}`} data-batch={batch.number} data-state={state}>
			<title>
				{t("Batch {n}: {area}, {volume}", {
					n: batch.number,
					area: said(batch.area.text),
					volume: said(batch.volume.text),
				})}
			</title>
			<path class="patch-fill" style={{ "--share": `${share}%` }} d={shape} fill-rule="evenodd" />
			{state === "making" && <path fill={`url(#${patterns}-thin)`} d={shape} fill-rule="evenodd" />}
			{state === "pouring" && <path fill={`url(#${patterns}-hatch)`} d={shape} fill-rule="evenodd" />}
			{state === "left-out" && <path fill={`url(#${patterns}-hatch)`} d={shape} fill-rule="evenodd" />}
		</g>
	);
}
