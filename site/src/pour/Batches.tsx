// Every batch with its bags, its water and its time, as a table to work from.
import type { ClockPlan, RoomPour } from "../engine/contract";
import { said, t } from "../words/words";
import { clock as minutes } from "./times";
import { waterSays } from "./worked";

export function Batches({ pour }: { pour: RoomPour }) {
	const { batches, clock } = pour;
	const filled = batches.some((batch) => batch.aggregate);
	const mark = said(batches[0]?.mark.text);
	return (
		<div class="batches" tabIndex={0}>
			<table class="sheet-table">
				<caption>{t("Batches in order. Times count from the first water; one mark is {mark}.", { mark })}</caption>
				<thead>
					<tr>
						<th scope="col">{t("Batch")}</th>
						<th scope="col">{t("Bags")}</th>
						{filled && <th scope="col">{t("Aggregate")}</th>}
						<th scope="col">{t("Water")}</th>
						<th scope="col">{t("Marks")}</th>
						<th scope="col">{t("Start")}</th>
						<th scope="col">{t("Down")}</th>
						<th scope="col">{t("Covers")}</th>
						{!pour.rough && <th scope="col">{t("From the door")}</th>}
					</tr>
				</thead>
				<tbody>
					{batches.map((batch) => (
						<tr key={batch.number}>
							<th scope="row">{batch.number}</th>
							<td>{batch.bags}</td>
							{filled && <td>{said(batch.aggregate?.text)}</td>}
							<td>
								<b>{waterSays(batch)}</b>
							</td>
							<td>{batch.marks || "—"}</td>
							<td>{timeOf(clock, batch.number, "water", "start")}</td>
							<td>{timeOf(clock, batch.number, "pour", "end")}</td>
							<td>
								{said(batch.area.text)}
								{batch.left.si > 1e-4 && ` · ${t("{left} over", { left: said(batch.left.text) })}`}
							</td>
							{!pour.rough && <td>{said(batch.distance.text)}</td>}
						</tr>
					))}
				</tbody>
			</table>
		</div>
	);
}

function timeOf(clock: ClockPlan | null, batch: number, kind: string, end: "start" | "end"): string {
	const task = clock?.timeline.tasks.find((one) => one.batch === batch && one.kind === kind);
	return task ? minutes(task[end]) : "—";
}
