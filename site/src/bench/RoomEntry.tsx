// Entering a room: its outline in one of four ways, and what stands in it.

import type { Job, Room, Shape } from "../engine/contract";
import { Choice, Field, Pick, RemoveButton, Section } from "../parts/fields";
import { edit, job, newId, plan, problemOf } from "../state/job";
import { said, t } from "../words/words";

type RoomProps = { index: number };

/** The unit that a bare length takes. */
export function lengthUnit(): string {
	return job.value?.units === "us" ? "ft" : "m";
}

export function depthUnit(): string {
	return job.value?.units === "us" ? "in" : "mm";
}

/** Changes the open room. */
export function editRoom(index: number, field: string, change: (room: Room, draft: Job) => void): void {
	edit(`rooms/${index}/${field}`, (draft) => {
		const room = draft.rooms[index];
		if (room) change(room, draft);
	});
}

export function RoomEntry({ index }: RoomProps) {
	const room = job.value?.rooms[index];
	const planned = plan.value?.rooms[index];
	if (!room) return null;
	return (
		<Section title={t("Room")} says={planned?.drawn ? said(planned.area.text) : t("size not given")} open id="room">
			<Field
				label={t("Name of the room")}
				field={`rooms/${index}/name`}
				value={room.name}
				onChange={(name) =>
					editRoom(index, "name", (r) => {
						r.name = name;
					})
				}
			/>
			<ShapeEntry
				shape={room.outline}
				field={`rooms/${index}/outline`}
				onChange={(change) => editRoom(index, "outline", (r) => change(r.outline))}
			/>
			{planned?.closing && (
				<p class="small">
					{t("The walk missed its start by {error}, 1 in {oneIn}; the error is shared out over the walls.", {
						error: said(planned.closing.error.text),
						oneIn: planned.closing.oneIn,
					})}
				</p>
			)}
			<KeepOuts index={index} />
		</Section>
	);
}

/** An outline entered as length × width, round the walls, or by its corners. */
export function ShapeEntry(props: {
	shape: Shape;
	field: string;
	onChange: (change: (shape: Shape) => void) => void;
	movable?: boolean;
}) {
	const { shape, field, onChange } = props;
	const problem = problemOf(field) ?? problemOf(`${field}/walk`);
	return (
		<>
			<Pick
				label={t("How it is measured")}
				value={shape.how}
				onChange={(how) => onChange((s) => changeWay(s, how))}
				choices={[
					{ value: "rectangle", label: t("Length × width") },
					{ value: "walk", label: t("Round the walls") },
					{ value: "corners", label: t("Corners") },
					...(props.movable ? [] : [{ value: "area", label: t("Area only") }]),
				]}
			/>
			{shape.how === "rectangle" && <RectangleEntry {...props} />}
			{shape.how === "walk" && <WalkEntry {...props} />}
			{shape.how === "corners" && <CornersEntry {...props} />}
			{shape.how === "area" && <AreaEntry {...props} />}
			{problem && (
				<p class="field-error" role="alert">
					{said(problem.message)} {said(problem.remedy)}
				</p>
			)}
		</>
	);
}

type ShapeProps = {
	shape: Shape;
	field: string;
	onChange: (change: (shape: Shape) => void) => void;
	movable?: boolean;
};

function changeWay(shape: Shape, how: string): void {
	shape.how = how;
	if (how === "walk" && !shape.walk?.length)
		shape.walk = Array.from({ length: 4 }, () => ({ length: "", turn: "left" }));
	if (how === "corners" && !shape.corners?.length) shape.corners = Array.from({ length: 4 }, () => ({ x: "", y: "" }));
}

/** An area alone, drawn as a square until somebody measures the walls. */
function AreaEntry({ shape, field, onChange }: ShapeProps) {
	return (
		<Field
			label={t("Area, or length × width")}
			unit={job.value?.units === "us" ? "sq ft" : "m²"}
			hint={t("Drawn as a square until the walls are measured.")}
			field={`${field}/area`}
			value={shape.area ?? ""}
			onChange={(v) =>
				onChange((s) => {
					s.area = v;
				})
			}
		/>
	);
}

function RectangleEntry({ shape, field, onChange, movable }: ShapeProps) {
	const unit = lengthUnit();
	return (
		<>
			<div class="row row-even">
				<Field
					label={t("Length")}
					unit={unit}
					field={`${field}/length`}
					value={shape.length ?? ""}
					onChange={(v) =>
						onChange((s) => {
							s.length = v;
						})
					}
				/>
				<Field
					label={t("Width")}
					unit={unit}
					field={`${field}/width`}
					value={shape.width ?? ""}
					onChange={(v) =>
						onChange((s) => {
							s.width = v;
						})
					}
				/>
			</div>
			{movable && (
				<div class="row row-even">
					<Field
						label={t("From the left")}
						unit={unit}
						field={`${field}/at/x`}
						value={shape.at?.x ?? ""}
						onChange={(v) =>
							onChange((s) => {
								s.at = { x: v, y: s.at?.y ?? "" };
							})
						}
					/>
					<Field
						label={t("From below")}
						unit={unit}
						field={`${field}/at/y`}
						value={shape.at?.y ?? ""}
						onChange={(v) =>
							onChange((s) => {
								s.at = { x: s.at?.x ?? "", y: v };
							})
						}
					/>
				</div>
			)}
		</>
	);
}

function WalkEntry({ shape, field, onChange }: ShapeProps) {
	const walk = shape.walk ?? [];
	return (
		<>
			<p class="field-hint">
				{t("Start in a corner with the room on your left. Give each wall’s length, then how you turn at its end.")}
			</p>
			<ol class="legs">
				{walk.map((leg, i) => (
					<li key={i} class="row">
						<Field
							label={t("Wall {n}", { n: i + 1 })}
							unit={lengthUnit()}
							field={`${field}/walk/${i}/length`}
							value={leg.length}
							onChange={(v) =>
								onChange((s) => {
									const l = s.walk?.[i];
									if (l) l.length = v;
								})
							}
						/>
						<Choice
							label={t("then turn")}
							value={leg.turn}
							field={`${field}/walk/${i}/turn`}
							onChange={(v) =>
								onChange((s) => {
									const l = s.walk?.[i];
									if (l) l.turn = v;
								})
							}
							choices={turns(leg.turn)}
						/>
						<RemoveButton
							what={t("wall {n}", { n: i + 1 })}
							onClick={() =>
								onChange((s) => {
									s.walk?.splice(i, 1);
								})
							}
						/>
					</li>
				))}
			</ol>
			<button
				type="button"
				onClick={() =>
					onChange((s) => {
						s.walk = [...(s.walk ?? []), { length: "", turn: "left" }];
					})
				}
			>
				{t("Add a wall")}
			</button>
		</>
	);
}

function turns(current: string): { value: string; label: string }[] {
	const usual = [
		{ value: "left", label: t("left") },
		{ value: "right", label: t("right") },
		{ value: "45", label: t("45° left") },
		{ value: "-45", label: t("45° right") },
	];
	return usual.some((turn) => turn.value === current) ? usual : [...usual, { value: current, label: current }];
}

function CornersEntry({ shape, field, onChange }: ShapeProps) {
	const corners = shape.corners ?? [];
	return (
		<>
			<p class="field-hint">{t("Corners in order, measured from one spot: x to the right, y away from you.")}</p>
			<ol class="legs">
				{corners.map((corner, i) => (
					<li key={i} class="row">
						{(["x", "y"] as const).map((axis) => (
							<Field
								key={axis}
								label={`${axis} ${i + 1}`}
								unit={lengthUnit()}
								field={`${field}/corners/${i}/${axis}`}
								value={corner[axis]}
								onChange={(v) =>
									onChange((s) => {
										const c = s.corners?.[i];
										if (c) c[axis] = v;
									})
								}
							/>
						))}
						<RemoveButton
							what={t("corner {n}", { n: i + 1 })}
							onClick={() =>
								onChange((s) => {
									s.corners?.splice(i, 1);
								})
							}
						/>
					</li>
				))}
			</ol>
			<button
				type="button"
				onClick={() =>
					onChange((s) => {
						s.corners = [...(s.corners ?? []), { x: "", y: "" }];
					})
				}
			>
				{t("Add a corner")}
			</button>
		</>
	);
}

export function KeepOuts({ index }: RoomProps) {
	const room = job.value?.rooms[index];
	return (
		<>
			{room?.keepOuts.map((keepOut, i) => (
				<div class="card" key={keepOut.id}>
					<div class="card-head">
						<Field
							label={t("Keep-out")}
							field={`rooms/${index}/keepOuts/${i}/name`}
							value={keepOut.name}
							onChange={(v) =>
								editRoom(index, `keepOuts/${i}/name`, (r) => {
									const k = r.keepOuts[i];
									if (k) k.name = v;
								})
							}
						/>
						<RemoveButton
							what={keepOut.name || t("keep-out")}
							onClick={() =>
								editRoom(index, "keepOuts", (r) => {
									r.keepOuts.splice(i, 1);
								})
							}
						/>
					</div>
					<ShapeEntry
						movable
						shape={keepOut.shape}
						field={`rooms/${index}/keepOuts/${i}/shape`}
						onChange={(change) =>
							editRoom(index, `keepOuts/${i}`, (r) => {
								const k = r.keepOuts[i];
								if (k) change(k.shape);
							})
						}
					/>
				</div>
			))}
			<button
				type="button"
				onClick={() =>
					editRoom(index, "keepOuts", (r) => {
						r.keepOuts.push({
							id: newId("keep-out"),
							name: "",
							shape: { how: "rectangle", length: "", width: "", at: { x: "", y: "" } },
						});
					})
				}
			>
				{t("Add a keep-out: bath, recess, island")}
			</button>
		</>
	);
}
