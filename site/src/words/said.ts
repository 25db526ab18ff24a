// What the engine says, in another language. The engine writes English sentences, many with values in them ("The pour is 6 mm at its
// thinnest."); a table gives each sentence once, with holes where the values stand ("The pour is {depth.least} at its thinnest.").
import { amount, withPoint } from "./amount";

/** Texts of a language by their English. */
export type Table = Record<string, string>;

/** Says an English text of the engine's in another language; point is the sign that parts off the decimals. */
export type Sayer = (text: string, point: string) => string;

type Pattern = { shape: RegExp; holes: string[]; typed: boolean[]; says: string; fixed: number };

const hole = /\{([^{}]+)\}/g;
const typedHole = "name"; // such a hole, or one in quotes, holds what a person typed, which stays as it is
const enough = 14; // letters of fixed text that tell a sentence; with fewer every value must be known too
const mostKept = 20_000;

/** Makes a sayer of a table from English to another language. */
export function sayer(table: Table): Sayer {
	const patterns = bucketed(table);
	const kept = new Map<string, string>();

	const whole = (text: string, point: string): string | undefined => {
		if (Object.hasOwn(table, text)) return withPoint(table[text] ?? "", point);
		const measured = amount(text, point, table);
		if (measured !== undefined) return measured;
		for (const begins of [firstWord(text), ""]) {
			for (const pattern of patterns.get(begins) ?? []) {
				const values = pattern.shape.exec(text)?.slice(1);
				if (values && tells(pattern, values, point))
					return filled(pattern, values, point, (value) => say(value, point));
			}
		}
		return undefined;
	};

	const tells = (pattern: Pattern, values: string[], point: string): boolean =>
		pattern.fixed >= enough || values.every((value, i) => pattern.typed[i] || whole(value, point) !== undefined);

	/** A whole text, with the stop at its end or without it. */
	const phrase = (text: string, point: string): string | undefined =>
		whole(text, point) ??
		(text.endsWith(".") ? whole(text.slice(0, -1), point)?.concat(".") : whole(`${text}.`, point)?.slice(0, -1));

	/** Several sentences, or a list, said one by one where every one is known. */
	const pieces = (text: string, point: string, joint: RegExp, between: string): string | undefined => {
		const all = text.split(joint);
		if (all.length < 2) return undefined;
		const says = all.map((one) => whole(one, point));
		return says.every((one) => one !== undefined) ? says.join(between) : undefined;
	};

	/** A value behind what it is: "Powder in one bag: 25 kg.". What stands before may be a name that a person gave. */
	const labelled = (text: string, point: string): string | undefined => {
		const at = text.lastIndexOf(": ");
		const value = at < 0 ? undefined : phrase(text.slice(at + 2), point);
		if (value === undefined) return undefined;
		const label = text.slice(0, at);
		return `${phrase(label, point) ?? labelled(label, point) ?? label}: ${value}`;
	};

	const say = (text: string, point: string): string => {
		const key = `${point}${text}`;
		const before = kept.get(key);
		if (before !== undefined) return before;
		const says =
			phrase(text, point) ??
			pieces(text, point, /(?<=[.!?]) /, " ") ??
			labelled(text, point) ??
			pieces(text, point, /, /, ", ") ??
			pieces(text, point, /; /, "; ") ??
			text;
		if (kept.size >= mostKept) kept.clear();
		kept.set(key, says);
		return says;
	};
	return say;
}

/** Gives back the English of what a table says in whole; with other capitals, of what comes first. */
export function unsayer(table: Table): (text: string) => string {
	const entries = Object.entries(table).reverse();
	const exact = new Map(entries.map(([english, says]) => [says, english]));
	const loose = new Map(entries.map(([english, says]) => [says.toLowerCase(), english]));
	return (text) => exact.get(text) ?? loose.get(text.trim().toLowerCase()) ?? text;
}

/** The patterns of a table by their first word; those that begin with a hole under "". In each, the most fixed text comes first. */
function bucketed(table: Table): Map<string, Pattern[]> {
	const buckets = new Map<string, Pattern[]>();
	for (const [english, says] of Object.entries(table)) {
		if (english.search(hole) < 0) continue;
		const begins = /^[^{}]* /.test(english) ? firstWord(english) : "";
		buckets.set(begins, [...(buckets.get(begins) ?? []), patternOf(english, says)]);
	}
	for (const list of buckets.values()) list.sort((a, b) => b.fixed - a.fixed);
	return buckets;
}

function firstWord(text: string): string {
	return text.slice(0, Math.max(text.indexOf(" "), 0));
}

function patternOf(english: string, says: string): Pattern {
	const parts = english.split(hole); // fixed text and names of holes by turns
	const fixed = parts.filter((_, i) => i % 2 === 0);
	const holes = parts.filter((_, i) => i % 2 === 1);
	const shape = new RegExp(`^${fixed.map(escaped).join("(.+?)")}$`, "s");
	const typed = holes.map((name, i) => name === typedHole || (fixed[i]?.endsWith("“") ?? false));
	return { shape, holes, typed, says, fixed: fixed.join("").length };
}

function escaped(text: string): string {
	return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}

function filled(pattern: Pattern, values: string[], point: string, say: (value: string) => string): string {
	const { holes, typed } = pattern;
	return withPoint(pattern.says, point).replace(hole, (whole, name: string) => {
		const at = holes.indexOf(name);
		const value = values[at];
		if (value === undefined) return whole;
		return typed[at] || value.startsWith("“") ? value : say(value);
	});
}
