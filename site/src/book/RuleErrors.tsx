// What is wrong with a field of a rule, beside it.
import type { Error as RuleError } from "../engine/contract";
import { said } from "../words/words";

export function RuleErrors({ errors }: { errors: RuleError[] }) {
	if (errors.length === 0) return null;
	return (
		<ul class="field-error">
			{errors.map((error) => (
				<li key={`${error.field}/${error.from}/${error.message}`}>
					{said(error.message)} {said(error.remedy)}
				</li>
			))}
		</ul>
	);
}
