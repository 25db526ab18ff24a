// The tables of a language and what is made of them, for tests and tools: built from the page's own sources.
import { join } from "node:path";
import { build } from "esbuild";
import { source } from "./collect.mjs";

/** Loads modules of the page by what they export. */
export async function load(...files) {
	const contents = files.map((file) => `export * from ${JSON.stringify(join(source, file))};`).join("\n");
	const built = await build({
		stdin: { contents, resolveDir: source, loader: "ts" },
		bundle: true,
		format: "esm",
		write: false,
		logLevel: "silent",
	});
	return import(`data:text/javascript;base64,${Buffer.from(built.outputFiles[0].text).toString("base64")}`);
}
