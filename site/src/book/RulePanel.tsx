// One rule: what it is for, what it comes to on the open job, its numbers to change in a form, its expressions to edit, its examples run, what it
// said before, and what shipped in its place.
import { useEffect, useState } from "preact/hooks";
import { callLatest } from "../engine/client";
import type { Rule, RuleView, Tried } from "../engine/contract";
import { bookText, changeRule, leaveOutRule } from "../state/book";
import { job } from "../state/job";
import { go } from "../state/route";
import { outcomes } from "../state/rules";
import { readable } from "../words/rule";
import { said, t } from "../words/words";
import { Examples } from "./Examples";
import { Inputs } from "./Inputs";
import { Numbers } from "./Numbers";
import { Outcomes } from "./Outcomes";
import { RuleForm } from "./RuleForm";
import { SwitchOff } from "./SwitchOff";

export function RulePanel({ view }: { view: RuleView }) {
	const [draft, setDraft] = useState<Rule | null>(null);
	const [round, setRound] = useState(0); // a kept or dropped draft begins a fresh form
	const tried = useTried(draft);
	const rule = draft ?? view.rule;
	const errors = (draft ? tried?.view.errors : view.errors) ?? [];
	const on = draft && tried ? tried.on : outcomes.value.filter((one) => one.rule === view.rule.name);
	const keep = async (next: Rule) => {
		await changeRule(next);
		drop();
	};
	const drop = () => {
		setDraft(null);
		setRound(round + 1);
	};
	return (
		<article class="rule" data-rule={view.rule.name}>
			<header>
				<h1>{readable(view.rule.name)}</h1>
				<p class="small soft">
					<code>{view.rule.name}</code> · {view.rule.check ? t("check") : t("figure")} · {said(view.rule.theme)}
					{view.changed && (
						<b class="mark-changed"> · {view.shipped ? t("changed from the shipped rulebook") : t("your own rule")}</b>
					)}
				</p>
			</header>
			{rule.words && <p>{said(rule.words)}</p>}
			{rule.off && <p class="caution">{t("Switched off: {reason}", { reason: rule.off })}</p>}
			<section aria-labelledby="on-title">
				<h2 id="on-title">{draft ? t("On the open job, as it is written now") : t("On the open job")}</h2>
				{job.value ? <Outcomes on={on} /> : <p class="small soft">{t("No job is open.")}</p>}
				{draft && tried?.effect && errors.length === 0 && <Effects tried={tried} />}
			</section>
			{!draft && <Numbers view={view} onKeep={keep} />}
			<Inputs needs={view.needs} />
			<section aria-labelledby="text-title">
				<h2 id="text-title">{t("How it is worked out")}</h2>
				<RuleForm key={round} rule={rule} errors={errors} onChange={setDraft} />
				{draft && (
					<div class="row">
						<button type="button" class="button-main" onClick={() => keep(draft)}>
							{errors.length > 0 ? t("Keep it with its errors") : t("Keep this rule")}
						</button>
						<button type="button" onClick={drop}>
							{t("Leave it as it was")}
						</button>
					</div>
				)}
			</section>
			<Examples
				rule={rule}
				results={(draft ? tried?.view.examples : view.examples) ?? []}
				onChange={(examples) => setDraft({ ...rule, examples })}
			/>
			<Shipped view={view} onKeep={keep} />
			<SwitchOff rule={view.rule} onKeep={keep} />
			<History history={view.rule.history ?? []} />
		</article>
	);
}

/** Tries a draft on the open job while it is written. */
export function useTried(draft: Rule | null): Tried | null {
	const [tried, setTried] = useState<Tried | null>(null);
	const text = bookText.value;
	const current = job.value;
	useEffect(() => {
		if (!draft) return setTried(null);
		let here = true;
		callLatest("rules.try", { job: current, book: text, rule: draft })
			.then((worked) => here && worked && setTried(worked))
			.catch(() => {});
		return () => {
			here = false;
		};
	}, [draft, text, current]);
	return tried;
}

function Effects({ tried }: { tried: Tried }) {
	const effect = tried.effect;
	if (!effect) return null;
	return (
		<p class="small" role="status">
			{effect.bagsBefore !== effect.bagsAfter &&
				`${t("Bags: {before} become {after}.", { before: effect.bagsBefore, after: effect.bagsAfter })} `}
			{effect.broken.length > 0 &&
				`${t("Breaks: {checks}.", { checks: effect.broken.map((one) => readable(one.rule)).join(", ") })} `}
			{effect.cleared.length > 0 &&
				t("Clears: {checks}.", { checks: effect.cleared.map((one) => readable(one.rule)).join(", ") })}
		</p>
	);
}

/** The shipped text beside the person's, and the way back to it. */
function Shipped({ view, onKeep }: { view: RuleView; onKeep: (rule: Rule) => Promise<void> }) {
	if (!view.changed) return null;
	return (
		<section aria-labelledby="shipped-title">
			<h2 id="shipped-title">{view.shipped ? t("Beside the shipped rule") : t("A rule of your own")}</h2>
			<div class="side-by-side">
				<figure>
					<figcaption class="small">{t("Yours")}</figcaption>
					<pre class="rule-text">{view.text}</pre>
				</figure>
				{view.shipped && (
					<figure>
						<figcaption class="small">{t("Shipped")}</figcaption>
						<pre class="rule-text">{view.shipped.text}</pre>
					</figure>
				)}
			</div>
			{view.shipped ? (
				<button
					type="button"
					onClick={() => {
						if (view.shipped) onKeep(view.shipped.rule);
					}}
				>
					{t("Return to the shipped rule")}
				</button>
			) : (
				<button
					type="button"
					onClick={async () => {
						await leaveOutRule(view.rule.name);
						go("rules");
					}}
				>
					{t("Remove this rule")}
				</button>
			)}
		</section>
	);
}

function History({ history }: { history: string[] }) {
	if (history.length === 0) return null;
	return (
		<details>
			<summary>{t("What it said before: {count}", { count: history.length })}</summary>
			<ul class="small">
				{[...history].reverse().map((line) => (
					<li key={line}>
						<code>{line}</code>
					</li>
				))}
			</ul>
		</details>
	);
}
