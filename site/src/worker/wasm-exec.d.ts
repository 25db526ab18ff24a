// Go's own loader for WebAssembly, taken from the Go that builds the engine; the build says where it is.
declare module "wasm-exec";

declare class Go {
	importObject: WebAssembly.Imports;
	run(instance: WebAssembly.Instance): Promise<void>;
}
