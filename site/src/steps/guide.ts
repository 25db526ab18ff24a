// The questions of the open job and the spots to read, as the engine lays them out after every edit.
import { effect, signal } from "@preact/signals";
import { call, callLatest } from "../engine/client";
import type { FieldSheet, FieldSheetRoom, Guide } from "../engine/contract";
import { bookText } from "../state/book";
import { job, trouble } from "../state/job";
import { go, route } from "../state/route";

export const guide = signal<Guide | null>(null);
export const fieldSheet = signal<FieldSheet | null>(null);

const views = ["steps", "sheet"]; // that need them

effect(() => {
	const open = job.value;
	if (!open) {
		guide.value = null;
		fieldSheet.value = null;
	} else if (views.includes(route.value.view)) {
		refresh().catch((error: Error) => {
			trouble.value = error.message;
		});
	}
});

async function refresh(): Promise<void> {
	const open = job.peek();
	if (!open) return;
	const [walk, sheet] = await Promise.all([
		callLatest("guide", { job: open, book: bookText.peek() }),
		callLatest("field-sheet", { job: open, book: bookText.peek() }),
	]);
	if (job.peek()?.id !== open.id) return;
	if (walk) guide.value = walk;
	if (sheet) fieldSheet.value = sheet;
}

export function spotsOf(room: string | undefined): FieldSheetRoom | undefined {
	return fieldSheet.value?.rooms.find((one) => one.id === room);
}

/** Goes to the question after this one, which an answer given just now may have changed. */
export async function goOn(from: string): Promise<void> {
	const open = job.peek();
	if (!open) return;
	const { steps } = await call("guide", { job: open, book: bookText.peek() });
	const at = steps.findIndex((step) => step.id === from);
	const next = steps[at + 1] ?? steps.at(-1);
	if (next) go("steps", open.id, next.id);
}
