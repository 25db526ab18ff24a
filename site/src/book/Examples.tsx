// A rule's examples: each is run with every change and says whether it still comes out as written.
import { useState } from "preact/hooks";
import type { ExampleResult, Rule } from "../engine/contract";
import { said, t } from "../words/words";

export function Examples(props: { rule: Rule; results: ExampleResult[]; onChange: (examples: string[]) => void }) {
	const { results } = props;
	const [editing, setEditing] = useState(false);
	const failed = results.filter((result) => !result.passed).length;
	return (
		<section aria-labelledby="examples-title">
			<h2 id="examples-title">
				{failed > 0
					? t("Examples that come out otherwise: {failed} of {count}", { failed, count: results.length })
					: t("Examples that come out as written: all {count}", { count: results.length })}
			</h2>
			<ul class="examples">
				{results.map((result) => (
					<li key={result.number} data-passed={result.passed}>
						<b>{result.passed ? "✓" : "✗"}</b> <code>{result.text}</code>{" "}
						{!result.passed && (
							<span class="field-error">
								{result.error
									? `${said(result.error.message)} ${said(result.error.remedy)}`
									: t("gives {got}", { got: result.got })}
							</span>
						)}
					</li>
				))}
			</ul>
			{editing ? (
				<div class="field">
					<label for="examples-text">{t("Examples, one to a line: what is given => what must come of it")}</label>
					<textarea
						id="examples-text"
						class="code"
						rows={Math.max(3, (props.rule.examples?.length ?? 0) + 1)}
						value={(props.rule.examples ?? []).join("\n")}
						onInput={(event) => props.onChange(event.currentTarget.value.split("\n"))}
						onBlur={(event) => props.onChange(event.currentTarget.value.split("\n").filter((line) => line.trim()))}
					/>
				</div>
			) : (
				<button type="button" class="button-quiet" onClick={() => setEditing(true)}>
					{t("Edit the examples")}
				</button>
			)}
		</section>
	);
}
