// The counter: a priced quote from what somebody says of a floor, worked from the keyboard alone. What is entered is a job from the first
// keystroke on, and opens as one.
import { useEffect, useRef, useState } from "preact/hooks";
import { wordNamed } from "../bench/WordField";
import { call } from "../engine/client";
import type { Job } from "../engine/contract";
import { Choice, Pick } from "../parts/fields";
import { close, edit, job, newId, open, trouble } from "../state/job";
import { go, route } from "../state/route";
import { editOffer, newOffer, takeNumber, takeOff, watchTakeOff } from "../state/takeoff";
import { usualUnits } from "../state/units";
import { said, t } from "../words/words";
import { Asked, Sureness } from "./Asked";
import { Quick } from "./fields";
import { Quote } from "./Quote";
import { type Change, RoughRooms } from "./RoughRooms";
import { ShopEntry } from "./ShopEntry";

export function Counter() {
	const [fresh, setFresh] = useState<Job | null>(null);
	useEffect(watchTakeOff, []);
	useEffect(() => closeUnlessShown, []);
	useEffect(() => {
		begin(route.value.id).then(setFresh, (error: Error) => {
			trouble.value = error.message;
		});
	}, []);
	const change = useChange(fresh);
	const addRoom = () => change("rooms", pushRoom);
	useKeys({
		KeyR: addRoom,
		KeyJ: () => job.value && go("job", job.value.id),
		KeyN: async () => {
			close();
			history.replaceState(null, "", "#/counter");
			setFresh(await begin(""));
			document.querySelector<HTMLInputElement>("[data-field='rooms/0/outline/area']")?.focus();
		},
	});
	const current = job.value ?? fresh;
	if (!current) return <main id="main" class="counter" aria-busy="true" />;
	return (
		<main class="counter" id="main">
			<div class="counter-entry no-print">
				<div class="counter-head">
					<h1>{t("At the counter")}</h1>
					<p class="small soft">
						<Key keys="Tab" does={t("next field")} /> · <Key keys="Alt R" does={t("another room")} /> ·{" "}
						<Key keys="Ctrl Enter" does={t("print the quote")} /> · <Key keys="Alt J" does={t("open as a job")} /> ·{" "}
						<Key keys="Alt N" does={t("next customer")} />
					</p>
				</div>
				<RoughRooms job={current} change={change} />
				<div class="counter-more">
					<Choice
						label={t("What goes on top")}
						value={current.answers["finish.kind"] ?? ""}
						empty={t("not said")}
						onChange={(kind) =>
							change("answers/finish.kind", (draft) => {
								draft.answers["finish.kind"] = kind;
							})
						}
						choices={(wordNamed("finish.kind")?.choices ?? []).map((value) => ({ value, label: said(value) }))}
					/>
					<button type="button" onClick={addRoom}>
						{t("Another room")}
					</button>
					<OfferEntry />
				</div>
				{!job.value && (
					<Pick
						label={t("Units")}
						value={current.units}
						onChange={(units) => newJob(units === "us" ? "us" : "metric").then(setFresh, () => {})}
						choices={[
							{ value: "metric", label: t("mm, kg") },
							{ value: "us", label: t("in, lb") },
						]}
					/>
				)}
				<Sureness />
				<Asked />
			</div>
			<div class="counter-quote">
				<Quote />
				{!takeOff.value?.lines.length && (
					<p class="soft no-print">{t("Give an area and a depth: the quote stands here as you type.")}</p>
				)}
				{job.value && (
					<div class="row no-print counter-ends">
						<button type="button" class="button-main" onClick={() => print()}>
							{t("Print the quote")}
						</button>
						<a class="button" href={`#/job/${encodeURIComponent(job.value.id)}`}>
							{t("Open as a job")}
						</a>
						<a class="button" href={`#/buy/${encodeURIComponent(job.value.id)}`}>
							{t("List, file and link")}
						</a>
					</div>
				)}
				<ShopEntry />
			</div>
		</main>
	);
}

function Key({ keys, does }: { keys: string; does: string }) {
	return (
		<span class="counter-key">
			<kbd>{keys}</kbd> {does}
		</span>
	);
}

/** The job stays open where its own page comes next. */
function closeUnlessShown(): void {
	if (route.value.id !== job.value?.id) close();
}

/** The job that the address names, or a new one that isn't kept until something is typed. */
async function begin(id: string): Promise<Job> {
	if (id) {
		const opened = await call("jobs.open", { id });
		open(opened.job, opened);
		return opened.job;
	}
	return newJob(usualUnits());
}

async function newJob(units: "metric" | "us"): Promise<Job> {
	return (await call("jobs.new", { units })).job;
}

/** Changes the open job; the first change opens the new one, with an offer under the shop's next number. */
function useChange(fresh: Job | null): Change {
	const latest = useRef(fresh);
	latest.current = fresh;
	return (field, alter) => {
		if (job.value) {
			edit(field, alter);
			return;
		}
		if (!latest.current) return;
		const first = structuredClone(latest.current);
		first.offer = newOffer(takeNumber());
		first.name = t("Quote {number}", { number: first.offer.number });
		alter(first);
		open(first);
		history.replaceState(null, "", `#/counter/${encodeURIComponent(first.id)}`);
	};
}

function pushRoom(draft: Job): void {
	const last = draft.rooms.at(-1);
	if (!last) return;
	const id = newId("room");
	const kind = last.decks[0]?.answers["deck.kind"];
	draft.rooms.push({
		...structuredClone(last),
		id,
		name: "",
		outline: { how: "area", area: "" },
		decks: [{ id: `${id}-deck`, name: "", answers: kind ? { "deck.kind": kind } : {} }],
		answers: {},
	});
	requestAnimationFrame(() =>
		document.querySelector<HTMLInputElement>(`[data-field='rooms/${draft.rooms.length - 1}/outline/area']`)?.focus(),
	);
}

function useKeys(keys: Record<string, () => unknown>): void {
	const latest = useRef(keys);
	latest.current = keys;
	useEffect(() => {
		const onKey = (event: KeyboardEvent) => {
			if (event.ctrlKey && event.key === "Enter") {
				event.preventDefault();
				(document.activeElement as HTMLElement | null)?.blur();
				setTimeout(() => print(), 0);
			} else if (event.altKey && latest.current[event.code]) {
				event.preventDefault();
				latest.current[event.code]?.();
			}
		};
		addEventListener("keydown", onKey);
		return () => removeEventListener("keydown", onKey);
	}, []);
}

/** What is said of the customer: kept on this device only. */
export function OfferEntry() {
	const offer = job.value?.offer;
	const set = (field: "number" | "date" | "customer" | "discount") => (typed: string) =>
		editOffer(field, (draft) => {
			draft[field] = typed;
		});
	const tick = (field: "delivered" | "labour", label: string) => (
		<label class="tick">
			<input
				type="checkbox"
				checked={offer?.[field] ?? false}
				onChange={(event) => {
					const yes = event.currentTarget.checked;
					editOffer(field, (draft) => {
						draft[field] = yes;
					});
				}}
			/>
			{label}
		</label>
	);
	if (!job.value) return null;
	return (
		<>
			<Quick
				label={t("Customer, kept on this device only")}
				field="offer/customer"
				value={offer?.customer ?? ""}
				onChange={set("customer")}
			/>
			<Quick label={t("Discount")} field="offer/discount" value={offer?.discount ?? ""} onChange={set("discount")} />
			<Quick label={t("Quote number")} field="offer/number" value={offer?.number ?? ""} onChange={set("number")} />
			<Quick label={t("Date")} field="offer/date" value={offer?.date ?? ""} onChange={set("date")} />
			{tick("delivered", t("With delivery"))}
			{tick("labour", t("With labour"))}
		</>
	);
}
