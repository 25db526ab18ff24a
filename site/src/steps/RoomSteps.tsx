// The room: its size, what stands in it, its doors, what comes up through it. Each beside the picture that it draws.
import { editRoom, KeepOuts, lengthUnit, ShapeEntry } from "../bench/RoomEntry";
import type { Door } from "../engine/contract";
import { FloorPicture } from "../map/FloorPicture";
import { Choice, Field, RemoveButton } from "../parts/fields";
import { job, newId, plan } from "../state/job";
import { said, t } from "../words/words";
import { DoorPicture, DrainPicture, KeepOutPicture, TapePicture } from "./pictures";
import type { StepProps } from "./Steps";
import { How } from "./WordStep";

export function OutlineStep({ step }: StepProps) {
	const room = job.value?.rooms[step.room];
	if (!room) return null;
	return (
		<>
			<ShapeEntry
				shape={room.outline}
				field={`rooms/${step.room}/outline`}
				onChange={(change) => editRoom(step.room, "outline", (r) => change(r.outline))}
			/>
			<Drawn room={step.room} />
			<How
				picture={<TapePicture />}
				text={t(
					"Hold the tape flat on the floor, wall to wall. A room with corners more than four: choose “Round the walls” and walk it, wall by wall.",
				)}
			/>
		</>
	);
}

/** The room as far as it is drawn, with its walls counted. */
function Drawn({ room }: { room: number }) {
	const planned = plan.value?.rooms[room];
	if (!planned?.drawn) return null;
	return (
		<div class="step-floor">
			<FloorPicture room={planned} walls />
			<p class="small soft">{said(planned.area.text)}</p>
		</div>
	);
}

export function KeepOutsStep({ step }: StepProps) {
	return (
		<>
			<How
				picture={<KeepOutPicture />}
				text={t(
					"Give its size, and how far its near corner is from the room’s first corner, to the right and away from you.",
				)}
			/>
			<Drawn room={step.room} />
			<KeepOuts index={step.room} />
		</>
	);
}

export function DoorsStep({ step }: StepProps) {
	const room = job.value?.rooms[step.room];
	if (!room) return null;
	return (
		<>
			<Drawn room={step.room} />
			{room.doors.map((door, i) => (
				<DoorCard key={door.id} room={step.room} at={i} door={door} />
			))}
			<button type="button" onClick={() => addDoor(step.room)}>
				{t("Add a door")}
			</button>
			<How
				picture={<DoorPicture />}
				text={t(
					"Measure along the wall from its start to the opening, then the opening. Walls are counted in the picture; each starts where the one before it ends.",
				)}
			/>
		</>
	);
}

function addDoor(index: number): void {
	editRoom(index, "doors", (room) => {
		room.doors.push({
			id: newId("door"),
			name: "",
			wall: 0,
			at: "",
			width: job.value?.units === "us" ? "32 in" : "0.80 m",
			exit: room.doors.length === 0,
			neighbour: "",
			answers: {},
		});
	});
}

function DoorCard(props: { room: number; at: number; door: Door }) {
	const { room, at, door } = props;
	const walls = plan.value?.rooms[room]?.walls ?? [];
	const change = (key: string, set: (door: Door) => void) =>
		editRoom(room, `doors/${at}/${key}`, (r) => {
			const one = r.doors[at];
			if (one) set(one);
		});
	const field = (key: "name" | "at" | "width" | "neighbour", label: string, unit: string, hint?: string) => (
		<Field
			label={label}
			unit={unit}
			hint={hint}
			field={`rooms/${room}/doors/${at}/${key}`}
			value={door[key]}
			onChange={(typed) =>
				change(key, (d) => {
					d[key] = typed;
				})
			}
		/>
	);
	return (
		<div class="card">
			<div class="card-head">
				{field("name", t("Door to"), "")}
				<RemoveButton
					what={door.name || t("door")}
					onClick={() =>
						editRoom(room, "doors", (r) => {
							r.doors.splice(at, 1);
						})
					}
				/>
			</div>
			<div class="row row-even">
				<Choice
					label={t("In wall")}
					value={String(door.wall)}
					onChange={(wall) =>
						change("wall", (d) => {
							d.wall = Number(wall);
						})
					}
					choices={walls.map((wall, i) => ({ value: String(i), label: `${i + 1} (${said(wall.text)})` }))}
				/>
				{field("at", t("From its start"), lengthUnit())}
				{field("width", t("Width"), lengthUnit())}
			</div>
			<label class="tick">
				<input
					type="checkbox"
					checked={door.exit}
					onChange={(event) => {
						const exit = event.currentTarget.checked;
						change("exit", (d) => {
							d.exit = exit;
						});
					}}
				/>
				{t("The way out on pour day")}
			</label>
			{field(
				"neighbour",
				t("Reading on the floor beyond"),
				job.value?.rooms[room]?.readings.heightUnit ?? "",
				t("If you know it: read like the room’s own heights. It tells how the two floors will meet."),
			)}
		</div>
	);
}

const kinds = ["drain", "flange", "pipe"];

export function DrainsStep({ step }: StepProps) {
	const room = job.value?.rooms[step.room];
	if (!room) return null;
	return (
		<>
			<Drawn room={step.room} />
			{room.penetrations.map((one, i) => {
				const base = `rooms/${step.room}/penetrations/${i}`;
				const change = (key: string, set: (p: typeof one) => void) =>
					editRoom(step.room, `penetrations/${i}/${key}`, (r) => {
						const p = r.penetrations[i];
						if (p) set(p);
					});
				return (
					<div class="card" key={one.id}>
						<div class="card-head">
							<Choice
								label={t("What it is")}
								value={one.kind}
								choices={kinds.map((kind) => ({ value: kind, label: said(kind) }))}
								onChange={(kind) =>
									change("kind", (p) => {
										p.kind = kind;
									})
								}
							/>
							<RemoveButton
								what={said(one.kind)}
								onClick={() =>
									editRoom(step.room, "penetrations", (r) => {
										r.penetrations.splice(i, 1);
									})
								}
							/>
						</div>
						<div class="row row-even">
							<Field
								label={t("From the left")}
								unit={lengthUnit()}
								field={`${base}/at/x`}
								value={one.at.x}
								onChange={(typed) =>
									change("x", (p) => {
										p.at.x = typed;
									})
								}
							/>
							<Field
								label={t("From below")}
								unit={lengthUnit()}
								field={`${base}/at/y`}
								value={one.at.y}
								onChange={(typed) =>
									change("y", (p) => {
										p.at.y = typed;
									})
								}
							/>
							<Field
								label={t("Diameter")}
								unit={job.value?.units === "us" ? "in" : "mm"}
								field={`${base}/diameter`}
								value={one.diameter}
								onChange={(typed) =>
									change("diameter", (p) => {
										p.diameter = typed;
									})
								}
							/>
						</div>
						<Field
							label={t("Reading on its top")}
							unit={room.readings.heightUnit}
							field={`${base}/height`}
							value={one.height}
							onChange={(typed) =>
								change("height", (p) => {
									p.height = typed;
								})
							}
						/>
					</div>
				);
			})}
			<button
				type="button"
				onClick={() =>
					editRoom(step.room, "penetrations", (r) => {
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
			<How
				picture={<DrainPicture />}
				text={t(
					"Measure to its middle from the room’s first corner: to the right along the first wall, then away from it.",
				)}
			/>
		</>
	);
}
