// The floor map on paper: each pour to scale with its batches and indicators, the bar to hold a ruler to, and the indicators as a list.
import type { IndicatorStudy, RoomPlan, RoomPour } from "../engine/contract";
import { pourDay, pourName } from "../pour/worked";
import { job, plan } from "../state/job";
import { roomStudy, study } from "../state/study";
import { said, t } from "../words/words";
import { PaperHead } from "./PaperHead";
import { ScaleMap } from "./ScaleMap";
import { barFor, extentOf, pixels, type Scale, scaleFor } from "./scale";

/** One page: a room, and the pour of it that is shown. */
type Sheet = { room: RoomPlan; pour: RoomPour | undefined };

export function MapPaper() {
	const sheets = sheetsOf(plan.value?.rooms ?? []);
	if (sheets.length === 0) {
		return <p>{t("No room can be drawn yet: give its walls, then the map is drawn from them.")}</p>;
	}
	return (
		<>
			{sheets.map((sheet) => (
				<MapSheet key={`${sheet.room.id} ${sheet.pour?.part}`} {...sheet} />
			))}
		</>
	);
}

function sheetsOf(rooms: RoomPlan[]): Sheet[] {
	return rooms
		.filter((room) => room.drawn && room.outline.outer.length > 2)
		.flatMap((room) => {
			const pours = (pourDay.value?.rooms ?? []).filter((one) => one.id === room.id && one.batches.length > 0);
			return pours.length > 0
				? pours.map((pour): Sheet => ({ room, pour: pour.rough ? undefined : pour }))
				: [{ room, pour: undefined }];
		});
}

function MapSheet({ room, pour }: Sheet) {
	const us = job.value?.units === "us";
	const scale = scaleFor(extentOf(room.outline.outer), us);
	const pins = pour && pour.lift < pour.lifts ? [] : (roomStudy(room.id)?.indicators?.pins ?? []);
	const name = pour ? pourName(pour) : room.name;
	return (
		<section class="paper-page paper-map" aria-busy={study.value === null}>
			<PaperHead title={t("Floor map: {room}", { room: name || t("Room") })}>
				{scale ? t("Scale {scale}", { scale: scale.text }) : t("Not to scale")}
			</PaperHead>
			{scale ? (
				<>
					<div class="wide" tabIndex={0}>
						<ScaleMap room={room} pour={pour} pins={pins} scale={scale} />
					</div>
					<Bar scale={scale} us={us} />
				</>
			) : (
				<p>{t("This room is too large for any usual scale on one page.")}</p>
			)}
			<Means room={room} pour={pour} pins={pins} />
			{pins.length > 0 && <Pins pins={pins} />}
		</section>
	);
}

/** The bar in parts, dark and light by turns, with a ruler's word of warning. */
function Bar({ scale, us }: { scale: Scale; us: boolean }) {
	const bar = barFor(scale, us);
	const length = (1000 * bar.length) / scale.denominator;
	const part = (pixels * length) / bar.parts;
	const board = { width: Math.ceil(pixels * length) + 60, height: 30 };
	return (
		<div class="scale-bar">
			<svg {...board} viewBox={`0 0 ${board.width} ${board.height}`} role="img" aria-label={said(bar.text)}>
				{Array.from({ length: bar.parts }, (_, i) => (
					<rect
						key={i}
						class={`scale-part${i % 2 ? " scale-part-light" : ""}`}
						x={4 + i * part}
						y={4}
						width={part}
						height={8}
					/>
				))}
				<text class="map-text" x={4} y={27}>
					0
				</text>
				<text class="map-text" x={4 + pixels * length} y={27} text-anchor="middle">
					{said(bar.text)}
				</text>
			</svg>
			<p class="small">
				{t("The bar is {length} long where the printer kept to scale: print at 100 %, not fitted to the page.", {
					length: said(us ? `${inches(length)} in` : `${Math.round(length * 10) / 10} mm`),
				})}
			</p>
		</div>
	);
}

/** Millimetres in inches, to two decimals. */
function inches(mm: number): string {
	return String(Math.round((100 * mm) / 25.4) / 100);
}

/** What the marks mean, and what is missing. */
function Means({ room, pour, pins }: Sheet & { pins: IndicatorStudy[] }) {
	return (
		<p class="small scale-means">
			{pour && <>{t("Boxed numbers: batches, in the order of the pour.")} </>}
			{pins.length > 0 && <>{t("Pins: height indicators, with the height of each head over the deck.")} </>}
			{room.doors.length > 0 && <>{t("A gap in the wall is a door.")} </>}
			{pour && pour.dams.length > 0 && <>{t("A dashed line across the floor is a dam.")} </>}
			{t("Lengths are measured right and away from the small ring.")}
			{drawnByArea(room) && ` ${t("Only the area is known: the room is drawn as a square.")}`}
			{!room.pour && ` ${t("Nobody has read this floor yet: batches and indicators follow from its readings.")}`}
			{room.pour && !pour && ` ${t("The pour can’t be planned yet, so no batches are drawn.")}`}
		</p>
	);
}

function drawnByArea(room: RoomPlan): boolean {
	return job.value?.rooms.find((one) => one.id === room.id)?.outline.how === "area";
}

const columns = 3;

function Pins({ pins }: { pins: IndicatorStudy[] }) {
	const rows = Math.ceil(pins.length / columns);
	const blocks = Array.from({ length: columns }, (_, i) => pins.slice(i * rows, (i + 1) * rows)).filter(
		(block) => block.length > 0,
	);
	return (
		<div class="paper-tables">
			{blocks.map((block, i) => (
				<table key={i}>
					<caption class="unseen">{t("Indicators {from} on", { from: i * rows + 1 })}</caption>
					<thead>
						<tr>
							<th scope="col">{t("No.")}</th>
							<th scope="col">{t("right")}</th>
							<th scope="col">{t("away")}</th>
							<th scope="col">{t("head")}</th>
						</tr>
					</thead>
					<tbody>
						{block.map((pin, j) => (
							<tr key={j}>
								<th scope="row">{i * rows + j + 1}</th>
								<td>{said(pin.x.text)}</td>
								<td>{said(pin.y.text)}</td>
								<td>{said(pin.head.text)}</td>
							</tr>
						))}
					</tbody>
				</table>
			))}
		</div>
	);
}
