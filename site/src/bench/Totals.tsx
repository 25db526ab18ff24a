// What the job comes to, always in view.
import { plan, planning } from "../state/job";
import { t } from "../words/words";

export function Totals() {
	const worked = plan.value;
	const totals = worked?.totals;
	const ready = totals?.ready ?? false;
	return (
		<dl class="totals" aria-live="polite" aria-busy={planning.value}>
			<Total main label={t("Bags")} value={ready ? String(totals?.bags) : "—"} />
			<Total label={t("Powder")} value={ready ? totals?.powder.text : "—"} />
			<Total label={t("Water")} value={ready ? totals?.water.text : "—"} />
			<Total label={t("Pour")} value={ready ? totals?.volume.text : "—"} />
			<Total label={t("Floor")} value={totals?.area.text} />
			<div class="totals-says">
				{ready ? says() : t("Give the room's size and some readings, and the bags are counted here.")}
			</div>
		</dl>
	);
}

function says(): string {
	const totals = plan.value?.totals;
	if (!totals) return "";
	return t(
		"{bag} bags that fill {fill} each; {exact} worked out with what stays in buckets; {water} of water a bag ({least} to {most}).",
		{
			bag: totals.bagMass.text,
			fill: totals.bagYield.text,
			exact: totals.bagsExact.toFixed(1),
			water: totals.bagWater.text,
			least: totals.waterLeast.text,
			most: totals.waterMost.text,
		},
	);
}

function Total(props: { label: string; value: string | undefined; main?: boolean }) {
	return (
		<div class={`total${props.main ? " total-main" : ""}`}>
			<dt>{props.label}</dt>
			<dd>{props.value ?? "—"}</dd>
		</div>
	);
}
