// A rule's numbers as fields: the engine finds them and puts the new one in, so that nobody has to touch the expression.
import { useId, useState } from "preact/hooks";
import { call, isEngineError } from "../engine/client";
import type { Literal, Rule, RuleView } from "../engine/contract";
import { said, t } from "../words/words";

export function Numbers({ view, onKeep }: { view: RuleView; onKeep: (rule: Rule) => Promise<void> }) {
	if (view.literals.length === 0) return null;
	return (
		<section aria-labelledby="numbers-title">
			<h2 id="numbers-title">{t("Its numbers")}</h2>
			<div class="numbers">
				{view.literals.map((literal) => (
					<NumberField
						key={`${literal.field}/${literal.from}/${literal.text}`}
						rule={view.rule}
						literal={literal}
						onKeep={onKeep}
					/>
				))}
			</div>
		</section>
	);
}

function NumberField(props: { rule: Rule; literal: Literal; onKeep: (rule: Rule) => Promise<void> }) {
	const { rule, literal } = props;
	const id = useId();
	const [typed, setTyped] = useState(literal.shown);
	const [wrong, setWrong] = useState("");
	const field = literal.field as "value" | "applies" | "holds";
	const expression = rule[field] ?? "";
	const keep = async (event: Event) => {
		event.preventDefault();
		try {
			const { text } = await call("rules.rewrite", { rule, field, from: literal.from, typed });
			setWrong("");
			await props.onKeep({ ...rule, [field]: text });
		} catch (error) {
			setWrong(isEngineError(error) ? `${said(error.message)} ${said(error.remedy)}` : String(error));
		}
	};
	return (
		<form class="number" onSubmit={keep}>
			<label for={id} class="number-where">
				<code>
					{literal.from > 40 && "…"}
					{expression.slice(Math.max(0, literal.from - 40), literal.from)}
					<mark>{literal.text}</mark>
					{expression.slice(literal.to, literal.to + 24)}
					{expression.length > literal.to + 24 && "…"}
				</code>
			</label>
			<div class="row">
				<span class={`field${wrong ? " field-wrong" : ""}`}>
					<input
						id={id}
						type="text"
						value={typed}
						aria-invalid={wrong ? true : undefined}
						aria-describedby={`${id}-note`}
						onInput={(event) => setTyped(event.currentTarget.value)}
					/>
				</span>
				<button type="submit" disabled={typed === literal.shown}>
					{t("Change")}
				</button>
			</div>
			<p id={`${id}-note`} class="field-error">
				{wrong}
			</p>
		</form>
	);
}
