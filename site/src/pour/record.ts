// The record of pour day in the job document: finding it, tapping moments into it, taking the last tap back.
import type { BatchPlan, BatchRecord, Job, PourRecord, RoomPour } from "../engine/contract";
import { edit, job } from "../state/job";

export type Moment = "started" | "poured" | "done";
const moments: Moment[] = ["started", "poured", "done"];

/** Which pour a record belongs to: a room's, or one part of it. */
export type Pouring = Pick<RoomPour, "id" | "part">;

export function recordIndex(current: Job | null, pour: Pouring): number {
	return current?.record?.findIndex((one) => one.room === pour.id && (one.part ?? "") === pour.part) ?? -1;
}

export function recordOf(pour: Pouring): PourRecord | undefined {
	return job.value?.record?.[recordIndex(job.value, pour)];
}

function change(pour: Pouring, what: (record: PourRecord) => void): void {
	edit("", (draft) => {
		const record = draft.record?.[recordIndex(draft, pour)];
		if (record) what(record);
	});
}

/** A text of the record: who, lots, temperatures, notes. */
export function write(pour: Pouring, name: keyof PourRecord, typed: string): void {
	edit(`record/${name}`, (draft) => {
		const record = draft.record?.[recordIndex(draft, pour)];
		if (record) (record[name] as string) = typed;
	});
}

/** Begins the record of a pour with its first batch. */
export function begin(pour: Pouring, batch: BatchPlan): void {
	const now = new Date().toISOString();
	edit("", (draft) => {
		draft.record = [...(draft.record ?? []), pourRecord(pour, now, [fresh(batch, now)])];
	});
}

function pourRecord(pour: Pouring, started: string, batches: BatchRecord[]): PourRecord {
	const record: PourRecord = { room: pour.id, started, batches };
	return pour.part ? { ...record, part: pour.part } : record;
}

function fresh(batch: BatchPlan, started?: string): BatchRecord {
	const record: BatchRecord = { batch: batch.number, bags: batch.bags, water: batch.water.text };
	return started ? { ...record, started } : record;
}

/** Notes that a batch was started, poured or spread, now. */
export function tap(pour: Pouring, batch: BatchPlan, moment: Moment): void {
	const now = new Date().toISOString();
	change(pour, (record) => {
		batchOf(record, batch)[moment] = now;
	});
}

export function skip(pour: Pouring, batch: BatchPlan): void {
	change(pour, (record) => {
		batchOf(record, batch).skipped = true;
	});
}

export function finish(pour: Pouring): void {
	change(pour, (record) => {
		record.ended = new Date().toISOString();
	});
}

/** Writes what was really measured out or noted for a batch. */
export function writeBatch(pour: Pouring, number: number, name: "water" | "note", typed: string): void {
	edit(`record/${number}/${name}`, (draft) => {
		const found = draft.record?.[recordIndex(draft, pour)]?.batches.find((one) => one.batch === number);
		if (found) found[name] = typed;
	});
}

function batchOf(record: PourRecord, batch: BatchPlan): BatchRecord {
	let found = record.batches.find((one) => one.batch === batch.number);
	if (!found) {
		found = fresh(batch);
		record.batches.push(found);
	}
	return found;
}

/** The last tap: the latest moment of any batch, or a batch left out after it. */
function lastTap(record: PourRecord): { batch: BatchRecord; moment: Moment | "skipped" } | undefined {
	const skipped = record.batches.at(-1);
	if (skipped?.skipped && !skipped.started) return { batch: skipped, moment: "skipped" };
	let last: { batch: BatchRecord; moment: Moment } | undefined;
	for (const batch of record.batches) {
		for (const moment of moments) {
			const at = batch[moment];
			if (at && (!last || at >= (last.batch[last.moment] ?? ""))) last = { batch, moment };
		}
	}
	return last;
}

/** Takes the last tap back; taking back the very first ends the record. */
export function takeBack(pour: Pouring): void {
	edit("", (draft) => {
		const index = recordIndex(draft, pour);
		const record = draft.record?.[index];
		const last = record && lastTap(record);
		if (!record || !last) return;
		delete last.batch[last.moment];
		delete record.ended;
		record.batches = record.batches.filter((batch) => batch.skipped || moments.some((moment) => batch[moment]));
		if (record.batches.length === 0) draft.record?.splice(index, 1);
	});
}
