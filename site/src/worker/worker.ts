// The thread that runs the engine. It only loads the engine, or takes the one that the page has by now, and pumps bytes: requests in, replies out.
// Any fault is the page's to handle.
import "wasm-exec";
import type { FromWorker } from "./messages";

declare const ENGINE_FILE: string;
declare const ENGINE_BYTES: number;

const waiting: Uint8Array[] = [];
let request: ((message: Uint8Array) => void) | undefined;

const scope = self as unknown as DedicatedWorkerGlobalScope & {
	lowspotRequest?: (message: Uint8Array) => void;
	lowspotReply?: (message: Uint8Array<ArrayBuffer>) => void;
};

let started = false;

scope.onmessage = ({ data }: MessageEvent<Uint8Array | WebAssembly.Module>) => {
	if (!started) start(data instanceof WebAssembly.Module ? data : undefined).catch(fault);
	started = true;
	if (!(data instanceof Uint8Array)) return;
	if (request) hand(data);
	else waiting.push(data);
};

async function start(compiled: WebAssembly.Module | undefined): Promise<void> {
	const go = new Go();
	const engine = compiled ?? (await WebAssembly.compileStreaming(await fetchEngine()));
	const instance = await WebAssembly.instantiate(engine, go.importObject);
	const memory = instance.exports.mem as WebAssembly.Memory;
	scope.lowspotReply = (bytes) => tell({ kind: "reply", bytes, memory: memory.buffer.byteLength }, [bytes.buffer]);
	const ended = go.run(instance);
	ended.then(() => fault("The engine ended."), fault);
	request = scope.lowspotRequest;
	tell({ kind: "ready", engine });
	waiting.splice(0).forEach(hand);
}

function hand(message: Uint8Array): void {
	try {
		request?.(message);
	} catch (error) {
		fault(error);
	}
}

/** Fetches the engine, tells how far it is, and unpacks it where the host didn't say that the browser should. */
async function fetchEngine(): Promise<Response> {
	const response = await fetch(ENGINE_FILE);
	if (!response.ok || !response.body) throw new Error(`The engine's file could not be fetched (${response.status}).`);
	const unpacked = response.headers.has("Content-Encoding")
		? response.body
		: response.body.pipeThrough(new DecompressionStream("gzip"));
	return new Response(unpacked.pipeThrough(counting()), { headers: { "Content-Type": "application/wasm" } });
}

function counting(): TransformStream<Uint8Array<ArrayBuffer>, Uint8Array<ArrayBuffer>> {
	const step = ENGINE_BYTES / 50; // telling of every chunk would keep the page busy
	let [loaded, told] = [0, 0];
	return new TransformStream({
		transform(chunk, out) {
			loaded += chunk.byteLength;
			if (loaded - told >= step) {
				told = loaded;
				tell({ kind: "loading", loaded, total: ENGINE_BYTES });
			}
			out.enqueue(chunk);
		},
	});
}

function fault(error: unknown): void {
	const report = error instanceof Error ? `${error.name}: ${error.message}\n${error.stack ?? ""}` : String(error);
	tell({ kind: "fault", report });
}

function tell(message: FromWorker, transfer: Transferable[] = []): void {
	scope.postMessage(message, transfer);
}
