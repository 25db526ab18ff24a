// After the pour: bags used and left, depth as it came out, and what the person's own bags fill over all past jobs.
import { useEffect, useState } from "preact/hooks";
import { call, callLatest } from "../engine/client";
import type { AfterPlan, AfterPour, Past } from "../engine/contract";
import { Section, withUnit } from "../parts/fields";
import { bookText } from "../state/book";
import { edit, job } from "../state/job";
import { said, t } from "../words/words";
import { Quick } from "./fields";

export function AfterEntry() {
	const current = job.value;
	const [worked, setWorked] = useState<AfterPlan | null>(null);
	const [past, setPast] = useState<Past | null>(null);
	useEffect(() => {
		if (current) {
			callLatest("after", { job: current, book: bookText.value }).then(
				(answer) => answer && setWorked(answer),
				() => setWorked(null),
			);
		}
	}, [current]);
	useEffect(() => {
		if (current) call("past", { units: current.units, book: bookText.value }).then(setPast, () => setPast(null));
	}, [worked]);
	if (!current) return null;
	const field = (name: keyof AfterPour, label: string, unit = "") => (
		<Quick
			label={label}
			field={`after/${name}`}
			value={current.after?.[name] ?? ""}
			full={(text) => withUnit(text, unit)}
			onChange={(typed) =>
				edit(`after/${name}`, (draft) => {
					draft.after = { ...(draft.after ?? { used: "", left: "", depth: "", notes: "" }), [name]: typed };
				})
			}
		/>
	);
	return (
		<Section
			title={t("After the pour")}
			says={
				worked?.used
					? t("{used} bags used of {planned}", { used: said(worked.used.text), planned: worked.planned })
					: ""
			}
		>
			<div class="row row-even">
				{field("used", t("Bags opened"))}
				{field("left", t("Bags left over"))}
				{field("depth", t("Mean depth as measured"), current.units === "us" ? "in" : "mm")}
			</div>
			{worked?.problems.map((problem) => (
				<p class="field-error" key={problem.field}>
					{said(problem.message)} {said(problem.remedy)}
				</p>
			))}
			{worked && (
				<table class="trace">
					<tbody>
						<Against label={t("Bags")} planned={String(worked.planned)} came={said(worked.used?.text)} />
						<Against label={t("Mean depth")} planned={said(worked.meant?.text)} came={said(worked.depth?.text)} />
					</tbody>
				</table>
			)}
			{worked?.says && <p>{said(worked.says)}</p>}
			{past && <OwnYield past={past} />}
		</Section>
	);
}

function Against(props: { label: string; planned: string | undefined; came: string | undefined }) {
	return (
		<tr>
			<th scope="row">{props.label}</th>
			<td>{t("planned {value}", { value: props.planned ?? "—" })}</td>
			<td>{t("came out {value}", { value: props.came ?? "—" })}</td>
		</tr>
	);
}

function OwnYield({ past }: { past: Past }) {
	if (past.jobs === 0) return <p class="soft small">{said(past.says)}</p>;
	return (
		<div class="card">
			<p>{said(past.says)}</p>
			<button
				type="button"
				onClick={() =>
					edit("sheets/leveller", (draft) => {
						const sheet = draft.sheets.leveller;
						if (sheet) sheet.values["sheet.bag_yield"] = past.yield;
					})
				}
			>
				{t("Plan this job with it: {yield} a bag before waste", { yield: past.yield })}
			</button>
		</div>
	);
}
