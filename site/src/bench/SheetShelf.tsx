// Keeping a sheet for later jobs and choosing a kept one. Where the kept sheet has changed since, the job says so and is replanned only when asked.
import { useEffect, useState } from "preact/hooks";
import type { Sheet } from "../engine/contract";
import { edit, newId } from "../state/job";
import { deleteSheet, differences, keepSheet, loadSheets, sheets } from "../state/sheets";
import { said, t } from "../words/words";
import { labelOf, wordNamed } from "./WordField";

export function SheetShelf({ kind, sheet }: { kind: string; sheet: Sheet }) {
	const [told, setTold] = useState("");
	const run = (work: Promise<void>, says = "") =>
		work.then(() => setTold(says)).catch((error: Error) => setTold(said(error.message)));
	useEffect(() => {
		run(loadSheets());
	}, []);
	const shelf = sheets.value.filter((one) => one.kind === kind);
	const own = shelf.find((one) => one.id === sheet.kept);
	const differ = own ? differences(sheet, own.sheet) : [];
	return (
		<div class="shelf">
			{shelf.length > 0 && (
				<div class="field">
					<label for={`shelf-${kind}`}>{t("Sheets you kept")}</label>
					<select
						id={`shelf-${kind}`}
						value={sheet.kept ?? ""}
						onChange={(event) => choose(kind, event.currentTarget.value)}
					>
						<option value="">{t("none of them")}</option>
						{shelf.map((one) => (
							<option key={one.id} value={one.id}>
								{one.sheet.name || t("without a name")}
							</option>
						))}
					</select>
				</div>
			)}
			{own && differ.length > 0 && (
				<div class="caution" role="status">
					<p>{t("This job’s copy and the sheet you keep differ: {list}.", { list: differ.map(plainly).join("; ") })}</p>
					<div class="row">
						<button type="button" onClick={() => choose(kind, own.id)}>
							{t("Replan with the kept sheet")}
						</button>
						<button type="button" onClick={() => run(keepSheet(own.id, kind, sheet), t("Kept."))}>
							{t("Keep this job’s values in it")}
						</button>
					</div>
				</div>
			)}
			<div class="row">
				{!own && (
					<button
						type="button"
						onClick={() => {
							const id = newId("sheet");
							run(
								keepSheet(id, kind, sheet).then(() => link(kind, id)),
								t("Kept for later jobs."),
							);
						}}
					>
						{t("Keep this sheet for later jobs")}
					</button>
				)}
				{own && (
					<button type="button" class="button-quiet" onClick={() => run(deleteSheet(own.id))}>
						{t("Remove from the kept sheets")}
					</button>
				)}
			</div>
			<p role="status" class="small">
				{told}
			</p>
		</div>
	);
}

function plainly(name: string): string {
	const word = wordNamed(name);
	return word ? labelOf(word) : name;
}

/** Copies a kept sheet into the job. */
function choose(kind: string, id: string): void {
	const found = sheets.value.find((one) => one.id === id);
	edit(`sheets/${kind}`, (draft) => {
		const now = draft.sheets[kind];
		if (found) draft.sheets[kind] = { ...structuredClone(found.sheet), generic: false, kept: id };
		else if (now) delete now.kept;
	});
}

function link(kind: string, id: string): void {
	edit(`sheets/${kind}`, (draft) => {
		const now = draft.sheets[kind];
		if (!now) return;
		now.kept = id;
		now.generic = false;
	});
}
