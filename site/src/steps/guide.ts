// The questions of the open job and the spots to read, as the engine lays them out after every edit.
import { effect, signal } from "@preact/signals";
import { call, callLatest } from "../engine/client";
import type { FieldSheet, FieldSheetRoom, Guide, GuideStep, Subject } from "../engine/contract";
import { bookText } from "../state/book";
import { job, plan, trouble } from "../state/job";
import { go, route } from "../state/route";

/** What a step of the guide is drawn from. */
export type StepProps = { step: GuideStep };

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
	await follow(from, "after");
}

/** Leaves the rest of a chapter open. */
export async function skipChapter(from: string): Promise<void> {
	await follow(from, "skip");
}

async function follow(from: string, way: "after" | "skip"): Promise<void> {
	const open = job.peek();
	if (!open) return;
	const { steps } = await call("guide", { job: open, book: bookText.peek() });
	const next = steps.find((step) => step.id === from)?.[way];
	if (next) go("steps", open.id, next);
}

/** What stays unchecked while some questions are open: checks, and how many of them would say not to pour. */
export function openChecks(steps: GuideStep[]): { checks: number; stops: number } {
	const waiting = new Set(steps.filter((step) => step.state !== "answered").map(keyOf));
	const risks = new Map<string, string>();
	for (const question of plan.value?.questions ?? []) {
		if (!waiting.has(keyOf(question))) continue;
		for (const risk of question.risks ?? []) risks.set(`${risk.rule} ${question.subject.id}`, risk.weight);
	}
	return { checks: risks.size, stops: [...risks.values()].filter((weight) => weight === "stop").length };
}

const keyOf = (one: { word: string; subject: Subject }) => `${one.word} ${one.subject.room} ${one.subject.id}`;
