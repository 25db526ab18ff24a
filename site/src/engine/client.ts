// The page's way to the engine. call() sends one request and gives its reply; callLatest() is for what is sent on every keystroke: while one
// is under way only the newest waits, and those between give undefined. If the engine fails or hangs it is ended and a fresh one started;
// requests that change what is kept, and that nobody has acknowledged, are sent again.
import type { Contract } from "./contract";
import { EngineError } from "./error";
import { Link } from "./link";

export { EngineError } from "./error";
export type { EngineEvent } from "./link";

export type Kind = keyof Contract;
export type Body<K extends Kind> = Contract[K]["body"];
export type Reply<K extends Kind> = Contract[K]["reply"];

declare const WORKER_FILE: string;
declare const BUILD: string;

const link = new Link(startWorker, BUILD);

/** What takes long has an engine of its own, started when first wanted, so that no keystroke's plan waits behind it. */
const slow = new Link(startWorker, BUILD);
const slowKinds: readonly Kind[] = ["study", "pour", "takeoff", "takeoff.planes", "clear"];

let compiled: WebAssembly.Module | undefined;

link.on((event) => {
	if (event.kind === "ready") compiled = event.engine;
});

/** Every worker after the first gets the engine compiled: nothing is fetched and compiled twice, and a fresh engine is there at once. */
function startWorker(): Worker {
	const worker = new Worker(WORKER_FILE);
	if (compiled) worker.postMessage(compiled);
	return worker;
}

/** Tells what the engine is doing: loading, ready, restarted, stopped. Gives what ends the telling. */
export const onEngine = link.on.bind(link);

/** Sends a request. Throws an EngineError. */
export function call<K extends Kind>(kind: K, body: Body<K>): Promise<Reply<K>> {
	return (slowKinds.includes(kind) ? slow : link).send(kind, body) as Promise<Reply<K>>;
}

interface Lane {
	next?: { send: () => void; drop: () => void };
}

const lanes = new Map<string, Lane>();

/** Sends a request when the one before it is answered; undefined when a newer one took its place. */
export function callLatest<K extends Kind>(kind: K, body: Body<K>): Promise<Reply<K> | undefined> {
	const name = laneOf(kind, body);
	return new Promise((resolve, reject) => {
		const send = () =>
			call(kind, body)
				.then(resolve, reject)
				.finally(() => advance(name));
		const lane = lanes.get(name);
		if (lane) {
			lane.next?.drop();
			lane.next = { send, drop: () => resolve(undefined) };
		} else {
			lanes.set(name, {});
			send();
		}
	});
}

/** Jobs don't supersede each other's keeping. */
function laneOf(kind: Kind, body: unknown): string {
	return kind === "jobs.keep" ? `${kind} ${(body as Body<"jobs.keep">).job.id}` : kind;
}

function advance(name: string): void {
	const next = lanes.get(name)?.next;
	if (next) {
		lanes.set(name, {});
		next.send();
	} else {
		lanes.delete(name);
	}
}

export function isEngineError(error: unknown): error is EngineError {
	return error instanceof EngineError;
}
