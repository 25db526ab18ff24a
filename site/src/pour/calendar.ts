// The holds of a run sheet as a calendar file, in the page's language. The engine folds and escapes its lines.
import { call } from "../engine/client";
import type { Job, PourEntry } from "../engine/contract";
import { bookText } from "../state/book";
import { said, t } from "../words/words";
import { dayAndTime } from "./times";

/** Works out the job's run sheet as it stands now and writes its holds. */
export async function calendarOf(job: Job): Promise<string> {
	const { sheet } = await call("pour", { job, book: bookText.peek() });
	const stamp = `${new Date().toISOString().slice(0, 19)}Z`;
	const events = sheet.entries
		.filter((entry) => entry.hold)
		.map((entry) => ({
			id: entry.id,
			title: said(entry.hold),
			from: entry.end,
			to: entry.holdEarliest,
			about: about(entry),
		}));
	return (await call("calendar.write", { job: job.id, stamp, events })).text;
}

function about({ title, holdEarliest, holdLatest, cautions }: PourEntry): string[] {
	const latest = holdLatest ? [t("Go on no later than {time}.", { time: dayAndTime(holdLatest) })] : [];
	return [
		t("After: {step}", { step: said(title) }),
		t("Go on no sooner than {time}.", { time: dayAndTime(holdEarliest) }),
		...latest,
		...cautions.map(said),
	];
}
