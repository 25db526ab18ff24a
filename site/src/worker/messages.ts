// What the worker tells the page. What the page tells the worker is one request's bytes; before the first of them may come the compiled engine
// that an earlier worker told of.
export type FromWorker =
	| { kind: "loading"; loaded: number; total: number } // bytes of the engine so far; total 0: not known
	| { kind: "ready"; engine: WebAssembly.Module } // the engine takes requests
	| { kind: "reply"; bytes: Uint8Array<ArrayBuffer>; memory: number } // memory: bytes that the engine holds
	| { kind: "fault"; report: string }; // the engine is gone: end this worker
