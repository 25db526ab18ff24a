// The person's own rulebook: kept in this browser, used for every job, changed one rule at a time, each change one step to undo.
import { computed, type Signal, signal } from "@preact/signals";
import { call } from "../engine/client";
import type { Book, Rule } from "../engine/contract";
import { t } from "../words/words";

/** The rulebook in use; null: the one that ships. */
export const book = signal<Book | null>(null);

/** What requests carry: the book's text, empty for the one that ships. */
export const bookText = computed(() => book.value?.text ?? "");

export const bookTrouble = signal("");
export const bookLoaded = signal(false);
/** What is shown is on the disk. */
export const bookKept = signal(true);

type Pile = Signal<(Book | null)[]>;

const past: Pile = signal([]);
const future: Pile = signal([]);
export const canUndoBook = computed(() => past.value.length > 0);
export const canRedoBook = computed(() => future.value.length > 0);
const mostSteps = 50;
const ownId = "mine";

export async function loadBook(): Promise<void> {
	try {
		const { books } = await call("books.list", {});
		book.value = books.find((one) => one.id === ownId) ?? books[0] ?? null;
	} finally {
		bookLoaded.value = true;
	}
}

/** Puts a text in the place of the rulebook's. The first change begins a book of the person's own. */
export async function takeText(text: string, base?: string): Promise<void> {
	const current = book.value;
	const began = base ?? current?.base ?? (await call("books.shipped", {})).text;
	await use({ id: current?.id ?? ownId, title: current?.title ?? t("My rulebook"), text, base: began });
}

/** Goes back to the rulebook that ships, whole. */
export function useShipped(): Promise<void> {
	return use(null);
}

export function undoBook(): Promise<void> {
	return turn(past, future);
}

export function redoBook(): Promise<void> {
	return turn(future, past);
}

/** Shows the last of one pile again; what was shown goes onto the other. */
async function turn(from: Pile, onto: Pile): Promise<void> {
	const next = from.value.at(-1);
	if (next === undefined) return;
	from.value = from.value.slice(0, -1);
	onto.value = [...onto.value, book.value];
	await show(next);
}

async function use(next: Book | null): Promise<void> {
	past.value = [...past.value.slice(-mostSteps), book.value];
	future.value = [];
	await show(next);
}

async function show(next: Book | null): Promise<void> {
	const id = book.value?.id;
	book.value = next;
	bookKept.value = false;
	try {
		if (next) await call("books.keep", next);
		else if (id) await call("books.delete", { id });
		bookTrouble.value = "";
		bookKept.value = true;
	} catch (error) {
		bookTrouble.value = (error as Error).message;
	}
}

/** Puts a rule into the book and notes in its history what it said before. */
export async function changeRule(rule: Rule): Promise<void> {
	const when = new Date().toISOString().slice(0, 10);
	await takeText((await call("books.change", { book: bookText.value, rule, who: t("changed here"), when })).text);
}

export async function leaveOutRule(name: string): Promise<void> {
	await takeText((await call("books.leave-out", { book: bookText.value, name })).text);
}
