// The words that the map would like to write, the weightier first, and what they must keep off.
import type { Depths, DoorPlan, Point, RoomPlan } from "../engine/contract";
import { layers } from "../state/study";
import { said, t } from "../words/words";
import { type DrawingProps, depthShown } from "./drawn";
import { along, around, type Box, beside, type Place, type Wanted } from "./labels";
import { layerBoxes, layerWords } from "./layers";
import { turnsLeft } from "./marks";

type At = (p: Point) => Point;

export function wantedWords(props: DrawingProps, at: At): Wanted[] {
	const { room, study, line } = props;
	return [
		...(props.batches?.list ?? []).map((batch) => ({
			key: `batch ${batch.number}`,
			text: String(batch.number),
			needed: true,
			places: [{ ...at(batch.label), anchor: "middle" as const }, ...beside(at(batch.label), 12)],
		})),
		...extremes(props, at),
		...(line ? ends(line, at) : []),
		...wallWords(room, at),
		...room.doors.map((door) => doorWord(door, room.outline.outer, at)),
		...layerWords(room, study, at),
		...room.penetrations.map((p) => ({
			key: `pipe ${p.id}`,
			text: p.name || said(p.kind),
			small: true,
			places: beside(at(p.at), Math.max(6, p.radius * props.view.scale) + 5)
				.slice(0, 4)
				.reverse(),
		})),
		...contours(props, at),
	];
}

function ends(line: { from: Point; to: Point }, at: At): Wanted[] {
	return [
		{ key: "end A", text: "A", needed: true, places: beside(at(line.from), 12) },
		{ key: "end B", text: "B", needed: true, places: beside(at(line.to), 12) },
	];
}

function extremes(props: DrawingProps, at: At): Wanted[] {
	const depths = props.room.pour?.depths;
	return depths && depthShown(props) ? extremeWords(depths, at) : [];
}

/** The thinnest and the deepest spot in words. */
export function extremeWords(depths: Depths, at: At): Wanted[] {
	return [
		{
			key: "thinnest",
			text: t("thinnest {depth}", { depth: said(depths.least.text) }),
			needed: true,
			places: beside(at(depths.leastAt), 14),
		},
		{
			key: "deepest",
			text: t("deepest {depth}", { depth: said(depths.greatest.text) }),
			needed: true,
			places: beside(at(depths.greatestAt), 14),
		},
	];
}

/** A door's name inside the room, as near to its middle as dots let it, or outside where they leave it no place. */
export function doorWord(door: DoorPlan, outer: Point[], at: At): Wanted {
	const [a, b] = [at(door.from), at(door.to)];
	const length = Math.max(1, Math.hypot(b.x - a.x, b.y - a.y));
	const sign = turnsLeft(outer) ? 1 : -1;
	const inward = { x: (sign * (b.y - a.y)) / length, y: (sign * -(b.x - a.x)) / length };
	const anchor = Math.abs(inward.x) < 0.5 ? "middle" : inward.x > 0 ? "start" : "end";
	const opposite = { start: "end", middle: "middle", end: "start" } as const;
	const places: Place[] = [];
	for (const away of [14, 26, 40, -16]) {
		for (const share of [0.5, 0.2, 0.8, -0.3, 1.3]) {
			places.push({
				x: a.x + share * (b.x - a.x) + away * inward.x,
				y: a.y + share * (b.y - a.y) + away * inward.y,
				anchor: away < 0 ? opposite[anchor] : anchor,
			});
		}
	}
	return {
		key: `door ${door.id}`,
		text: `${door.name || t("Door")}${door.exit ? ` · ${t("way out")}` : ""}`,
		small: true,
		needed: true,
		places,
	};
}

/** Each depth once, on its line, where there is room. */
function contours(props: DrawingProps, at: At): Wanted[] {
	if (!depthShown(props)) return [];
	return (props.room.pour?.contours ?? []).map((contour) => ({
		key: `contour ${contour.depth.si}`,
		text: said(contour.depth.text),
		small: true,
		tone: "map-text-contour",
		places: contour.labels.map((spot) => ({ ...at(spot), anchor: "middle" as const })),
	}));
}

/** Dots and marks that no word may cover. */
export function drawnBoxes(props: DrawingProps, at: At): Box[] {
	const { room, study } = props;
	const depths = depthShown(props) ? room.pour?.depths : undefined;
	const dots = layers.value.has("readings") ? room.readings : [];
	return [
		...dots.map((reading) => around(at(reading.at), 5)),
		...(depths ? [around(at(depths.leastAt), 9), around(at(depths.greatestAt), 9)] : []),
		...(props.line ? along(at(props.line.from), at(props.line.to)) : []),
		...room.penetrations.map((p) => around(at(p.at), 7)),
		...layerBoxes(study, at),
		...wallBoxes(room, at),
	];
}

/** The lines of the walls. */
export function wallBoxes(room: RoomPlan, at: At): Box[] {
	const outer = room.outline.outer.map(at);
	return outer.flatMap((corner, i) => along(corner, outer[(i + 1) % outer.length] ?? corner));
}

/** Each wall's length, outside it and along it, where the wall is long enough for it; with the wall's number where that is asked for. */
export function wallWords(room: RoomPlan, at: At, numbered = false): Wanted[] {
	const outer = room.outline.outer;
	const outward = turnsLeft(outer) ? 1 : -1;
	return room.walls.flatMap((wall, i) => {
		const [from, to] = [outer[i], outer[(i + 1) % outer.length]];
		if (!from || !to) return [];
		const [a, b] = [at(from), at(to)];
		const length = Math.hypot(b.x - a.x, b.y - a.y);
		if (length <= 40) return [];
		const off = { x: (outward * -(b.y - a.y) * 16) / length, y: (outward * (b.x - a.x) * 16) / length };
		const steep = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
		return [
			{
				key: `wall ${i}`,
				text: numbered ? `${i + 1}: ${said(wall.text)}` : said(wall.text),
				small: true,
				needed: true,
				tone: "map-text-wall",
				angle: steep > 90.5 ? steep - 180 : steep < -90 ? steep + 180 : steep, // within a right angle of upright either way
				places: [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9].map((share) => ({
					x: a.x + share * (b.x - a.x) + off.x,
					y: a.y + share * (b.y - a.y) + off.y,
					anchor: "middle" as const,
				})),
			},
		];
	});
}
