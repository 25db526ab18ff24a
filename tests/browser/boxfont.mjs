// A typeface of the tests' own, made here and in no file: every letter is the same box. With it a page is laid out alike on every machine, whatever
// fonts that has, so that its shape can be compared. The tables are those that the OpenType specification (1.9) requires of a TrueType font.
const unitsPerEm = 1000;
const width = 560; // of a letter, near a common face's average
const ranges = [[0x20, 0x17f], [0x2000, 0x206f], [0x2190, 0x21ff], [0x2200, 0x22ff], [0x25a0, 0x25ff], [0x2700, 0x27bf]];

/** Writes numbers one after the other: [bytes, value] each. */
function bytes(...fields) {
	const out = Buffer.alloc(fields.reduce((sum, [size]) => sum + size, 0));
	let at = 0;
	for (const [size, value] of fields) {
		if (size === 8) out.writeBigInt64BE(BigInt(value), at);
		else if (value < 0) out.writeIntBE(value, at, size);
		else out.writeUIntBE(value, at, size);
		at += size;
	}
	return out;
}

const short = (...values) => bytes(...values.map((value) => [2, value]));

/** Every character of the ranges is glyph 1; the space is the empty glyph 2. */
function cmap() {
	const groups = ranges.flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, i) => first + i)).map((code) => [code, code === 0x20 || code === 0xa0 ? 2 : 1]);
	const table = bytes([2, 12], [2, 0], [4, 16 + 12 * groups.length], [4, 0], [4, groups.length], ...groups.flatMap(([code, glyph]) => [[4, code], [4, code], [4, glyph]]));
	return Buffer.concat([short(0, 1), bytes([2, 3], [2, 10], [4, 12]), table]);
}

/** A box from the baseline to the height of a small letter. */
function box() {
	const [left, right, low, high] = [60, width - 60, 0, 520];
	const head = short(1, left, low, right, high, 3, 0);
	const flags = Buffer.from([1, 1, 1, 1]);
	const xs = short(left, 0, right - left, 0);
	const ys = short(low, high - low, 0, low - high);
	return Buffer.concat([head, flags, xs, ys]);
}

function tables() {
	const glyph = box();
	const name = Buffer.from("Box", "utf16le").swap16();
	const record = (id) => short(3, 1, 0x409, id, name.length, 0);
	return {
		"OS/2": Buffer.concat([
			short(4, width, 400, 5, 0, 650, 600, 0, 75, 650, 600, 0, 350, 50, 300, 0), Buffer.alloc(10), bytes([4, 1], [4, 0], [4, 0], [4, 0]), Buffer.from("NONE"),
			short(0x40, 0x20, 0xffff, 800, -200, 0, 800, 200), bytes([4, 1], [4, 0]), short(520, 700, 0, 0x20, 1),
		]),
		cmap: cmap(),
		glyf: glyph,
		head: Buffer.concat([bytes([4, 0x10000], [4, 0x10000], [4, 0], [4, 0x5f0f3cf5], [2, 11], [2, unitsPerEm], [8, 0], [8, 0]), short(0, 0, width, 520, 0, 8, 2, 1, 0)]),
		hhea: Buffer.concat([bytes([4, 0x10000]), short(800, -200, 0, width, 0, 60, width - 60, 1, 0, 0, 0, 0, 0, 0, 0, 3)]),
		hmtx: short(width, 60, width, 60, width, 0),
		loca: bytes([4, 0], [4, glyph.length], [4, 2 * glyph.length], [4, 2 * glyph.length]),
		maxp: Buffer.concat([bytes([4, 0x10000]), short(3, 4, 1, 0, 0, 2, 0, 0, 0, 0, 0, 0, 0, 0)]),
		name: Buffer.concat([short(0, 4, 6 + 4 * 12), record(1), record(2), record(4), record(6), name]),
		post: bytes([4, 0x30000], [4, 0], [2, 0], [2, 0], [4, 0], [4, 0], [4, 0], [4, 0], [4, 0]),
	};
}

const sum = (data) => {
	let total = 0;
	for (let at = 0; at < data.length; at += 4) total = (total + Buffer.concat([data.subarray(at, at + 4), Buffer.alloc(4)]).readUInt32BE(0)) >>> 0;
	return total;
};

function font() {
	const made = tables();
	// Glyph 0, for what is not in the font, is the box too.
	made.glyf = Buffer.concat([made.glyf, made.glyf]);
	const names = Object.keys(made);
	let offset = 12 + 16 * names.length;
	const directory = [];
	const bodies = [];
	for (const name of names) {
		const data = made[name];
		directory.push(Buffer.from(name.padEnd(4)), bytes([4, sum(data)], [4, offset], [4, data.length]));
		const padded = Buffer.concat([data, Buffer.alloc((4 - (data.length % 4)) % 4)]);
		bodies.push(padded);
		offset += padded.length;
	}
	return Buffer.concat([bytes([4, 0x10000], [2, names.length], [2, 128], [2, 3], [2, 16 * names.length - 128]), ...directory, ...bodies]);
}

const base64 = font().toString("base64");

/** Puts the typeface on a page in place of every other. */
export async function inBoxes(page) {
	await page.evaluate(async (data) => {
		const face = new FontFace("Box", Uint8Array.from(atob(data), (c) => c.charCodeAt(0)));
		document.fonts.add(await face.load());
		const style = new CSSStyleSheet();
		style.replaceSync("*, *::before, *::after { font-family: Box !important; letter-spacing: 0 !important; caret-color: transparent; }");
		document.adoptedStyleSheets = [...document.adoptedStyleSheets, style];
	}, base64);
}
