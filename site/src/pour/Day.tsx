// Pour day on a phone: the batch now, the next one, how long the edge stays open, and big buttons for what happened. Every tap is kept at once.
import { useEffect, useRef, useState } from "preact/hooks";
import { call } from "../engine/client";
import type { BatchNow, BatchPlan, OpenEdge, PourDay, PourRecord, PourRest, RoomPour } from "../engine/contract";
import { KeptLine } from "../parts/Kept";
import { bookText } from "../state/book";
import { job } from "../state/job";
import { said, t } from "../words/words";
import { PatchMap, type PatchState } from "./PatchMap";
import { RecordFields } from "./RecordSheet";
import { begin, finish, recordOf, skip, takeBack, tap } from "./record";
import { clock } from "./times";
import { loadAlarms, sounds, toggleSounds, toggleVibration, useScreenAwake, vibration, warn } from "./wake";
import { keyOf, pourName, type Shown, shownRoom, useWorkedPour } from "./worked";

export function Day() {
	const day = useWorkedPour();
	const [chosen, setChosen] = useState<number | null>(null);
	const awake = useScreenAwake();
	useEffect(loadAlarms, []);
	const current = job.value;
	if (!current) return null;
	const index = chosen ?? 0;
	useEffect(() => {
		if (day) setChosen((now) => now ?? underWay(day));
	}, [day]);
	const shown = shownRoom(index);
	return (
		<main class="day" id="main">
			<div class="day-top">
				<a class="button" href={`#/pour/${encodeURIComponent(current.id)}`}>
					{t("Leave")}
				</a>
				<button type="button" aria-pressed={sounds.value} onClick={toggleSounds}>
					{sounds.value ? t("Sound on") : t("Sound off")}
				</button>
				<button type="button" aria-pressed={vibration.value} onClick={toggleVibration}>
					{vibration.value ? t("Buzz on") : t("Buzz off")}
				</button>
			</div>
			{day && day.rooms.length > 1 && (
				<div class="day-rooms">
					{day.rooms.map((room, i) => (
						<button type="button" key={keyOf(room)} aria-pressed={i === index} onClick={() => setChosen(i)}>
							{pourName(room)}
						</button>
					))}
				</div>
			)}
			{day ? (
				shown && (
					<RoomDay
						key={keyOf(shown.pour)}
						shown={shown}
						wetEdge={said(day.setting.wetEdge.text)}
						next={day.rooms[index + 1]}
						onNext={() => setChosen(index + 1)}
					/>
				)
			) : (
				<p class="day-says">{t("Working the pour out…")}</p>
			)}
			<p class="day-foot">
				{awake ? t("The screen stays on.") : t("This browser may turn the screen off: set the phone to stay on.")}{" "}
				<KeptLine />
			</p>
		</main>
	);
}

/** The pour to show at first: the one that was begun and not closed, or else the first still to come. */
function underWay({ rooms: pours }: PourDay): number {
	const open = pours.findIndex((pour) => recordOf(pour) && !recordOf(pour)?.ended);
	const next = pours.findIndex((pour) => !recordOf(pour));
	return Math.max(0, open >= 0 ? open : next);
}

type RoomDayProps = { shown: Shown; wetEdge: string; next: RoomPour | undefined; onNext: () => void };

function RoomDay({ shown, wetEdge, next: follows, onNext }: RoomDayProps) {
	const record = recordOf(shown.pour);
	const now = useNow();
	const { rest, told } = useRest(shown.pour, record);
	if (shown.pour.why) return <p class="day-says">{said(shown.pour.why)}</p>;
	if (!record) return <BeforeIt shown={shown} wetEdge={wetEdge} />;
	const seconds = (now - Date.parse(record.started)) / 1000;
	const toCome = rest?.batches.find((one) => one.state === "to come")?.number;
	const next = shown.pour.batches.find((batch) => batch.number === toCome);
	return (
		<>
			{told && (
				<p class="day-says" role="alert">
					{told}
				</p>
			)}
			{rest && <Edge edges={rest.edges} seconds={seconds} over={allDone(rest)} />}
			{rest && <Cards shown={shown} rest={rest} seconds={seconds} record={record} />}
			{rest && allDone(rest) && follows && (
				<button type="button" class="day-button" onClick={onNext}>
					{t("Next pour: {name}", { name: pourName(follows) })}
				</button>
			)}
			{!shown.pour.rough && (
				<div class="day-map">
					<PatchMap
						room={shown.room}
						pour={shown.pour}
						stateOf={(batch) => stateOf(rest, batch, seconds)}
						label={t("Patches of the floor: what is down and where the next batch goes")}
					/>
				</div>
			)}
			<div class="day-rare">
				<button type="button" class="day-button" onClick={() => takeBack(shown.pour)}>
					{t("Take back the last tap")}
				</button>
				{next && (
					<button type="button" class="day-button day-quiet" onClick={() => skip(shown.pour, next)}>
						{t("Leave batch {n} out", { n: next.number })}
					</button>
				)}
			</div>
			<details class="day-record">
				<summary>{t("Lot numbers, temperatures, who")}</summary>
				<RecordFields pour={shown.pour} record={record} />
			</details>
		</>
	);
}

/** Before the first water: what to have in hand, and the button that begins it all. */
function BeforeIt({ shown, wetEdge }: { shown: Shown; wetEdge: string }) {
	const first = shown.pour.batches[0];
	if (!first) return null;
	const dams = shown.pour.dams.length;
	return (
		<section class="day-card day-now" aria-label={t("Before the pour")}>
			<h1>{pourName(shown.pour)}</h1>
			<p class="day-line">{said(shown.pour.clock?.says)}</p>
			<p class="day-line">
				{t("{n} batches, {lasts}. An edge stays open {edge}.", {
					n: shown.pour.batches.length,
					lasts: said(shown.pour.clock?.lasts.text),
					edge: wetEdge,
				})}
			</p>
			{shown.pour.lift > 1 && <p class="day-line">{t("Before it: the lift below primed, and its primer dry.")}</p>}
			{shown.pour.bay > 1 && <p class="day-line">{t("Before it: the dam taken out, and the cut edge primed.")}</p>}
			{dams > 0 && <p class="day-line">{t("Dams to set before this bay: {n}. The map shows where.", { n: dams })}</p>}
			<p class="day-line">{t("Gloves, goggles, sleeves. Nobody between the pour and the way out.")}</p>
			<BatchLine batch={first} />
			<button type="button" class="day-button day-main" onClick={() => begin(shown.pour, first)}>
				{t("Begin: water for batch 1")}
			</button>
		</section>
	);
}

function BatchLine({ batch }: { batch: BatchPlan }) {
	return (
		<p class="day-batch">
			<span>{t("{n} bags", { n: batch.bags })}</span>
			{batch.aggregate && <span>{t("{mass} of aggregate", { mass: said(batch.aggregate.text) })}</span>}
			<span>{said(batch.water.text)}</span>
			<small>
				{said(batch.note) || t("{n} marks of {mark} of water", { n: batch.marks, mark: said(batch.mark.text) })}
			</small>
		</p>
	);
}

/** The wet edge's countdown. The colour is said in words too. */
function Edge({ edges, seconds, over }: { edges: OpenEdge[]; seconds: number; over: boolean }) {
	const first = edges[0];
	const left = first ? first.closes - seconds : Number.POSITIVE_INFINITY;
	const warned = useRef(new Set<string>());
	useEffect(() => {
		if (!first || over) return;
		for (const mark of [180, 60, 0]) {
			const key = `${first.from}-${first.to}-${Math.round(first.closes)}-${mark}`;
			if (left > mark || left < mark - 20 || warned.current.has(key)) continue;
			warned.current.add(key);
			warn(mark === 0 ? 4 : mark === 60 ? 3 : 2);
		}
	}, [Math.round(seconds)]);
	if (over) return <p class="day-edge">{t("All down.")}</p>;
	if (!first) return <p class="day-edge day-edge-quiet">{t("No edge is open yet")}</p>;
	const tone = left <= 60 ? "day-edge-stop" : left <= 180 ? "day-edge-soon" : "";
	return (
		<p class={`day-edge ${tone}`} role="timer">
			<b>{clock(left)}</b>
			{left > 0
				? t("until the edge of batch {from} closes: batch {to} must meet it", { from: first.from, to: first.to })
				: t("the edge of batch {from} has closed: spike the joint with batch {to} well, and note it", {
						from: first.from,
						to: first.to,
					})}
		</p>
	);
}

/** What is in hand now, and what comes next. */
function Cards(props: { shown: Shown; rest: PourRest; seconds: number; record: PourRecord }) {
	const { shown, rest, seconds } = props;
	const plan = (one: BatchNow) => shown.pour.batches.find((batch) => batch.number === one.number);
	const begun = rest.batches.filter((one) => one.state === "begun");
	const spreading = rest.batches.filter((one) => one.state === "poured");
	const next = rest.batches.find((one) => one.state === "to come");
	const pouring = begun[0];
	const pouringPlan = pouring && plan(pouring);
	const nextPlan = next && plan(next);
	const pourFirst = !next || (pouring !== undefined && (seconds >= pouring.ready - 15 || next.starts - seconds > 15));
	if (allDone(rest)) return <AllDone shown={shown} record={props.record} />;
	return (
		<>
			<h1 class="unseen">{pourName(shown.pour)}</h1>
			{pouring && pouringPlan && (
				<section class={cardClass(pourFirst)} aria-label={t("Now")}>
					<h2>
						{t("Now: batch {n}", { n: pouring.number })}{" "}
						{begun.length > 1 && <small>{t("{n} more mixing", { n: begun.length - 1 })}</small>}
					</h2>
					<p class="day-line">{readySays(pouring, seconds)}</p>
					<button type="button" class={buttonClass(pourFirst)} onClick={() => tap(shown.pour, pouringPlan, "poured")}>
						{t("Batch {n} is poured", { n: pouring.number })}
					</button>
				</section>
			)}
			{spreading.map((one) => {
				const batch = plan(one);
				return batch ? (
					<button type="button" class="day-button" key={one.number} onClick={() => tap(shown.pour, batch, "done")}>
						{t("Batch {n} is spread", { n: one.number })}
					</button>
				) : null;
			})}
			{next && nextPlan && (
				<section class={cardClass(!pourFirst)} aria-label={t("Next")}>
					<h2>
						{t("Next: batch {n}", { n: next.number })} <small>{startSays(next, seconds)}</small>
					</h2>
					<BatchLine batch={nextPlan} />
					<button type="button" class={buttonClass(!pourFirst)} onClick={() => tap(shown.pour, nextPlan, "started")}>
						{t("Start batch {n}", { n: next.number })}
					</button>
				</section>
			)}
		</>
	);
}

function cardClass(first: boolean): string {
	return `day-card${first ? " day-now" : ""}`;
}

function buttonClass(first: boolean): string {
	return `day-button${first ? " day-main" : ""}`;
}

function readySays(batch: BatchNow, seconds: number): string {
	if (seconds < batch.ready) return t("Mixed and rested in {time}", { time: clock(batch.ready - seconds) });
	const flows = batch.flowTo - seconds;
	return flows > 0
		? t("Pour it now. It flows for {time} yet", { time: clock(flows) })
		: t("It no longer flows: don’t pour it, mix afresh");
}

function startSays(batch: BatchNow, seconds: number): string {
	const wait = batch.starts - seconds;
	return wait > 5 ? t("in {time}", { time: clock(wait) }) : t("start now");
}

function AllDone({ shown, record }: { shown: Shown; record: PourRecord }) {
	return (
		<section class="day-card day-now" aria-label={t("Finished")}>
			<h1>{t("All batches are down.")}</h1>
			<p class="day-line">{t("Nobody on it, no draught, no sun. Wash tools and gloves outside, not down a drain.")}</p>
			{!record.ended && (
				<button type="button" class="day-button day-main" onClick={() => finish(shown.pour)}>
					{t("Close the record")}
				</button>
			)}
			<a class="button day-button" href={`#/pour/${encodeURIComponent(job.value?.id ?? "")}`}>
				{t("See and print the record")}
			</a>
		</section>
	);
}

function allDone(rest: PourRest): boolean {
	return rest.batches.every((batch) => batch.state === "done" || batch.state === "skipped");
}

function stateOf(rest: PourRest | null, number: number, seconds: number): PatchState {
	const batch = rest?.batches.find((one) => one.number === number);
	switch (batch?.state) {
		case "poured":
		case "done":
			return "down";
		case "begun":
			return seconds >= batch.ready ? "pouring" : "making";
		case "skipped":
			return "left-out";
	}
	return "to-come";
}

/** The moment, each second. */
function useNow(): number {
	const [now, setNow] = useState(Date.now());
	useEffect(() => {
		const timer = setInterval(() => setNow(Date.now()), 1000);
		return () => clearInterval(timer);
	}, []);
	return now;
}

const replanEvery = 20_000; // ms: time passing makes a plan late, not only taps

/** How the pour stands, worked out again at every tap and as time passes. */
function useRest(pour: RoomPour, record: PourRecord | undefined): { rest: PourRest | null; told: string } {
	const [rest, setRest] = useState<PourRest | null>(null);
	const [told, setTold] = useState("");
	const [beat, setBeat] = useState(0);
	useEffect(() => {
		const timer = setInterval(() => setBeat((n) => n + 1), replanEvery);
		return () => clearInterval(timer);
	}, []);
	const taps = JSON.stringify(record?.batches.map((b) => [b.batch, b.started, b.poured, b.done, b.skipped]));
	useEffect(() => {
		const current = job.value;
		if (!record || !current) {
			setRest(null);
			return;
		}
		let stale = false;
		call("pour.replan", {
			job: current,
			book: bookText.peek(),
			room: pour.id,
			part: pour.part,
			now: new Date().toISOString(),
		})
			.then((fresh) => {
				if (stale) return;
				setRest(fresh);
				setTold("");
			})
			.catch((error: Error) => !stale && setTold(said(error.message)));
		return () => {
			stale = true;
		};
	}, [keyOf(pour), taps, beat]);
	return { rest, told };
}
