// One word of the vocabulary as a question: an answer by a button goes straight on; a number has its field.

import { labelOf, ValueField, wordNamed } from "../bench/WordField";
import type { WordPlan } from "../engine/contract";
import { Weight } from "../parts/marks";
import { answer, answersOf, dontKnow, fieldOf } from "../state/answers";
import { job, plan } from "../state/job";
import { readable } from "../words/rule";
import { said, t } from "../words/words";
import { goOn, type StepProps } from "./guide";
import { How } from "./How";
import { pictureOf } from "./pictures";

export function WordStep({ step }: StepProps) {
	const word = wordNamed(step.word);
	const current = job.value;
	if (!word || !current) return null;
	const value = answersOf(current, step.subject)?.[step.word] ?? "";
	const say = (typed: string) => answer(step.word, step.subject, typed);
	const sayAndGoOn = (typed: string) => {
		say(typed);
		return goOn(step.id);
	};
	return (
		<>
			{offered(word).length > 0 ? (
				<Answers word={word} value={value} onSay={sayAndGoOn} />
			) : (
				<>
					{step.offers.length > 0 && (
						<div class="answers offers" role="group" aria-label={t("Usual answers")}>
							{step.offers.map((offer) => (
								<button type="button" key={offer} aria-pressed={offer === value} onClick={() => sayAndGoOn(offer)}>
									{said(offer)}
								</button>
							))}
						</div>
					)}
					<form
						onSubmit={(event) => {
							event.preventDefault();
							if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
							void goOn(step.id);
						}}
					>
						<ValueField
							word={word}
							value={value}
							label={labelOf(word)}
							field={fieldOf(current, step.subject, step.word)}
							onChange={say}
						/>
					</form>
				</>
			)}
			<How picture={pictureOf(step.word)} text={said(word.how)} />
			<div class="step-unknown">
				<button type="button" aria-pressed={value === dontKnow} onClick={() => sayAndGoOn(dontKnow)}>
					{t("Don’t know")}
				</button>
				<Risks step={step} />
			</div>
		</>
	);
}

/** What nobody checks without an answer, the gravest first. */
function Risks({ step }: StepProps) {
	const question = plan.value?.questions.find(
		(one) => one.word === step.word && one.subject.room === step.subject.room && one.subject.id === step.subject.id,
	);
	const risks = question?.risks ?? [];
	if (risks.length === 0) return <p class="small soft">{t("Then what goes by it stays open.")}</p>;
	return (
		<div class="small">
			{t("Then nobody checks:")}
			<ul>
				{risks.map((risk) => (
					<li key={risk.rule}>
						<Weight weight={risk.weight} /> {readable(risk.rule)}
					</li>
				))}
			</ul>
		</div>
	);
}

function offered(word: WordPlan): { value: string; label: string }[] {
	if (word.kind === "truth")
		return [
			{ value: "yes", label: t("Yes") },
			{ value: "no", label: t("No") },
		];
	return word.choices.map((choice) => ({ value: choice, label: said(choice) }));
}

function Answers(props: { word: WordPlan; value: string; onSay: (value: string) => void }) {
	return (
		<div class="answers" role="group" aria-label={labelOf(props.word)}>
			{offered(props.word).map((choice) => (
				<button
					type="button"
					key={choice.value}
					aria-pressed={choice.value === props.value}
					onClick={() => props.onSay(choice.value)}
				>
					{choice.label}
				</button>
			))}
		</div>
	);
}
