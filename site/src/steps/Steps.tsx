// The job step by step: one question at a time, for somebody who does this for the first time. It edits the same job as the bench.
import { useEffect, useRef } from "preact/hooks";
import type { Guide, GuideStep } from "../engine/contract";
import { KeptLine } from "../parts/Kept";
import { job, plan } from "../state/job";
import { route, to } from "../state/route";
import { study } from "../state/study";
import { t } from "../words/words";
import { fieldSheet, goOn, guide } from "./guide";
import { ReadingsStep, SurveyStep } from "./HeightSteps";
import { LevellerStep } from "./LevellerStep";
import { questionOf } from "./questions";
import { Result } from "./Result";
import { DoorsStep, DrainsStep, KeepOutsStep, OutlineStep } from "./RoomSteps";
import { WordStep } from "./WordStep";

export type StepProps = { step: GuideStep };

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

export function chapterWord(chapter: string): string {
	const words: Record<string, string> = {
		room: t("The room"),
		heights: t("Heights"),
		deck: t("What is underneath"),
		doors: t("Doors and drains"),
		finish: t("What goes on top"),
		products: t("The bag"),
		air: t("Pour day’s air"),
		crew: t("Who pours"),
		result: t("The result"),
	};
	return words[chapter] ?? chapter;
}

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
	if (!walk || !step || !job.value || !fieldSheet.value) return <main id="main" class="steps" aria-busy="true" />;
	return (
		<main id="main" class="steps">
			<Where walk={walk} at={at} />
			<Question key={step.id} step={step} />
			<Foot walk={walk} at={at} />
			<AllSteps walk={walk} at={at} />
		</main>
	);
}

function Where({ walk, at }: { walk: Guide; at: number }) {
	const step = walk.steps[at];
	const count = walk.steps.length - 1;
	return (
		<div class="steps-where no-print">
			<span>
				<b>{chapterWord(step?.chapter ?? "")}</b>{" "}
				{at < count && <span class="soft">{t("{n} of {count}", { n: at + 1, count })}</span>}
			</span>
			<KeptLine />
			<a class="button" href={to("job", job.value?.id)}>
				{t("See everything")}
			</a>
			<progress aria-label={t("How far along")} max={count} value={Math.min(at, count)} />
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

/** Back, on, and what it comes to so far. */
function Foot({ walk, at }: { walk: Guide; at: number }) {
	const before = walk.steps[at - 1];
	const step = walk.steps[at];
	const last = walk.steps.length - 1;
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
			{at < last && (
				<button type="button" class={waits(step) ? "" : "button-main"} onClick={() => goOn(step.id)}>
					{waits(step) ? t("Go on without") : t("Next")}
				</button>
			)}
		</div>
	);
}

function waits(step: GuideStep): boolean {
	return step.state === "open" || step.state === "optional";
}

function bagLine(): string {
	const totals = plan.value?.totals;
	if (!totals?.ready) return "";
	const buy = study.value?.bags?.buy;
	return buy
		? t("{count} bags to buy, by what is known so far", { count: buy })
		: t("{count} bags by the survey as it is", { count: totals.bags });
}

/** Every question with its state: to look back, or to go ahead. */
function AllSteps({ walk, at }: { walk: Guide; at: number }) {
	return (
		<details class="steps-all no-print">
			<summary>{t("All questions ({open} open)", { open: walk.open })}</summary>
			<ol>
				{walk.steps.map((step, i) => (
					<li key={step.id}>
						<a href={to("steps", job.value?.id, step.id)} aria-current={i === at ? "step" : undefined}>
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
				))}
			</ol>
		</details>
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
