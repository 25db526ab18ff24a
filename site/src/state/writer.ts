// One writer a job: the tab that holds the job's lock writes, every other tab looks on. The browser passes the lock on when that tab leaves the
// job or goes, however it goes.
import { signal } from "@preact/signals";

/** asking: not known yet; mine: this tab writes; other: another tab does. */
export const writer = signal<"asking" | "mine" | "other">("mine");

interface Hold {
	id: string;
	over: AbortController;
}

let held: Hold | undefined;

/** Asks for a job's lock. Where another tab has it, takenOver is called once it is this tab's, before anything may be written. */
export function hold(id: string, takenOver: () => Promise<void>): void {
	if (held?.id === id || !navigator.locks) return; // without locks nobody knows of other tabs
	const mine = { id, over: new AbortController() };
	held = mine;
	writer.value = "asking";
	const name = `lowspot job ${id}`;
	const { signal: over } = mine.over;
	const untilOver = () => new Promise<void>((resolve) => over.addEventListener("abort", () => resolve()));
	const settle = (state: "mine" | "other") => {
		if (held === mine) writer.value = state;
	};
	const wait = () =>
		navigator.locks.request(name, { signal: over }, async () => {
			await takenOver();
			settle("mine");
			await untilOver();
		});
	navigator.locks
		.request(name, { ifAvailable: true }, (lock) => {
			if (over.aborted) return undefined;
			settle(lock ? "mine" : "other");
			if (!lock) wait().catch(() => {}); // the job was left before its turn came
			return lock ? untilOver() : undefined;
		})
		.catch(() => settle("mine")); // a page that may not lock, as in a sandbox
}

/** Gives the lock back once what is under way is kept. */
export function letGo(underWay: Promise<unknown>): void {
	const leaving = held;
	held = undefined;
	writer.value = "mine";
	if (leaving) underWay.finally(() => leaving.over.abort());
}
