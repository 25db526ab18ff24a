// Switching a rule off: it takes a reason, which is kept with the rule, printed, and shown among the findings.
import { useState } from "preact/hooks";
import type { Rule } from "../engine/contract";
import { t } from "../words/words";

export function SwitchOff({ rule, onKeep }: { rule: Rule; onKeep: (rule: Rule) => Promise<void> }) {
	const [reason, setReason] = useState("");
	if (rule.off) {
		return (
			<button type="button" onClick={() => onKeep({ ...rule, off: "" })}>
				{t("Switch this rule on again")}
			</button>
		);
	}
	return (
		<details>
			<summary>{t("Switch this rule off")}</summary>
			<form
				class="row"
				onSubmit={(event) => {
					event.preventDefault();
					onKeep({ ...rule, off: reason.trim() });
				}}
			>
				<div class="field">
					<label for="off-reason">{t("Why: it is kept with the rule and printed with the findings")}</label>
					<input id="off-reason" type="text" value={reason} onInput={(event) => setReason(event.currentTarget.value)} />
				</div>
				<button type="submit" disabled={reason.trim() === ""}>
					{t("Switch off")}
				</button>
			</form>
		</details>
	);
}
