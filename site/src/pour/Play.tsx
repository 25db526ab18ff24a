// The pour in time: a slider and a play button over the patch map. Where motion is unwanted it goes from pour to pour instead of running.
import { useEffect, useState } from "preact/hooks";
import type { ClockPlan, RoomPlan, RoomPour } from "../engine/contract";
import { t } from "../words/words";
import { PatchMap, type PatchState } from "./PatchMap";
import { clock } from "./times";

const speed = 60; // seconds of the pour in one of watching

type PlayProps = {
	room: RoomPlan;
	pour: RoomPour;
	plan: ClockPlan;
	at: number;
	onMove: (at: number) => void;
};

export function Play(props: PlayProps) {
	const { plan, at } = props;
	return (
		<div class="play">
			<PatchMap
				room={props.room}
				pour={props.pour}
				stateOf={(batch) => stateAt(plan, batch, at)}
				label={t("Patches of the floor in the order in which they are poured, {n} of them", {
					n: props.pour.batches.length,
				})}
			/>
			<PlayBar plan={plan} at={at} onMove={props.onMove} />
		</div>
	);
}

/** Play, pause and the moment of the pour. */
export function PlayBar({ plan, at, onMove }: { plan: ClockPlan; at: number; onMove: (at: number) => void }) {
	const finish = plan.timeline.finish;
	const [playing, setPlaying] = useState(false);
	useEffect(() => {
		if (!playing) return;
		let before = performance.now();
		let moment = at >= finish ? 0 : at;
		let frame = requestAnimationFrame(function step(now) {
			moment = Math.min(finish, moment + ((now - before) / 1000) * speed);
			before = now;
			onMove(moment);
			if (moment < finish) frame = requestAnimationFrame(step);
			else setPlaying(false);
		});
		return () => cancelAnimationFrame(frame);
	}, [playing, finish]);
	const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
	return (
		<div class="row play-bar no-print">
			<button type="button" onClick={() => (still ? onMove(nextPour(plan, at)) : setPlaying(!playing))}>
				{still ? t("Next batch") : playing ? t("Pause") : t("Play the pour")}
			</button>
			<label class="play-slider">
				<span class="unseen">{t("Moment of the pour")}</span>
				<input
					type="range"
					min="0"
					max={Math.ceil(finish)}
					step="1"
					value={at}
					aria-valuetext={clock(at)}
					onInput={(event) => {
						setPlaying(false);
						onMove(Number(event.currentTarget.value));
					}}
				/>
			</label>
			<output>{clock(at)}</output>
		</div>
	);
}

function nextPour(plan: ClockPlan, at: number): number {
	const ends = plan.timeline.tasks.filter((task) => task.kind === "pour").map((task) => task.end);
	return ends.find((end) => end > at + 0.5) ?? ends[0] ?? 0;
}

/** What the timeline says of a batch at a moment. */
export function stateAt(plan: ClockPlan, batch: number, at: number): PatchState {
	const task = (kind: string) => plan.timeline.tasks.find((one) => one.batch === batch && one.kind === kind);
	const poured = task("pour");
	if (!poured) return "to-come";
	if (at >= poured.end) return "down";
	if (at >= poured.start) return "pouring";
	return at >= (task("water")?.start ?? 0) ? "making" : "to-come";
}
