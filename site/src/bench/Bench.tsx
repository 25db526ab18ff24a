// The bench: one job on one page, the floor map in the middle of it.
import { useState } from "preact/hooks";
import { call } from "../engine/client";
import type { Point } from "../engine/contract";
import { FloorMap } from "../map/FloorMap";
import { edit, job, newId, plan } from "../state/job";
import { t } from "../words/words";
import { EdgesEntry } from "./EdgesEntry";
import { Findings } from "./Findings";
import { ReadingsEntry } from "./ReadingsEntry";
import { editRoom, RoomEntry } from "./RoomEntry";
import { StudyPanel } from "./Study";
import { PrintedIndicators } from "./StudyFloor";
import { Counted, Totals } from "./Totals";
import { AirEntry, DeckEntry, PlaneEntry, SheetsEntry } from "./WorkEntry";

export function Bench() {
	const [chosen, setChosen] = useState(0);
	const [picked, setPicked] = useState<number | null>(null);
	const current = job.value;
	if (!current) return null;
	const index = Math.min(chosen, current.rooms.length - 1);
	const planned = plan.value?.rooms[index];
	const problemAt = plan.value?.problems.find(
		(problem) => problem.at && problem.field.startsWith(`rooms/${index}/`),
	)?.at;
	return (
		<main class={`bench${planned?.drawn ? "" : " bench-blank"}`} id="main">
			<h1 class="unseen">{current.name || t("Job without a name")}</h1>
			<div class="bench-entry">
				<RoomChoice index={index} onChoose={setChosen} />
				<RoomEntry index={index} />
				<ReadingsEntry index={index} picked={picked} onPick={setPicked} />
				<DeckEntry index={index} />
				<EdgesEntry index={index} />
				<PlaneEntry index={index} />
				<SheetsEntry />
				<AirEntry />
				<RoomCount index={index} onChoose={setChosen} />
			</div>
			<Totals />
			<div class="bench-floor">
				{planned && (
					<FloorMap
						key={planned.id}
						room={planned}
						picked={picked}
						onPick={setPicked}
						onAdd={(spot) => addReading(index, spot)}
						onOutline={(corners) => drawOutline(index, corners)}
						problemAt={problemAt ?? undefined}
					/>
				)}
				{planned?.drawn && <Counted />}
				<StudyPanel index={index} onPick={setPicked} />
			</div>
			<PrintedIndicators id={planned?.id} />
			<div class="bench-findings">
				<Findings />
			</div>
		</main>
	);
}

const length = { Length: 1, Mass: 0, Time: 0, Temperature: 0, Money: 0, Point: false };

/** Adds a reading where the map was tapped, in the job's units, and waits for its height. */
async function addReading(index: number, spot: Point): Promise<void> {
	const units = job.value?.units ?? "metric";
	const write = async (si: number) => (await call("quantity.write", { si, dimension: length, units })).text;
	const [x, y] = [await write(spot.x), await write(spot.y)];
	editRoom(index, "readings/rows", (room) => {
		room.readings.rows.push({ x, y, height: "" });
	});
	requestAnimationFrame(() =>
		document.querySelector<HTMLInputElement>(".readings tbody tr:last-child td:nth-child(3) input")?.focus(),
	);
}

/** Takes an outline drawn on the map as the room's corners. */
async function drawOutline(index: number, corners: Point[]): Promise<void> {
	const units = job.value?.units ?? "metric";
	const write = async (si: number) => (await call("quantity.write", { si, dimension: length, units })).text;
	const spots = await Promise.all(
		corners.map(async (corner) => ({ x: await write(corner.x), y: await write(corner.y) })),
	);
	editRoom(index, "outline", (room) => {
		room.outline = { ...room.outline, how: "corners", corners: spots };
	});
}

function RoomChoice({ index, onChoose }: { index: number; onChoose: (index: number) => void }) {
	const rooms = job.value?.rooms ?? [];
	if (rooms.length < 2) return null;
	return (
		<div class="room-choice pick" role="group" aria-label={t("Rooms")}>
			{rooms.map((room, i) => (
				<button type="button" key={room.id} aria-pressed={i === index} onClick={() => onChoose(i)}>
					{room.name || t("Room {n}", { n: i + 1 })}
				</button>
			))}
		</div>
	);
}

/** Another room, or one fewer. */
function RoomCount({ index, onChoose }: { index: number; onChoose: (index: number) => void }) {
	const rooms = job.value?.rooms ?? [];
	return (
		<div class="room-count row">
			<button
				type="button"
				onClick={async () => {
					const units = job.value?.units ?? "metric";
					const fresh = (await call("jobs.new", { units })).job.rooms[0];
					if (!fresh) return;
					const id = newId("room");
					edit("rooms", (draft) => {
						draft.rooms.push({ ...fresh, id, decks: fresh.decks.map((deck) => ({ ...deck, id: `${id}-deck` })) });
					});
					onChoose(rooms.length);
				}}
			>
				{t("Add a room")}
			</button>
			{rooms.length > 1 && (
				<button
					type="button"
					class="button-quiet"
					onClick={() =>
						edit("rooms", (draft) => {
							draft.rooms.splice(index, 1);
						})
					}
				>
					{t("Remove this room")}
				</button>
			)}
		</div>
	);
}
