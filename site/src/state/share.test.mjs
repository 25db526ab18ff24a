// Share links: what is packed comes out again; whatever else comes in is refused or gives a text within bounds. RUNS=100000 tries that often, SEED=2 others.
import assert from "node:assert/strict";
import { dirname, join } from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { deflateRawSync } from "node:zlib";
import { build } from "esbuild";

const here = dirname(fileURLToPath(import.meta.url));
const bundle = await build({ entryPoints: [join(here, "share.ts")], bundle: true, format: "esm", write: false });
const { pack, unpack } = await import(
	`data:text/javascript;base64,${Buffer.from(bundle.outputFiles[0].contents).toString("base64")}`
);

const job = { format: 1, id: "a", name: "½ in, <b>„Diele“</b>", rooms: [], offer: { customer: "Ann", number: "7" } };
const runs = Number(process.env.RUNS ?? 2000);
const mostText = 8 << 20;

test("a shared job comes out as it went in, but for the customer and the number", async () => {
	const read = JSON.parse(await unpack(await pack(job)));
	assert.deepEqual(read, { ...job, offer: { customer: "", number: "" } });
});

test("a link that unpacks to more than any job is refused before it is unpacked whole", async () => {
	const bomb = deflateRawSync(Buffer.alloc(64 << 20)).toString("base64url");
	assert.ok(bomb.length < 1 << 20);
	await assert.rejects(unpack(bomb), /too long/);
	await assert.rejects(unpack("A".repeat((1 << 20) + 1)), /too long/);
});

test("cut, changed and made-up links are refused or give a text within bounds", async () => {
	const good = await pack(job);
	const next = random(Number(process.env.SEED ?? 1));
	const letters = "ABCxyz019-_=+/%. é\u0000";
	let refused = 0;
	for (let run = 0; run < runs; run++) {
		const link = [...(next() < 0.9 ? good : "")];
		for (let change = 0; change <= next() * 4; change++) {
			const at = Math.floor(next() * (link.length + 1));
			link.splice(at, Math.floor(next() * 3), letters[Math.floor(next() * letters.length)]);
		}
		const text = await unpack(link.join("").slice(0, Math.ceil(next() * 2 * link.length))).catch((error) => {
			assert.ok(error instanceof Error && error.message);
			refused++;
			return "";
		});
		assert.ok(text.length <= mostText);
	}
	assert.ok(refused > 0);
});

/** Numbers from 0 to 1 in an order that is the same every time: a linear congruence with the multiplier and step of Knuth and Lewis. */
function random(seed) {
	let state = seed;
	return () => {
		state = (Math.imul(1664525, state) + 1013904223) >>> 0;
		return state / 2 ** 32;
	};
}
