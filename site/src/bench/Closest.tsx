// The checks that hold by the least, so that one sees what to watch. Their margins are compared by their share of the limit.
import type { Finding } from "../engine/contract";
import { plan } from "../state/job";
import { readable } from "../words/rule";
import { said, t } from "../words/words";

const most = 5;

export function Closest() {
	const kept = (plan.value?.findings ?? []).filter((one) => one.state === "kept" && one.margin);
	const closest = [...kept].sort((a, b) => share(a) - share(b)).slice(0, most);
	if (closest.length === 0) return null;
	return (
		<details class="findings-more">
			<summary>{t("Closest to breaking: {rule}", { rule: named(closest[0]) })}</summary>
			<ul class="closest">
				{closest.map((one) => (
					<li key={`${one.rule}/${one.subject.room}/${one.subject.id}`}>
						<span>{named(one)}</span>
						<b>{t("{margin} left", { margin: said(one.margin?.text) })}</b>
					</li>
				))}
			</ul>
		</details>
	);
}

function share(finding: Finding): number {
	return finding.margin?.share ?? Number.POSITIVE_INFINITY;
}

function named(finding: Finding | undefined): string {
	if (!finding) return "";
	return readable(finding.rule) + (finding.subject.name ? ` (${finding.subject.name})` : "");
}
