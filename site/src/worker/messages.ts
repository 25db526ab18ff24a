// What the worker tells the page. What the page tells the worker is always one request's bytes.
export type FromWorker =
	| { kind: "loading"; loaded: number; total: number } // bytes of the engine so far; total 0: not known
	| { kind: "ready" } // the engine takes requests
	| { kind: "reply"; bytes: Uint8Array<ArrayBuffer>; memory: number } // memory: bytes that the engine holds
	| { kind: "fault"; report: string }; // the engine is gone: end this worker
