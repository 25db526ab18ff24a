// Words on the map keep off dots, marks and each other.
import assert from "node:assert/strict";
import { dirname, join } from "node:path";
import { before, test } from "node:test";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

let labels;
before(async () => {
	const entry = join(dirname(fileURLToPath(import.meta.url)), "labels.ts");
	const { outputFiles } = await build({ entryPoints: [entry], bundle: true, format: "esm", write: false });
	labels = await import(`data:text/javascript,${encodeURIComponent(outputFiles[0].text)}`);
});

const board = { width: 400, height: 300 };
const covers = (a, b) => a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;

test("a word goes to the other side of its mark where a dot lies in the way", () => {
	const mark = { x: 100, y: 100 };
	const [word] = labels.place(
		[{ key: "a", text: "thinnest", places: labels.beside(mark, 14) }],
		[labels.around({ x: 130, y: 100 }, 6)],
		board,
	);
	assert.equal(word.at.anchor, "end");
});

test("no word covers a dot or another word, and none leaves the board", () => {
	const dots = Array.from({ length: 40 }, (_, i) => ({ x: 20 + (i % 8) * 50, y: 20 + Math.floor(i / 8) * 60 }));
	const drawn = dots.map((dot) => labels.around(dot, 6));
	const wanted = dots.map((dot, i) => ({
		key: String(i),
		text: `${i} mm`,
		small: true,
		places: labels.beside(dot, 12),
	}));
	const placed = labels.place(wanted, drawn, board);
	assert.ok(placed.length > 20);
	const boxes = placed.map((word) => labels.boxOf(word, word.at));
	boxes.forEach((box, i) => {
		assert.ok(box.left >= 0 && box.right <= board.width && box.top >= 0 && box.bottom <= board.height);
		assert.ok(!drawn.some((dot) => covers(box, dot)));
		assert.ok(!boxes.some((other, j) => j !== i && covers(box, other)));
	});
});

test("a word that finds no place is left out, unless it is needed", () => {
	const word = { key: "a", text: "way out", places: [{ x: 50, y: 50, anchor: "middle" }] };
	const drawn = [labels.around({ x: 50, y: 50 }, 30)];
	assert.equal(labels.place([word], drawn, board).length, 0);
	assert.equal(labels.place([{ ...word, needed: true }], drawn, board).length, 1);
});

test("a needed word rather covers a line than another word", () => {
	const line = labels.along({ x: 0, y: 150 }, { x: 399, y: 150 });
	const places = [
		{ x: 200, y: 100, anchor: "middle" },
		{ x: 200, y: 150, anchor: "middle" },
	];
	const first = { key: "first", text: "thinnest", places: places.slice(0, 1) };
	const placed = labels.place([first, { key: "second", text: "wall", needed: true, places }], line, board);
	assert.equal(placed[1].at.y, 150);
});

test("a word turned by half a circle or a whole one lies as one that isn't turned, and one by a quarter stands", () => {
	const box = (angle) =>
		labels.boxOf({ key: "a", text: "4.203 m", small: true, angle }, { x: 50, y: 50, anchor: "middle" });
	const wide = (found) => found.right - found.left > found.bottom - found.top;
	for (const angle of [0, 180, -180, 360]) assert.ok(wide(box(angle)), `${angle}`);
	for (const angle of [90, -90, 270]) assert.ok(!wide(box(angle)), `${angle}`);
});
