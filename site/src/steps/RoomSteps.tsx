// The room: its size, what stands in it, its doors, what comes up through it. Each beside the picture that it draws.
import { AddDoor, AddPenetration, DoorCard, PenetrationCard } from "../bench/EdgesEntry";
import { editRoom, KeepOuts, ShapeEntry } from "../bench/RoomEntry";
import { FloorPicture } from "../map/FloorPicture";
import { job, plan } from "../state/job";
import { said, t } from "../words/words";
import type { StepProps } from "./guide";
import { How } from "./How";
import { DoorPicture, DrainPicture, KeepOutPicture, TapePicture } from "./pictures";

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
					"Hold the tape flat on the floor, wall to wall. A room with more than four corners: choose “Round the walls” and walk it, wall by wall.",
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
				<DoorCard
					key={door.id}
					room={step.room}
					at={i}
					door={door}
					hint={t("If you know it: read it as you read the room’s own heights. It tells how the two floors will meet.")}
				/>
			))}
			<AddDoor room={step.room} />
			<How
				picture={<DoorPicture />}
				text={t(
					"Measure along the wall from its start to the opening, then the opening. Walls are counted in the picture; each starts where the one before it ends.",
				)}
			/>
		</>
	);
}

export function DrainsStep({ step }: StepProps) {
	const room = job.value?.rooms[step.room];
	if (!room) return null;
	return (
		<>
			<Drawn room={step.room} />
			{room.penetrations.map((one, i) => (
				<PenetrationCard key={one.id} room={step.room} at={i} penetration={one} />
			))}
			<AddPenetration room={step.room} />
			<How
				picture={<DrainPicture />}
				text={t(
					"Measure to its middle from the room’s first corner: to the right along the first wall, then away from it.",
				)}
			/>
		</>
	);
}
