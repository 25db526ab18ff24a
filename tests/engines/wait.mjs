// Waiting for what another process does, never for ever.
import { spawn } from "node:child_process";
import { createServer } from "node:net";

/** Gives what a promise comes to, or says what it waited for. */
export async function within(what, promise, patience = 30_000) {
	let late;
	const tooLate = new Promise((_, reject) => {
		late = setTimeout(() => reject(new Error(`waited ${patience / 1000} s for ${what}`)), patience);
	});
	return Promise.race([promise, tooLate]).finally(() => clearTimeout(late));
}

/** Waits until a look gives something, and gives it. */
export async function until(what, look, patience = 60_000) {
	for (const end = Date.now() + patience; Date.now() < end; ) {
		const found = await look();
		if (found) return found;
		await new Promise((resolve) => setTimeout(resolve, 100));
	}
	throw new Error(`waited ${patience / 1000} s for ${what}`);
}

/** A port of this machine that nobody listens on. */
export function freePort() {
	return new Promise((resolve) => {
		const server = createServer().listen(0, "127.0.0.1", () => {
			const { port } = server.address();
			server.close(() => resolve(port));
		});
	});
}

/** Starts a program that ends, at the latest, when the tests do, also where they are ended for taking too long. */
export function start(program, given, options = {}) {
	const started = spawn(program, given, { stdio: "ignore", ...options });
	process.on("exit", () => started.kill("SIGKILL"));
	return started;
}

process.once("SIGTERM", () => process.exit(1));
