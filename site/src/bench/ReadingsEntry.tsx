// Entering readings: typed row by row, pasted from a sheet, opened as CSV, or added on the map.
import { useRef, useState } from "preact/hooks";
import { RoughDepth } from "../counter/RoughDepth";
import { call } from "../engine/client";
import type { Problem } from "../engine/contract";
import { Choice, Pick, Section } from "../parts/fields";
import { OpenFile } from "../parts/OpenFile";
import { job, plan, problemOf } from "../state/job";
import { said, t } from "../words/words";
import { editRoom } from "./RoomEntry";
import { WordField } from "./WordField";

const shownAtOnce = 100;

export function ReadingsEntry(props: { index: number; picked: number | null; onPick: (row: number | null) => void }) {
	const { index } = props;
	const room = job.value?.rooms[index];
	if (!room) return null;
	const readings = room.readings;
	return (
		<Section title={t("Readings")} says={t("{count} taken", { count: readings.rows.length })} open id="readings">
			<Pick
				label={t("How heights are read")}
				value={readings.sense}
				onChange={(sense) =>
					editRoom(index, "readings", (r) => {
						r.readings.sense = sense;
					})
				}
				choices={[
					{ value: "below", label: t("Staff, down from a level line") },
					{ value: "above", label: t("Height, up from a datum") },
				]}
			/>
			<div class="row row-even">
				<Choice
					label={t("Places in")}
					value={readings.positionUnit}
					onChange={(unit) =>
						editRoom(index, "readings", (r) => {
							r.readings.positionUnit = unit;
						})
					}
					choices={["m", "cm", "mm", "ft", "in"].map(same)}
				/>
				<Choice
					label={t("Heights in")}
					value={readings.heightUnit}
					onChange={(unit) =>
						editRoom(index, "readings", (r) => {
							r.readings.heightUnit = unit;
						})
					}
					choices={["mm", "cm", "m", "in", "ft"].map(same)}
				/>
			</div>
			<ReadingTable {...props} />
			{readings.rows.length === 0 && (
				<div class="row row-even">
					<RoughDepth
						room={room}
						path={`rooms/${index}`}
						us={job.value?.units === "us"}
						change={(field, alter) => editRoom(index, field, alter)}
					/>
				</div>
			)}
			<Bring index={index} />
			<WordField name="survey.error" subject={{ scope: "room", room: room.id, id: room.id, name: "" }} />
		</Section>
	);
}

function same(unit: string) {
	return { value: unit, label: unit };
}

function ReadingTable({
	index,
	picked,
	onPick,
}: {
	index: number;
	picked: number | null;
	onPick: (row: number | null) => void;
}) {
	const [all, setAll] = useState(false);
	const table = useRef<HTMLTableElement>(null);
	const readings = job.value?.rooms[index]?.readings;
	if (!readings) return null;
	const rows = all ? readings.rows : readings.rows.slice(0, shownAtOnce);
	const add = () => {
		editRoom(index, "readings/rows", (r) => {
			r.readings.rows.push({ x: "", y: "", height: "" });
		});
		requestAnimationFrame(() => table.current?.querySelector<HTMLInputElement>("tbody tr:last-child input")?.focus());
	};
	return (
		<>
			<table class="readings" ref={table}>
				<caption class="unseen">{t("Readings")}</caption>
				<thead hidden={rows.length === 0}>
					<tr>
						<th scope="col">x ({readings.positionUnit})</th>
						<th scope="col">y ({readings.positionUnit})</th>
						<th scope="col">
							{readings.sense === "below" ? t("Staff") : t("Height")} ({readings.heightUnit})
						</th>
						<th scope="col">
							<span class="unseen">{t("Leave out or remove")}</span>
						</th>
					</tr>
				</thead>
				<tbody>
					{rows.map((row, i) => (
						<tr key={i} class={`${i === picked ? "picked" : ""}${row.off ? " off" : ""}`} onFocusIn={() => onPick(i)}>
							{(["x", "y", "height"] as const).map((key) => (
								<Cell
									key={key}
									index={index}
									row={i}
									of={key}
									value={row[key]}
									onEnter={i === readings.rows.length - 1 && key === "height" ? add : undefined}
								/>
							))}
							<td>
								<button
									type="button"
									class="button-quiet"
									aria-label={t("Remove reading {n}", { n: i + 1 })}
									title={t("Remove reading {n}", { n: i + 1 })}
									onClick={() =>
										editRoom(index, "readings/rows", (r) => {
											r.readings.rows.splice(i, 1);
										})
									}
								>
									✕
								</button>
							</td>
						</tr>
					))}
				</tbody>
			</table>
			<RowErrors index={index} />
			<div class="row">
				<button type="button" onClick={add}>
					{t("Add a reading")}
				</button>
				{!all && readings.rows.length > shownAtOnce && (
					<button type="button" onClick={() => setAll(true)}>
						{t("Show all {count}", { count: readings.rows.length })}
					</button>
				)}
			</div>
		</>
	);
}

const names = { x: "x", y: "y", height: "height" } as const;

function Cell(props: { index: number; row: number; of: "x" | "y" | "height"; value: string; onEnter?: () => void }) {
	const field = `rooms/${props.index}/readings/rows/${props.row}/${props.of}`;
	const wrong = props.value.trim() !== "" && problemOf(field) !== undefined;
	return (
		<td>
			<input
				type="text"
				inputMode="text"
				autocomplete="off"
				data-field={field}
				aria-label={t("{what} of reading {n}", { what: names[props.of], n: props.row + 1 })}
				aria-invalid={wrong || undefined}
				value={props.value}
				onInput={(event) => {
					const value = event.currentTarget.value;
					editRoom(props.index, `readings/rows/${props.row}/${props.of}`, (r) => {
						const row = r.readings.rows[props.row];
						if (row) row[props.of] = value;
					});
				}}
				onKeyDown={(event) => {
					if (event.key === "Enter" && props.onEnter) {
						event.preventDefault();
						props.onEnter();
					}
				}}
			/>
		</td>
	);
}

/** Rows that can't be read, each with why. A row that is only begun is not told off. */
function RowErrors({ index }: { index: number }) {
	const rows = job.value?.rooms[index]?.readings.rows ?? [];
	const problems = (plan.value?.problems ?? []).filter((problem) => {
		const match = problem.field.match(new RegExp(`^rooms/${index}/readings/rows/(\\d+)/`));
		return match && problem.code !== "empty" && rows[Number(match[1])] !== undefined;
	});
	const whole = problemOf(`rooms/${index}/readings/rows`);
	if (problems.length === 0 && !whole) return null;
	return (
		<ul class="field-error">
			{whole && (
				<li>
					{said(whole.message)} {said(whole.remedy)}
				</li>
			)}
			{problems.slice(0, 5).map((problem) => (
				<li key={problem.field}>
					{t("Row {n}", { n: Number(problem.field.split("/")[4]) + 1 })}: {said(problem.message)} {said(problem.remedy)}
				</li>
			))}
		</ul>
	);
}

/** Paste or open a list of readings. What can't be read is listed by line; the rest is taken. */
function Bring({ index }: { index: number }) {
	const [text, setText] = useState("");
	const [bad, setBad] = useState<Problem[]>([]);
	const [told, setTold] = useState("");
	const readings = job.value?.rooms[index]?.readings;
	const take = async (content: string) => {
		if (!readings) return;
		const read = await call("readings.read", { text: content, readings });
		setBad(read.problems);
		setTold(
			t("{good} readings taken, {bad} lines left out.", { good: read.readings.rows.length, bad: read.problems.length }),
		);
		if (read.readings.rows.length > 0) {
			editRoom(index, "readings", (r) => {
				r.readings = {
					...read.readings,
					rows: [...r.readings.rows.filter((row) => row.x || row.y || row.height), ...read.readings.rows],
				};
			});
			setText("");
		}
	};
	return (
		<details>
			<summary class="small">{t("Paste or open a list (CSV)")}</summary>
			<div class="section-body" style={{ padding: "0.5rem 0" }}>
				<div class="field">
					<label for="bring">{t("x, y, reading: one to a line")}</label>
					<textarea id="bring" rows={4} value={text} onInput={(event) => setText(event.currentTarget.value)} />
				</div>
				<div class="row">
					<button type="button" onClick={() => take(text)} disabled={text.trim() === ""}>
						{t("Take these readings")}
					</button>
					<OpenFile
						label={t("Open a file…")}
						accept=".csv,.txt,.tsv,text/csv,text/plain"
						take={async (file) => take(await file.text())}
						tell={setTold}
					/>
				</div>
				<p role="status" class="small">
					{told}
				</p>
				{bad.length > 0 && (
					<ul class="field-error">
						{bad.slice(0, 8).map((problem) => (
							<li key={problem.field}>
								{problem.field}: {said(problem.message)} {said(problem.remedy)}
							</li>
						))}
					</ul>
				)}
			</div>
		</details>
	);
}
