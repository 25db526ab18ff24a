// The first screen: ways in, and the jobs kept in this browser.
import { useEffect, useState } from "preact/hooks";
import { call, isEngineError } from "../engine/client";
import type { KeptEntry as Entry } from "../engine/contract";
import { fileName, save } from "../state/files";
import { close, open } from "../state/job";
import { go } from "../state/route";
import { usualUnits } from "../state/units";
import { region, said, t } from "../words/words";

async function startSteps(): Promise<void> {
	const { job } = await call("jobs.new", { units: usualUnits() });
	open(job);
	go("steps", job.id);
}

async function startDemo(): Promise<void> {
	const { job } = await call("jobs.demo", {});
	open(job);
	go("job", job.id);
}

async function startNew(): Promise<void> {
	const { job } = await call("jobs.new", { units: usualUnits() });
	open(job);
	go("job", job.id);
}

export function Start() {
	useEffect(close, []); // a job stays open from view to view, until somebody comes back here
	return (
		<main class="start" id="main">
			<div class="start-lead">
				<h1>{t("Level a floor in one pour, with the right number of bags.")}</h1>
				<p>
					{t(
						"Enter the room and a few heights. Lowspot draws the low ground, counts bags and water, and says what to put right before a bucket is opened. Everything stays on this device.",
					)}
				</p>
			</div>
			<div class="ways">
				<section class="way">
					<h2>{t("My first pour")}</h2>
					<p>{t("One question at a time, with why it matters and how to measure it. “Don’t know” is an answer.")}</p>
					<button type="button" class="button-main" onClick={startSteps}>
						{t("Plan it step by step")}
					</button>
				</section>
				<section class="way">
					<h2>{t("I know floors")}</h2>
					<p>{t("Room, readings, sheets, checks and rulebook on one page.")}</p>
					<button type="button" onClick={startNew}>
						{t("Start a new job")}
					</button>
				</section>
				<section class="way">
					<h2>{t("At the counter")}</h2>
					<p>{t("An area and a rough depth: a priced list on paper in half a minute.")}</p>
					<a class="button" href="#/counter">
						{t("Make a quote")}
					</a>
				</section>
				<section class="way">
					<h2>{t("See one first")}</h2>
					<p>{t("A laundry with a sagging hall, measured and planned. Change anything in it.")}</p>
					<button type="button" onClick={startDemo}>
						{t("Open the demo job")}
					</button>
				</section>
			</div>
			<Jobs />
		</main>
	);
}

function Jobs() {
	const [jobs, setJobs] = useState<Entry[] | null>(null);
	const [told, setTold] = useState("");
	const [undoable, setUndoable] = useState<Entry | null>(null);
	const [wanted, setWanted] = useState("");
	const load = () => call("jobs.list", {}).then((list) => setJobs(list.jobs.filter((entry) => !entry.deleted)));
	useEffect(() => {
		load().catch((error: Error) => setTold(said(error.message)));
	}, []);
	const shown = (jobs ?? []).filter((entry) => matches(entry, wanted)).slice(0, 200);
	return (
		<section aria-labelledby="jobs-title">
			<div class="row" style={{ justifyContent: "space-between" }}>
				<h2 id="jobs-title">{t("Kept on this device, in this browser")}</h2>
				<label class="button">
					{t("Open a job file…")}
					<input
						class="unseen"
						type="file"
						accept=".json,application/json"
						onChange={async (event) => {
							const input = event.currentTarget;
							const file = input.files?.[0];
							if (file) setTold(await bring(file));
							input.value = "";
							await load();
						}}
					/>
				</label>
			</div>
			<p role="status" class="small">
				{told}{" "}
				{undoable && (
					<button
						type="button"
						onClick={async () => {
							await call("jobs.undelete", { id: undoable.id });
							setUndoable(null);
							setTold("");
							await load();
						}}
					>
						{t("Undo")}
					</button>
				)}
			</p>
			{(jobs?.length ?? 0) > 8 && (
				<div class="field">
					<label for="jobs-find">{t("Find a job")}</label>
					<input
						id="jobs-find"
						type="search"
						value={wanted}
						onInput={(event) => setWanted(event.currentTarget.value)}
					/>
				</div>
			)}
			{jobs?.length === 0 && (
				<p class="soft">
					{t("No job yet. Measure a room and plan it step by step, or open the demo job to see what comes of it.")}
				</p>
			)}
			<ul class="jobs">
				{shown.map((entry) => (
					<li key={entry.id}>
						<button type="button" class="jobs-name" onClick={() => go("job", entry.id)}>
							<b>{entry.name || t("Job without a name")}</b>
							<span class="small soft">
								{entry.rooms.filter(Boolean).join(", ")} {t("kept {when}", { when: when(entry.kept) })}
							</span>
						</button>
						<button
							type="button"
							onClick={() => exportJob(entry).catch((error: Error) => setTold(said(error.message)))}
						>
							{t("Save as file")}
						</button>
						<button
							type="button"
							onClick={async () => {
								await call("jobs.copy", { id: entry.id, name: t("Copy of {name}", { name: entry.name || t("job") }) });
								await load();
							}}
						>
							{t("Copy")}
						</button>
						<button
							type="button"
							class="button-quiet"
							onClick={async () => {
								await call("jobs.delete", { id: entry.id });
								setUndoable(entry);
								setTold(t("“{name}” deleted.", { name: entry.name || t("Job without a name") }));
								await load();
							}}
						>
							{t("Delete")}
						</button>
					</li>
				))}
			</ul>
		</section>
	);
}

function matches(entry: Entry, wanted: string): boolean {
	const text = `${entry.name} ${entry.rooms.join(" ")}`.toLowerCase();
	return wanted
		.toLowerCase()
		.split(/\s+/)
		.every((word) => text.includes(word));
}

export function when(time: string): string {
	const date = new Date(time);
	return Number.isNaN(date.getTime())
		? "—"
		: date.toLocaleString(region(), { dateStyle: "medium", timeStyle: "short" });
}

async function exportJob(entry: Entry): Promise<void> {
	const { text } = await call("jobs.export", { ids: [entry.id] });
	save(fileName(entry.name, "json"), text, "application/json");
}

/** Reads a job file; what it says is the person's to read. */
async function bring(file: File): Promise<string> {
	if (file.size > 64 << 20) return t("This file is larger than any job. Choose a job file.");
	try {
		const imported = await call("jobs.import", { text: await file.text() });
		return t("{count} jobs taken; {same} were here already.", { count: imported.jobs.length, same: imported.same });
	} catch (error) {
		return isEngineError(error) ? said(error.message) : t("This file can’t be read.");
	}
}
