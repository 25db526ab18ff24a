// What to buy for the open job, priced by the shop that is kept in this browser. Asked for behind the plan: it takes longer than a keystroke.
import { effect, signal } from "@preact/signals";
import { call, callLatest } from "../engine/client";
import type { Job, Offer, Shop, TakeOff } from "../engine/contract";
import { said } from "../words/words";
import { bookText } from "./book";
import { edit, job, trouble } from "./job";

export const takeOff = signal<TakeOff | null>(null);
export const shop = signal<Shop | null>(null);
export const takingOff = signal(false);
const watched = signal(0);

/** Keeps the take-off of the open job worked out while a view shows it. Gives what ends that. */
export function watchTakeOff(): () => void {
	watched.value++;
	void needShop();
	return () => {
		watched.value--;
	};
}

effect(() => {
	const current = job.value;
	if (!current) takeOff.value = null;
	else if (watched.value > 0 && shop.value) void work(current, shop.value, bookText.value);
});

async function work(current: Job, priced: Shop, book: string): Promise<void> {
	takingOff.value = true;
	try {
		const worked = await callLatest("takeoff", { job: current, shop: priced, book });
		if (worked) takeOff.value = worked;
	} catch (error) {
		trouble.value = (error as Error).message;
	} finally {
		takingOff.value = false;
	}
}

/** The shop, fetched when first wanted. */
export async function needShop(): Promise<void> {
	try {
		shop.value ??= (await call("shop.open", {})).shop;
	} catch (error) {
		trouble.value = (error as Error).message;
	}
}

/** Changes the shop and keeps it. */
export function editShop(change: (draft: Shop) => void): void {
	if (!shop.value) return;
	const draft = structuredClone(shop.value);
	change(draft);
	keepShop(draft);
}

export function keepShop(next: Shop): void {
	shop.value = next;
	callLatest("shop.keep", { shop: next }).catch((error: Error) => {
		trouble.value = error.message;
	});
}

/** An offer with nothing said in it, of today. */
export function newOffer(number: string): Offer {
	const now = new Date();
	const date = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, "0")).join("-");
	return { number, date, customer: "", discount: "", delivered: false, labour: false, lines: {} };
}

/** Changes the open job's offer; the first change makes one, under the shop's next number. */
export function editOffer(field: string, change: (offer: Offer) => void): void {
	const taken = job.value?.offer ? "" : takeNumber();
	edit(`offer/${field}`, (draft) => {
		draft.offer ??= newOffer(taken);
		change(draft.offer);
	});
}

/** The shop's next quote number; the one after it is next. */
export function takeNumber(): string {
	const next = shop.value?.next ?? 1;
	editShop((draft) => {
		draft.next = next + 1;
	});
	return String(next);
}

/** What is wrong with a field of the shop or the offer, by its path. */
export function priceProblem(field: string): string {
	const problem = takeOff.value?.problems.find((p) => p.field === field);
	return problem ? `${said(problem.message)} ${said(problem.remedy)}` : "";
}
