// The pour of a job on one page: patches, clock, batches, mix, bays, and the run sheet, to look at and to print.
import { useState } from "preact/hooks";
import type { ClockPlan, Finding } from "../engine/contract";
import { Weight } from "../parts/marks";
import { edit, job } from "../state/job";
import { said, t } from "../words/words";
import { Batches } from "./Batches";
import { MixPanel } from "./MixPanel";
import { Play } from "./Play";
import { RecordSheet } from "./RecordSheet";
import { RunSheet } from "./RunSheet";
import { Timeline } from "./Timeline";
import { keyOf, pourDay, pourName, type Shown, shownRoom, useWorkedPour, working } from "./worked";

export function Pour() {
	const day = useWorkedPour();
	const [index, setIndex] = useState(0);
	const current = job.value;
	if (!current) return null;
	const shown = shownRoom(index);
	return (
		<main class="pour" id="main" aria-busy={working.value}>
			<div class="row pour-head">
				<h1>{t("The pour: {name}", { name: current.name || t("no name yet") })}</h1>
				{day && day.rooms.length > 1 && (
					<div class="pick no-print" role="group" aria-label={t("Pours")}>
						{day.rooms.map((room, i) => (
							<button type="button" key={keyOf(room)} aria-pressed={i === index} onClick={() => setIndex(i)}>
								{pourName(room)}
							</button>
						))}
					</div>
				)}
				<a class="button button-main no-print" href={`#/day/${encodeURIComponent(current.id)}`}>
					{t("Pour day on this phone")}
				</a>
			</div>
			{day?.problems.map((problem) => (
				<p class="field-error" role="alert" key={problem.field + problem.message}>
					{said(problem.message)} {said(problem.remedy)}
				</p>
			))}
			{day && !shown && <p>{t("Nothing can be poured yet.")}</p>}
			{shown && <RoomView key={keyOf(shown.pour)} shown={shown} />}
			{day && (
				<>
					<MixPanel day={day} />
					<RunSheet day={day} />
				</>
			)}
			{shown && <RecordSheet shown={shown} />}
		</main>
	);
}

function RoomView({ shown }: { shown: Shown }) {
	const { pour, room } = shown;
	const [at, setAt] = useState(Number.POSITIVE_INFINITY);
	if (pour.why) return <p class="pour-why">{said(pour.why)}</p>;
	const clock = pour.clock;
	const moment = Math.min(at, clock?.timeline.finish ?? 0);
	return (
		<>
			{pour.note && <p class="pour-why">{said(pour.note)}</p>}
			{clock && <Verdict shown={shown} clock={clock} />}
			<div class="pour-floor">
				{clock && !pour.rough && <Play room={room} pour={pour} plan={clock} at={moment} onMove={setAt} />}
				<Batches pour={pour} />
			</div>
			{clock && <Notes shown={shown} />}
			{clock && (
				<section aria-labelledby="who">
					<h2 id="who">{t("Who does what when")}</h2>
					<Timeline plan={clock} at={moment} />
				</section>
			)}
		</>
	);
}

function Verdict({ shown, clock }: { shown: Shown; clock: ClockPlan }) {
	const day = pourDay.value;
	const findings = (day?.findings ?? []).filter(
		(finding) => finding.subject.room === shown.pour.id && finding.state === "broken",
	);
	return (
		<section class="pour-verdict" aria-label={t("How the pour comes out")}>
			<dl class="pour-figures">
				<Figure label={t("Crew")} value={said(clock.says)} />
				<Figure
					label={t("Batches")}
					value={t("{n}, for {bags} bags", { n: shown.pour.batches.length, bags: shown.pour.bags })}
				/>
				<Figure label={t("Lasts")} value={said(clock.lasts.text)} />
				<Figure
					label={t("Longest wait of an edge")}
					value={t("{wait} of {edge}", { wait: said(clock.longestWait.text), edge: said(day?.setting.wetEdge.text) })}
				/>
				<Figure
					label={t("Oldest batch when spread")}
					value={t("{age} of {flow}", { age: said(clock.oldestBatch.text), flow: said(day?.setting.flow.text) })}
				/>
			</dl>
			{findings.length === 0 && <Weight weight="kept" />}
			{findings.map((finding) => (
				<Broken key={finding.rule} finding={finding} />
			))}
		</section>
	);
}

/** What else could be done, and what the clock rests on. */
function Notes({ shown }: { shown: Shown }) {
	const fewest = shown.pour.fewest;
	return (
		<section aria-label={t("What the clock rests on")}>
			{fewest &&
				(fewest.timeline.kept ? (
					<p>
						{t(
							"The smallest crew that keeps every edge wet: {crew}. The pour takes {lasts}, and an edge waits {wait} at the most.",
							{
								crew: said(fewest.says),
								lasts: said(fewest.lasts.text),
								wait: said(fewest.longestWait.text),
							},
						)}
					</p>
				) : (
					<p>{t("No crew of up to six people, three mixers and eight buckets keeps every edge wet in one pour.")}</p>
				))}
			{!shown.pour.rough && <InBays shown={shown} />}
			<p class="small soft">{said(pourDay.value?.setting.says)}</p>
		</section>
	);
}

function Figure({ label, value }: { label: string; value: string }) {
	return (
		<div>
			<dt>{label}</dt>
			<dd>{value}</dd>
		</div>
	);
}

function Broken({ finding }: { finding: Finding }) {
	return (
		<article class="finding" data-rule={finding.rule} data-state={finding.state}>
			<Weight weight={finding.weight} />
			<p>{said(finding.says)}</p>
			<p class="remedy">{said(finding.remedy)}</p>
		</article>
	);
}

/** Offers bays where the crew can't keep the wet edge, and the way back to one pour. */
function InBays({ shown }: { shown: Shown }) {
	const { pour } = shown;
	const inBays = job.value?.rooms.find((room) => room.id === pour.id)?.inBays ?? false;
	if (!inBays && pour.clock?.timeline.kept) return null;
	return (
		<div class="bays">
			{pour.dams.length > 0 && (
				<p>{t("Dams to set before this bay: {n}. The map shows where.", { n: pour.dams.length })}</p>
			)}
			<button type="button" class="no-print" onClick={() => pourInBays(pour.id, !inBays)}>
				{inBays ? t("Pour it in one go") : t("Plan it in bays with this crew")}
			</button>
		</div>
	);
}

function pourInBays(id: string, inBays: boolean): void {
	edit("", (draft) => {
		const room = draft.rooms.find((one) => one.id === id);
		if (!room) return;
		if (inBays) room.inBays = true;
		else delete room.inBays;
	});
}
