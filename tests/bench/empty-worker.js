// Starts the empty Go program as the page's worker starts the engine, and tells when it has run.
importScripts("go.js");
(async () => {
	const go = new Go();
	const response = await fetch("empty.wasm.gz");
	const unpacked = response.headers.has("Content-Encoding") ? response.body : response.body.pipeThrough(new DecompressionStream("gzip"));
	const module = new Response(unpacked, { headers: { "Content-Type": "application/wasm" } });
	const { instance } = await WebAssembly.instantiateStreaming(module, go.importObject);
	await go.run(instance);
	postMessage("ran");
})();
