// The fields of a rule: its expressions in an editor, its sentences and its source as text.
import { useId } from "preact/hooks";
import type { Rule, Error as RuleError } from "../engine/contract";
import { Choice } from "../parts/fields";
import { t } from "../words/words";
import { Expression } from "./Expression";
import { RuleErrors } from "./RuleErrors";

type Key = "words" | "value" | "applies" | "holds" | "says" | "remedy" | "asks" | "caution" | "source" | "theme";

export function RuleForm(props: { rule: Rule; errors: RuleError[]; onChange: (rule: Rule) => void }) {
	const { rule, errors } = props;
	const set = (key: Key) => (text: string) => props.onChange({ ...rule, [key]: text });
	const wrong = (key: string) => errors.filter((error) => error.field === key);
	const elsewhere = errors.filter((error) => !editable.includes(error.field ?? ""));
	return (
		<div class="rule-form">
			{rule.check ? (
				<>
					<Expression
						label={t("Applies where (empty: always)")}
						value={rule.applies ?? ""}
						errors={wrong("applies")}
						onChange={set("applies")}
					/>
					<Expression label={t("Must hold")} value={rule.holds ?? ""} errors={wrong("holds")} onChange={set("holds")} />
					<TextLine
						label={t("Says, when broken; {depth.least} puts a value in")}
						value={rule.says ?? ""}
						errors={wrong("says")}
						onChange={set("says")}
					/>
					<TextLine label={t("Remedy")} value={rule.remedy ?? ""} errors={wrong("remedy")} onChange={set("remedy")} />
					<Choice
						label={t("Weight")}
						value={rule.weight ?? "watch"}
						onChange={(weight) => props.onChange({ ...rule, weight })}
						choices={[
							{ value: "stop", label: t("Don’t pour") },
							{ value: "fix", label: t("Put right first") },
							{ value: "watch", label: t("Keep an eye on it") },
						]}
					/>
				</>
			) : (
				<Expression label={t("Value")} value={rule.value ?? ""} errors={wrong("value")} onChange={set("value")} />
			)}
			<details>
				<summary>{t("Words, source, caution")}</summary>
				<div class="rule-form">
					<TextLine
						label={t("What it is for")}
						value={rule.words ?? ""}
						errors={wrong("words")}
						onChange={set("words")}
					/>
					<TextLine label={t("Source")} value={rule.source ?? ""} errors={wrong("source")} onChange={set("source")} />
					<TextLine
						label={t("Caution")}
						value={rule.caution ?? ""}
						errors={wrong("caution")}
						onChange={set("caution")}
					/>
					<TextLine label={t("Theme")} value={rule.theme} errors={[]} onChange={set("theme")} />
				</div>
			</details>
			<RuleErrors errors={elsewhere} />
		</div>
	);
}

const editable = ["value", "applies", "holds", "says", "remedy", "words", "source", "caution"];

export function TextLine(props: {
	label: string;
	value: string;
	errors: RuleError[];
	onChange: (text: string) => void;
}) {
	const id = useId();
	return (
		<div class="field">
			<label for={id}>{props.label}</label>
			<textarea
				id={id}
				rows={props.value.length > 90 ? 3 : 1}
				value={props.value}
				onInput={(event) => props.onChange(event.currentTarget.value)}
			/>
			<RuleErrors errors={props.errors} />
		</div>
	);
}
