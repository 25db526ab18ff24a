// The result in plain words: the floor, the bags, what to put right, what to buy, what comes next.

import type { Finding } from "../engine/contract";
import { FloorPicture } from "../map/FloorPicture";
import { Weight } from "../parts/marks";
import { job, plan } from "../state/job";
import { to } from "../state/route";
import { study } from "../state/study";
import { readable } from "../words/rule";
import { said, t } from "../words/words";
import { guide } from "./guide";
import { chapterWord, unchecked } from "./questions";

export function Result() {
	const worked = plan.value;
	if (!worked) return null;
	const open = guide.value?.steps.find((step) => step.id === guide.value?.next && step.kind !== "result");
	return (
		<>
			{worked.totals.ready ? (
				<Bags />
			) : (
				<p class="result-lead">
					{t("There is no bag count yet: it comes as soon as the room’s size and a few heights are in.")}
				</p>
			)}
			{open && (
				<p class="no-print">
					<a class="button button-main" href={to("steps", job.value?.id, open.id)}>
						{t("Answer what is open ({count})", { count: guide.value?.open ?? 0 })}
					</a>
				</p>
			)}
			{worked.rooms
				.filter((room) => room.pour)
				.map((room) => (
					<figure key={room.id} class="step-floor">
						<FloorPicture room={room} />
						<figcaption class="small soft">
							{t("Darker is deeper. {least} at its thinnest, {mean} on average, {greatest} at its deepest.", {
								least: said(room.pour?.depths.least.text),
								mean: said(room.pour?.depths.mean.text),
								greatest: said(room.pour?.depths.greatest.text),
							})}
						</figcaption>
					</figure>
				))}
			<PutRight />
			<Behind chapter="proof" />
			<Behind chapter="before" />
			<Shopping />
			<Next />
		</>
	);
}

function Bags() {
	const totals = plan.value?.totals;
	const bags = study.value?.bags;
	if (!totals) return null;
	const buy = bags?.buy ?? totals.bags;
	const mass = said(totals.bagMass.text);
	return (
		<p class="result-lead" aria-live="polite">
			<b class="result-bags">{buy}</b>{" "}
			{buy === 1 ? t("bag of leveller, {mass}", { mass }) : t("bags of leveller, {mass} each", { mass })}
			<span class="small soft">
				{bags
					? t("{buy} bags last in {confidence} of cases, {half} in half of them.", {
							buy: bags.buy,
							confidence: said(bags.confidence),
							half: bags.half,
						})
					: t("How sure that is: working it out…")}
			</span>
		</p>
	);
}

function PutRight() {
	const findings = plan.value?.findings ?? [];
	const broken = findings.filter((finding) => finding.state === "broken");
	const open = findings.filter((finding) => finding.state === "unanswered");
	return (
		<section aria-labelledby="put-right">
			<h2 id="put-right">{t("What to put right")}</h2>
			{broken.length === 0 && (
				<p>
					{plan.value?.totals.ready
						? t("No check found anything against it.")
						: t("Nothing can be checked before there is a floor.")}
				</p>
			)}
			{broken.map((finding) => (
				<Broken key={`${finding.rule}/${finding.subject.id}`} finding={finding} />
			))}
			{open.length > 0 && (
				<details class="nobody-checked">
					<summary>
						<Weight weight="ask" count={open.length} />
					</summary>
					<p class="small">
						{t("Nobody checked: {checks}.", {
							checks: [...new Set(open.map((finding) => readable(finding.rule)))].join("; "),
						})}
					</p>
				</details>
			)}
			<p class="small">
				<a href={to("help", "marks")}>{t("What the marks mean")}</a>
			</p>
		</section>
	);
}

/** A chapter behind the result: what it asks for, and what its open questions leave unchecked. */
function Behind({ chapter }: { chapter: "proof" | "before" }) {
	const steps = guide.value?.steps.filter((step) => step.chapter === chapter) ?? [];
	const open = steps.filter((step) => step.state === "open");
	const first = open[0];
	if (steps.length === 0) return null;
	return (
		<section class="behind">
			<h2>{chapterWord(chapter)}</h2>
			<p>
				{chapter === "proof"
					? t("Stiffness, fastenings, moisture: whether this floor can carry a pour at all.")
					: t("What can only be done shortly before: cleaning, closing gaps, dams, and the right air.")}
			</p>
			<p class="small soft">{open.length === 0 ? t("Every question is answered.") : unchecked(open)}</p>
			{first && (
				<a class="button no-print" href={to("steps", job.value?.id, first.id)}>
					{t("Go through them ({count})", { count: open.length })}
				</a>
			)}
		</section>
	);
}

function Broken({ finding }: { finding: Finding }) {
	return (
		<article class="finding" data-rule={finding.rule}>
			<div class="finding-head">
				<Weight weight={finding.weight} />
				{finding.subject.name && <span class="finding-subject">{finding.subject.name}</span>}
			</div>
			<p>{said(finding.says)}</p>
			{finding.remedy && <p class="remedy">{said(finding.remedy)}</p>}
			{finding.caution && <p class="caution">{said(finding.caution)}</p>}
		</article>
	);
}

/** What a beginner asks for at the counter: bags and water, and what the deck takes first. */
const deckFigures = ["primer_liquid", "primer_water", "primer_coats", "primer_dry_least", "primer_dry_most"];

function Shopping() {
	const totals = plan.value?.totals;
	const decks = (plan.value?.rooms ?? []).flatMap((room) => room.decks);
	if (!totals?.ready) return null;
	return (
		<section aria-labelledby="shopping">
			<h2 id="shopping">{t("To buy and to carry")}</h2>
			<ul class="shopping">
				<li>
					{t("Leveller: {count} bags of {mass}.", {
						count: study.value?.bags?.buy ?? totals.bags,
						mass: said(totals.bagMass.text),
					})}
				</li>
				<li>{t("Water: {bag} a bag, measured every time.", { bag: said(totals.bagWater.text) })}</li>
				{decks.map((deck) => (
					<li key={deck.id}>
						{t("Primer, {deck}:", { deck: deck.name || said(deck.kind) || t("deck") })}
						<ul>
							{deck.figures
								.filter((figure) => deckFigures.includes(figure.name))
								.map((figure) => (
									<li key={figure.name} class="small">
										{said(figure.words).replace(/\.$/, ":")}{" "}
										<b>{figure.state === "known" ? said(figure.text) : t("not known yet")}</b>
									</li>
								))}
						</ul>
					</li>
				))}
				<li>
					{t(
						"Perimeter strip, dams for the doors, sealant for gaps, a mixing drill with its paddle, buckets, a measuring jug.",
					)}
				</li>
				<li>
					{t("Goggles, waterproof gloves, a dust mask for each person: wet cement burns, its dust harms the lungs.")}
				</li>
			</ul>
		</section>
	);
}

function Next() {
	const id = job.value?.id;
	const ready = plan.value?.totals.ready;
	return (
		<section aria-labelledby="what-next" class="no-print">
			<h2 id="what-next">{t("What next")}</h2>
			<div class="answers nexts">
				<a class="button" href={to("sheet", id)}>
					{t("Print the field sheet")}
				</a>
				{ready && (
					<>
						<a class="button" href={to("buy", id)}>
							{t("The whole list, with prices")}
						</a>
						<a class="button" href={to("pour", id)}>
							{t("Plan pour day hour by hour")}
						</a>
					</>
				)}
				<a class="button" href={to("job", id)}>
					{t("See everything on one page")}
				</a>
				{ready && (
					<button type="button" onClick={() => print()}>
						{t("Print this")}
					</button>
				)}
			</div>
		</section>
	);
}
