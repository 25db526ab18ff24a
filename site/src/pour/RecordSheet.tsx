// The record of pour day beside the plan: what was meant and what happened, batch by batch, to complete and to print.
import type { BatchPlan, BatchRecord, PourRecord } from "../engine/contract";
import { Field } from "../parts/fields";
import { region, said, t } from "../words/words";
import { type Pouring, recordOf, write, writeBatch } from "./record";
import { clock as minutes } from "./times";
import type { Shown } from "./worked";

export function RecordSheet({ shown }: { shown: Shown }) {
	const record = recordOf(shown.pour);
	if (!record) return null;
	return (
		<section class="record" aria-labelledby="record">
			<h2 id="record">{t("Record of the pour")}</h2>
			<p>
				{t("Began {start}", { start: new Date(record.started).toLocaleString(region()) })}
				{record.ended && `, ${t("ended {end}", { end: new Date(record.ended).toLocaleTimeString(region()) })}`}.
			</p>
			<RecordFields pour={shown.pour} record={record} />
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
					{shown.pour.batches.map((batch) => (
						<Row key={batch.number} shown={shown} batch={batch} record={record} />
					))}
				</tbody>
			</table>
		</section>
	);
}

/** What is written down besides the taps. */
export function RecordFields({ pour, record }: { pour: Pouring; record: PourRecord }) {
	const fields: { name: keyof PourRecord; label: string }[] = [
		{ name: "who", label: t("Who poured") },
		{ name: "lots", label: t("Lot numbers on the bags") },
		{ name: "air", label: t("Air, measured") },
		{ name: "deck", label: t("Deck, measured") },
		{ name: "water", label: t("Water, measured") },
		{ name: "mix", label: t("Mix, measured") },
		{ name: "spread", label: t("Flow ring, measured") },
		{ name: "notes", label: t("Notes") },
	];
	return (
		<div class="row row-even record-fields">
			{fields.map(({ name, label }) => (
				<Field
					key={name}
					label={label}
					field={`record/${name}`}
					value={String(record[name] ?? "")}
					onChange={(typed) => write(pour, name, typed)}
				/>
			))}
		</div>
	);
}

function Row({ shown, batch, record }: { shown: Shown; batch: BatchPlan; record: PourRecord }) {
	const happened = record.batches.find((one) => one.batch === batch.number);
	const tasks = shown.pour.clock?.timeline.tasks ?? [];
	const planned = (kind: string, end: "start" | "end") => {
		const task = tasks.find((one) => one.batch === batch.number && one.kind === kind);
		return task ? minutes(task[end]) : "—";
	};
	return (
		<tr data-batch={batch.number}>
			<th scope="row">{batch.number}</th>
			<td>{happened?.bags ?? batch.bags}</td>
			<td>{said(batch.water.text)}</td>
			<td>
				{happened && (
					<input
						type="text"
						aria-label={t("Water measured for batch {n}", { n: batch.number })}
						value={happened.water ?? ""}
						onInput={(event) => writeBatch(shown.pour, batch.number, "water", event.currentTarget.value)}
					/>
				)}
			</td>
			<td>{planned("water", "start")}</td>
			<td>{since(record, happened?.started)}</td>
			<td>{planned("pour", "end")}</td>
			<td>{happened?.skipped ? t("left out") : since(record, downAt(happened))}</td>
			<td>
				{happened && (
					<input
						type="text"
						aria-label={t("Note on batch {n}", { n: batch.number })}
						value={happened.note ?? ""}
						onInput={(event) => writeBatch(shown.pour, batch.number, "note", event.currentTarget.value)}
					/>
				)}
			</td>
		</tr>
	);
}

function downAt(happened: BatchRecord | undefined): string | undefined {
	return happened?.poured ?? happened?.done;
}

function since(record: PourRecord, moment: string | undefined): string {
	return moment ? minutes((Date.parse(moment) - Date.parse(record.started)) / 1000) : "—";
}
