// The pour of the open job, worked out only while it is shown. What was tapped on pour day changes nothing in it.
import { signal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { callLatest } from "../engine/client";
import type { BatchPlan, Job, PourDay, RoomPlan, RoomPour } from "../engine/contract";
import { bookText } from "../state/book";
import { job, plan, trouble } from "../state/job";
import { said, t } from "../words/words";

export const pourDay = signal<PourDay | null>(null);
export const working = signal(false);

/** Keeps the pour of the open job worked out as long as the caller is shown. */
export function useWorkedPour(): PourDay | null {
	const current = job.value;
	const book = bookText.value;
	const last = useRef("");
	useEffect(() => {
		if (!current) return;
		const key = book + JSON.stringify({ ...current, record: undefined });
		if (key === last.current) return;
		last.current = key;
		void work(current);
	}, [current, book]);
	useEffect(
		() => () => {
			pourDay.value = null;
		},
		[],
	);
	return pourDay.value;
}

async function work(current: Job): Promise<void> {
	working.value = true;
	try {
		const worked = await callLatest("pour", { job: current, book: bookText.peek() });
		if (worked) pourDay.value = worked;
	} catch (error) {
		trouble.value = (error as Error).message;
	} finally {
		working.value = false;
	}
}

/** A room of the pour with what is drawn of it. */
export type Shown = { pour: RoomPour; room: RoomPlan };

export function shownRoom(index: number): Shown | undefined {
	const pour = pourDay.value?.rooms[index];
	const room = plan.value?.rooms.find((one) => one.id === pour?.id);
	return pour && room ? { pour, room } : undefined;
}

/** Names a pour among all of the job's. */
export function keyOf(pour: RoomPour): string {
	return `${pour.id} ${pour.part}`;
}

/** Which lift and which bay of its room a pour is; empty for the only one. */
export function partName(pour: RoomPour): string {
	const lift = pour.lifts > 1 ? t("lift {n} of {of}", { n: pour.lift, of: pour.lifts }) : "";
	const bay = pour.bays > 1 ? t("bay {n} of {of}", { n: pour.bay, of: pour.bays }) : "";
	return [lift, bay].filter(Boolean).join(", ");
}

/** What a pour is called in a list of the job's pours. */
export function pourName(pour: RoomPour): string {
	const rooms = [...new Set(pourDay.value?.rooms.map((one) => one.id))];
	const room = pour.name || t("Room {n}", { n: rooms.indexOf(pour.id) + 1 });
	const part = partName(pour);
	return rooms.length === 1 && part ? part : [room, part].filter(Boolean).join(", ");
}

/** The water of a batch as a person measures it. */
export function waterSays(batch: BatchPlan): string {
	return batch.note ? `${said(batch.water.text)}. ${said(batch.note)}` : said(batch.water.text);
}
