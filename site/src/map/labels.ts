// Where words go on the map: each takes the first of its places that covers no dot, no mark and no other word; one that finds none is left out.
export type Box = { left: number; top: number; right: number; bottom: number };
export type Place = { x: number; y: number; anchor: "start" | "middle" | "end" };
export type Wanted = {
	key: string;
	text: string;
	places: Place[]; // the best first; y is the middle of the letters
	small?: boolean;
	needed?: boolean; // rather over something than left out
	tone?: string; // a class of its own
	angle?: number; // degrees that it is turned by
	boxed?: number; // pixels of a box round it
};
export type Placed = Wanted & { at: Place };

const letter = 7.4; // pixels, on average, of the map's own sizes in a wide face
const smallLetter = 6.4;

/** Places words in order, the weightier first, round what is drawn already. */
export function place(wanted: Wanted[], drawn: Box[], board: { width: number; height: number }): Placed[] {
	const words: Box[] = [];
	const placed: Placed[] = [];
	for (const word of wanted) {
		const free = word.places.find((at) => isFree(boxOf(word, at), [...drawn, ...words], board));
		const at = free ?? (word.needed ? leastCovering(word, drawn, words, board) : undefined);
		if (!at) continue;
		words.push(boxOf(word, at));
		placed.push({ ...word, at });
	}
	return placed;
}

/** The box of a word; of one that stands upright where it is turned by a right angle or near it. */
export function boxOf(word: Wanted, at: Place): Box {
	const width = word.text.length * (word.small ? smallLetter : letter);
	if (Math.abs(Math.sin(((word.angle ?? 0) * Math.PI) / 180)) > Math.SQRT1_2)
		return { left: at.x - 8, right: at.x + 8, top: at.y - width / 2, bottom: at.y + width / 2 };
	const left = at.x - { start: 0, middle: width / 2, end: width }[at.anchor];
	const box = word.boxed ?? 0;
	const half = (word.small ? 6.5 : 8) + box;
	return { left: left - 2 - box, right: left + width + 2 + box, top: at.y - half, bottom: at.y + half };
}

/** A line as small boxes one after the other, so that a slanting one takes no more room than it fills. */
export function along(from: { x: number; y: number }, to: { x: number; y: number }): Box[] {
	const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 6));
	return Array.from({ length: steps + 1 }, (_, i) => {
		const share = i / steps;
		return around({ x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) }, 2);
	});
}

export function around(at: { x: number; y: number }, size: number): Box {
	return { left: at.x - size, right: at.x + size, top: at.y - size, bottom: at.y + size };
}

type Size = { width: number; height: number };

function isFree(box: Box, taken: Box[], board: Size): boolean {
	return isWithin(box, board) && !taken.some((other) => meet(box, other));
}

function isWithin(box: Box, board: Size): boolean {
	return box.left >= 0 && box.top >= 0 && box.right <= board.width && box.bottom <= board.height;
}

function meet(a: Box, b: Box): boolean {
	return a.right >= b.left && a.left <= b.right && a.bottom >= b.top && a.top <= b.bottom;
}

/** Of places that all cover something the one that covers the fewest things, words last; off the board only where there is no other. */
function leastCovering(word: Wanted, drawn: Box[], words: Box[], board: Size): Place | undefined {
	const cost = (at: Place) => {
		const box = boxOf(word, at);
		const over = (boxes: Box[]) => boxes.filter((other) => meet(box, other)).length;
		return over(drawn) + 100 * over(words) + (isWithin(box, board) ? 0 : 10_000);
	};
	return word.places.reduce<Place | undefined>((best, at) => (best && cost(best) <= cost(at) ? best : at), undefined);
}

/** The places beside, over and under a mark. */
export function beside(at: { x: number; y: number }, away: number): Place[] {
	return [
		{ x: at.x + away, y: at.y, anchor: "start" },
		{ x: at.x - away, y: at.y, anchor: "end" },
		{ x: at.x, y: at.y - away - 5, anchor: "middle" },
		{ x: at.x, y: at.y + away + 5, anchor: "middle" },
		{ x: at.x + away, y: at.y - away, anchor: "start" },
		{ x: at.x + away, y: at.y + away, anchor: "start" },
		{ x: at.x - away, y: at.y - away, anchor: "end" },
		{ x: at.x - away, y: at.y + away, anchor: "end" },
	];
}
