// How the open job stands: what of it is on the disk, what is in a file of the person's own, whether another tab writes it.
import { computed, signal } from "@preact/signals";
import { call, callLatest } from "../engine/client";
import type { Job, Standing } from "../engine/contract";
import { inWords } from "../engine/error";
import { fileName, save } from "./files";
import { askToLast } from "./lasting";
import { writer } from "./writer";

export const stands = signal<Standing | null>(null);
export const keepTrouble = signal<string[]>([]);
const onDisk = signal<Job | null>(null);
const shown = signal<Job | null>(null);

/** All that is shown is on the disk and was read back. */
export const allKept = computed(() => shown.value === onDisk.value);

let underWay: Promise<unknown> = Promise.resolve();

/** Ends when all that was to be kept so far is kept, or can't be. */
export function settled(): Promise<unknown> {
	return underWay;
}

/** Notes a job that comes from the disk, or none. */
export function noteOpened(job: Job | null, standing: Standing | null): void {
	shown.value = job;
	onDisk.value = standing ? job : null;
	stands.value = standing;
	keepTrouble.value = [];
}

/** Keeps what is shown. edited: by the person, not only made or opened. */
export function keep(next: Job, edited: boolean): void {
	shown.value = next;
	underWay = Promise.allSettled([underWay, keepNow(next, edited)]);
}

async function keepNow(next: Job, edited: boolean): Promise<void> {
	try {
		const standing = await callLatest("jobs.keep", { job: next });
		if (!standing) return; // a newer state took its place
		if (shown.peek()?.id === next.id) {
			onDisk.value = next;
			stands.value = standing;
		}
		keepTrouble.value = [];
		tabs?.postMessage(next.id);
		if (edited) void askToLast();
	} catch (error) {
		keepTrouble.value = inWords(error);
	}
}

const tabs = "BroadcastChannel" in globalThis ? new BroadcastChannel("lowspot kept") : undefined;

/** Calls back a moment after another tab kept the job that this one only looks at. */
export function onKeptElsewhere(id: () => string | undefined, look: () => void): void {
	let pause: ReturnType<typeof setTimeout> | undefined;
	tabs?.addEventListener("message", (event) => {
		if (event.data !== id() || writer.value !== "other") return;
		clearTimeout(pause);
		pause = setTimeout(look, 300);
	});
}

/** Saves the open job as a file of the person's own: as it is shown, even where it can't be kept. */
export async function saveAsFile(job: Job): Promise<void> {
	await settled();
	const { text } = allKept.value ? await call("jobs.export", { ids: [job.id] }) : await call("jobs.write", { job });
	save(fileName(job.name, "json"), text, "application/json");
	if (!allKept.value) return;
	const { job: _, ...standing } = await call("jobs.open", { id: job.id });
	stands.value = standing;
}

/** Keeps quiet about saving a file for a few days. */
export async function putOff(id: string): Promise<void> {
	stands.value = await call("jobs.put-off", { id });
}
