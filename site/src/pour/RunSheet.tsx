// The run sheet: the whole job in order from a chosen start, with what must pass between, cautions, and a calendar file of the holds.
import { useState } from "preact/hooks";
import type { Hand, PourDay, PourEntry } from "../engine/contract";
import { fileName, save } from "../state/files";
import { edit, job } from "../state/job";
import { said, t } from "../words/words";
import { calendarOf } from "./calendar";
import { dayAndTime, dayNumber, timeOfDay } from "./times";

export function RunSheet({ day }: { day: PourDay }) {
	const { sheet } = day;
	const [told, setTold] = useState("");
	const first = sheet.entries[0]?.start ?? "";
	const when = (text: string) =>
		sheet.relative ? t("Day {n}, {time}", { n: dayNumber(text, first), time: timeOfDay(text) }) : dayAndTime(text);
	return (
		<section class="run-sheet" aria-labelledby="run-sheet">
			<h2 id="run-sheet">{t("Run sheet")}</h2>
			<div class="row no-print">
				<div class="field">
					<label for="start">{t("The work begins")}</label>
					<input
						id="start"
						type="datetime-local"
						value={job.value?.start ?? ""}
						onInput={(event) => {
							const start = event.currentTarget.value;
							edit("start", (draft) => {
								if (start) draft.start = start;
								else delete draft.start;
							});
						}}
					/>
				</div>
				<button type="button" disabled={sheet.relative || !!sheet.why} onClick={() => saveCalendar(setTold)}>
					{t("Save the holds as a calendar file")}
				</button>
			</div>
			{sheet.relative && !sheet.why && (
				<p class="small soft no-print">{t("Choose when the work begins, and days and calendar follow.")}</p>
			)}
			{told && <p role="alert">{told}</p>}
			{sheet.why ? <p>{said(sheet.why)}</p> : <Steps entries={sheet.entries} when={when} />}
			<p class="small soft">
				{t("Local codes, the sheets of the products used and licensed practice go before anything on this page.")}
			</p>
		</section>
	);
}

function Steps({ entries, when }: { entries: PourEntry[]; when: (text: string) => string }) {
	return (
		<table class="sheet-table">
			<thead>
				<tr>
					<th scope="col">{t("From")}</th>
					<th scope="col">{t("To")}</th>
					<th scope="col">{t("What")}</th>
					<th scope="col">{t("Who")}</th>
					<th scope="col">{t("Then wait")}</th>
				</tr>
			</thead>
			<tbody>
				{entries.map((entry) => (
					<tr key={entry.id} data-step={entry.id} class={entry.who ? undefined : "sheet-wait"}>
						<td>{when(entry.start)}</td>
						<td>{entry.end === entry.start ? "" : when(entry.end)}</td>
						<td>
							<b>{said(entry.title)}</b>
							{entry.missed && <p class="field-error">{said(entry.missed)}</p>}
							{entry.cautions.map((caution) => (
								<p class="caution" key={caution}>
									{said(caution)}
								</p>
							))}
						</td>
						<td>{entry.hands.length > 0 ? entry.hands.map(handSays).join("; ") : said(entry.who)}</td>
						<td>{entry.hold && holdSays(entry, when)}</td>
					</tr>
				))}
			</tbody>
		</table>
	);
}

/** What one person of the crew does in a pour. */
function handSays({ person, mixes, carries }: Hand): string {
	const n = { n: person };
	if (mixes && carries) return t("{n} mixes, carries and pours", n);
	if (mixes) return t("{n} mixes", n);
	return carries ? t("{n} carries and pours", n) : t("{n} stands by", n);
}

function holdSays(entry: PourEntry, when: (text: string) => string): string {
	const earliest = when(entry.holdEarliest);
	if (!entry.who) return t("until {earliest}", { earliest });
	const says = t("{hold}: go on from {earliest}", { hold: said(entry.hold), earliest });
	return entry.holdLatest ? `${says}, ${t("at the latest {latest}", { latest: when(entry.holdLatest) })}` : says;
}

async function saveCalendar(tell: (text: string) => void): Promise<void> {
	const current = job.value;
	if (!current) return;
	try {
		save(fileName(current.name, "ics"), await calendarOf(current), "text/calendar");
		tell("");
	} catch (error) {
		tell(said((error as Error).message));
	}
}
