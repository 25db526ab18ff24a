// The product sheets kept for later jobs. A job holds its own copy: what changes here reaches a job only when somebody takes it.
import { signal } from "@preact/signals";
import { call } from "../engine/client";
import type { KeptSheet, Sheet } from "../engine/contract";

export const sheets = signal<KeptSheet[]>([]);

export async function loadSheets(): Promise<void> {
	sheets.value = (await call("sheets.list", {})).sheets;
}

export async function keepSheet(id: string, kind: string, sheet: Sheet): Promise<void> {
	const { kept: _, ...own } = sheet;
	await call("sheets.keep", { id, kind, sheet: { ...own, generic: false } });
	await loadSheets();
}

export async function deleteSheet(id: string): Promise<void> {
	await call("sheets.delete", { id });
	await loadSheets();
}

/** The words on which two sheets differ. */
export function differences(a: Sheet, b: Sheet): string[] {
	const names = new Set([...Object.keys(a.values), ...Object.keys(b.values)]);
	return [...names].filter((name) => (a.values[name] ?? "") !== (b.values[name] ?? "")).sort();
}
