// What the study adds to the map, each layer by its button: doubt, next reading, flatness, height indicators, carriers, high
// spots, lifts; and where the plan wants moisture tests.
import { useId } from "preact/hooks";
import type { Point, RoomPlan, RoomStudy } from "../engine/contract";
import { plan } from "../state/job";
import { cutShown, type LayerName, layerNames, layers, toggle } from "../state/study";
import { said, t } from "../words/words";
import { path } from "./view";

const words = (): Record<LayerName, string> => ({
	readings: t("Readings"),
	doubt: t("Doubt"),
	next: t("Next reading"),
	flatness: t("Flatness"),
	indicators: t("Indicators"),
	carriers: t("Carriers"),
	spots: t("High spots"),
	lifts: t("Lifts"),
	moisture: t("Moisture tests"),
});

export function LayerButtons({ study }: { study: RoomStudy | undefined }) {
	return (
		<div class="layers" role="group" aria-label={t("Shown on the map")}>
			{layerNames.map((name) => (
				<button
					type="button"
					key={name}
					aria-pressed={layers.value.has(name)}
					disabled={name !== "readings" && !study}
					onClick={() => toggle(name)}
				>
					{words()[name]}
				</button>
			))}
		</div>
	);
}

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

/** Layers that keep their size on the screen. */
export function MarkLayers({ study, at }: { study: RoomStudy | undefined; at: (p: Point) => Point }) {
	if (!study) return null;
	const shown = layers.value;
	return (
		<g>
			{shown.has("flatness") &&
				study.flatness?.gaps
					.filter((gap) => gap.fault === "" && gap.depth.si > 0)
					.map((gap) => (
						<g key={gap.name}>
							<Line class={`edge${gap.kept ? "" : " edge-over"}`} from={at(gap.from)} to={at(gap.to)} />
							<circle class="edge-gap" cx={at(gap.at).x} cy={at(gap.at).y} r={5} />
							<Note
								below
								at={at(gap.at)}
								text={t("gap {depth} under {length}", { depth: said(gap.depth.text), length: said(gap.length.text) })}
							/>
						</g>
					))}
			{shown.has("indicators") &&
				study.indicators?.pins.map((pin, i) => {
					const spot = at(pin.at);
					return (
						<g key={i}>
							<path
								class="pin"
								d={`M${spot.x} ${spot.y + 7}V${spot.y - 9}M${spot.x - 6} ${spot.y - 9}H${spot.x + 6}`}
							/>
							<Note at={spot} text={`${i + 1}: ${said(pin.head.text)}`} />
						</g>
					);
				})}
			{shown.has("carriers") &&
				study.planes
					.find((plane) => plane.chosen)
					?.carriers.map((carrier, i) => {
						const spot = at(carrier.at);
						return (
							<g key={i}>
								<rect class="carrier" x={spot.x - 8} y={spot.y - 8} width={16} height={16} />
								<Note at={spot} text={t("carries the plane")} />
							</g>
						);
					})}
			{shown.has("spots") &&
				study.grinding?.cuts[Math.min(cutShown.value, study.grinding.cuts.length - 1)]?.spots.map((spot, i) => (
					<g key={i}>
						<circle class="high-spot" cx={at(spot.at).x} cy={at(spot.at).y} r={9} />
						<Note at={at(spot.at)} text={t("cut {height}", { height: said(spot.height.text) })} />
					</g>
				))}
			{shown.has("readings") &&
				study.suspects.map((suspect) => (
					<circle key={suspect.row} class="suspect" cx={at(suspect.at).x} cy={at(suspect.at).y} r={12} />
				))}
			{shown.has("moisture") &&
				testSpots(study.id).map((spot, i) => (
					<g key={i}>
						<path class="test-spot" d={triangle(at(spot))} />
						<Note at={at(spot)} text={t("test {number}", { number: i + 1 })} />
					</g>
				))}
			{shown.has("next") && study.next && (
				<g>
					<path class="next-reading" d={cross(at(study.next.at))} />
					<Note at={at(study.next.at)} text={t("read here next")} />
				</g>
			)}
		</g>
	);
}

function testSpots(room: string): Point[] {
	const decks = plan.value?.rooms.find((r) => r.id === room)?.decks ?? [];
	return decks.flatMap((deck) => deck.moisture?.spots.map((spot) => spot.at) ?? []);
}

function triangle({ x, y }: Point): string {
	return `M${x} ${y + 8}L${x - 8} ${y - 6}H${x + 8}Z`;
}

function cross({ x, y }: Point): string {
	return `M${x - 11} ${y}H${x + 11}M${x} ${y - 11}V${y + 11}`;
}

function Line(props: { class: string; from: Point; to: Point }) {
	return <line class={props.class} x1={props.from.x} y1={props.from.y} x2={props.to.x} y2={props.to.y} />;
}

function Note({ at, text, below }: { at: Point; text: string; below?: boolean }) {
	return (
		<text class="map-text map-text-small" x={at.x + 11} y={at.y + (below ? 18 : -8)}>
			{text}
		</text>
	);
}
