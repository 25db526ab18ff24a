// The moisture tests of one deck: how many, how deep, where, those made one by one, and what they still lack.

import type { DeckArea, MoisturePlan, MoistureTest } from "../engine/contract";
import { Field, RemoveButton } from "../parts/fields";
import { job } from "../state/job";
import { said, t } from "../words/words";
import { depthUnit, editRoom } from "./RoomEntry";

type Made = { tests: MoisturePlan; index: number; deck: DeckArea; at: number };

export function MoistureTests(props: Made) {
	const { tests, deck } = props;
	return (
		<details class="word-group" data-group="moisture-tests">
			<summary>
				{t("Moisture tests, one by one")}{" "}
				<span class="small soft">
					{tests.satisfied ? t("done as the method asks") : t("{needed} tests", { needed: tests.needed })}
				</span>
			</summary>
			<p class="small">
				{t("{method}: {needed} tests on this deck.", { method: said(tests.method), needed: tests.needed })}{" "}
				{tests.probeDepth && t("Probes sit {depth} deep.", { depth: said(tests.probeDepth.text) })}
			</p>
			<ol class="small test-spots">
				{tests.spots.map((spot) => (
					<li key={`${spot.x.si}/${spot.y.si}`}>
						{t("x {x}, y {y}", { x: said(spot.x.text), y: said(spot.y.text) })}{" "}
						<button type="button" onClick={() => add(props, { x: spot.x.text, y: spot.y.text })}>
							{t("Tested here")}
						</button>
					</li>
				))}
			</ol>
			{deck.tests?.map((test, i) => (
				<OneTest key={i} made={props} test={test} number={i} />
			))}
			<button type="button" onClick={() => add(props, { x: "", y: "" })}>
				{t("Add a test")}
			</button>
			{tests.open.length > 0 && (
				<ul class="small">
					{tests.open.map((open) => (
						<li key={open}>{said(open)}</li>
					))}
				</ul>
			)}
			<p class="small soft">
				{t("Find cables, pipes and floor heating before you drill.")} {said(tests.source)}
			</p>
		</details>
	);
}

function OneTest({ made, test, number }: { made: Made; test: MoistureTest; number: number }) {
	const method = made.deck.answers["moisture.method"];
	const path = `rooms/${made.index}/decks/${made.at}/tests/${number}`;
	const open = made.tests.tests[number]?.open ?? [];
	const n = { n: number + 1 };
	const write = (change: (test: MoistureTest) => void) =>
		changeTests(made, (list) => list[number] && change(list[number]));
	const spot = (name: "x" | "y") => (
		<Field
			label={t("{what} of test {n}", { what: name, ...n })}
			field={`${path}/at/${name}`}
			value={test.at?.[name] ?? ""}
			unit={job.value?.units === "us" ? "ft" : "m"}
			onChange={(typed) => write((one) => (one.at = { x: "", y: "", ...one.at, [name]: typed }))}
		/>
	);
	return (
		<div class="card" data-test={number + 1}>
			<div class="row row-even">
				{spot("x")}
				{spot("y")}
				<Field
					label={valueLabel(method, n)}
					field={`${path}/value`}
					value={test.value}
					unit={valueUnit(method)}
					onChange={(typed) => write((one) => (one.value = typed))}
				/>
				{method !== "calcium chloride" && method !== "plastic sheet" && (
					<Field
						label={t("Depth of test {n}", n)}
						field={`${path}/depth`}
						value={test.depth}
						unit={depthUnit()}
						onChange={(typed) => write((one) => (one.depth = typed))}
					/>
				)}
				<Field
					label={t("How long test {n} stood", n)}
					field={`${path}/waited`}
					value={test.waited}
					unit="h"
					onChange={(typed) => write((one) => (one.waited = typed))}
				/>
				<RemoveButton what={t("test {n}", n)} onClick={() => changeTests(made, (list) => list.splice(number, 1))} />
			</div>
			{open.length > 0 ? (
				<ul class="small">
					{open.map((says) => (
						<li key={says}>{said(says)}</li>
					))}
				</ul>
			) : (
				<p class="small soft">{t("It counts.")}</p>
			)}
		</div>
	);
}

function valueLabel(method: string | undefined, n: { n: number }): string {
	if (method === "calcium chloride") return t("Emission at test {n}", n);
	if (method === "plastic sheet") return t("Damp or dry under sheet {n}", n);
	return t("Humidity at test {n}", n);
}

function valueUnit(method: string | undefined): string {
	if (method === "plastic sheet") return "";
	if (method !== "calcium chloride") return "%";
	return job.value?.units === "us" ? "lb/(1000 ft² 24 h)" : "g/(m² 24 h)";
}

function add(made: Made, at: { x: string; y: string }): void {
	changeTests(made, (list) => list.push({ at, value: "", depth: "", waited: "" }));
}

function changeTests(made: Made, change: (list: MoistureTest[]) => void): void {
	editRoom(made.index, `decks/${made.at}/tests`, (room) => {
		const deck = room.decks[made.at];
		if (!deck) return;
		const list = deck.tests ?? [];
		change(list);
		if (list.length > 0) deck.tests = list;
		else delete deck.tests;
	});
}
