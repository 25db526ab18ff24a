// The first screen: ways in, and the jobs kept in this browser.
import { useEffect, useState } from "preact/hooks";
import { call, callLatest, isEngineError } from "../engine/client";
import type { KeptEntry as Entry, Found, Job } from "../engine/contract";
import { inWords } from "../engine/error";
import { when } from "../parts/Kept";
import { OpenFile } from "../parts/OpenFile";
import { loadBook } from "../state/book";
import { fileName, save } from "../state/files";
import { close, open } from "../state/job";
import { settled } from "../state/kept";
import { go } from "../state/route";
import { shop } from "../state/takeoff";
import { usualUnits } from "../state/units";
import { said, t } from "../words/words";
import { FirstPicture } from "./Picture";

async function startSteps(): Promise<void> {
	const { job } = await call("jobs.new", { units: usualUnits() });
	open(job);
	go("steps", job.id);
}

async function startDemo(): Promise<void> {
	const { job } = await call("jobs.demo", {});
	sayNames(job);
	open(job);
	go("job", job.id);
}

/** Puts the demo job's names, which nobody typed, into the page's language. */
function sayNames(job: Job): void {
	const things = job.rooms.flatMap((room) => [
		room,
		...room.decks,
		...room.doors,
		...room.penetrations,
		...room.keepOuts,
	]);
	for (const named of [job, ...things]) named.name = said(named.name);
}

async function startNew(): Promise<void> {
	const { job } = await call("jobs.new", { units: usualUnits() });
	open(job);
	go("job", job.id);
}

/** Enough to look through; more are found by typing. */
const mostShown = 100;

export function Start() {
	useEffect(close, []); // a job stays open from view to view, until somebody comes back here
	return (
		<main class="start" id="main">
			<div class="start-lead">
				<FirstPicture />
				<div>
					<h1>{t("Level a floor in one pour, with the right number of bags.")}</h1>
					<p>
						{t(
							"Enter the room and a few heights. Lowspot draws the low ground, counts bags and water, and says what to put right before a bucket is opened. Everything stays on this device.",
						)}
					</p>
				</div>
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
					<p>{t("An area and a rough depth: a priced list, ready to print.")}</p>
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
	const [found, setFound] = useState<Found | null>(null);
	const [told, setTold] = useState("");
	const [undoable, setUndoable] = useState<Entry | null>(null);
	const [wanted, setWanted] = useState("");
	const load = () =>
		settled()
			.then(() => callLatest("jobs.list", { find: wanted, most: mostShown }))
			.then((list) => list && setFound(list))
			.catch((error: Error) => setTold(said(error.message)));
	useEffect(() => {
		void load();
	}, [wanted]);
	return (
		<section aria-labelledby="jobs-title">
			<div class="row jobs-head">
				<h2 id="jobs-title">{t("Kept on this device, in this browser")}</h2>
				<OpenFile
					label={t("Open a job file…")}
					accept=".json,application/json"
					take={async (file) => {
						setTold(await bring(file));
						await load();
					}}
					tell={setTold}
				/>
				<button type="button" onClick={() => saveAll().then(setTold)}>
					{t("Save everything as one file")}
				</button>
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
			{(found?.all ?? 0) > 8 && (
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
			{found && <Counted found={found} />}
			{found?.all === 0 && (
				<p class="soft">
					{t("No job yet. Measure a room and plan it step by step, or open the demo job to see what comes of it.")}
				</p>
			)}
			<ul class="jobs">
				{found?.jobs.map((entry) => (
					<li key={entry.id}>
						<button type="button" class="jobs-name" onClick={() => go("job", entry.id)}>
							<b>{entry.name || t("Job without a name")}</b>
							<span class="small soft">
								{entry.rooms.filter(Boolean).join(", ")} {t("kept {when}", { when: when(entry.kept) })},{" "}
								{entry.exported ? t("exported {when}", { when: when(entry.exported) }) : t("never exported")}
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

/** How many jobs are found and shown, and how many of them are in no file. */
function Counted({ found }: { found: Found }) {
	const says = [
		found.unsaved > 0 &&
			t("Jobs with something in them that is in no file of yours: {count} of {all}.", {
				count: found.unsaved,
				all: found.all,
			}),
		found.count > found.jobs.length &&
			t("{count} jobs match; the last {shown} are shown.", { count: found.count, shown: found.jobs.length }),
	];
	return (
		<p class="small soft" role="status">
			{says.filter(Boolean).join(" ")}
		</p>
	);
}

/** Saves all that is kept as one file. Says what became of it. */
async function saveAll(): Promise<string> {
	try {
		const { text } = await call("jobs.export", { ids: [] });
		save(`lowspot-all-${new Date().toISOString().slice(0, 10)}.json`, text, "application/json");
		return t("Jobs, sheets, rulebooks, prices and settings are in the file. “Open a job file” brings them back.");
	} catch (error) {
		return said((error as Error).message);
	}
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
		await loadBook();
		shop.value = null; // read again when next shown
		return [
			t("{count} jobs taken; here already: {same}.", { count: imported.jobs.length, same: imported.same }),
			imported.sheets + imported.books > 0 &&
				t("Taken: {sheets} sheets, {books} rulebooks.", { sheets: imported.sheets, books: imported.books }),
			imported.shop && t("The price list was taken."),
		]
			.filter(Boolean)
			.join(" ");
	} catch (error) {
		return isEngineError(error) ? inWords(error).map(said).join(" ") : t("This file can’t be read.");
	}
}
