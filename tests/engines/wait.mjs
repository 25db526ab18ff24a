// Waiting for what another process does.
import { createServer } from "node:net";

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
