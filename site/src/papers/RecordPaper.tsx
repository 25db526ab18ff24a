// The record of conditions on paper: what pour day kept, with the plan and the sheet's limits beside it. What wasn't noted stays open for a pen.
import type { PourDay, PourRecord, RoomPour } from "../engine/contract";
import { BatchTable } from "../pour/BatchTable";
import { recordOf } from "../pour/record";
import { dayAndTime, clock as minutes } from "../pour/times";
import { pourDay, pourName } from "../pour/worked";
import { job } from "../state/job";
import { region, said, t } from "../words/words";
import { PaperHead } from "./PaperHead";

export function RecordPaper() {
	const day = pourDay.value;
	const pours = (day?.rooms ?? []).filter((pour) => pour.batches.length > 0);
	if (!day || pours.length === 0) return <p>{t("Nothing can be poured yet.")}</p>;
	return (
		<>
			{pours.map((pour) => (
				<PourPaper key={`${pour.id} ${pour.part}`} day={day} pour={pour} />
			))}
		</>
	);
}

function PourPaper({ day, pour }: { day: PourDay; pour: RoomPour }) {
	const record = recordOf(pour);
	const title = t("Record of conditions: {room}", { room: pourName(pour) });
	return (
		<section class="paper-page paper-record" aria-label={title} tabIndex={0}>
			<PaperHead title={title} />
			{!record && <p>{t("Nothing was tapped on pour day: fill it in by hand.")}</p>}
			<Conditions day={day} pour={pour} record={record} />
			<BatchTable
				pour={pour}
				record={record}
				unknown=""
				written={(field, _, came) => (field === "water" ? said(came?.water) : came?.note)}
			/>
			<Notes record={record} />
		</section>
	);
}

/** What was meant, what the sheet allows and what was measured. */
type Condition = { what: string; planned: string; allowed: string; came: string };

function Conditions({ day, pour, record }: { day: PourDay; pour: RoomPour; record: PourRecord | undefined }) {
	const rows = [...times(day, pour, record), ...materials(pour, record), ...temperatures(day, record)];
	return (
		<table class="sheet-table">
			<thead>
				<tr>
					<th scope="col">{t("Condition")}</th>
					<th scope="col">{t("Planned")}</th>
					<th scope="col">{t("The sheet allows")}</th>
					<th scope="col">{t("As it was")}</th>
				</tr>
			</thead>
			<tbody>
				{rows.map((row) => (
					<tr key={row.what}>
						<th scope="row">{row.what}</th>
						<td>{row.planned}</td>
						<td>{row.allowed}</td>
						<td class="paper-blank">{row.came}</td>
					</tr>
				))}
			</tbody>
		</table>
	);
}

function times(day: PourDay, pour: RoomPour, record: PourRecord | undefined): Condition[] {
	const moment = (text: string | undefined) => (text ? new Date(text).toLocaleString(region()) : "");
	const lasted = record?.ended ? (Date.parse(record.ended) - Date.parse(record.started)) / 1000 : undefined;
	return [
		{ what: t("Began"), planned: beginsAt(day, pour), allowed: "", came: moment(record?.started) },
		{ what: t("Ended"), planned: "", allowed: "", came: moment(record?.ended) },
		{
			what: t("Lasted"),
			planned: said(pour.clock?.lasts.text),
			allowed: "",
			came: lasted === undefined ? "" : minutes(lasted),
		},
		{ what: t("Who poured"), planned: said(pour.clock?.says), allowed: "", came: record?.who ?? "" },
	];
}

/** When the run sheet has a pour begin; empty until the work has a day. */
function beginsAt({ rooms, sheet }: PourDay, pour: RoomPour): string {
	const id = rooms.length > 1 ? `pour-${rooms.indexOf(pour) + 1}` : "pour";
	const entry = sheet.entries.find((one) => one.id === id);
	return entry && !sheet.relative ? dayAndTime(entry.start) : "";
}

function materials(pour: RoomPour, record: PourRecord | undefined): Condition[] {
	const sheet = job.value?.sheets.leveller;
	const mixed = record?.batches.filter((batch) => !batch.skipped).reduce((sum, batch) => sum + (batch.bags ?? 0), 0);
	return [
		{ what: t("Leveller, lot numbers"), planned: said(sheet?.name), allowed: "", came: record?.lots ?? "" },
		{ what: t("Bags mixed"), planned: String(pour.bags), allowed: "", came: mixed === undefined ? "" : String(mixed) },
	];
}

function temperatures({ mix }: PourDay, record: PourRecord | undefined): Condition[] {
	const answers = job.value?.answers ?? {};
	const sheet = job.value?.sheets.leveller?.values ?? {};
	const onFloor = span(sheet["sheet.coldest"], sheet["sheet.warmest"]);
	return [
		{ what: t("Air"), planned: said(answers["air.temperature"]), allowed: onFloor, came: record?.air ?? "" },
		{ what: t("Deck"), planned: said(answers["deck.temperature"]), allowed: onFloor, came: record?.deck ?? "" },
		{
			what: t("Mixing water"),
			planned: said(answers["water.temperature"]),
			allowed: span(mix.waterFrom?.text, mix.waterTo?.text),
			came: record?.water ?? "",
		},
		{
			what: t("Mix"),
			planned: said(mix.temperature?.text),
			allowed: span(mix.coldest.text, mix.warmest.text),
			came: record?.mix ?? "",
		},
		{
			what: t("Flow ring"),
			planned: "",
			allowed: span(mix.spreadFrom?.text, mix.spreadTo?.text),
			came: record?.spread ?? "",
		},
	];
}

function span(from: string | undefined, to: string | undefined): string {
	if (from && to) return t("{from} to {to}", { from: said(from), to: said(to) });
	if (from) return t("from {from}", { from: said(from) });
	return to ? t("up to {to}", { to: said(to) }) : "";
}

function Notes({ record }: { record: PourRecord | undefined }) {
	return (
		<div class="paper-signed">
			<p>
				<b>{t("Notes")}</b> {record?.notes}
			</p>
			<p class="paper-blanks">
				<span>{t("Date")}</span>
				<span>{t("Signed")}</span>
			</p>
		</div>
	);
}
