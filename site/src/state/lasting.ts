// Whether the browser promises to keep what is kept here when the device runs short of room. It is asked once, after the first change to a job
// was kept: then there is something to lose, and the question (some browsers show one) makes sense to the person.
import { signal } from "@preact/signals";
import { call } from "../engine/client";

export const lasting = signal<"yes" | "no" | "unknown">("unknown");

const asked = "storage.asked";
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
		const { values } = await call("settings.open", {});
		if (!values[asked]) await ask();
		else await lookAtLasting();
	} catch {
		// Nothing is lost by not knowing.
	}
}

/** Asks the browser, as often as the person wants. */
export async function ask(): Promise<void> {
	await Promise.race([navigator.storage.persist(), new Promise((resolve) => setTimeout(resolve, patience))]);
	await lookAtLasting();
	await call("settings.keep", { values: { [asked]: new Date().toISOString() } });
}
