// Builds the page into dist/: the engine with the Go at hand, the page, its worker and its service worker with esbuild. Every file but
// index.html and sw.js carries a hash of its content in its name, so that it may be cached for ever.
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, extname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";
import { build as bundle } from "esbuild";

const site = dirname(fileURLToPath(import.meta.url));
const root = dirname(site);
const dist = join(site, "dist");
const inSite = (...parts) => join(site, ...parts);

const started = Date.now();
rmSync(dist, { recursive: true, force: true });
mkdirSync(dist);
const buildName = hash(
	sources()
		.map((file) => `${relative(root, file)}\n${hash(readFileSync(file))}`)
		.join("\n"),
);
const policy = readFileSync(inSite("serve/policy.txt"), "utf8").trim();
const engine = buildEngine();
const worker = await buildScript("src/worker/worker.ts", { ENGINE_FILE: engine.name, ENGINE_BYTES: engine.bytes });
const page = await buildPage({ BUILD: buildName, WORKER_FILE: worker });
writePage(page);
await buildServiceWorker();
pack();
console.log(`built ${buildName} in ${((Date.now() - started) / 1000).toFixed(1)} s`);

/** Every file that the build is made from: the build is named after them. */
function sources() {
	const folders = ["engine", "rules", "wasm", "site/src", "site/style", "site/public", "site/serve"].map((folder) =>
		join(root, folder),
	);
	const files = ["go.mod", "go.sum", "site/index.html", "site/build.mjs", "site/package-lock.json"].map((file) =>
		join(root, file),
	);
	return [...files, ...folders.flatMap(filesUnder)].filter((file) => !/(_test\.go|\.test\.mjs)$/.test(file));
}

function filesUnder(folder) {
	return readdirSync(folder, { recursive: true })
		.map((name) => join(folder, name))
		.filter((file) => statSync(file).isFile())
		.sort();
}

function hash(content) {
	return createHash("sha256").update(content).digest("hex").slice(0, 12);
}

/** Writes a file under its name with a hash in it, and gives that name. */
function writeHashed(name, content) {
	const [, stem, ending] = name.match(/^([^.]+)(\..+)$/);
	const hashed = `${stem}-${hash(content)}${ending}`;
	writeFileSync(join(dist, hashed), content);
	return hashed;
}

function buildEngine() {
	const file = join(dist, "engine.wasm");
	const flags = ["build", "-trimpath", `-ldflags=-s -w -X main.build=${buildName}`, "-o", file, "./wasm"];
	execFileSync("go", flags, { cwd: root, env: { ...process.env, GOOS: "js", GOARCH: "wasm" }, stdio: "inherit" });
	const content = readFileSync(file);
	rmSync(file);
	const name = writeHashed("engine.wasm.gz", gzipSync(content, { level: 9 }));
	writeFileSync(join(dist, name.replace(/gz$/, "br")), brotli(content));
	return { name, bytes: content.length };
}

function brotli(content) {
	return brotliCompressSync(content, {
		params: { [constants.BROTLI_PARAM_QUALITY]: 9, [constants.BROTLI_PARAM_LGWIN]: 24 },
	});
}

function options(entry, define) {
	const goRoot = execFileSync("go", ["env", "GOROOT"], { cwd: root, encoding: "utf8" }).trim();
	return {
		entryPoints: [inSite(entry)],
		bundle: true,
		minify: true,
		target: "es2022",
		legalComments: "none",
		logLevel: "warning",
		define: Object.fromEntries(Object.entries(define).map(([name, value]) => [name, JSON.stringify(value)])),
		alias: { "wasm-exec": join(goRoot, "lib/wasm/wasm_exec.js") },
	};
}

/** Builds one classic script and gives its name in dist/. */
async function buildScript(entry, define) {
	const built = await bundle({ ...options(entry, define), format: "iife", write: false });
	return writeHashed(`${entry.match(/(\w+)\.ts$/)[1]}.js`, built.outputFiles[0].contents);
}

async function buildPage(define) {
	const built = await bundle({
		...options("src/main.tsx", define),
		format: "esm",
		splitting: true,
		jsx: "automatic",
		jsxImportSource: "preact",
		outdir: dist,
		entryNames: "[name]-[hash]",
		chunkNames: "[name]-[hash]",
		assetNames: "[name]-[hash]",
		metafile: true,
	});
	const [script, output] = Object.entries(built.metafile.outputs).find(([, made]) =>
		made.entryPoint?.endsWith("main.tsx"),
	);
	const nameOf = (path) => path?.slice(path.lastIndexOf("/") + 1);
	return { script: nameOf(script), styles: nameOf(output.cssBundle) };
}

function writePage({ script, styles }) {
	const icons = {};
	for (const name of readdirSync(inSite("public")).filter((name) => name.startsWith("icon")))
		icons[name] = writeHashed(name, readFileSync(inSite("public", name)));
	const manifest = readFileSync(inSite("public/manifest.webmanifest"), "utf8").replace(
		/icon[\w-]*\.\w+/g,
		(name) => icons[name],
	);
	const values = {
		policy,
		script,
		icon: icons["icon.svg"],
		touchIcon: icons["icon-whole-180.png"],
		manifest: writeHashed("manifest.webmanifest", manifest),
		styles: styles ? `<link rel="stylesheet" href="${styles}" />` : "",
	};
	const page = readFileSync(inSite("index.html"), "utf8").replace(/\{\{(\w+)\}\}/g, (_, name) => values[name]);
	writeFileSync(join(dist, "index.html"), page);
}

async function buildServiceWorker() {
	const files = readdirSync(dist).filter((name) => name !== "index.html" && !name.endsWith(".br"));
	const define = { BUILD: buildName, FILES: files.sort(), POLICY: policy };
	await bundle({ ...options("src/sw/sw.ts", define), format: "iife", outfile: join(dist, "sw.js") });
}

/** Puts packed copies beside what packs well. */
function pack() {
	for (const name of readdirSync(dist)) {
		if (![".html", ".js", ".css", ".svg", ".webmanifest"].includes(extname(name))) continue;
		const content = readFileSync(join(dist, name));
		writeFileSync(join(dist, `${name}.br`), brotli(content));
		writeFileSync(join(dist, `${name}.gz`), gzipSync(content, { level: 9 }));
	}
}
