// The job step by step: one question at a time, for somebody who does this for the first time. It edits the same job as the bench.
import { useEffect, useRef } from "preact/hooks";
import type { Guide, GuideStep } from "../engine/contract";
import { Busy } from "../parts/Busy";
import { KeptLine } from "../parts/Kept";
import { job, plan } from "../state/job";
import { route, to } from "../state/route";
import { study } from "../state/study";
import { t } from "../words/words";
import { fieldSheet, goOn, guide, type StepProps, skipChapter } from "./guide";
import { ReadingsStep, SurveyStep } from "./HeightSteps";
import { LevellerStep } from "./LevellerStep";
import { chapterWord, questionOf, unchecked } from "./questions";
import { Result } from "./Result";
import { DoorsStep, DrainsStep, KeepOutsStep, OutlineStep } from "./RoomSteps";
import { WordStep } from "./WordStep";

const bodies: Record<string, (props: StepProps) => preact.JSX.Element | null> = {
	outline: OutlineStep,
	"keep-outs": KeepOutsStep,
	doors: DoorsStep,
	drains: DrainsStep,
	survey: SurveyStep,
	readings: ReadingsStep,
	word: WordStep,
	leveller: LevellerStep,
	result: Result,
};

/** The step that the address names, or else the first that is open. */
function stepAt(walk: Guide): number {
	const named = walk.steps.findIndex((step) => step.id === route.value.part);
	return named >= 0 ? named : walk.steps.findIndex((step) => step.id === walk.next);
}

export function Steps() {
	const walk = guide.value;
	const at = walk ? stepAt(walk) : -1;
	const step = walk?.steps[at];
	useEffect(() => {
		// An address without a question would jump ahead as soon as this one is answered.
		if (step && job.value && route.value.part !== step.id) location.replace(to("steps", job.value.id, step.id));
	}, [step?.id]);
	if (!walk || !step || !job.value || !fieldSheet.value) return <Busy says={t("Laying out the questions…")} />;
	return (
		<main id="main" class="steps">
			<Where walk={walk} at={at} />
			<Question key={step.id} step={step} />
			<Foot walk={walk} at={at} />
			<AllSteps walk={walk} at={at} />
		</main>
	);
}

/** How far along: over all questions up to the result, then within each chapter behind it. */
function Where({ walk, at }: { walk: Guide; at: number }) {
	const step = walk.steps[at];
	const result = walk.steps.findIndex((one) => one.kind === "result");
	const first = at <= result ? 0 : walk.steps.findIndex((one) => one.chapter === step?.chapter);
	const count = at <= result ? result : walk.steps.filter((one) => one.chapter === step?.chapter).length;
	return (
		<div class="steps-where no-print">
			<span>
				<b>{chapterWord(step?.chapter ?? "")}</b>{" "}
				{at !== result && <span class="soft">{t("{n} of {count}", { n: at - first + 1, count })}</span>}
			</span>
			<KeptLine />
			<a class="button" href={to("job", job.value?.id)}>
				{t("See everything")}
			</a>
			<progress aria-label={t("How far along")} max={count} value={Math.min(at - first, count)} />
		</div>
	);
}

function Question({ step }: StepProps) {
	const title = useRef<HTMLHeadingElement>(null);
	useEffect(() => {
		title.current?.focus({ preventScroll: true });
		scrollTo(0, 0);
	}, []);
	const { question, why } = questionOf(step);
	const Body = bodies[step.kind];
	const name = step.subject.name || (job.value?.rooms.length ?? 0) > 1 ? job.value?.rooms[step.room]?.name : "";
	return (
		<article class="step" data-step={step.id}>
			{(step.subject.name || name) && <p class="step-subject">{step.subject.name || name}</p>}
			<h1 tabIndex={-1} ref={title}>
				{question}
			</h1>
			{why && <p class="step-why">{why}</p>}
			{Body && <Body step={step} />}
		</article>
	);
}

/** Back, on, past the chapter, and what it comes to so far. */
function Foot({ walk, at }: { walk: Guide; at: number }) {
	const before = walk.steps[at - 1];
	const step = walk.steps[at];
	if (!step) return null;
	return (
		<div class="steps-foot no-print">
			<p class="steps-bags" aria-live="polite">
				{bagLine()}
			</p>
			{before ? (
				<a class="button" href={to("steps", job.value?.id, before.id)}>
					{t("Back")}
				</a>
			) : (
				<a class="button" href="#/">
					{t("Back")}
				</a>
			)}
			{step.after && (
				<button type="button" class={waits(step) ? "" : "button-main"} onClick={() => goOn(step.id)}>
					{waits(step) ? t("Go on without") : t("Next")}
				</button>
			)}
			{step.kind === "word" && step.skip !== step.after && <Skip walk={walk} at={at} />}
		</div>
	);
}

/** Leaves the rest of a chapter, told what nobody checks then. */
function Skip({ walk, at }: { walk: Guide; at: number }) {
	const step = walk.steps[at];
	const rest = walk.steps.slice(at).filter((one) => one.chapter === step?.chapter);
	if (!step) return null;
	return (
		<p class="steps-skip small">
			<button type="button" class="button-quiet" onClick={() => skipChapter(step.id)}>
				{t("Skip this chapter")}
			</button>{" "}
			<span class="soft">{unchecked(rest)}</span>
		</p>
	);
}

/** Whether going on leaves something out. Without its bag the leveller still has its typical values. */
function waits(step: GuideStep): boolean {
	return step.kind !== "leveller" && (step.state === "open" || step.state === "optional");
}

function bagLine(): string {
	const totals = plan.value?.totals;
	if (!totals?.ready) return "";
	const buy = study.value?.bags?.buy;
	return buy
		? t("{count} bags to buy, by what is known so far", { count: buy })
		: t("{count} bags by the survey as it is", { count: totals.bags });
}

/** Every question with its state, by chapter: to look back, or to go ahead. */
function AllSteps({ walk, at }: { walk: Guide; at: number }) {
	const chapters = [...new Set(walk.steps.map((step) => step.chapter))];
	return (
		<details class="steps-all no-print">
			<summary>{t("All questions ({open} open)", { open: walk.open })}</summary>
			{chapters.map((chapter) => (
				<section key={chapter} aria-label={chapterWord(chapter)}>
					<h2>{chapterWord(chapter)}</h2>
					<ol>
						{walk.steps
							.filter((step) => step.chapter === chapter)
							.map((step) => (
								<StepLink key={step.id} step={step} current={step === walk.steps[at]} />
							))}
					</ol>
				</section>
			))}
		</details>
	);
}

function StepLink({ step, current }: StepProps & { current: boolean }) {
	return (
		<li>
			<a href={to("steps", job.value?.id, step.id)} aria-current={current ? "step" : undefined}>
				<span class="steps-mark" aria-hidden="true">
					{{ answered: "✓", unknown: "?", open: "○", optional: "·" }[step.state]}
				</span>
				<span>
					{questionOf(step).question}
					{step.subject.name && <span class="soft"> {step.subject.name}</span>}
				</span>
				<span class="unseen">{stateWord(step.state)}</span>
			</a>
		</li>
	);
}

function stateWord(state: string): string {
	switch (state) {
		case "answered":
			return t("answered");
		case "unknown":
			return t("you don’t know");
		case "open":
			return t("open");
	}
	return t("may be passed over");
}
