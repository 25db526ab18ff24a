// Findings: what the checks say, the gravest first, each with the rule behind it.
import { useState } from "preact/hooks";
import { call } from "../engine/client";
import type { Explanation, Finding } from "../engine/contract";
import { Weight } from "../parts/marks";
import { bookText } from "../state/book";
import { job, plan } from "../state/job";
import { readable } from "../words/rule";
import { said, t } from "../words/words";
import { Clear } from "./Clear";
import { Closest } from "./Closest";
import { Questions } from "./Questions";

export function Findings() {
	const findings = plan.value?.findings ?? [];
	const broken = findings.filter((f) => f.state === "broken");
	const faulty = findings.filter((f) => f.state === "faulty");
	const kept = findings.filter((f) => f.state === "kept");
	const idle = findings.filter((f) => f.state === "idle");
	const off = findings.filter((f) => f.state === "off");
	const open = findings.filter((f) => f.state === "unanswered");
	return (
		<section id="findings" aria-label={t("Findings")} tabIndex={-1}>
			<div class="verdict">
				{(["stop", "fix", "watch"] as const).map((weight) => {
					const count = broken.filter((f) => f.weight === weight).length;
					return count > 0 ? <Weight key={weight} weight={weight} count={count} /> : null;
				})}
				{open.length > 0 && <Weight weight="ask" count={open.length} />}
				<Weight weight="kept" count={kept.length} />
			</div>
			<RuleProblems />
			{[...broken, ...faulty].map((finding) => (
				<FindingCard key={keyOf(finding)} finding={finding} />
			))}
			<Questions />
			<Closest />
			<details class="findings-more">
				<summary>{t("In order: {count}", { count: kept.length })}</summary>
				{kept.map((finding) => (
					<FindingCard key={keyOf(finding)} finding={finding} />
				))}
			</details>
			{off.length > 0 && (
				<section class="finding switched-off" aria-label={t("Switched off")}>
					{off.map((finding) => (
						<p key={keyOf(finding)} class="small">
							<b>{t("Switched off")}</b>: {readable(finding.rule)}
							{finding.subject.name && ` (${finding.subject.name})`}.{" "}
							{t("Reason: {reason}", { reason: finding.off ?? "" })}
						</p>
					))}
				</section>
			)}
			{idle.length > 0 && (
				<details class="findings-more">
					<summary>{t("Does not apply here: {count}", { count: idle.length })}</summary>
					<ul class="small soft">
						{idle.map((finding) => (
							<li key={keyOf(finding)}>
								{readable(finding.rule)} {finding.subject.name && `(${finding.subject.name})`}
							</li>
						))}
					</ul>
				</details>
			)}
		</section>
	);
}

function keyOf(finding: Finding): string {
	return `${finding.rule}/${finding.subject.scope}/${finding.subject.room}/${finding.subject.id}`;
}

function FindingCard({ finding }: { finding: Finding }) {
	const weight = finding.state === "kept" ? "kept" : finding.weight;
	return (
		<article class="finding" data-rule={finding.rule} data-state={finding.state}>
			<div class="finding-head">
				<Weight weight={weight} />
				{finding.subject.name && <span class="finding-subject">{finding.subject.name}</span>}
			</div>
			<ChangedRules names={finding.changed ?? []} />
			<p>
				{finding.state === "faulty"
					? `${readable(finding.rule)}: ${t("This rule could not be worked out.")} ${said(finding.fault?.message)}`
					: finding.state === "kept"
						? readable(finding.rule)
						: said(finding.says)}
			</p>
			{finding.state === "broken" && finding.remedy && <p class="remedy">{said(finding.remedy)}</p>}
			{finding.state === "broken" && finding.caution && <p class="caution">{said(finding.caution)}</p>}
			{finding.state === "broken" && <Clear finding={finding} />}
			<Why finding={finding} />
		</article>
	);
}

/** Figures of the rulebook that the plan rests on and that can't be worked out. */
function RuleProblems() {
	const problems = (plan.value?.problems ?? []).filter((problem) => problem.field.startsWith("rulebook/"));
	return (
		<>
			{problems.map((problem) => (
				<p key={problem.field} class="finding field-error" role="alert">
					{said(problem.message)} {said(problem.remedy)}{" "}
					<a href={`#/rules/${encodeURIComponent(problem.field.slice("rulebook/".length))}`}>{t("Open the rule")}</a>
				</p>
			))}
		</>
	);
}

/** Says which of the rules behind something aren't as they shipped. */
export function ChangedRules({ names }: { names: string[] }) {
	if (names.length === 0) return null;
	return (
		<p class="mark-changed">
			{t("Changed from the shipped rulebook:")}{" "}
			{names.map((name, i) => (
				<>
					{i > 0 && ", "}
					<a href={`#/rules/${encodeURIComponent(name)}`}>{readable(name)}</a>
				</>
			))}
		</p>
	);
}

/** The rule behind a finding, fetched when it is opened. */
function Why({ finding }: { finding: Finding }) {
	const [explained, setExplained] = useState<Explanation | null>(null);
	const explain = async (open: boolean) => {
		if (!open || !job.value) return;
		const wanted = { job: job.value, book: bookText.value, rule: finding.rule, subject: finding.subject };
		// A finding that an edit made away with meanwhile has nothing to explain: its card goes with the next plan.
		setExplained(await call("explain", wanted).catch(() => null));
	};
	return (
		<details class="why" onToggle={(event) => explain(event.currentTarget.open)}>
			<summary>{t("Why: the rule behind this")}</summary>
			{finding.margin && <p class="small">{t("Margin: {margin}", { margin: said(finding.margin.text) })}</p>}
			{explained && (
				<>
					<Trace explained={explained} />
					<p class="small soft">{t("Source: {source}", { source: said(explained.rule?.source) || t("none given") })}</p>
					<details>
						<summary>{t("The rule as the rulebook writes it")}</summary>
						<pre class="rule-text">{explained.text}</pre>
					</details>
					<a href={`#/rules/${encodeURIComponent(finding.rule)}`}>{t("Open it in the rulebook")}</a>
				</>
			)}
		</details>
	);
}

function Trace({ explained }: { explained: Explanation }) {
	return (
		<table class="trace">
			<caption class="unseen">{t("The rule step by step")}</caption>
			<thead>
				<tr>
					<th scope="col">{t("Part")}</th>
					<th scope="col">{t("Value")}</th>
					<th scope="col">{t("From")}</th>
				</tr>
			</thead>
			<tbody>
				{explained.steps.map((step, i) => (
					<tr key={i} class={step.reached ? undefined : "unreached"}>
						<td style={{ paddingLeft: `${step.depth * 0.6}rem` }}>
							<code>{step.text}</code>
						</td>
						<td>{step.missing ? t("not answered") : step.reached ? said(step.value) : t("not reached")}</td>
						<td>{step.given ? origin(step.given.from, step.given.typed ?? "") : ""}</td>
					</tr>
				))}
			</tbody>
		</table>
	);
}

function origin(from: string, typed: string): string {
	switch (from) {
		case "typed":
			return t("you: {typed}", { typed });
		case "sheet":
			return t("sheet: {typed}", { typed });
		case "worked out":
			return t("worked out");
	}
	return from;
}
