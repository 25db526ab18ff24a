// Who and what does what when, drawn: a row for each person, mixer, bucket and barrow.
import type { ClockPlan, Task, Wait } from "../engine/contract";
import { said, t } from "../words/words";
import { clock } from "./times";

const row = 26;
const left = 74;
const perMinute = 15;

type Row = { name: string; tasks: Task[] };

export function Timeline({ plan, at }: { plan: ClockPlan; at: number }) {
	const rows = rowsOf(plan);
	const finish = plan.timeline.finish;
	const width = left + (finish / 60) * perMinute + 20;
	const height = 24 + rows.length * row + row;
	const worst = longestWait(plan);
	const x = (seconds: number) => left + (seconds / 60) * perMinute;
	return (
		<div class="timeline" tabIndex={0} role="group" aria-label={t("Timeline, scrolls sideways")}>
			<svg
				viewBox={`0 0 ${width} ${height}`}
				style={{ "--width": `${width}px` }}
				role="img"
				aria-label={said(plan.says)}
			>
				<Axis finish={finish} height={height} x={x} />
				{rows.map((one, i) => (
					<g key={one.name} transform={`translate(0 ${24 + i * row})`}>
						<text class="timeline-name" x={0} y={row / 2 + 4}>
							{one.name}
						</text>
						{one.tasks.map((task) => (
							<Bar key={`${task.batch}${task.kind}`} task={task} x={x} />
						))}
					</g>
				))}
				{worst && <WaitLine plan={plan} wait={worst} x={x} y={24 + rows.length * row} />}
				<path class="timeline-now" d={`M${x(at)} 18V${height}`} />
			</svg>
			<ul class="timeline-key small">
				{kinds.map((kind) => (
					<li key={kind}>
						<svg viewBox="0 0 16 16" aria-hidden="true">
							<rect class={`task task-${kind}`} width="16" height="16" />
						</svg>
						{taskWord(kind)}
					</li>
				))}
			</ul>
		</div>
	);
}

const kinds = ["water", "powder", "mix", "rest", "carry", "pour", "agitate", "return"];

/** The words of a piece of work. */
export function taskWord(kind: string): string {
	switch (kind) {
		case "water":
			return t("water");
		case "powder":
			return t("powder");
		case "mix":
			return t("mix");
		case "rest":
			return t("rest");
		case "carry":
			return t("carry");
		case "pour":
			return t("pour");
		case "agitate":
			return t("spread and spike");
	}
	return t("back");
}

function rowsOf(plan: ClockPlan): Row[] {
	const { tasks, crew } = plan.timeline;
	const of = (count: number, name: (n: number) => string, is: (task: Task, n: number) => boolean): Row[] =>
		Array.from({ length: count }, (_, i) => ({ name: name(i + 1), tasks: tasks.filter((task) => is(task, i + 1)) }));
	return [
		...of(
			crew.people,
			(n) => t("Person {n}", { n }),
			(task, n) => task.person === n,
		),
		...of(
			crew.mixers,
			(n) => t("Mixer {n}", { n }),
			(task, n) => task.mixer === n,
		),
		...of(
			crew.buckets,
			(n) => t("Bucket {n}", { n }),
			(task, n) => task.bucket === n,
		),
		...of(
			crew.barrows,
			(n) => t("Barrow {n}", { n }),
			(task, n) => task.barrow === n,
		),
	];
}

function Bar({ task, x }: { task: Task; x: (seconds: number) => number }) {
	const [from, to] = [x(task.start), x(task.end)];
	if (to - from < 0.5) return null;
	const thin = task.kind === "carry" || task.kind === "return";
	return (
		<g>
			<title>
				{t("Batch {n}, {what}: {from} to {to}", {
					n: task.batch,
					what: taskWord(task.kind),
					from: clock(task.start),
					to: clock(task.end),
				})}
			</title>
			<rect
				class={`task task-${task.kind}`}
				x={from}
				y={thin ? row / 2 - 3 : 3}
				width={to - from}
				height={thin ? 6 : row - 6}
			/>
			{!thin && to - from > 6 * String(task.batch).length + 3 && (
				<text class={`task-text task-text-${task.kind}`} x={(from + to) / 2} y={row / 2 + 4}>
					{task.batch}
				</text>
			)}
		</g>
	);
}

function Axis(props: { finish: number; height: number; x: (seconds: number) => number }) {
	const marks = Array.from({ length: Math.floor(props.finish / 300) + 1 }, (_, i) => i * 5);
	return (
		<>
			{marks.map((minute) => (
				<g key={minute}>
					<path class="timeline-mark" d={`M${props.x(minute * 60)} 18V${props.height}`} />
					<text class="timeline-minute" x={props.x(minute * 60)} y={12}>
						{t("{n} min", { n: minute })}
					</text>
				</g>
			))}
		</>
	);
}

function longestWait(plan: ClockPlan): Wait | undefined {
	return plan.timeline.waits.reduce<Wait | undefined>(
		(worst, wait) => (!worst || wait.seconds > worst.seconds ? wait : worst),
		undefined,
	);
}

function WaitLine(props: { plan: ClockPlan; wait: Wait; x: (seconds: number) => number; y: number }) {
	const { plan, wait, x, y } = props;
	const down = (batch: number) =>
		plan.timeline.tasks.find((task) => task.batch === batch && task.kind === "pour")?.end ?? 0;
	const [from, to] = [x(down(wait.from)), x(down(wait.to))];
	const late = down(wait.to) > plan.timeline.finish / 2;
	return (
		<g>
			<path class="timeline-wait" d={`M${from} ${y + 4}V${y + 14}M${from} ${y + 9}H${to}M${to} ${y + 4}V${y + 14}`} />
			<text
				class="timeline-name"
				x={late ? from - 6 : to + 6}
				y={y + 13}
				style={{ textAnchor: late ? "end" : "start" }}
			>
				{t("longest wait {wait}: batch {to} meets batch {from}", {
					wait: said(plan.longestWait.text),
					from: wait.from,
					to: wait.to,
				})}
			</text>
		</g>
	);
}
