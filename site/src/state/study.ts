// The study of the open job: what is too slow to be worked out on every keystroke. It is asked for when the edits pause, and comes after the plan.
import { effect, signal } from "@preact/signals";
import { callLatest } from "../engine/client";
import type { Job, PlaneChoice, PlaneCosts, RoomStudy, Study } from "../engine/contract";
import { bookText } from "./book";
import { job } from "./job";
import { needShop, shop } from "./takeoff";

export const study = signal<Study | null>(null);
/** A newer study is coming: what is shown belongs to the job of a moment ago. */
export const studying = signal(false);
export const studyTrouble = signal("");

const pause = 400; // ms after the last edit
let clock: ReturnType<typeof setTimeout> | undefined;
let studied = ""; // the job that the study belongs to

effect(() => {
	const next = job.value;
	clearTimeout(clock);
	if (next?.id !== studied) {
		study.value = null;
		studied = next?.id ?? "";
	}
	studying.value = next !== null;
	studyTrouble.value = "";
	if (next) clock = setTimeout(() => work(next), pause);
});

async function work(next: Job): Promise<void> {
	try {
		const worked = await callLatest("study", { job: next, book: bookText.peek() });
		if (job.value !== next || !worked) return;
		study.value = worked;
		planeCosts.value = null;
		void priceOut(next);
	} catch (error) {
		if (job.value !== next) return;
		studyTrouble.value = (error as Error).message;
	}
	studying.value = false;
}

/** What each plane costs by the shop's price list; null while that is coming. */
export const planeCosts = signal<PlaneCosts | null>(null);

async function priceOut(next: Job): Promise<void> {
	try {
		await needShop();
		if (!shop.value) return;
		const costs = await callLatest("takeoff.planes", { job: next, shop: shop.value, book: bookText.peek() });
		if (job.value === next && costs) planeCosts.value = costs;
	} catch (error) {
		if (job.value === next) studyTrouble.value = (error as Error).message;
	}
}

/** What one of a room's planes costs; empty where that isn't known. */
export function planeCost(room: string, choice: PlaneChoice): string {
	const planes = planeCosts.value?.rooms.find((one) => one.id === room)?.planes ?? [];
	return planes.find((one) => JSON.stringify(one.choice) === JSON.stringify(choice))?.total ?? "";
}

export function roomStudy(id: string | undefined): RoomStudy | undefined {
	return study.value?.rooms.find((room) => room.id === id && room.ready);
}

/** What the map may show, by name; depths and readings are shown at first. */
export const layerNames = [
	"depth",
	"readings",
	"plane",
	"lifts",
	"batches",
	"indicators",
	"doubt",
	"next",
	"flatness",
	"spots",
	"moisture",
] as const;
export type LayerName = (typeof layerNames)[number];
export const layers = signal<ReadonlySet<LayerName>>(new Set<LayerName>(["depth", "readings"]));

export function toggle(name: LayerName): void {
	const next = new Set(layers.value);
	if (!next.delete(name)) next.add(name);
	layers.value = next;
}

/** The grinding step whose spots are shown, counted from the least. */
export const cutShown = signal(0);
