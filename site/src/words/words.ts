// The page's words. English stands in the code as it is read; another language is a table from the English, fetched when it is chosen.
import { signal } from "@preact/signals";
import { singulars } from "./one";
import { plain } from "./plain";
import { type Sayer, sayer, type Table, unsayer } from "./said";

export type Language = "en" | "es";

export const languages: { value: Language; label: string }[] = [
	{ value: "en", label: "English" },
	{ value: "es", label: "Español" },
];

export const language = signal<Language>("en");
let spanish: { page: Table; say: Sayer; unsay: (text: string) => string } | null = null;
const kept = "language";

/** Gives a text of the page in the chosen language, with {names} replaced by values; numbers are written as the language writes them. */
export function t(text: string, values: Record<string, string | number> = {}): string {
	const found = (language.value === "es" && spanish?.page[text]) || text;
	if (!/[{1]/.test(found)) return found; // nothing to put in, nothing counted: most texts, and many a time
	const filled = found.replace(/\{(\w+)\}/g, (whole, name: string) => shown(values[name]) ?? whole);
	return singulars(filled, language.value);
}

function shown(value: string | number | undefined): string | undefined {
	return typeof value === "number" ? number(value) : value;
}

/** Gives a text of the engine's in the chosen language: a word, an amount or a sentence with values in it. What it doesn't know stays as it is. */
export function said(text: string | undefined): string {
	if (!text) return "";
	return language.value === "es" && spanish ? singulars(spanish.say(text, point()), "es") : inEnglish(text);
}

function inEnglish(text: string): string {
	return plain[text] ?? singulars(text.replace(/\bosb\b/g, "OSB"), "en");
}

/** Gives the engine's own name for what a person calls it in the chosen language; what it doesn't know stays as it is. */
export function english(text: string): string {
	return language.value === "es" && spanish ? spanish.unsay(text) : text;
}

/** Writes a number for people, with so many decimals where they are given. */
export function number(value: number | undefined, decimals?: number): string {
	return said(decimals === undefined ? value?.toString() : value?.toFixed(decimals));
}

/** The region whose way of writing numbers, dates and times is meant: the browser's where it speaks the chosen language. */
export function region(): string {
	return navigator.languages?.find((tag) => tag.split("-")[0] === language.value) ?? language.value;
}

function point(): string {
	const parts = new Intl.NumberFormat(region()).formatToParts(1.5);
	return parts.find((part) => part.type === "decimal")?.value ?? ".";
}

/** Whether decimals have a comma in the chosen language. */
export function decimalComma(): boolean {
	return number(0.5) !== "0.5";
}

/** Chooses a language for good; its table is fetched when first needed. */
export async function choose(next: Language): Promise<void> {
	if (next === "es" && !spanish) {
		const { page, engine } = await import("./es");
		spanish = { page, say: sayer(engine), unsay: unsayer(engine) };
	}
	language.value = next;
	document.documentElement.lang = next;
	remember(next);
}

function remember(next: Language): void {
	try {
		localStorage.setItem(kept, next);
	} catch {
		// The browser keeps nothing for this page: the choice holds until it is closed.
	}
}

function remembered(): string | null {
	try {
		return localStorage.getItem(kept);
	} catch {
		return null;
	}
}

/** The language chosen before in this browser, or else the browser's own where the page speaks it. */
export function usualLanguage(): Language {
	const wanted = [remembered(), ...navigator.languages.map((tag) => tag.split("-")[0])];
	return wanted.find((tag): tag is Language => tag === "en" || tag === "es") ?? "en";
}
