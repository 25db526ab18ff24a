// The rulebook page: every figure and check by theme, searchable; one of them open beside the list.
import { useEffect, useState } from "preact/hooks";
import { call } from "../engine/client";
import type { RuleOn, RuleView } from "../engine/contract";
import { useGrowing } from "../parts/grow";
import { book, bookKept, bookTrouble, canRedoBook, canUndoBook, redoBook, undoBook } from "../state/book";
import { job, lastJob, open } from "../state/job";
import { go, route } from "../state/route";
import { follow, outcomes, ruleNamed, view } from "../state/rules";
import { readable } from "../words/rule";
import { said, t } from "../words/words";
import { BookFiles, Update } from "./BookFiles";
import { Guide } from "./Guide";
import { NewRule } from "./NewRule";
import { stateWord } from "./Outcomes";
import { RulePanel } from "./RulePanel";

export default function Rules() {
	useEffect(follow, []);
	useEffect(reopen, []);
	const name = route.value.id;
	const shown = ruleNamed(name);
	return (
		<main class="rules" id="main" data-open={name !== ""}>
			<div class="rules-list">
				<Head open={name !== ""} />
				<List open={name} />
			</div>
			<div class="rules-one">
				{bookTrouble.value && (
					<p class="notice notice-stop" role="alert">
						{said(bookTrouble.value)}
					</p>
				)}
				<Update />
				{name !== "" && (
					<a class="rules-back" href="#/rules">
						{t("All rules")}
					</a>
				)}
				{shown && <RulePanel key={name} view={shown} />}
				{name !== "" && !shown && view.value && <p>{t("There is no rule of this name in the rulebook.")}</p>}
				{name === "" && <Overview />}
			</div>
		</main>
	);
}

/** The job that was open before a reload is opened again, so that the values are shown on it. */
function reopen(): void {
	const id = lastJob();
	if (!job.value && id)
		call("jobs.open", { id })
			.then((opened) => open(opened.job, opened))
			.catch(() => {});
}

function Head({ open: isOpen }: { open: boolean }) {
	const current = job.value;
	const Title = isOpen ? "p" : "h1"; // an open rule's name is the page's first heading
	return (
		<div class="rules-head">
			<Title class="rules-title">{t("Rulebook")}</Title>
			<p class="small soft">
				{book.value
					? t("Your own, kept on this device. {count} rules differ from the shipped ones.", {
							count: view.value?.rules.filter((one) => one.changed).length ?? 0,
						})
					: t("The one that ships. The first change makes it your own.")}
			</p>
			<p class="small soft rules-kept" role="status">
				{bookKept.value ? t("Kept on this device.") : t("Not kept yet…")}
			</p>
			<div class="row">
				{current ? (
					<button type="button" onClick={() => go("job", current.id)}>
						{t("Back to {name}", { name: current.name || t("the job") })}
					</button>
				) : (
					<span class="small soft">{t("Open a job to see each rule’s value on it.")}</span>
				)}
				<button
					type="button"
					aria-label={t("Undo in the rulebook")}
					onClick={() => undoBook()}
					disabled={!canUndoBook.value}
				>
					{t("Undo")}
				</button>
				<button
					type="button"
					aria-label={t("Redo in the rulebook")}
					onClick={() => redoBook()}
					disabled={!canRedoBook.value}
				>
					{t("Redo")}
				</button>
			</div>
		</div>
	);
}

function Overview() {
	return (
		<>
			<BookFiles />
			<NewRule />
			<Guide />
		</>
	);
}

function List({ open: name }: { open: string }) {
	const [wanted, setWanted] = useState("");
	const [which, setWhich] = useState("all");
	const rules = (view.value?.rules ?? []).filter((one) => matches(one, wanted) && belongs(one, which));
	const drawn = useGrowing(rules);
	const themes = [...new Set(drawn.map((one) => one.rule.theme))];
	return (
		<>
			<div class="rules-find">
				<div class="field">
					<label for="rules-find">{t("Find a rule")}</label>
					<input
						id="rules-find"
						type="search"
						value={wanted}
						onInput={(event) => setWanted(event.currentTarget.value)}
					/>
				</div>
				<div class="field">
					<label for="rules-which">{t("Show")}</label>
					<select id="rules-which" value={which} onChange={(event) => setWhich(event.currentTarget.value)}>
						<option value="all">{t("all")}</option>
						<option value="figures">{t("figures")}</option>
						<option value="checks">{t("checks")}</option>
						<option value="changed">{t("changed")}</option>
						<option value="broken">{t("broken on this job")}</option>
						<option value="wrong">{t("with an error")}</option>
					</select>
				</div>
			</div>
			{rules.length === 0 && view.value && <p class="small soft">{t("No rule matches.")}</p>}
			{themes.map((theme) => (
				<section key={theme} aria-label={said(theme)}>
					<h2 class="rules-theme">{said(theme) || t("Without a theme")}</h2>
					<ul>
						{drawn
							.filter((one) => one.rule.theme === theme)
							.map((one) => (
								<Entry key={one.rule.name} one={one} open={one.rule.name === name} />
							))}
					</ul>
				</section>
			))}
		</>
	);
}

function Entry({ one, open: isOpen }: { one: RuleView; open: boolean }) {
	const on = outcomes.value.filter((o) => o.rule === one.rule.name);
	return (
		<li>
			<a
				class="rules-entry"
				href={`#/rules/${encodeURIComponent(one.rule.name)}`}
				aria-current={isOpen ? "page" : undefined}
			>
				<span>
					{readable(one.rule.name)}
					{one.errors.length > 0 && <b class="mark-wrong"> {t("error")}</b>}
					{one.rule.off && <b class="mark-changed"> {t("off")}</b>}
					{one.changed && <b class="mark-changed"> {one.shipped ? t("changed") : t("your own")}</b>}
				</span>
				<span class="small soft">{summary(one, on)}</span>
			</a>
		</li>
	);
}

/** What a rule comes to on the job, in a few words. */
function summary(one: RuleView, on: RuleOn[]): string {
	const texts = on.map((o) => (o.state === "known" ? said(o.text) : stateWord(o.state)));
	const different = [...new Set(texts)];
	if (different.length > 0) return different.slice(0, 3).join(" · ");
	return one.rule.check ? t("check") : t("figure");
}

function matches(one: RuleView, wanted: string): boolean {
	if (wanted.trim() === "") return true;
	const text =
		`${one.text} ${said(one.rule.words)} ${said(one.rule.says)} ${said(one.rule.theme)} ${readable(one.rule.name)}`.toLowerCase();
	return wanted
		.toLowerCase()
		.split(/\s+/)
		.every((word) => text.includes(word));
}

function belongs(one: RuleView, which: string): boolean {
	switch (which) {
		case "figures":
			return !one.rule.check;
		case "checks":
			return one.rule.check;
		case "changed":
			return one.changed;
		case "wrong":
			return one.errors.length > 0 || one.examples.some((example) => !example.passed);
		case "broken":
			return outcomes.value.some((on) => on.rule === one.rule.name && on.state === "broken");
	}
	return true;
}
