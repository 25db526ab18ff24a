// The batches of a pour in a table: what was meant beside what pour day kept, for the page and for paper.
import type { ComponentChildren } from "preact";
import type { BatchPlan, BatchRecord, PourRecord, RoomPour } from "../engine/contract";
import { said, t } from "../words/words";
import { clock as minutes } from "./times";

type Written = "water" | "note";

type BatchTableProps = {
	pour: RoomPour;
	record: PourRecord | undefined;
	unknown: string; // what stands where nothing was planned or tapped
	/** What stands where a person writes. */
	written: (field: Written, batch: BatchPlan, came: BatchRecord | undefined) => ComponentChildren;
};

export function BatchTable(props: BatchTableProps) {
	return (
		<table class="sheet-table">
			<caption>{t("Times from the first water: planned, then as tapped.")}</caption>
			<thead>
				<tr>
					<th scope="col">{t("Batch")}</th>
					<th scope="col">{t("Bags")}</th>
					<th scope="col">{t("Water planned")}</th>
					<th scope="col">{t("Water measured")}</th>
					<th scope="col">{t("Start planned")}</th>
					<th scope="col">{t("Started")}</th>
					<th scope="col">{t("Down planned")}</th>
					<th scope="col">{t("Poured")}</th>
					<th scope="col">{t("Note")}</th>
				</tr>
			</thead>
			<tbody>
				{props.pour.batches.map((batch) => (
					<Row key={batch.number} {...props} batch={batch} />
				))}
			</tbody>
		</table>
	);
}

function Row({ pour, record, unknown, written, batch }: BatchTableProps & { batch: BatchPlan }) {
	const came = record?.batches.find((one) => one.batch === batch.number);
	const planned = (kind: string, end: "start" | "end") => {
		const task = pour.clock?.timeline.tasks.find((one) => one.batch === batch.number && one.kind === kind);
		return task ? minutes(task[end]) : unknown;
	};
	const since = (moment: string | undefined) =>
		record && moment ? minutes((Date.parse(moment) - Date.parse(record.started)) / 1000) : unknown;
	return (
		<tr data-batch={batch.number}>
			<th scope="row">{batch.number}</th>
			<td>{came?.bags ?? batch.bags}</td>
			<td>{said(batch.water.text)}</td>
			<td class="paper-blank">{written("water", batch, came)}</td>
			<td>{planned("water", "start")}</td>
			<td class="paper-blank">{since(came?.started)}</td>
			<td>{planned("pour", "end")}</td>
			<td class="paper-blank">{came?.skipped ? t("left out") : since(came?.poured ?? came?.done)}</td>
			<td class="paper-blank paper-note">{written("note", batch, came)}</td>
		</tr>
	);
}
