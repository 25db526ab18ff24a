// How a rule comes out on each part of the open job.

import type { RuleOn } from "../engine/contract";
import { readable } from "../words/rule";
import { said, t } from "../words/words";

/** The words of an outcome. */
export function stateWord(state: string): string {
	switch (state) {
		case "known":
			return t("known");
		case "kept":
			return t("in order");
		case "broken":
			return t("broken");
		case "unanswered":
			return t("not answered");
		case "idle":
			return t("does not apply");
		case "off":
			return t("switched off");
	}
	return t("can’t be worked out");
}

export function Outcomes({ on }: { on: RuleOn[] }) {
	if (on.length === 0) return <p class="small soft">{t("Nothing on the open job that it speaks of.")}</p>;
	return (
		<table class="trace outcomes" aria-live="polite">
			<caption class="unseen">{t("On the open job")}</caption>
			<thead>
				<tr>
					<th scope="col">{t("Where")}</th>
					<th scope="col">{t("Comes to")}</th>
					<th scope="col">{t("Margin")}</th>
				</tr>
			</thead>
			<tbody>
				{on.map((one) => (
					<tr key={`${one.subject.scope}/${one.subject.room}/${one.subject.id}`} data-state={one.state}>
						<th scope="row">{one.subject.name || said(`the ${one.subject.scope}`)}</th>
						<td>
							{one.state === "known" ? <b>{said(one.text)}</b> : stateWord(one.state)}
							{one.state === "broken" && ` — ${said(one.text)}`}
							{one.state === "unanswered" && ` (${one.missing.map(readable).join(", ")})`}
							{one.fault && ` — ${said(one.fault.message)} ${said(one.fault.remedy)}`}
						</td>
						<td>{said(one.margin?.text)}</td>
					</tr>
				))}
			</tbody>
		</table>
	);
}
