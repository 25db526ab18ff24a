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
};
export type Placed = Wanted & { at: Place };

const letter = 6.6; // pixels, on average, of the map's own sizes
const smallLetter = 5.9;

/** Places words in order, the weightier first, round what is drawn already. */
export function place(wanted: Wanted[], drawn: Box[], board: { width: number; height: number }): Placed[] {
	const taken = [...drawn];
	const placed: Placed[] = [];
	for (const word of wanted) {
		const free = word.places.find((at) => isFree(boxOf(word, at), taken, board));
		const at = free ?? (word.needed ? word.places[0] : undefined);
		if (!at) continue;
		taken.push(boxOf(word, at));
		placed.push({ ...word, at });
	}
	return placed;
}

export function boxOf(word: Wanted, at: Place): Box {
	const width = word.text.length * (word.small ? smallLetter : letter);
	const left = at.x - { start: 0, middle: width / 2, end: width }[at.anchor];
	return { left: left - 2, right: left + width + 2, top: at.y - 8, bottom: at.y + 8 };
}

export function around(at: { x: number; y: number }, size: number): Box {
	return { left: at.x - size, right: at.x + size, top: at.y - size, bottom: at.y + size };
}

function isFree(box: Box, taken: Box[], board: { width: number; height: number }): boolean {
	if (box.left < 0 || box.top < 0 || box.right > board.width || box.bottom > board.height) return false;
	return taken.every(
		(other) => box.right < other.left || box.left > other.right || box.bottom < other.top || box.top > other.bottom,
	);
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
