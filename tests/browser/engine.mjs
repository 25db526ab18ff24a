// Speaks the engine's protocol from within a page, without the page's own client: what is tested is the engine in its worker.
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { dist } from "./harness.mjs";

/** Starts an engine of the test's own in the page. Gives a way to ask it and a way to end it at once. */
export async function startEngine(page) {
	const file = readdirSync(dist).find((name) => /^worker-\w+\.js$/.test(name));
	await page.evaluate((url) => {
		const waiting = new Map();
		let count = 0;
		const worker = new Worker(url);
		if (window.compiledEngine) worker.postMessage(window.compiledEngine); // as the page does
		const fail = (report) => {
			for (const resolve of waiting.values()) resolve({ ok: false, error: { code: "ended", message: report } });
		};
		worker.onerror = (event) => fail(event.message ?? `${url} could not be fetched`);
		worker.onmessage = ({ data }) => {
			if (data.kind === "fault") fail(data.report);
			if (data.kind === "ready") window.compiledEngine = data.engine;
			if (data.kind !== "reply") return;
			const reply = JSON.parse(new TextDecoder().decode(data.bytes));
			waiting.get(reply.id)?.(reply);
		};
		window.testEngine = {
			ask(kind, body) {
				const id = ++count;
				worker.postMessage(new TextEncoder().encode(`${JSON.stringify({ id, kind })}\n${JSON.stringify(body)}`));
				return new Promise((resolve) => waiting.set(id, resolve));
			},
			end: () => worker.terminate(),
		};
	}, file);
	const ask = (kind, body = {}) => page.evaluate(([kind, body]) => window.testEngine.ask(kind, body), [kind, body]);
	return {
		ask,
		/** Asks and gives the reply's body; an error fails the test. */
		async have(kind, body) {
			const reply = await ask(kind, body);
			if (!reply.ok) throw new Error(`${kind}: ${reply.error.code}: ${reply.error.message}`);
			return reply.body;
		},
		end: () => page.evaluate(() => window.testEngine.end()),
	};
}
