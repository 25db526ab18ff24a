// Keeps one living engine in a worker: numbers requests, matches replies, ends the worker on a fault or when it takes too long, starts a
// fresh one and sends again what may be sent twice.
import type { FromWorker } from "../worker/messages";
import { EngineError } from "./error";

export type EngineEvent =
	| { kind: "loading"; loaded: number; total: number } // bytes of the engine
	| { kind: "ready"; engine: WebAssembly.Module } // compiled, for the workers that follow
	| { kind: "restarted"; reason: string; report: string } // report: for the person to copy; nothing is sent anywhere
	| { kind: "stopped"; reason: string; report: string }; // it would not start again: only a reload helps

interface Waiting {
	kind: string;
	bytes: Uint8Array;
	tries: number;
	resolve: (body: unknown) => void;
	reject: (error: EngineError) => void;
}

/** How long one request may take, ms. */
const patience: Record<string, number> = {
	plan: 15_000,
	explain: 15_000,
	study: 90_000,
	hello: 60_000,
	"jobs.export": 150_000,
	"jobs.import": 150_000,
};
const usualPatience = 30_000;

/** Requests that do no harm when done twice: they are sent again to a fresh engine. */
const repeatable =
	/^(jobs\.(list|open|keep|put-off|delete|undelete|revisions|export)|sheets\..*|books\.(list|open|keep|delete|shipped|view)|rules\.on|settings\..*|shop\..*|vocabulary)$/;
const mostTries = 3;

/** Requests that only work something out may be tried once more: what ended the engine may have been another one. */
const workedOut = /^(plan|study|guide|field-sheet|pour|takeoff)$/;

function triesOf(kind: string): number {
	if (repeatable.test(kind)) return mostTries;
	return workedOut.test(kind) ? 2 : 1;
}

/** An engine's memory never shrinks: past this a fresh one takes over as soon as nothing is under way. */
const mostMemory = 1 << 30;

/** Starts in a row that ended before the engine answered; more than these and it is given up. */
const mostStarts = 3;

export class Link {
	private worker: Worker | undefined;
	private waiting = new Map<number, Waiting>();
	private listeners = new Set<(event: EngineEvent) => void>();
	private count = 0;
	private failedStarts = 0;
	private clock: ReturnType<typeof setTimeout> | undefined;

	constructor(
		private readonly make: () => Worker,
		private readonly build: string,
	) {}

	on(listener: (event: EngineEvent) => void): () => void {
		this.listeners.add(listener);
		return () => this.listeners.delete(listener);
	}

	send(kind: string, body: unknown): Promise<unknown> {
		if (!this.worker) this.start();
		return this.ask(kind, body);
	}

	private ask(kind: string, body: unknown): Promise<unknown> {
		return new Promise((resolve, reject) => {
			const id = ++this.count;
			const bytes = new TextEncoder().encode(`${JSON.stringify({ id, kind })}\n${JSON.stringify(body)}`);
			this.waiting.set(id, { kind, bytes, tries: 0, resolve, reject });
			this.post(id);
		});
	}

	private post(id: number): void {
		const entry = this.waiting.get(id);
		if (!entry) return;
		entry.tries++;
		this.worker?.postMessage(entry.bytes);
		if (!this.clock) this.watch();
	}

	private start(): void {
		const worker = this.make();
		this.worker = worker;
		worker.onmessage = (event: MessageEvent<FromWorker>) => this.hear(event.data);
		worker.onerror = (event) =>
			this.restart("The engine failed.", `${event.message} (${event.filename}:${event.lineno})`);
		this.ask("hello", { build: this.build }).catch((error: EngineError) => this.stop(error.message, error.remedy));
	}

	private hear(message: FromWorker): void {
		if (message.kind === "reply") this.settle(message.bytes, message.memory);
		else if (message.kind === "fault") this.restart("The engine failed.", message.report);
		else {
			this.watch(); // a slow network is no fault
			this.tell(message);
		}
	}

	private settle(bytes: Uint8Array, memory: number): void {
		const reply = JSON.parse(new TextDecoder().decode(bytes));
		const entry = this.waiting.get(reply.id);
		if (!entry) return;
		this.waiting.delete(reply.id);
		this.failedStarts = 0;
		this.watch();
		if (reply.ok) entry.resolve(reply.body);
		else entry.reject(new EngineError(reply.error));
		if (reply.error?.code === "fault") this.restart(reply.error.message, reply.error.given ?? "");
		else if (memory > mostMemory && this.waiting.size === 0) this.replace();
	}

	/** Watches the oldest request: the engine works on one thing at a time, so each answer starts the clock afresh. */
	private watch(): void {
		clearTimeout(this.clock);
		this.clock = undefined;
		const oldest = this.waiting.values().next().value;
		if (!oldest) return;
		const limit = patience[oldest.kind] ?? usualPatience;
		this.clock = setTimeout(
			() => this.restart("The engine took too long.", `no answer to ${oldest.kind} in ${limit / 1000} s`),
			limit,
		);
	}

	private restart(reason: string, report: string): void {
		if (++this.failedStarts > mostStarts) {
			this.stop(reason, report);
			return;
		}
		const unanswered = [...this.waiting];
		this.waiting.clear();
		this.replace();
		for (const [id, entry] of unanswered) this.resume(id, entry, reason);
		const asked = unanswered.map(([, entry]) => entry.kind).join(", ");
		this.tell({ kind: "restarted", reason, report: `${report}\nbuild ${this.build}, asked for: ${asked}` });
	}

	private resume(id: number, entry: Waiting, reason: string): void {
		if (entry.kind === "hello") return;
		if (entry.tries < triesOf(entry.kind)) {
			this.waiting.set(id, entry);
			this.post(id);
			return;
		}
		const remedy = "It was started afresh; nothing that was kept is lost. Undo the last change if it happens again.";
		entry.reject(new EngineError({ code: "restarted", message: reason, remedy }));
	}

	/** Puts a fresh engine in the place of the one there is. */
	private replace(): void {
		this.worker?.terminate();
		this.start();
	}

	private stop(reason: string, report: string): void {
		clearTimeout(this.clock);
		this.worker?.terminate();
		for (const entry of this.waiting.values()) {
			entry.reject(
				new EngineError({ code: "stopped", message: reason, remedy: "Reload the page. What was kept is still there." }),
			);
		}
		this.waiting.clear();
		this.worker = undefined;
		this.failedStarts = 0;
		this.tell({ kind: "stopped", reason, report });
	}

	private tell(event: EngineEvent): void {
		for (const listener of this.listeners) listener(event);
	}
}
