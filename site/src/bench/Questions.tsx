// Questions: each thing that the checks would like to know, asked once, with why it matters and how to find out.
import type { Question } from "../engine/contract";
import { Weight } from "../parts/marks";
import { answer, dontKnow } from "../state/answers";
import { plan } from "../state/job";
import { readable } from "../words/rule";
import { said, t } from "../words/words";
import { WordField, wordNamed } from "./WordField";

export function Questions() {
	const questions = plan.value?.questions ?? [];
	if (questions.length === 0) return null;
	return (
		<section aria-label={t("Questions")}>
			{questions.map((question) => (
				<QuestionCard
					key={`${question.word}/${question.subject.scope}/${question.subject.room}/${question.subject.id}`}
					question={question}
				/>
			))}
		</section>
	);
}

/** Kinds whose field has “don't know” among its choices. */
const choosing = ["truth", "choice"];

function QuestionCard({ question }: { question: Question }) {
	return (
		<article class="finding" data-word={question.word}>
			<div class="finding-head">
				<Weight weight="ask" />
				{question.subject.name && <span class="finding-subject">{question.subject.name}</span>}
			</div>
			<WordField name={question.word} subject={question.subject} asQuestion />
			<p class="small">{said(question.why)}</p>
			<p class="small soft">{t("How: {how}", { how: said(question.how) })}</p>
			{question.dontKnow ? (
				<>
					<p class="small">{t("You don’t know. Not checked for that reason, and what that risks:")}</p>
					<ul class="small">
						{(question.risks ?? []).map((risk) => (
							<li key={risk.rule}>
								<Weight weight={risk.weight} /> {readable(risk.rule)}. {risk.caution && said(risk.caution)}
							</li>
						))}
					</ul>
				</>
			) : choosing.includes(wordNamed(question.word)?.kind ?? "") ? null : (
				<button type="button" class="button-quiet" onClick={() => answer(question.word, question.subject, dontKnow)}>
					{t("Don’t know")}
				</button>
			)}
		</article>
	);
}
