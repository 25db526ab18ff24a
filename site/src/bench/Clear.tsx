// What would clear a broken check, found by the engine when it is asked for; one tap writes it into the job, and Undo takes it back.
import { useEffect, useState } from "preact/hooks";
import { call } from "../engine/client";
import type { Clearing, Finding, Remedy } from "../engine/contract";
import { write } from "../state/apply";
import { bookText } from "../state/book";
import { edit, job } from "../state/job";
import { needShop, shop } from "../state/takeoff";
import { readable } from "../words/rule";
import { said, t } from "../words/words";

export function Clear({ finding }: { finding: Finding }) {
	const [clearing, setClearing] = useState<Clearing | null>(null);
	const [wanted, setWanted] = useState(false);
	const [told, setTold] = useState("");
	const current = job.value;
	const book = bookText.value;
	useEffect(() => {
		setClearing(null);
		if (!wanted || !current) return;
		let here = true;
		needShop()
			.then(() =>
				call("clear", {
					job: current,
					book,
					rule: finding.rule,
					subject: finding.subject,
					shop: shop.value ?? undefined,
				}),
			)
			.then((found) => here && setClearing(found))
			.catch((error: Error) => here && setTold(said(error.message)));
		return () => {
			here = false;
		};
	}, [wanted, current, book]);
	return (
		<details class="why" onToggle={(event) => setWanted(event.currentTarget.open)}>
			<summary>{t("What would clear it")}</summary>
			<div aria-live="polite" aria-busy={wanted && !clearing && !told}>
				{told && <p class="field-error">{told}</p>}
				{wanted && !clearing && !told && <p class="small soft">{t("Trying plans…")}</p>}
				{clearing && <Found clearing={clearing} />}
			</div>
		</details>
	);
}

function Found({ clearing }: { clearing: Clearing }) {
	return (
		<>
			{clearing.remedies.length === 0 && (
				<p class="small">{t("No single change to what is entered clears it: do what the remedy says.")}</p>
			)}
			<ul class="clears">
				{clearing.remedies.map((remedy) => (
					<li key={`${remedy.label}/${remedy.to}`}>
						<span class="clears-says">
							<b>
								{said(remedy.label)}: {said(remedy.to)}
							</b>{" "}
							<span class="small soft">
								{remedy.from && t("now {from}.", { from: said(remedy.from) })} {follows(remedy)}
							</span>
						</span>
						{remedy.sort === "sheet" ? (
							<span class="small soft">{t("only a product whose bag says so")}</span>
						) : (
							<button type="button" onClick={() => apply(remedy)}>
								{remedy.sort === "decided" ? t("Do this") : t("It is so now: enter it")}
							</button>
						)}
					</li>
				))}
			</ul>
			{clearing.tried.length > 0 && (
				<p class="small soft">
					{t("Changing only one of these doesn’t clear it: {list}.", {
						list: clearing.tried.map((one) => said(one)).join("; "),
					})}
				</p>
			)}
			{clearing.left.length > 0 && (
				<p class="small soft">
					{t("Not tried, since the survey is large: {list}.", {
						list: clearing.left.map((one) => said(one)).join("; "),
					})}
				</p>
			)}
		</>
	);
}

function apply(remedy: Remedy): void {
	edit("", (draft) => write(draft, remedy.sets));
}

/** What else a remedy changes. */
function follows(remedy: Remedy): string {
	const { bagsBefore, bagsAfter, money, broken, cleared } = remedy.effect;
	const says: string[] = [];
	if (bagsBefore !== bagsAfter)
		says.push(t("Bags: {before} become {after}.", { before: bagsBefore, after: bagsAfter }));
	if (money?.by) {
		const { before, after, by } = money;
		says.push(t("Price: {before} becomes {after} ({by}).", { before: said(before), after: said(after), by: said(by) }));
	}
	if (broken.length > 0) says.push(t("Breaks: {checks}.", { checks: names(broken) }));
	if (cleared.length > 1) says.push(t("Clears {count} checks.", { count: cleared.length }));
	return says.length > 0 ? says.join(" ") : t("Nothing else changes.");
}

function names(list: { rule: string; subject: { name: string } }[]): string {
	return list.map((one) => readable(one.rule) + (one.subject.name ? ` (${one.subject.name})` : "")).join(", ");
}
