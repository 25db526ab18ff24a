// The page's client against a worker of our own making: what it does when the engine fails, hangs or is slow.
import assert from "node:assert/strict";
import { dirname, join } from "node:path";
import { beforeEach, mock, test } from "node:test";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const here = dirname(fileURLToPath(import.meta.url));

/** A worker that the test answers for. */
class TestWorker {
	static all = [];
	sent = [];
	ended = false;
	constructor() {
		TestWorker.all.push(this);
	}
	postMessage(bytes) {
		const [head, body] = new TextDecoder()
			.decode(bytes)
			.split("\n")
			.map((line) => JSON.parse(line));
		this.sent.push({ ...head, body });
	}
	terminate() {
		this.ended = true;
	}
	tell(data) {
		this.onmessage({ data });
	}
	answer(request, reply, memory = 0) {
		const bytes = new TextEncoder().encode(JSON.stringify({ id: request.id, ...reply }));
		this.tell({ kind: "reply", bytes, memory });
	}
	get last() {
		return this.sent.at(-1);
	}
}

globalThis.Worker = TestWorker;
const last = () => TestWorker.all.at(-1);
const settle = () => new Promise((resolve) => setImmediate(resolve));

let client;
beforeEach(async () => {
	mock.timers.reset();
	mock.timers.enable({ apis: ["setTimeout"] });
	TestWorker.all = [];
	const built = await build({
		entryPoints: [join(here, "client.ts")],
		bundle: true,
		write: false,
		format: "esm",
		define: { WORKER_FILE: '"worker.js"', BUILD: '"b1"' },
		footer: { js: `// ${Math.random()}` }, // a module of its own for each test
	});
	client = await import(`data:text/javascript;base64,${Buffer.from(built.outputFiles[0].text).toString("base64")}`);
});

test("the first request starts the engine and greets it", async () => {
	const reply = client.call("jobs.list", {});
	assert.deepEqual(
		last().sent.map((request) => request.kind),
		["hello", "jobs.list"],
	);
	assert.deepEqual(last().sent[0].body, { build: "b1" });
	last().answer(last().last, { ok: true, body: { jobs: [] } });
	assert.deepEqual(await reply, { jobs: [] });
});

test("an engine of another build is not used", async () => {
	const reply = client.call("jobs.list", {});
	last().answer(last().sent[0], {
		ok: false,
		error: { code: "build", message: "Different versions.", remedy: "Reload." },
	});
	await assert.rejects(reply, { code: "stopped", message: "Different versions." });
	assert.ok(last().ended);
});

test("an error carries what the person needs", async () => {
	const reply = client.call("quantity.read", { typed: "3 kg" });
	const error = { code: "dimension", field: "typed", given: "3 kg", message: "That is a mass.", remedy: "Write 3 m." };
	last().answer(last().last, { ok: false, error });
	await assert.rejects(reply, { name: "EngineError", ...error });
});

test("of the plans asked for while one is under way only the newest is made", async () => {
	const plans = [1, 2, 3, 4].map((n) => client.callLatest("plan", { job: { id: "a", n } }));
	assert.equal(last().sent.length, 2, "hello and the first");
	last().answer(last().last, { ok: true, body: "plan 1" });
	await settle();
	assert.equal(last().last.body.job.n, 4);
	last().answer(last().last, { ok: true, body: "plan 4" });
	assert.deepEqual(await Promise.all(plans), ["plan 1", undefined, undefined, "plan 4"]);
});

test("keeping one job does not drop the keeping of another", async () => {
	const kept = ["a", "b", "b", "a"].map((id, n) => client.callLatest("jobs.keep", { job: { id, n } }));
	for (let i = 0; i < 4; i++) {
		for (const request of last().sent.slice(1)) last().answer(request, { ok: true, body: request.body.job.n });
		await settle();
	}
	assert.deepEqual(await Promise.all(kept), [0, 1, 2, 3]);
});

test("after a fault a fresh engine gets what was not acknowledged", async () => {
	const events = [];
	client.onEngine((event) => events.push(event));
	const kept = client.call("jobs.keep", { job: { id: "a", name: "Hall" } });
	const trace = client.call("explain", { job: {} });
	const first = last();
	first.tell({ kind: "fault", report: "RangeError: stack" });
	assert.ok(first.ended);
	await assert.rejects(trace, { code: "restarted" });
	assert.deepEqual(
		last().sent.map((request) => request.kind),
		["hello", "jobs.keep"],
	);
	assert.deepEqual(events, [
		{
			kind: "restarted",
			reason: "The engine failed.",
			report: "RangeError: stack\nbuild b1, asked for: hello, jobs.keep, explain",
		},
	]);
	last().answer(last().last, { ok: true, body: { kept: "now" } });
	assert.deepEqual(await kept, { kept: "now" });
});

test("an engine that says nothing for too long is ended", async () => {
	const plan = client.call("explain", { job: {} });
	last().answer(last().sent[0], { ok: true, body: {} });
	const first = last();
	mock.timers.tick(14_999);
	assert.ok(!first.ended);
	mock.timers.tick(1);
	assert.ok(first.ended);
	await assert.rejects(plan, { code: "restarted", message: "The engine took too long." });
});

test("a plan that was under way when the engine failed is asked for once more, and given up when it fails that one too", async () => {
	const plan = client.call("plan", { job: {} });
	for (const kinds of [["hello", "plan"], ["hello"]]) {
		last().answer(last().sent[0], { ok: true, body: {} });
		last().tell({ kind: "fault", report: "again" });
		assert.deepEqual(
			last().sent.map((request) => request.kind),
			kinds,
		);
	}
	await assert.rejects(plan, { code: "restarted" });
});

test("a slow network is waited for as long as it brings something", () => {
	client.call("jobs.list", {}).catch(() => {});
	for (let i = 0; i < 20; i++) {
		mock.timers.tick(50_000);
		last().tell({ kind: "loading", loaded: i, total: 100 });
	}
	assert.equal(TestWorker.all.length, 1);
});

test("a request that fails the engine every time is given up, and the next one works", async () => {
	const kept = client.call("jobs.keep", { job: { id: "a" } });
	for (let i = 0; i < 3; i++) {
		last().answer(last().sent[0], { ok: true, body: {} });
		last().tell({ kind: "fault", report: "again" });
	}
	await assert.rejects(kept, { code: "restarted" });
	const list = client.call("jobs.list", {});
	last().answer(last().last, { ok: true, body: { jobs: [] } });
	assert.deepEqual(await list, { jobs: [] });
});

test("an engine that never starts is given up", async () => {
	const events = [];
	client.onEngine((event) => events.push(event.kind));
	const list = client.call("jobs.list", {});
	for (let i = 0; i < 4; i++) last().tell({ kind: "fault", report: "no such file" });
	await assert.rejects(list, (error) => ["stopped", "restarted"].includes(error.code));
	assert.equal(events.at(-1), "stopped");
	assert.equal(TestWorker.all.length, 4);
});

test("an engine that grew too large is replaced when nothing is under way", async () => {
	const list = client.call("jobs.list", {});
	const first = last();
	first.answer(first.sent[0], { ok: true, body: {} });
	first.answer(first.last, { ok: true, body: { jobs: [] } }, 2 ** 31);
	await list;
	assert.ok(first.ended);
	assert.equal(TestWorker.all.length, 2);
});

test("a fault told in a reply restarts the engine too", async () => {
	const plan = client.call("plan", { job: {} });
	const first = last();
	first.answer(first.last, {
		ok: false,
		error: { code: "fault", message: "The engine failed.", given: "goroutine 1" },
	});
	await assert.rejects(plan, { code: "fault" });
	assert.ok(first.ended);
});
