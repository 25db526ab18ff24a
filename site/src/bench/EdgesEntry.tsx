// The room's edges: its doors, and the drains, flanges and pipes that come up through it. The bench asks all of them here; the steps use their cards.
import type { ComponentChildren } from "preact";
import type { Door, Penetration } from "../engine/contract";
import { Choice, Field, RemoveButton, Section } from "../parts/fields";
import { job, newId, plan } from "../state/job";
import { said, t } from "../words/words";
import { depthUnit, editRoom, lengthUnit } from "./RoomEntry";
import { WordField } from "./WordField";
import { Words } from "./WordGroups";

export function EdgesEntry({ index }: { index: number }) {
	const room = job.value?.rooms[index];
	if (!room) return null;
	const planned = plan.value?.rooms[index];
	const subject = (scope: string, id: string) => ({ scope, room: room.id, id, name: "" });
	return (
		<Section
			title={t("Doors and drains")}
			says={t("{doors} doors, {others} drains or pipes", {
				doors: room.doors.length,
				others: room.penetrations.length,
			})}
			id="edges"
		>
			{room.doors.map((door, i) => (
				<DoorCard
					key={door.id}
					room={index}
					at={i}
					door={door}
					hint={t("Read it like the others, on the finished floor next door.")}
				>
					<WordField name="door.leaf_gap" subject={subject("door", door.id)} />
					<WordField name="door.dammed" subject={subject("door", door.id)} />
					{planned?.doors.find((d) => d.id === door.id)?.holds.includes("door.dammed") && (
						<WordField name="door.dam_height" subject={subject("door", door.id)} />
					)}
					<WordField name="stair.place" subject={subject("door", door.id)} />
					{["foot", "head"].includes(door.answers["stair.place"] ?? "") && (
						<>
							<WordField name="stair.nearest" subject={subject("door", door.id)} />
							<WordField name="stair.riser" subject={subject("door", door.id)} />
						</>
					)}
				</DoorCard>
			))}
			<AddDoor room={index} />
			{room.penetrations.map((one, i) => (
				<PenetrationCard key={one.id} room={index} at={i} penetration={one}>
					<Words
						step="edges"
						subject={subject("penetration", one.id)}
						holds={planned?.penetrations.find((p) => p.id === one.id)?.holds}
					/>
				</PenetrationCard>
			))}
			<AddPenetration room={index} />
		</Section>
	);
}

type CardProps = { room: number; at: number; children?: ComponentChildren };

/** One door: where it is, and the floor beyond it. */
export function DoorCard(props: CardProps & { door: Door; hint: string }) {
	const { room, at, door } = props;
	const change = (key: string, set: (door: Door) => void) =>
		editRoom(room, `doors/${at}/${key}`, (r) => {
			const one = r.doors[at];
			if (one) set(one);
		});
	const field = (key: "name" | "at" | "width" | "neighbour", label: string, unit = "", hint?: string) => (
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
				{field("name", t("Door to"))}
				<RemoveButton
					what={door.name || t("door")}
					onClick={() => editRoom(room, "doors", (r) => void r.doors.splice(at, 1))}
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
					choices={walls(room, door.wall)}
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
			{field("neighbour", t("Reading on the floor beyond"), heightUnit(room), props.hint)}
			{props.children}
		</div>
	);
}

export function AddDoor({ room }: { room: number }) {
	const add = () =>
		editRoom(room, "doors", (r) => {
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
		});
	return (
		<button type="button" onClick={add}>
			{t("Add a door")}
		</button>
	);
}

/** One drain, flange or pipe. */
export function PenetrationCard(props: CardProps & { penetration: Penetration }) {
	const { room, at, penetration } = props;
	const change = (key: string, set: (penetration: Penetration) => void) =>
		editRoom(room, `penetrations/${at}/${key}`, (r) => {
			const one = r.penetrations[at];
			if (one) set(one);
		});
	const field = (key: "name" | "diameter" | "height", label: string, unit = "") => (
		<Field
			label={label}
			unit={unit}
			field={`rooms/${room}/penetrations/${at}/${key}`}
			value={penetration[key]}
			onChange={(typed) =>
				change(key, (p) => {
					p[key] = typed;
				})
			}
		/>
	);
	const place = (axis: "x" | "y", label: string) => (
		<Field
			label={label}
			unit={lengthUnit()}
			field={`rooms/${room}/penetrations/${at}/at/${axis}`}
			value={penetration.at[axis]}
			onChange={(typed) =>
				change(`at/${axis}`, (p) => {
					p.at[axis] = typed;
				})
			}
		/>
	);
	return (
		<div class="card">
			<div class="card-head">
				{field("name", t("Drain, flange or pipe"))}
				<RemoveButton
					what={penetration.name || said(penetration.kind)}
					onClick={() => editRoom(room, "penetrations", (r) => void r.penetrations.splice(at, 1))}
				/>
			</div>
			<Choice
				label={t("What it is")}
				value={penetration.kind}
				onChange={(kind) =>
					change("kind", (p) => {
						p.kind = kind;
					})
				}
				choices={["drain", "flange", "pipe"].map((kind) => ({ value: kind, label: said(kind) }))}
			/>
			<div class="row row-even">
				{place("x", t("From the left"))}
				{place("y", t("From below"))}
				{field("diameter", t("Diameter"), depthUnit())}
			</div>
			{field("height", t("Reading on its top"), heightUnit(room))}
			{props.children}
		</div>
	);
}

export function AddPenetration({ room }: { room: number }) {
	const add = () =>
		editRoom(room, "penetrations", (r) => {
			r.penetrations.push({
				id: newId("drain"),
				name: "",
				kind: "drain",
				at: { x: "", y: "" },
				diameter: "",
				height: "",
				answers: {},
			});
		});
	return (
		<button type="button" onClick={add}>
			{t("Add a drain, flange or pipe")}
		</button>
	);
}

const heightUnit = (room: number): string => job.value?.rooms[room]?.readings.heightUnit ?? "";

/** The walls to choose from: those that are drawn, and the one chosen. */
function walls(room: number, chosen: number): { value: string; label: string }[] {
	const lengths = plan.value?.rooms[room]?.walls ?? [];
	const count = Math.max(lengths.length, chosen + 1);
	return Array.from({ length: count }, (_, i) => ({
		value: String(i),
		label: `${i + 1}${lengths[i] ? ` (${said(lengths[i].text)})` : ""}`,
	}));
}
