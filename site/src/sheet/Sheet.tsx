// The field sheet: the room on one page of paper, with the spots to read and blank cells for what is read.
import type { FieldSheetRoom, RoomPlan } from "../engine/contract";
import { FloorPicture } from "../map/FloorPicture";
import { job, plan } from "../state/job";
import { to } from "../state/route";
import { fieldSheet, spotsOf } from "../steps/guide";
import { said, t } from "../words/words";

export function Sheet() {
	const drawn = (plan.value?.rooms ?? []).filter((room) => room.drawn);
	if (!plan.value || !fieldSheet.value) return <main id="main" class="start" aria-busy="true" />;
	return (
		<main id="main" class="paper">
			<div class="row no-print">
				<a class="button" href={to("steps", job.value?.id)}>
					{t("Step by step")}
				</a>
				<a class="button" href={to("job", job.value?.id)}>
					{t("See everything")}
				</a>
				<button type="button" class="button-main" onClick={() => print()}>
					{t("Print the field sheet")}
				</button>
			</div>
			{drawn.length === 0 && <p>{t("Give the room’s size first: the sheet is drawn from it.")}</p>}
			{drawn.map((room) => {
				const sheet = spotsOf(room.id);
				return sheet && <RoomSheet key={room.id} room={room} sheet={sheet} />;
			})}
		</main>
	);
}

function RoomSheet({ room, sheet }: { room: RoomPlan; sheet: FieldSheetRoom }) {
	const readings = job.value?.rooms.find((one) => one.id === room.id)?.readings;
	return (
		<section class="paper-page">
			<header class="paper-head">
				<h1>{t("Field sheet: {room}", { room: room.name || job.value?.name || t("Room") })}</h1>
				<p class="paper-blanks">
					<span>{t("Date")}</span>
					<span>{t("Read by")}</span>
					<span>{t("Line or mark")}</span>
				</p>
				<p class="small">
					{readings?.sense === "above"
						? t("Heights up from one mark, in {unit}.", { unit: readings.heightUnit })
						: t("Readings down from one level line, in {unit}: a larger number is lower ground.", {
								unit: readings?.heightUnit ?? "",
							})}{" "}
					{t("One square is {grid}. Read spot 1 again at the end.", { grid: said(sheet.grid.text) })}
				</p>
			</header>
			<div class="wide" tabIndex={0}>
				<FloorPicture room={{ ...room, pour: null }} sheet={blank(sheet)} width={640} />
			</div>
			<Spots sheet={sheet} />
			<p class="paper-notes">{t("Notes: dips, ridges, loose or hollow places, pipes")}</p>
		</section>
	);
}

/** The sheet with every spot shown as one to read. */
function blank(sheet: FieldSheetRoom): FieldSheetRoom {
	return { ...sheet, spots: sheet.spots.map((spot) => ({ ...spot, height: "" })) };
}

const columns = 3;

function Spots({ sheet }: { sheet: FieldSheetRoom }) {
	const rows = Math.ceil(sheet.spots.length / columns);
	const blocks = Array.from({ length: columns }, (_, i) => sheet.spots.slice(i * rows, (i + 1) * rows)).filter(
		(block) => block.length > 0,
	);
	return (
		<div class="paper-tables">
			{blocks.map((block, i) => (
				<table key={block[0]?.row}>
					<caption class="unseen">{t("Spots {from} on", { from: i * rows + 1 })}</caption>
					<thead>
						<tr>
							<th scope="col">{t("No.")}</th>
							<th scope="col">{t("right")}</th>
							<th scope="col">{t("away")}</th>
							<th scope="col">{t("reads")}</th>
						</tr>
					</thead>
					<tbody>
						{block.map((spot, j) => (
							<tr key={spot.row}>
								<th scope="row">{i * rows + j + 1}</th>
								<td>{said(spot.x.text)}</td>
								<td>{said(spot.y.text)}</td>
								<td class="paper-cell">{spot.height}</td>
							</tr>
						))}
					</tbody>
				</table>
			))}
		</div>
	);
}
