// The open job and its plan. The page only ever edits a job and draws a plan; everything worked out comes from the engine.
import { batch, computed, effect, signal } from "@preact/signals";
import { call, callLatest } from "../engine/client";
import type { Function as Callable, Job, Plan, Problem, Standing, WordPlan } from "../engine/contract";
import { bookLoaded, bookText } from "./book";
import { keep, noteOpened, onKeptElsewhere, settled } from "./kept";
import { route } from "./route";
import { hold, letGo, writer } from "./writer";

export const job = signal<Job | null>(null);
export const plan = signal<Plan | null>(null);
export const planning = signal(false);
export const trouble = signal("");
export const vocabulary = signal<WordPlan[]>([]);
export const functions = signal<Callable[]>([]); // that rules may call

const past = signal<Job[]>([]);
const future = signal<Job[]>([]);
const mostSteps = 200;
const sameFieldWithin = 1200; // ms: keystrokes in one field are one step back
let lastEdit = { field: "", at: 0 };

export const canUndo = computed(() => past.value.length > 0);
export const canRedo = computed(() => future.value.length > 0);

/** Changes the open job. Edits of the same field in quick succession are one step to undo. */
export function edit(field: string, change: (draft: Job) => void): void {
	const before = job.value;
	if (!before) return;
	if (writer.value === "other") {
		job.value = { ...before }; // draws the fields anew: what was typed into them here does not count
		return;
	}
	const after = structuredClone(before);
	change(after);
	const now = Date.now();
	const continues = field !== "" && field === lastEdit.field && now - lastEdit.at < sameFieldWithin;
	lastEdit = { field, at: now };
	batch(() => {
		if (!continues) past.value = [...past.value.slice(-mostSteps), before];
		future.value = [];
		show(after);
	});
}

// What is changed on another page is another step.
effect(() => {
	route.value;
	lastEdit = { field: "", at: 0 };
});

export function undo(): void {
	step(past, future);
}

export function redo(): void {
	step(future, past);
}

function step(from: typeof past, to: typeof past): void {
	const target = from.value.at(-1);
	if (!target || !job.value) return;
	const current = job.value;
	batch(() => {
		from.value = from.value.slice(0, -1);
		to.value = [...to.value, current];
		lastEdit = { field: "", at: 0 };
		show(target);
	});
}

/** Opens a job afresh: nothing to undo yet. One that comes from the disk says how it stands; another one is kept at once. */
export function open(fresh: Job, standing: Standing | null = null): void {
	sessionStorage.setItem(lastKey, fresh.id);
	if (job.peek()?.id !== fresh.id) letGo(settled());
	batch(() => {
		past.value = [];
		future.value = [];
		plan.value = null;
		job.value = fresh;
		noteOpened(fresh, standing);
		hold(fresh.id, reread);
		if (!standing) keep(fresh, false);
	});
	void replan(fresh);
}

/** Opens the job once more as it is on the disk: another tab has changed it. */
async function reread(): Promise<void> {
	const id = job.peek()?.id;
	if (!id) return;
	try {
		const opened = await call("jobs.open", { id });
		if (job.peek()?.id === id) open(opened.job, opened);
	} catch (error) {
		trouble.value = (error as Error).message;
	}
}

onKeptElsewhere(() => job.peek()?.id, reread);

const lastKey = "last job";

/** The job that was open last in this tab. */
export function lastJob(): string {
	return sessionStorage.getItem(lastKey) ?? "";
}

export function close(): void {
	letGo(settled());
	batch(() => {
		job.value = null;
		plan.value = null;
		noteOpened(null, null);
	});
}

function show(next: Job): void {
	job.value = next;
	void replan(next);
	keep(next, true);
}

effect(() => {
	bookText.value;
	const open = bookLoaded.value && job.peek();
	if (open) void replan(open);
});

async function replan(next: Job): Promise<void> {
	if (!bookLoaded.peek()) return; // nobody sees a plan by other rules than their own; it is made when the rulebook is here
	planning.value = true;
	try {
		const worked = await callLatest("plan", { job: next, book: bookText.peek() });
		if (worked) plan.value = worked;
		trouble.value = "";
	} catch (error) {
		trouble.value = (error as Error).message;
	} finally {
		planning.value = false;
	}
}

export async function loadVocabulary(): Promise<void> {
	const known = await call("vocabulary", {});
	functions.value = known.functions;
	vocabulary.value = known.words;
}

/** What is wrong with one field of the job, by its path. */
export function problemOf(field: string): Problem | undefined {
	return plan.value?.problems.find((p) => p.field === field);
}

/** An identifier that is new within this browser. */
export function newId(kind: string): string {
	return `${kind}-${crypto.randomUUID().slice(0, 8)}`;
}
