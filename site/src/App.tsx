// The page: the bar, notices, and the view that the address names.
import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import { Bench } from "./bench/Bench";
import { Buy } from "./counter/Buy";
import { Counter } from "./counter/Counter";
import { Shared } from "./counter/Shared";
import { call, type EngineEvent, onEngine } from "./engine/client";
import { Help } from "./help/Help";
import { KeptView } from "./kept/KeptView";
import { Papers } from "./papers/Papers";
import { Bar } from "./parts/Bar";
import { Busy } from "./parts/Busy";
import { KeptNotices } from "./parts/Kept";
import { Day } from "./pour/Day";
import { Pour } from "./pour/Pour";
import { Sheet } from "./sheet/Sheet";
import { Start } from "./start/Start";
import { loadBook, redoBook, undoBook } from "./state/book";
import { close, job, loadVocabulary, open, redo, trouble, undo, vocabulary } from "./state/job";
import { go, route } from "./state/route";
import { writer } from "./state/writer";
import { Steps } from "./steps/Steps";
import { said, t } from "./words/words";

export function App({ update }: { update: (() => void) | null }) {
	const [fault, setFault] = useState<Fault | null>(null);
	useEffect(
		() => onEngine((event) => "report" in event && setFault(event)), // a fault is told until it is read
		[],
	);
	useEffect(() => {
		loadVocabulary().catch((error: Error) => {
			trouble.value = error.message;
		});
	}, []);
	useEffect(() => {
		loadBook().catch((error: Error) => {
			trouble.value = error.message;
		});
	}, []);
	useEffect(listenToKeys, []);
	const { view, id } = route.value;
	return (
		<div data-engine={vocabulary.value.length > 0 ? "ready" : "starting"}>
			<a
				class="skip"
				href="#main"
				onClick={(event) => {
					event.preventDefault();
					document.getElementById("main")?.querySelector<HTMLElement>("input, button, a")?.focus();
				}}
			>
				{t("To the content")}
			</a>
			{view !== "day" && <Bar />}
			{update && (
				<div class="notice no-print" role="status">
					{t("A new version is ready. What you entered is kept.")}{" "}
					<button type="button" onClick={update}>
						{t("Switch to it now")}
					</button>
				</div>
			)}
			<Loading />
			{fault && <FaultNotice fault={fault} onRead={() => setFault(null)} />}
			<KeptNotices />
			{trouble.value && (
				<div class="notice notice-stop" role="alert">
					{said(trouble.value)}
				</div>
			)}
			{view === "rules" ? (
				<RulebookView />
			) : view in jobViews ? (
				<JobView id={id} view={view} />
			) : (
				<Page id={id} view={view} />
			)}
		</div>
	);
}

/** The pages that aren't one job's. */
function Page({ id, view }: { id: string; view: string }) {
	if (view === "counter") return <Counter />;
	if (view === "share") return <Shared id={id} />;
	if (view === "help") return <Help />;
	return <Start />;
}

/** How far the engine is. On its own, so that what it tells many times a second draws nothing else anew. */
function Loading() {
	const [engine, setEngine] = useState<EngineEvent>({ kind: "loading", loaded: 0, total: 1 });
	useEffect(() => onEngine((event) => "report" in event || setEngine(event)), []);
	if (engine.kind !== "loading") return null;
	const share = Math.round((100 * engine.loaded) / Math.max(engine.total, 1));
	return (
		<div class="notice loading no-print" role="status">
			{t("Loading the engine: {share} %", { share })}
		</div>
	);
}

type Fault = Extract<EngineEvent, { report: string }>;

function FaultNotice({ fault, onRead }: { fault: Fault; onRead: () => void }) {
	return (
		<div class="notice notice-stop no-print" role="alert">
			{fault.kind === "restarted"
				? t("The engine failed and was started again. Nothing you typed is lost.")
				: t("The engine would not start again. Reload the page; what was kept is still there.")}{" "}
			<button type="button" onClick={() => navigator.clipboard.writeText(`${fault.reason}\n${fault.report}`)}>
				{t("Copy a report")}
			</button>{" "}
			<button type="button" class="button-quiet" onClick={onRead}>
				{t("I have read it")}
			</button>
		</div>
	);
}

/** The views of one job, by the address's first part. */
const jobViews: Record<string, () => JSX.Element | null> = {
	job: Bench,
	pour: Pour,
	day: Day,
	buy: Buy,
	steps: Steps,
	sheet: Sheet,
	papers: Papers,
	kept: KeptView,
};

/** Opens the job that the address names, unless it is open already. */
function JobView({ id, view }: { id: string; view: string }) {
	const [missing, setMissing] = useState("");
	useEffect(() => {
		setMissing("");
		if (job.value?.id === id) return;
		call("jobs.open", { id })
			.then((opened) => open(opened.job, opened))
			.catch((error: Error) => setMissing(said(error.message)));
	}, [id]);
	useEffect(() => closeUnlessRead, []);
	if (missing) {
		return (
			<main class="start" id="main">
				<h1>{t("This job isn’t here")}</h1>
				<p>{missing}</p>
				<p class="soft">
					{t("A job is kept in the browser in which it was entered. Open it there, or open its file here.")}
				</p>
				<button type="button" class="button-main" onClick={() => go("")}>
					{t("To the first screen")}
				</button>
			</main>
		);
	}
	const View = jobViews[view] ?? Bench;
	return job.value && writer.value !== "asking" ? <View /> : <Busy />;
}

/** The job stays open while its owner looks at the rules behind it, or at the help. */
function closeUnlessRead(): void {
	if (!["rules", "help"].includes(route.value.view)) close();
}

/** The rulebook page, fetched when it is first opened. */
function RulebookView() {
	const [Page, setPage] = useState<(() => JSX.Element) | null>(null);
	useEffect(() => {
		import("./book/Rules")
			.then((fetched) => setPage(() => fetched.default))
			.catch((error: Error) => {
				trouble.value = error.message;
			});
		return closeUnlessJob;
	}, []);
	return Page ? <Page /> : <Busy />;
}

function closeUnlessJob(): void {
	if (route.value.id !== job.value?.id) close();
}

/**
 * Undo and redo by the keys that every program uses, in the rulebook on its page and in the job on every other; but not inside a text box,
 * which has its own.
 */
function listenToKeys(): () => void {
	const onKey = (event: KeyboardEvent) => {
		const target = event.target as HTMLElement;
		const inText =
			target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement || target.isContentEditable;
		if (inText || !(event.ctrlKey || event.metaKey) || !["z", "y"].includes(event.key.toLowerCase())) return;
		event.preventDefault();
		const forward = event.shiftKey || event.key.toLowerCase() === "y";
		if (route.value.view === "rules") void (forward ? redoBook() : undoBook());
		else if (forward) redo();
		else undo();
	};
	addEventListener("keydown", onKey);
	return () => removeEventListener("keydown", onKey);
}
