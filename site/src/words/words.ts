// The page's words. English stands in the code as it is read; another language is a table from the English.
import { signal } from "@preact/signals";

export type Language = "en" | "es";
type Table = Record<string, string>;

export const language = signal<Language>("en");
const tables: Partial<Record<Language, Table>> = {};

/** Gives a text in the chosen language, with {names} replaced by values. */
export function t(text: string, values: Record<string, string | number> = {}): string {
	const found = tables[language.value]?.[text] ?? text;
	return found.replace(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));
}

/** Chooses a language; its table is fetched when first needed. */
export async function choose(next: Language): Promise<void> {
	if (next === "es" && !tables.es) tables.es = (await import("./es")).spanish;
	language.value = next;
	document.documentElement.lang = next;
}
