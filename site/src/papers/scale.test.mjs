// The scale of the floor map: the largest usual one that fits A4 and Letter both, and a bar that a ruler of a hand's width measures.
import assert from "node:assert/strict";
import { before, test } from "node:test";
import { load } from "../words/tables.mjs";

let scale;
before(async () => {
	scale = await load("papers/scale.ts");
});

const room = (width, height) => ({ left: 0, below: 0, width, height });

test("a room gets the largest scale at which it fits the paper", () => {
	for (const [width, height, metric, us] of [
		[1.6, 1.2, 10, 12],
		[3.3, 2.5, 20, 24],
		[4.2, 3.1, 25, 32],
		[4.2, 3.8, 50, 32],
		[8, 6, 50, 48],
		[16, 7, 100, 96],
		[30, 20, 200, 192],
	]) {
		assert.equal(scale.scaleFor(room(width, height), false).denominator, metric, `${width} × ${height} m`);
		assert.equal(scale.scaleFor(room(width, height), true).denominator, us, `${width} × ${height} m`);
	}
	assert.equal(scale.scaleFor(room(500, 1), false), undefined);
});

test("the bar is round, and no longer than 100 mm", () => {
	for (const [denominator, us, text] of [
		[10, false, "1 m"],
		[20, false, "2 m"],
		[25, false, "2 m"],
		[50, false, "5 m"],
		[12, true, "2 ft"],
		[24, true, "5 ft"],
		[48, true, "10 ft"],
	]) {
		assert.equal(scale.barFor({ denominator }, us).text, text, `1:${denominator}`);
	}
});
