// What the job comes to, always in view.
import { Weight } from "../parts/marks";
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
			<Gravest />
			{!ready && (
				<p class="totals-says">{t("Give the room's size and some readings, and the bags are counted here.")}</p>
			)}
		</div>
	);
}

/** Where the findings stand below the floor: what stands in the way of the pour, told up here, and the way down to it. */
function Gravest() {
	const broken = plan.value?.findings.filter((finding) => finding.state === "broken") ?? [];
	const told = (["stop", "fix"] as const)
		.map((weight) => ({ weight, count: broken.filter((finding) => finding.weight === weight).length }))
		.filter(({ count }) => count > 0);
	if (told.length === 0) return null;
	return (
		<button type="button" class="totals-gravest no-print" onClick={toFindings}>
			{told.map(({ weight, count }) => (
				<Weight key={weight} weight={weight} count={count} />
			))}
			<span class="totals-why" aria-hidden="true">
				↓
			</span>
			<span class="unseen">{t("Why?")}</span>
		</button>
	);
}

function toFindings(): void {
	const findings = document.getElementById("findings");
	findings?.scrollIntoView();
	findings?.focus({ preventScroll: true });
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
