// What a rule reads that the sheets and the job as a whole state: to change here, where one sees what follows.
import { labelOf, ValueField, wordNamed } from "../bench/WordField";
import type { WordPlan } from "../engine/contract";
import { edit, job } from "../state/job";
import { said, t } from "../words/words";

export function Inputs({ needs }: { needs: string[] }) {
	const current = job.value;
	const words = needs.map(wordNamed).filter((word): word is WordPlan => word !== undefined);
	const sheets = words.filter((word) => current?.sheets[word.step]);
	const others = words.filter((word) => !sheets.includes(word));
	if (words.length === 0) return null;
	return (
		<section aria-labelledby="inputs-title">
			<h2 id="inputs-title">{t("What it reads")}</h2>
			{sheets.length > 0 && (
				<div class="inputs">
					{sheets.map((word) => (
						<SheetField key={word.name} word={word} />
					))}
				</div>
			)}
			<ul class="small">
				{others.map((word) => (
					<li key={word.name}>
						<code>{word.name}</code> {said(word.meaning)}
					</li>
				))}
			</ul>
		</section>
	);
}

function SheetField({ word }: { word: WordPlan }) {
	const sheet = job.value?.sheets[word.step];
	if (!sheet) return null;
	return (
		<div>
			<ValueField
				word={word}
				label={labelOf(word)}
				field={`sheets/${word.step}/values/${word.name}`}
				value={sheet.values[word.name] ?? ""}
				onChange={(typed) =>
					edit(`sheets/${word.step}/${word.name}`, (draft) => {
						const changed = draft.sheets[word.step];
						if (!changed) return;
						changed.values[word.name] = typed;
						changed.generic = false;
					})
				}
			/>
			<p class="field-hint">
				{t("On this job’s {kind} sheet", { kind: said(word.step) })}
				{sheet.generic && ` · ${t("typical, read your bag")}`}
			</p>
		</div>
	);
}
