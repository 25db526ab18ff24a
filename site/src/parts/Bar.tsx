// The bar on top: home, the job's name, its pages, undo and redo, when it was last kept; then units, print, rulebook, help and language, which a phone
// keeps behind a button.
import { useState } from "preact/hooks";
import { canRedo, canUndo, edit, job, redo, undo } from "../state/job";
import { route } from "../state/route";
import { choose, language, languages, t } from "../words/words";
import { Pick } from "./fields";
import { KeptLine } from "./Kept";

/** The pages of a job. */
function places(): { view: string; name: string }[] {
	return [
		{ view: "steps", name: t("Step by step") },
		{ view: "job", name: t("Floor") },
		{ view: "pour", name: t("Pour") },
		{ view: "buy", name: t("To buy") },
		{ view: "papers", name: t("On paper") },
	];
}

/** The choice of language, each by its own name. */
function LanguageChoice() {
	return (
		<select
			class="bar-language"
			aria-label={t("Language")}
			value={language.value}
			onChange={(event) => choose(event.currentTarget.value === "es" ? "es" : "en")}
		>
			{languages.map(({ value, label }) => (
				<option key={value} value={value} lang={value}>
					{label}
				</option>
			))}
		</select>
	);
}

export function Bar() {
	const current = job.value;
	const [open, setOpen] = useState(false); // on a phone: what the bar has no room for
	return (
		<header class={`bar${current ? " bar-job" : ""}${open ? " bar-open" : ""}`}>
			<a class="bar-mark" href="#/" aria-label={t("Lowspot, first screen")}>
				<svg viewBox="0 0 40 28" aria-hidden="true">
					<path d="M1 9h38" stroke="currentColor" stroke-width="2.500" />
					<path d="M1 12c8 0 10 3 15 8s7 5 10 1 6-9 13-9v14H1z" fill="currentColor" opacity=".85" />
				</svg>
				<span>Lowspot</span>
			</a>
			{current && (
				<>
					<JobName />
					{route.value.view !== "rules" && <Turns />}
					<button
						type="button"
						class="bar-more no-print"
						aria-expanded={open}
						aria-controls="bar-rest"
						onClick={() => setOpen(!open)}
					>
						{t("More")}
					</button>
					<Places id={current.id} />
					<KeptLine />
				</>
			)}
			<div class="bar-rest no-print" id="bar-rest">
				{current && <UnitsChoice units={current.units} />}
				{current && (
					<button type="button" onClick={() => print()}>
						{t("Print")}
					</button>
				)}
				<a class="bar-link" href="#/rules">
					{t("Rulebook")}
				</a>
				<a class="bar-link" href="#/help">
					{t("Help")}
				</a>
				<LanguageChoice />
			</div>
		</header>
	);
}

/** Reads the job itself: in a tab that looks on, a job drawn anew is what takes back what was typed here. */
function JobName() {
	return (
		<div class="bar-name">
			<input
				type="text"
				aria-label={t("Name of the job")}
				placeholder={t("Name this job")}
				value={job.value?.name ?? ""}
				onInput={(event) => {
					const typed = event.currentTarget.value;
					edit("name", (draft) => {
						draft.name = typed;
					});
				}}
			/>
		</div>
	);
}

function Places({ id }: { id: string }) {
	return (
		<nav class="bar-places no-print" aria-label={t("Parts of the job")}>
			{places().map(({ view, name }) => (
				<a
					key={view}
					href={`#/${view}/${encodeURIComponent(id)}`}
					aria-current={route.value.view === view ? "page" : undefined}
				>
					{name}
				</a>
			))}
		</nav>
	);
}

function Turns() {
	return (
		<div class="bar-turns no-print">
			<button type="button" class="bar-turn" onClick={undo} disabled={!canUndo.value}>
				<Turn d="M5 2L1 6l4 4M1 6h9a4 4 0 010 8H6" />
				<span class="unseen">{t("Undo")}</span>
			</button>
			<button type="button" class="bar-turn" onClick={redo} disabled={!canRedo.value}>
				<Turn d="M11 2l4 4-4 4M15 6H6a4 4 0 000 8h4" />
				<span class="unseen">{t("Redo")}</span>
			</button>
		</div>
	);
}

function UnitsChoice({ units }: { units: string }) {
	return (
		<Pick
			hideLabel
			label={t("Units")}
			value={units}
			onChange={(chosen) =>
				edit("units", (draft) => {
					draft.units = chosen === "us" ? "us" : "metric";
				})
			}
			choices={[
				{ value: "metric", label: t("mm, kg") },
				{ value: "us", label: t("in, lb") },
			]}
		/>
	);
}

/** An arrow that turns back or on. */
function Turn({ d }: { d: string }) {
	return (
		<svg viewBox="0 0 16 16" aria-hidden="true">
			<path d={d} fill="none" stroke="currentColor" stroke-width="2" />
		</svg>
	);
}
