// What ought to be asked before the sale, how far the bags may be off, and what reading the floor would spare.
import { useId } from "preact/hooks";
import { WordField, wordNamed } from "../bench/WordField";
import type { Question } from "../engine/contract";
import { edit, plan } from "../state/job";
import { takeOff } from "../state/takeoff";
import { said, t } from "../words/words";

const steps = ["deck", "moisture", "room"];

/** The questions about the floor itself: first those that the list had to assume, then those that checks wait for. */
function questions(): Question[] {
	const assumed = takeOff.value?.asks ?? [];
	const checks = (plan.value?.questions ?? []).filter((q) => steps.includes(q.step) && !q.dontKnow);
	const known = new Set(assumed.map(keyOf));
	return [...assumed.filter((q) => !q.dontKnow), ...checks.filter((q) => !known.has(keyOf(q)))].filter(
		(q) => q.word !== "deck.kind",
	);
}

function keyOf(q: Question): string {
	return `${q.word} ${q.subject.room} ${q.subject.id}`;
}

/** The deck of a question, so that it reads "Over chipboard: how thick is it?". */
function over(q: Question): string {
	const deck = plan.value?.rooms.find((r) => r.id === q.subject.room)?.decks.find((d) => d.id === q.subject.id);
	return deck?.kind ? t("Over {deck}", { deck: said(deck.kind) }) : "";
}

export function Asked() {
	const list = questions();
	if (list.length === 0) return null;
	return (
		<section class="asked no-print" aria-label={t("Ask before you sell")}>
			<h2>{t("Ask before you sell")}</h2>
			<ul>
				{list.slice(0, 8).map((q) => (
					<li key={keyOf(q)}>
						{over(q) && <span class="asked-over small">{over(q)}</span>}
						<WordField asQuestion name={q.word} subject={q.subject} />
						<p class="small soft">{said(wordNamed(q.word)?.why ?? "")}</p>
					</li>
				))}
			</ul>
		</section>
	);
}

/** One confidence with its bags: the one chosen is quoted. */
function Sure({ confidence, bags, says }: { confidence: string; bags: number; says: string }) {
	const name = useId();
	return (
		<label class="sureness-one" for={name}>
			<input
				id={name}
				type="radio"
				name="confidence"
				checked={takeOff.value?.bags?.confidence === confidence}
				onChange={() =>
					edit("answers/order.confidence", (draft) => {
						draft.answers["order.confidence"] = confidence;
					})
				}
			/>
			<b>{bags}</b>
			<span class="small">{says}</span>
		</label>
	);
}

/** The bags at three confidences, of which one is quoted, and the quick survey. */
export function Sureness() {
	const bags = takeOff.value?.bags;
	const survey = takeOff.value?.survey;
	if (!bags) return null;
	return (
		<section class="sureness" aria-label={t("How sure the bags are")}>
			<p class="pick-label" id="sureness">
				{t("Bags that are enough")}
			</p>
			<div class="sureness-choice" role="radiogroup" aria-labelledby="sureness">
				<Sure confidence="50 %" bags={bags.half} says={t("one time in two")} />
				<Sure confidence="90 %" bags={bags.ninety} says={t("nine times in ten")} />
				<Sure confidence="99 %" bags={bags.ninetyNine} says={t("99 in 100")} />
			</div>
			{survey && (
				<p>
					{t(
						"The depth is a guess: one time in three the mean is off by more than {doubt}. {readings} readings with a laser bring that down to {after}",
						{
							doubt: said(survey.doubt.text),
							readings: survey.readings,
							after: said(survey.after.text),
						},
					)}
					{survey.fewer > 0
						? t(": then {surely} bags do instead of the {buy} quoted, {fewer} fewer.", {
								surely: survey.surely,
								buy: survey.buy,
								fewer: survey.fewer,
							})
						: "."}{" "}
					{survey.saves && <b>{t("That saves {money} before tax and discount.", { money: said(survey.saves) })}</b>}
				</p>
			)}
		</section>
	);
}
