// Everything of a job that goes on paper, one kind at a time, as it will be printed: A4 or Letter, as the printer has it.
import { useEffect } from "preact/hooks";
import { Quote } from "../counter/Quote";
import { RunSheet } from "../pour/RunSheet";
import { pourDay, useWorkedPour } from "../pour/worked";
import { job } from "../state/job";
import { route, to } from "../state/route";
import { takeOff, watchTakeOff } from "../state/takeoff";
import { t } from "../words/words";
import { MapPaper } from "./MapPaper";
import { PaperHead } from "./PaperHead";
import { RecordPaper } from "./RecordPaper";

const kinds = ["map", "run", "record", "list", "quote"] as const;
type Kind = (typeof kinds)[number];

export function Papers() {
	const day = useWorkedPour();
	useEffect(watchTakeOff, []);
	const shown = kinds.find((kind) => kind === route.value.part) ?? "map";
	const waits = shown === "list" || shown === "quote" ? !takeOff.value : !day;
	return (
		<main id="main" class="paper" aria-busy={waits}>
			<h1 class="unseen no-print">{nameOf(shown)}</h1>
			<nav class="paper-kinds no-print" aria-label={t("Papers of the job")}>
				{kinds.map((kind) => (
					<a
						key={kind}
						class="button"
						href={to("papers", job.value?.id, kind)}
						aria-current={kind === shown ? "page" : undefined}
					>
						{nameOf(kind)}
					</a>
				))}
				<a class="button" href={to("sheet", job.value?.id)}>
					{t("Field sheet")}
				</a>
				<button type="button" class="button-main" onClick={() => print()}>
					{t("Print")}
				</button>
			</nav>
			{waits ? <p role="status">{t("Working it out…")}</p> : <Paper kind={shown} />}
		</main>
	);
}

function nameOf(kind: Kind): string {
	const names = {
		map: t("Floor map to scale"),
		run: t("Run sheet"),
		record: t("Record of conditions"),
		list: t("Shopping list"),
		quote: t("Quote"),
	};
	return names[kind];
}

function Paper({ kind }: { kind: Kind }) {
	if (kind === "map") return <MapPaper />;
	if (kind === "record") return <RecordPaper />;
	if (kind === "run") return <RunPaper />;
	return takeOff.value?.lines.length ? (
		<Quote list={kind === "list"} />
	) : (
		<p>{t("Nothing to buy yet: give a room and its depth.")}</p>
	);
}

function RunPaper() {
	const day = pourDay.value;
	return (
		<section class="paper-page">
			<PaperHead title={t("Run sheet")} />
			{day && <RunSheet day={day} />}
		</section>
	);
}
