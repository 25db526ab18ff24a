// Heights: how they are read, and the readings spot by spot. A tap on the picture chooses a spot or sets a new one; the keys walk through them.
import { useEffect, useRef, useState } from "preact/hooks";
import { editRoom } from "../bench/RoomEntry";
import { call } from "../engine/client";
import type { FieldSheetRoom, Point } from "../engine/contract";
import { FloorPicture } from "../map/FloorPicture";
import { Choice, Field } from "../parts/fields";
import { job, plan } from "../state/job";
import { to } from "../state/route";
import { said, t } from "../words/words";
import { goOn, type StepProps, spotsOf } from "./guide";
import { BoardPicture, DatumPicture, LaserPicture } from "./pictures";

export function SurveyStep({ step }: StepProps) {
	const readings = job.value?.rooms[step.room]?.readings;
	if (!readings) return null;
	const choose = (sense: string) => {
		editRoom(step.room, "readings", (room) => {
			room.readings.sense = sense;
		});
		return goOn(step.id);
	};
	return (
		<>
			<div class="methods">
				<button type="button" class="method" onClick={() => choose("below")}>
					<LaserPicture />
					<span>
						<b>{t("A laser and a staff")}</b>
						<span class="small">
							{t(
								"Set the laser up level. Stand a staff or a folding rule on each spot and read where the beam meets it.",
							)}
						</span>
					</span>
				</button>
				<button type="button" class="method" onClick={() => choose("below")}>
					<BoardPicture />
					<span>
						<b>{t("A straight board and a level")}</b>
						<span class="small">
							{t("Rest the board on the highest spot, level it, and measure from its lower edge down to the floor.")}
						</span>
					</span>
				</button>
				<button type="button" class="method" onClick={() => choose("above")}>
					<DatumPicture />
					<span>
						<b>{t("I have heights already")}</b>
						<span class="small">{t("Heights above one mark: a larger number is higher ground.")}</span>
					</span>
				</button>
			</div>
			<Choice
				label={t("Heights in")}
				value={readings.heightUnit}
				onChange={(unit) =>
					editRoom(step.room, "readings", (room) => {
						room.readings.heightUnit = unit;
					})
				}
				choices={["mm", "cm", "m", "in", "ft"].map((unit) => ({ value: unit, label: unit }))}
			/>
			<p>
				<a href={to("help", "survey-laser")}>{t("More on how to survey a room")}</a>
			</p>
		</>
	);
}

export function ReadingsStep({ step }: StepProps) {
	const room = job.value?.rooms[step.room];
	const planned = plan.value?.rooms[step.room];
	const sheet = spotsOf(room?.id);
	if (!room || !planned) return null;
	if (!planned.drawn || !sheet) {
		return <p>{t("The room’s size comes first: go back to it, and the spots to read are laid out here.")}</p>;
	}
	return sheet.suggested ? (
		<LayOut room={step.room} sheet={sheet} />
	) : (
		<ReadOff step={step.id} room={step.room} sheet={sheet} />
	);
}

/** Nothing is laid out yet: take the spread that the engine suggests, or choose spots by tapping. */
function LayOut({ room, sheet }: { room: number; sheet: FieldSheetRoom }) {
	const planned = plan.value?.rooms[room];
	if (!planned) return null;
	return (
		<>
			<p>
				{t("{count} spots, at most {apart} apart, make a fair survey. Or tap the floor where you want to read.", {
					count: sheet.spots.length,
					apart: said(sheet.apart.text),
				})}
			</p>
			<button
				type="button"
				class="button-main"
				onClick={() =>
					editRoom(room, "readings/rows", (r) => {
						r.readings.rows = sheet.spots.map((spot) => ({ x: spot.x.text, y: spot.y.text, height: "" }));
					})
				}
			>
				{t("Use these {count} spots", { count: sheet.spots.length })}
			</button>
			<FloorPicture room={planned} sheet={sheet} onTap={(spot) => addSpot(room, spot)} />
			<p>
				<a href={to("sheet", job.value?.id)}>{t("Print this as a field sheet to take into the room")}</a>
			</p>
		</>
	);
}

const length = { Length: 1, Mass: 0, Time: 0, Temperature: 0, Money: 0, Point: false };

async function addSpot(room: number, spot: Point): Promise<number> {
	const units = job.value?.units ?? "metric";
	const write = async (si: number) => (await call("quantity.write", { si, dimension: length, units })).text;
	const [x, y] = [await write(spot.x), await write(spot.y)];
	editRoom(room, "readings/rows", (r) => {
		r.readings.rows.push({ x, y, height: "" });
	});
	return (job.value?.rooms[room]?.readings.rows.length ?? 1) - 1;
}

/** One spot at a time: its place, its reading, on to the next. */
function ReadOff({ step, room, sheet }: { step: string; room: number; sheet: FieldSheetRoom }) {
	const [row, setRow] = useState(() => (sheet.spots.find((spot) => !spot.height) ?? sheet.spots[0])?.row ?? 0);
	const box = useRef<HTMLDivElement>(null);
	const planned = plan.value?.rooms[room];
	const rows = job.value?.rooms[room]?.readings.rows ?? [];
	const at = sheet.spots.findIndex((spot) => spot.row === row);
	const spot = sheet.spots[at] ?? sheet.spots[0];
	const read = sheet.spots.filter((one) => one.height.trim() !== "").length;
	useEffect(() => box.current?.querySelector("input")?.focus({ preventScroll: true }), [row]);
	if (!planned || !spot) return null;
	const pick = (place: number) => {
		const one = sheet.spots[(place + sheet.spots.length) % sheet.spots.length];
		if (one) setRow(one.row);
	};
	return (
		<>
			<form
				class="read-off"
				onSubmit={(event) => {
					event.preventDefault();
					if (at === sheet.spots.length - 1) void goOn(step);
					else pick(at + 1);
				}}
			>
				<p class="read-place" aria-live="polite">
					<b>{t("Spot {n} of {count}", { n: at + 1, count: sheet.spots.length })}</b>{" "}
					<span class="soft">
						{t("{x} from the left, {y} from below", { x: said(spot.x.text), y: said(spot.y.text) })}
					</span>
				</p>
				<div ref={box}>
					<Field
						label={t("Reading at spot {n}", { n: at + 1 })}
						unit={job.value?.rooms[room]?.readings.heightUnit}
						field={`rooms/${room}/readings/rows/${spot.row}/height`}
						inputMode="decimal"
						value={rows[spot.row]?.height ?? ""}
						onChange={(typed) =>
							editRoom(room, `readings/rows/${spot.row}/height`, (r) => {
								const one = r.readings.rows[spot.row];
								if (one) one.height = typed;
							})
						}
					/>
				</div>
				<div class="read-moves">
					<button type="button" aria-label={t("Spot before")} onClick={() => pick(at - 1)}>
						←
					</button>
					<button type="submit" class="read-next">
						{at === sheet.spots.length - 1 ? t("Done") : t("Next spot")}
					</button>
				</div>
				<p class="small soft" role="status">
					{t("{read} of {count} read. Tap a spot to go to it, or the floor to add one.", {
						read,
						count: sheet.spots.length,
					})}
				</p>
			</form>
			<FloorPicture
				room={planned}
				sheet={sheet}
				picked={spot.row}
				onTap={async (place, tapped) => setRow(tapped ?? (await addSpot(room, place)))}
			/>
			<div class="row">
				<button
					type="button"
					class="button-quiet"
					onClick={() => {
						editRoom(room, "readings/rows", (r) => {
							r.readings.rows.splice(spot.row, 1);
						});
						pick(Math.max(0, at - 1));
					}}
				>
					{t("Take this spot out")}
				</button>
			</div>
			<p>
				<a href={to("sheet", job.value?.id)}>{t("Print this as a field sheet to take into the room")}</a>
			</p>
		</>
	);
}
