// What the map shows: a button for each layer, the ramp with its depths, what the marks mean and where the same stands in a table.
import type { RoomPlan, RoomStudy } from "../engine/contract";
import { type LayerName, layerNames, layers, toggle } from "../state/study";
import { said, t } from "../words/words";
import { bandClass } from "./drawing";

type LayerSays = { name: string; means: string; table?: string };

function says(): Record<LayerName, LayerSays> {
	return {
		depth: {
			name: t("Depth"),
			means: t("Darker is deeper; each line says its depth. △ thinnest, ▽ deepest."),
			table: "readings",
		},
		readings: {
			name: t("Readings"),
			means: t("A dot for each; a ring round one that the others don’t bear out."),
			table: "readings",
		},
		plane: {
			name: t("Finish plane"),
			means: t("Squares: the spots that hold the plane up. An arrow: the way it falls."),
			table: "study-planes",
		},
		lifts: {
			name: t("Lifts"),
			means: t("Tinted ground takes a lift of its own first; the dashed line is its dam."),
			table: "study-lifts",
		},
		batches: { name: t("Batches"), means: t("Numbered in the order of the pour; the table is on the Pour page.") },
		indicators: {
			name: t("Indicators"),
			means: t("A pin for each height indicator: its number and its height over the deck."),
			table: "study-indicators",
		},
		doubt: {
			name: t("Doubt"),
			means: t("The stronger the tint, the less sure the deck’s height."),
			table: "study-survey",
		},
		next: { name: t("Next reading"), means: t("A cross where one more reading helps most."), table: "study-survey" },
		flatness: {
			name: t("Flatness"),
			means: t(
				"Straightedges over the largest gaps of the bare deck: unbroken where within tolerance, dashed where over.",
			),
			table: "study-flatness",
		},
		spots: { name: t("High spots"), means: t("Dotted rings: ground to cut, and by how much."), table: "study-spots" },
		moisture: { name: t("Moisture tests"), means: t("Triangles: where the tests go."), table: "deck" },
	};
}

const ofPlan: readonly LayerName[] = ["depth", "readings", "batches"]; // that need no study

export function LayerButtons({ study }: { study: RoomStudy | undefined }) {
	const words = says();
	return (
		<div class="layers no-print" role="group" aria-label={t("Shown on the map")}>
			{layerNames.map((name) => (
				<button
					type="button"
					key={name}
					aria-pressed={layers.value.has(name)}
					disabled={!ofPlan.includes(name) && !study}
					onClick={() => toggle(name)}
				>
					{words[name].name}
				</button>
			))}
		</div>
	);
}

/** The ramp and the marks of what is shown. */
export function Key({ room, tables }: { room: RoomPlan; tables: boolean }) {
	const words = says();
	const bands = layers.value.has("depth") ? (room.pour?.bands ?? []) : [];
	return (
		<div class="map-key">
			{bands.length > 0 && (
				<ol class="map-ramp" aria-label={t("Depth of the pour")}>
					{bands.map((band) => (
						<li key={band.step}>
							<i class={bandClass(band.step, band.steps)} aria-hidden="true" />
							<span>{band.step === 0 || bands.length < 7 || band.step % 2 === 0 ? said(band.from.text) : ""}</span>
						</li>
					))}
					<li>
						<i aria-hidden="true" style={{ border: 0 }} />
						<span>{said(bands.at(-1)?.to.text)}</span>
					</li>
				</ol>
			)}
			<ul class="map-means">
				{layerNames
					.filter((name) => layers.value.has(name))
					.map((name) => (
						<li key={name}>
							<b>{words[name].name}</b> {words[name].means}{" "}
							{tables && words[name].table && (
								<button type="button" class="link no-print" onClick={() => show(words[name].table ?? "")}>
									{t("Table")}
									<span class="unseen">: {words[name].name}</span>
								</button>
							)}
						</li>
					))}
			</ul>
		</div>
	);
}

/** Opens a section of the page and goes there. */
function show(id: string): void {
	const section = document.getElementById(id);
	if (section instanceof HTMLDetailsElement) section.open = true;
	section?.scrollIntoView({ block: "start" });
	section?.querySelector("summary")?.focus({ preventScroll: true });
}
