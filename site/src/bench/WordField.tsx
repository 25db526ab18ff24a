// A field for one word of the vocabulary: its kind decides how it is asked.
import type { Subject, WordPlan } from "../engine/contract";
import { Choice, Field, Pick } from "../parts/fields";
import { answer, answersOf, dontKnow, fieldOf } from "../state/answers";
import { job, vocabulary } from "../state/job";
import { said, t } from "../words/words";

export function wordNamed(name: string): WordPlan | undefined {
	return vocabulary.value.find((word) => word.name === name);
}

/** The label of a word: its meaning without the full stop. */
export function labelOf(word: WordPlan): string {
	return said(word.meaning).replace(/\.$/, "");
}

export function WordField(props: { name: string; subject: Subject; asQuestion?: boolean }) {
	const word = wordNamed(props.name);
	const current = job.value;
	if (!word || !current) return null;
	const value = answersOf(current, props.subject)?.[props.name] ?? "";
	const set = (typed: string) => answer(props.name, props.subject, typed);
	return (
		<ValueField
			word={word}
			value={value}
			field={fieldOf(current, props.subject, props.name)}
			label={props.asQuestion ? said(word.question) : labelOf(word)}
			onChange={set}
		/>
	);
}

/** A field by a word's kind, wherever its value is kept. */
export function ValueField(props: {
	word: WordPlan;
	value: string;
	field: string;
	label: string;
	hint?: string;
	onChange: (typed: string) => void;
}) {
	const { word, value, label, onChange } = props;
	switch (word.kind) {
		case "truth":
			return (
				<Pick
					label={label}
					value={value}
					onChange={onChange}
					choices={[
						{ value: "yes", label: t("Yes") },
						{ value: "no", label: t("No") },
						{ value: dontKnow, label: t("Don’t know") },
					]}
				/>
			);
		case "choice":
			return (
				<Choice
					label={label}
					value={value}
					field={props.field}
					empty={t("Choose…")}
					onChange={onChange}
					choices={[
						...word.choices.map((choice) => ({ value: choice, label: said(choice) })),
						{ value: dontKnow, label: t("don’t know") },
					]}
				/>
			);
	}
	const shown = value === dontKnow ? "" : value;
	return (
		<Field
			label={label}
			field={props.field}
			value={shown}
			unit={job.value?.units === "us" ? word.us : word.metric}
			hint={props.hint}
			placeholder={value === dontKnow ? t("don’t know") : t("for example {example}", { example: said(word.example) })}
			onChange={onChange}
		/>
	);
}
