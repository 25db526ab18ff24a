// What the job comes to, always in view.
import { plan, planning } from "../state/job";
import { study, studying } from "../state/study";
import { number, said, t } from "../words/words";

export function Totals() {
	const worked = plan.value;
	const totals = worked?.totals;
	const ready = totals?.ready ?? false;
	return (
		<div class="totals" aria-live="polite" aria-busy={planning.value}>
			<dl class="totals-list">
				<Total main label={t("Bags")} value={ready ? String(totals?.bags) : "—"} />
				<ToBuy ready={ready} />
				<Total label={t("Powder")} value={ready ? said(totals?.powder.text) : "—"} />
				<Total label={t("Water")} value={ready ? said(totals?.water.text) : "—"} />
				<Total side label={t("Pour")} value={ready ? said(totals?.volume.text) : "—"} />
				<Total side label={t("Floor")} value={totals?.area.si ? said(totals.area.text) : "—"} />
			</dl>
			{!ready && (
				<p class="totals-says">{t("Give the room's size and some readings, and the bags are counted here.")}</p>
			)}
		</div>
	);
}

/** What the bags were counted from. */
export function Counted() {
	return plan.value?.totals.ready ? <p class="totals-says counted">{says()}</p> : null;
}

/** The bags at the confidence chosen, as soon as the study knows how sure they are. */
function ToBuy({ ready }: { ready: boolean }) {
	const bags = study.value?.bags;
	if (!ready) return null;
	return (
		<div class="total total-buy" aria-busy={studying.value}>
			<dt>{bags ? t("To buy, {confidence} sure", { confidence: said(bags.confidence) }) : t("To buy")}</dt>
			<dd>{bags && !studying.value ? bags.buy : "…"}</dd>
		</div>
	);
}

function sureness(): string {
	const bags = study.value?.bags;
	if (studying.value) return t("How sure that is: working it out…");
	return bags
		? t("{half} at 50 %, {ninety} at 90 %, {ninetyNine} at 99 %.", {
				half: bags.half,
				ninety: bags.ninety,
				ninetyNine: bags.ninetyNine,
			})
		: "";
}

function says(): string {
	const totals = plan.value?.totals;
	if (!totals) return "";
	const counted = t(
		"{bag} bags that fill {fill} each; {exact} worked out with what stays in buckets; {water} of water a bag ({least} to {most}).",
		{
			bag: said(totals.bagMass.text),
			fill: said(totals.bagYield.text),
			exact: number(totals.bagsExact, 1),
			water: said(totals.bagWater.text),
			least: said(totals.waterLeast.text),
			most: said(totals.waterMost.text),
		},
	);
	return `${basis(totals.bags)} ${sureness()} ${counted}`;
}

/** What the bags rest on: a survey, or depths that somebody said. */
function basis(count: number): string {
	const rooms = plan.value?.rooms ?? [];
	const said = rooms.filter((room) => room.rough).length;
	if (said === 0) return t("{count} bags by the survey as it is.", { count });
	if (said === rooms.length) return t("{count} bags by the depths given: nobody has read this floor yet.", { count });
	return t("{count} bags by the survey, and by the depths given where nobody has read the floor.", { count });
}

function Total(props: { label: string; value: string | undefined; main?: boolean; side?: boolean }) {
	return (
		<div class={`total${props.main ? " total-main" : ""}${props.side ? " total-side" : ""}`}>
			<dt>{props.label}</dt>
			<dd>{props.value ?? "—"}</dd>
		</div>
	);
}
