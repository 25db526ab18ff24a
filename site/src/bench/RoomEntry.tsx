// Entering a room: its outline in one of three ways, what stands in it, and its doors.

import type { Job, Room, Shape } from "../engine/contract";
import { Choice, Field, Pick, RemoveButton, Section } from "../parts/fields";
import { edit, job, newId, plan, problemOf } from "../state/job";
import { said, t } from "../words/words";
import { WordField } from "./WordField";
import { Words } from "./WordGroups";

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
						<Field
							label={`x ${i + 1}`}
							unit={lengthUnit()}
							field={`${field}/corners/${i}/x`}
							value={corner.x}
							onChange={(v) =>
								onChange((s) => {
									const c = s.corners?.[i];
									if (c) c.x = v;
								})
							}
						/>
						<Field
							label={`y ${i + 1}`}
							unit={lengthUnit()}
							field={`${field}/corners/${i}/y`}
							value={corner.y}
							onChange={(v) =>
								onChange((s) => {
									const c = s.corners?.[i];
									if (c) c.y = v;
								})
							}
						/>
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

/** Doors, and drains, flanges and pipes: the room's edges. */
export function EdgesEntry({ index }: RoomProps) {
	const room = job.value?.rooms[index];
	if (!room) return null;
	const subject = (scope: string, id: string) => ({ scope, room: room.id, id, name: "" });
	return (
		<Section
			title={t("Doors and drains")}
			says={t("{doors} doors, {others} drains and pipes", {
				doors: room.doors.length,
				others: room.penetrations.length,
			})}
			id="edges"
		>
			{room.doors.map((door, i) => (
				<div class="card" key={door.id}>
					<div class="card-head">
						<Field
							label={t("Door to")}
							field={`rooms/${index}/doors/${i}/name`}
							value={door.name}
							onChange={(v) => editDoor(index, i, "name", v)}
						/>
						<RemoveButton
							what={door.name || t("door")}
							onClick={() =>
								editRoom(index, "doors", (r) => {
									r.doors.splice(i, 1);
								})
							}
						/>
					</div>
					<div class="row row-even">
						<Choice
							label={t("In wall")}
							value={String(door.wall)}
							onChange={(v) =>
								editRoom(index, `doors/${i}`, (r) => {
									const d = r.doors[i];
									if (d) d.wall = Number(v);
								})
							}
							choices={walls(index, door.wall)}
						/>
						<Field
							label={t("From its start")}
							unit={lengthUnit()}
							field={`rooms/${index}/doors/${i}/at`}
							value={door.at}
							onChange={(v) => editDoor(index, i, "at", v)}
						/>
						<Field
							label={t("Width")}
							unit={lengthUnit()}
							field={`rooms/${index}/doors/${i}/width`}
							value={door.width}
							onChange={(v) => editDoor(index, i, "width", v)}
						/>
					</div>
					<label class="tick">
						<input
							type="checkbox"
							checked={door.exit}
							onChange={(event) => {
								const exit = event.currentTarget.checked;
								editRoom(index, `doors/${i}`, (r) => {
									const d = r.doors[i];
									if (d) d.exit = exit;
								});
							}}
						/>
						{t("The way out on pour day")}
					</label>
					<Field
						label={t("Reading on the floor beyond")}
						unit={room.readings.heightUnit}
						field={`rooms/${index}/doors/${i}/neighbour`}
						value={door.neighbour}
						hint={t("Read it like the others, on the finished floor next door.")}
						onChange={(v) => editDoor(index, i, "neighbour", v)}
					/>
					<WordField name="door.leaf_gap" subject={subject("door", door.id)} />
					<WordField name="door.dammed" subject={subject("door", door.id)} />
					{plan.value?.rooms[index]?.doors.find((d) => d.id === door.id)?.holds.includes("door.dammed") && (
						<WordField name="door.dam_height" subject={subject("door", door.id)} />
					)}
					<WordField name="stair.place" subject={subject("door", door.id)} />
					{["foot", "head"].includes(door.answers["stair.place"] ?? "") && (
						<>
							<WordField name="stair.nearest" subject={subject("door", door.id)} />
							<WordField name="stair.riser" subject={subject("door", door.id)} />
						</>
					)}
				</div>
			))}
			<button
				type="button"
				onClick={() =>
					editRoom(index, "doors", (r) => {
						r.doors.push({
							id: newId("door"),
							name: "",
							wall: 0,
							at: "",
							width: job.value?.units === "us" ? "32 in" : "0.80 m",
							exit: r.doors.length === 0,
							neighbour: "",
							answers: {},
						});
					})
				}
			>
				{t("Add a door")}
			</button>
			{room.penetrations.map((p, i) => (
				<div class="card" key={p.id}>
					<div class="card-head">
						<Field
							label={t("Drain, flange or pipe")}
							field={`rooms/${index}/penetrations/${i}/name`}
							value={p.name}
							onChange={(v) =>
								editPenetration(index, i, (x) => {
									x.name = v;
								})
							}
						/>
						<RemoveButton
							what={p.name || said(p.kind)}
							onClick={() =>
								editRoom(index, "penetrations", (r) => {
									r.penetrations.splice(i, 1);
								})
							}
						/>
					</div>
					<Choice
						label={t("What it is")}
						value={p.kind}
						onChange={(v) =>
							editPenetration(index, i, (x) => {
								x.kind = v;
							})
						}
						choices={["drain", "flange", "pipe"].map((kind) => ({ value: kind, label: said(kind) }))}
					/>
					<div class="row row-even">
						<Field
							label="x"
							unit={lengthUnit()}
							field={`rooms/${index}/penetrations/${i}/at/x`}
							value={p.at.x}
							onChange={(v) =>
								editPenetration(index, i, (x) => {
									x.at.x = v;
								})
							}
						/>
						<Field
							label="y"
							unit={lengthUnit()}
							field={`rooms/${index}/penetrations/${i}/at/y`}
							value={p.at.y}
							onChange={(v) =>
								editPenetration(index, i, (x) => {
									x.at.y = v;
								})
							}
						/>
						<Field
							label={t("Diameter")}
							unit={depthUnit()}
							field={`rooms/${index}/penetrations/${i}/diameter`}
							value={p.diameter}
							onChange={(v) =>
								editPenetration(index, i, (x) => {
									x.diameter = v;
								})
							}
						/>
					</div>
					<Field
						label={t("Reading on its top")}
						unit={room.readings.heightUnit}
						field={`rooms/${index}/penetrations/${i}/height`}
						value={p.height}
						onChange={(v) =>
							editPenetration(index, i, (x) => {
								x.height = v;
							})
						}
					/>
					<Words
						step="edges"
						subject={subject("penetration", p.id)}
						holds={plan.value?.rooms[index]?.penetrations.find((planned) => planned.id === p.id)?.holds}
					/>
				</div>
			))}
			<button
				type="button"
				onClick={() =>
					editRoom(index, "penetrations", (r) => {
						r.penetrations.push({
							id: newId("drain"),
							name: "",
							kind: "drain",
							at: { x: "", y: "" },
							diameter: "",
							height: "",
							answers: {},
						});
					})
				}
			>
				{t("Add a drain, flange or pipe")}
			</button>
		</Section>
	);
}

function walls(index: number, chosen: number): { value: string; label: string }[] {
	const lengths = plan.value?.rooms[index]?.walls ?? [];
	const count = Math.max(lengths.length, chosen + 1);
	return Array.from({ length: count }, (_, i) => ({
		value: String(i),
		label: `${i + 1}${lengths[i] ? ` (${said(lengths[i].text)})` : ""}`,
	}));
}

function editDoor(index: number, i: number, key: "name" | "at" | "width" | "neighbour", value: string): void {
	editRoom(index, `doors/${i}/${key}`, (r) => {
		const door = r.doors[i];
		if (door) door[key] = value;
	});
}

function editPenetration(index: number, i: number, change: (p: Room["penetrations"][number]) => void): void {
	editRoom(index, `penetrations/${i}`, (r) => {
		const p = r.penetrations[i];
		if (p) change(p);
	});
}
