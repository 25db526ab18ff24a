// Whether the browser promises to keep what is kept here when the device runs short of room. It is asked once, after the first change to a job
// was kept: then there is something to lose, and the question (some browsers show one) makes sense to the person.
import { signal } from "@preact/signals";

export const lasting = signal<"yes" | "no" | "unknown">("unknown");

const asked = "storage asked"; // this browser's own affair, so that it goes into no file
const patience = 60_000; // ms: a person may leave the browser's question standing
let askedHere = false;

/** Looks what the browser has promised so far. */
export async function lookAtLasting(): Promise<void> {
	if (navigator.storage?.persisted) lasting.value = (await navigator.storage.persisted()) ? "yes" : "no";
}

/** Asks the browser, unless it was asked before. */
export async function askToLast(): Promise<void> {
	if (askedHere || !navigator.storage?.persist) return;
	askedHere = true;
	try {
		if (!localStorage.getItem(asked)) await ask();
	} catch {
		// A browser that keeps nothing for this page: the page says so where it fails to keep a job.
	}
}

/** Asks the browser, as often as the person wants. */
export async function ask(): Promise<void> {
	await Promise.race([navigator.storage.persist(), new Promise((resolve) => setTimeout(resolve, patience))]);
	localStorage.setItem(asked, new Date().toISOString());
	await lookAtLasting();
}
