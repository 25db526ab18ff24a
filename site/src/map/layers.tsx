// What may be laid over the floor, each layer by its button: depth, readings, finish plane, lifts, batches, indicators, doubt, next reading, flatness,
// high spots, moisture tests.
import { useId } from "preact/hooks";
import type { Point, RoomPlan, RoomStudy } from "../engine/contract";
import { plan } from "../state/job";
import { cutShown, type LayerName, layers } from "../state/study";
import { said, t } from "../words/words";
import { around, type Box, beside, type Wanted } from "./labels";
import { triangle } from "./marks";
import { middleOf, path } from "./view";

type At = (p: Point) => Point;

/** Layers that scale with the plan. */
export function GroundLayers({ room, study }: { room: RoomPlan; study: RoomStudy | undefined }) {
	const clip = useId();
	if (!study) return null;
	const shown = layers.value;
	const lower = (study.lifts[0]?.lifts ?? []).filter((lift) => !lift.whole);
	return (
		<g>
			<clipPath id={clip}>
				<path d={path([room.outline.outer, ...room.outline.holes], true)} clip-rule="evenodd" />
			</clipPath>
			{shown.has("doubt") && (
				<g clip-path={`url(#${clip})`}>
					{study.doubts.map((square, i) => (
						<path key={i} class={`doubt doubt-${square.step}`} d={path([square.corners], true)}>
							<title>{t("The deck may be {text} off here", { text: said(square.text) })}</title>
						</path>
					))}
				</g>
			)}
			{shown.has("lifts") &&
				lower.map((lift, i) => (
					<g key={i}>
						<path class="lift-ground" d={path(lift.ground, true)} />
						<path class="lift-edge" d={path(lift.edge, false)} />
					</g>
				))}
		</g>
	);
}

/** A mark of a layer: a spot, what is drawn there and what is written beside it. */
type Mark = { key: string; at: Point; text: string; draw: (spot: Point) => preact.JSX.Element };

/** Layers that keep their size on the screen. */
export function LayerMarks(props: { room: RoomPlan; study: RoomStudy | undefined; at: At }) {
	const { room, study, at } = props;
	if (!study) return null;
	const shown = layers.value;
	return (
		<g>
			{shown.has("flatness") &&
				gapsOf(study).map((gap) => (
					<line
						key={gap.name}
						class={`edge${gap.kept ? "" : " edge-over"}`}
						x1={at(gap.from).x}
						y1={at(gap.from).y}
						x2={at(gap.to).x}
						y2={at(gap.to).y}
					/>
				))}
			{shown.has("plane") && <Fall room={room} at={at} />}
			{shown.has("readings") &&
				study.suspects.map((suspect) => (
					<circle key={suspect.row} class="suspect" cx={at(suspect.at).x} cy={at(suspect.at).y} r={12} />
				))}
			{marksOf(study).map((mark) => (
				<g key={mark.key}>{mark.draw(at(mark.at))}</g>
			))}
		</g>
	);
}

/** An arrow the way the finish plane falls. */
function Fall({ room, at }: { room: RoomPlan; at: At }) {
	const plane = room.plane;
	const steep = Math.hypot(plane?.a ?? 0, plane?.b ?? 0);
	if (!plane || steep < 1e-6) return null;
	const spot = at(middleOf(room.outline.outer));
	const angle = (Math.atan2(plane.b, -plane.a) * 180) / Math.PI;
	return (
		<path class="fall" d="M-34 0H30M20 -9L34 0L20 9" transform={`translate(${spot.x} ${spot.y}) rotate(${angle})`} />
	);
}

function gapsOf(study: RoomStudy) {
	return (study.flatness?.gaps ?? []).filter((gap) => gap.fault === "" && gap.depth.si > 0);
}

const makers: Partial<Record<LayerName, (study: RoomStudy) => Mark[]>> = {
	flatness: (study) =>
		gapsOf(study).map((gap) => ({
			key: `gap ${gap.name}`,
			at: gap.at,
			text: t("gap {depth} under {length}", { depth: said(gap.depth.text), length: said(gap.length.text) }),
			draw: ({ x, y }) => <circle class="edge-gap" cx={x} cy={y} r={5} />,
		})),
	indicators: (study) =>
		(study.indicators?.pins ?? []).map((pin, i) => ({
			key: `pin ${i}`,
			at: pin.at,
			text: `${i + 1}: ${said(pin.head.text)}`,
			draw: ({ x, y }) => <path class="pin" d={`M${x} ${y + 7}V${y - 9}M${x - 6} ${y - 9}H${x + 6}`} />,
		})),
	plane: (study) =>
		(study.planes.find((plane) => plane.chosen)?.carriers ?? []).map((carrier, i) => ({
			key: `carrier ${i}`,
			at: carrier.at,
			text: t("holds the plane up"),
			draw: ({ x, y }) => <rect class="carrier" x={x - 8} y={y - 8} width={16} height={16} />,
		})),
	spots: (study) =>
		(study.grinding?.cuts[Math.min(cutShown.value, study.grinding.cuts.length - 1)]?.spots ?? []).map((spot, i) => ({
			key: `spot ${i}`,
			at: spot.at,
			text: t("cut {height}", { height: said(spot.height.text) }),
			draw: ({ x, y }) => <circle class="high-spot" cx={x} cy={y} r={9} />,
		})),
	moisture: (study) => [
		...testSpots(study.id).map((spot, i) => ({
			key: `test ${i}`,
			at: spot,
			text: t("test here"),
			draw: (at: Point) => <path class="test-spot" d={triangle(at, 1, 8)} />,
		})),
		...testsMade(study.id).map((test) => ({
			key: `made ${test.deck} ${test.number}`,
			at: test.at,
			text: t("test {number}", { number: test.number }),
			draw: (at: Point) => <path class={`test-made${test.counts ? "" : " test-open"}`} d={triangle(at, 1, 8)} />,
		})),
	],
	next: (study) =>
		study.next
			? [
					{
						key: "next",
						at: study.next.at,
						text: t("read here next"),
						draw: ({ x, y }) => <path class="next-reading" d={`M${x - 11} ${y}H${x + 11}M${x} ${y - 11}V${y + 11}`} />,
					},
				]
			: [],
};

/** Where tests are still to be made: the spots that the plan names, but for those where one was. */
function testSpots(room: string): Point[] {
	const decks = plan.value?.rooms.find((r) => r.id === room)?.decks ?? [];
	const made = testsMade(room);
	const near = (spot: Point) => made.some((test) => Math.hypot(test.at.x - spot.x, test.at.y - spot.y) < 0.1);
	return decks.flatMap((deck) => deck.moisture?.spots.map((spot) => spot.at) ?? []).filter((spot) => !near(spot));
}

/** The tests entered with their place, numbered as in the list of their deck. */
function testsMade(room: string): { deck: string; at: Point; number: number; counts: boolean }[] {
	const decks = plan.value?.rooms.find((r) => r.id === room)?.decks ?? [];
	return decks.flatMap((deck) =>
		(deck.moisture?.tests ?? []).flatMap((test, i) =>
			test.at ? [{ deck: deck.id, at: test.at, number: i + 1, counts: test.open.length === 0 }] : [],
		),
	);
}

function marksOf(study: RoomStudy): Mark[] {
	return [...layers.value].flatMap((name) => makers[name]?.(study) ?? []);
}

/** What is written beside the layers' marks. */
export function layerWords(room: RoomPlan, study: RoomStudy | undefined, at: At): Wanted[] {
	if (!study) return [];
	const words: Wanted[] = marksOf(study).map((mark) => ({
		key: mark.key,
		text: mark.text,
		small: true,
		places: beside(at(mark.at), 12),
	}));
	if (layers.value.has("plane") && room.plane) {
		const spot = at(middleOf(room.outline.outer));
		const falls = Math.hypot(room.plane.a, room.plane.b) > 1e-6;
		words.push({
			key: "plane",
			text: falls
				? t("falls {slope}", { slope: said(room.plane.fall.text) })
				: t("level: reads {staff}", { staff: said(room.plane.staff.text) }),
			needed: true,
			places: (falls ? [40, 60] : [12, 26, 40, 60]).flatMap((away) => beside(spot, away)),
		});
	}
	return words;
}

/** The ground that the layers' marks take. */
export function layerBoxes(study: RoomStudy | undefined, at: At): Box[] {
	return study ? marksOf(study).map((mark) => around(at(mark.at), 9.5)) : [];
}
