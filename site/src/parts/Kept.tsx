// Where the open job stands, always in view: last kept, last exported; who writes it; and the reminder to save a file.
import { inWords } from "../engine/error";
import { job } from "../state/job";
import { allKept, keepTrouble, putOff, saveAsFile, stands } from "../state/kept";
import { to } from "../state/route";
import { writer } from "../state/writer";
import { region, said, t } from "../words/words";

/** A time of today as the time, another day's with its date. */
export function when(time: string): string {
	const date = new Date(time);
	if (Number.isNaN(date.getTime())) return "—";
	if (date.toDateString() === new Date().toDateString()) return date.toLocaleTimeString(region());
	return date.toLocaleString(region(), { dateStyle: "medium", timeStyle: "short" });
}

/** When it was last kept and last exported, leading to the page that tells more. */
export function KeptLine() {
	const current = job.value;
	if (!current) return null;
	const { kept, exported } = stands.value ?? { kept: "", exported: "" };
	return (
		<a class="bar-kept no-print" href={to("kept", current.id)} data-kept={allKept.value}>
			<span>{allKept.value ? t("Kept {time}", { time: when(kept) }) : t("Keeping…")}</span>{" "}
			<span>{exported ? t("Exported {time}", { time: when(exported) }) : t("Never exported")}</span>
		</a>
	);
}

/** What stands in the way of keeping, and what ought to be done about it. */
export function KeptNotices() {
	const current = job.value;
	if (!current) return null;
	return (
		<>
			{writer.value === "other" && (
				<div class="notice no-print" role="status">
					{t(
						"This job is open in another tab or window, and is changed there. Here you can only look at it. Close it there, and you can change it here.",
					)}
				</div>
			)}
			{keepTrouble.value.length > 0 && (
				<div class="notice notice-stop" role="alert">
					{keepTrouble.value.map(said).join(" ")}
				</div>
			)}
			{stands.value?.remind && (
				<div class="notice no-print" role="status">
					{t("In no file of yours: {count} changes of this job. A file outlives a lost phone and a cleared browser.", {
						count: stands.value.unsaved,
					})}{" "}
					<SaveButton />{" "}
					<button type="button" class="button-quiet" onClick={() => putOff(current.id)}>
						{t("Remind me in a few days")}
					</button>
				</div>
			)}
		</>
	);
}

export function SaveButton() {
	return (
		<button
			type="button"
			onClick={() =>
				job.value &&
				saveAsFile(job.value).catch((error: Error) => {
					keepTrouble.value = inWords(error);
				})
			}
		>
			{t("Save as file")}
		</button>
	);
}
