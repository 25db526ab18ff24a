// Entering the deck, the products, the plane, the air and the crew: forms made from the vocabulary, in the order of the work.

import { Choice, Field, Pick, RemoveButton, Section } from "../parts/fields";
import { edit, job, newId, plan, vocabulary } from "../state/job";
import { said, t } from "../words/words";
import { MoistureTests } from "./MoistureTests";
import { depthUnit, editRoom, ShapeEntry } from "./RoomEntry";
import { SheetShelf } from "./SheetShelf";
import { labelOf, ValueField } from "./WordField";
import { jobSubject, WordGroup, Words } from "./WordGroups";

export function DeckEntry({ index }: { index: number }) {
	const room = job.value?.rooms[index];
	if (!room) return null;
	const kinds = room.decks.map((deck) => deck.answers["deck.kind"]).filter((kind) => kind !== undefined && kind !== "");
	return (
		<Section title={t("Deck")} says={kinds.map((kind) => said(kind)).join(", ") || t("not said")} id="deck">
			{room.decks.map((deck, i) => {
				const planned = plan.value?.rooms[index]?.decks.find((d) => d.id === deck.id);
				return (
					<div class="card" key={deck.id}>
						<div class="card-head">
							<Field
								label={
									deck.shape ? t("Part of the deck") : room.decks.length > 1 ? t("The rest of the deck") : t("Deck")
								}
								field={`rooms/${index}/decks/${i}/name`}
								value={deck.name}
								onChange={(name) =>
									editRoom(index, `decks/${i}/name`, (r) => {
										const d = r.decks[i];
										if (d) d.name = name;
									})
								}
							/>
							{deck.shape && (
								<RemoveButton
									what={deck.name || t("part")}
									onClick={() =>
										editRoom(index, "decks", (r) => {
											r.decks.splice(i, 1);
										})
									}
								/>
							)}
						</div>
						{deck.shape && (
							<ShapeEntry
								movable
								shape={deck.shape}
								field={`rooms/${index}/decks/${i}/shape`}
								onChange={(change) =>
									editRoom(index, `decks/${i}/shape`, (r) => {
										const s = r.decks[i]?.shape;
										if (s) change(s);
									})
								}
							/>
						)}
						<Words
							step="deck"
							subject={{ scope: "deck", room: room.id, id: deck.id, name: deck.name }}
							holds={planned?.holds}
						/>
						{["joists", "sheets", "surface", "moisture", "priming"].map((step) => (
							<WordGroup
								key={step}
								step={step}
								subject={{ scope: "deck", room: room.id, id: deck.id, name: deck.name }}
								holds={planned?.holds}
							/>
						))}
						{planned?.moisture && <MoistureTests tests={planned.moisture} index={index} deck={deck} at={i} />}
						{planned && (
							<details>
								<summary class="small">{t("What the rulebook says for it")}</summary>
								<table class="trace">
									<tbody>
										{planned.figures
											.filter((figure) => figure.state === "known")
											.map((figure) => (
												<tr key={figure.name}>
													<th scope="row">{said(figure.words)}</th>
													<td>{said(figure.text)}</td>
												</tr>
											))}
									</tbody>
								</table>
							</details>
						)}
					</div>
				);
			})}
			<button
				type="button"
				onClick={() =>
					editRoom(index, "decks", (r) => {
						r.decks.push({
							id: newId("deck"),
							name: "",
							shape: { how: "rectangle", length: "", width: "", at: { x: "", y: "" } },
							answers: {},
						});
					})
				}
			>
				{t("Add a part of another kind")}
			</button>
			<Words
				step="room"
				without={["survey.error"]}
				subject={{ scope: "room", room: room.id, id: room.id, name: "" }}
				holds={plan.value?.rooms[index]?.holds}
			/>
			{["heating", "old floor", "edges"].map((step) => (
				<WordGroup
					key={step}
					step={step}
					subject={{ scope: "room", room: room.id, id: room.id, name: "" }}
					holds={plan.value?.rooms[index]?.holds}
				/>
			))}
		</Section>
	);
}

export function PlaneEntry({ index }: { index: number }) {
	const room = job.value?.rooms[index];
	const planned = plan.value?.rooms[index]?.plane;
	if (!room) return null;
	const field = `rooms/${index}/plane`;
	return (
		<Section
			title={t("Finish plane")}
			says={planned ? t("staff reads {staff}", { staff: said(planned.staff.text) }) : ""}
			id="plane"
		>
			<Pick
				label={t("Where the top of the pour goes")}
				value={room.plane.how}
				onChange={(how) =>
					editRoom(index, "plane", (r) => {
						r.plane.how = how;
					})
				}
				choices={[
					{ value: "level", label: t("Level") },
					{ value: "least-volume", label: t("Least volume") },
					{ value: "door", label: t("To a door") },
					{ value: "hand", label: t("By hand") },
				]}
			/>
			{room.plane.how === "level" && (
				<Field
					label={t("Raise it above the lowest that will do")}
					unit={depthUnit()}
					field={`${field}/raise`}
					value={room.plane.raise ?? ""}
					onChange={(v) =>
						editRoom(index, "plane/raise", (r) => {
							r.plane.raise = v;
						})
					}
				/>
			)}
			{(room.plane.how === "least-volume" || room.plane.how === "door") && (
				<Field
					label={t("Steepest slope allowed")}
					unit="%"
					field={`${field}/slopeLimit`}
					value={room.plane.slopeLimit ?? ""}
					placeholder={room.plane.how === "door" ? t("level") : "1 %"}
					onChange={(v) =>
						editRoom(index, "plane/slopeLimit", (r) => {
							r.plane.slopeLimit = v;
						})
					}
				/>
			)}
			{room.plane.how === "door" && (
				<Choice
					label={t("Door")}
					value={room.plane.door ?? ""}
					empty={t("Choose…")}
					onChange={(v) =>
						editRoom(index, "plane/door", (r) => {
							r.plane.door = v;
						})
					}
					choices={room.doors.map((door) => ({ value: door.id, label: door.name || t("Door") }))}
				/>
			)}
			{room.plane.how === "hand" && (
				<Field
					label={t("Reading on the finished pour")}
					unit={room.readings.heightUnit}
					field={`${field}/height`}
					value={room.plane.height ?? ""}
					onChange={(v) =>
						editRoom(index, "plane/height", (r) => {
							r.plane.height = v;
						})
					}
				/>
			)}
			<PlaneProblem field={field} />
		</Section>
	);
}

function PlaneProblem({ field }: { field: string }) {
	const problem = plan.value?.problems.find((p) => p.field === field);
	return problem ? (
		<p class="field-error" role="alert">
			{said(problem.message)} {said(problem.remedy)}
		</p>
	) : null;
}

export function AirEntry() {
	return (
		<Section title={t("Air, finish and crew")} id="air">
			{["finish", "air", "crew"].map((step) => (
				<Words key={step} step={step} subject={jobSubject} holds={plan.value?.holds} />
			))}
			{["priming", "lifting", "dust", "people"].map((step) => (
				<WordGroup key={step} step={step} subject={jobSubject} holds={plan.value?.holds} />
			))}
		</Section>
	);
}

const kinds = ["leveller", "primer", "patch", "aggregate", "barrier"];

/** The sheets that the job is planned with. */
export function SheetsEntry() {
	const current = job.value;
	if (!current) return null;
	return (
		<Section
			title={t("Product sheets")}
			says={kinds.some((kind) => current.sheets[kind]?.generic) ? t("typical values, read your bag") : ""}
			id="sheets"
		>
			{kinds.map((kind) => {
				const sheet = current.sheets[kind];
				if (!sheet) return null;
				return (
					<details class="card" key={kind}>
						<summary class="card-head">
							<b>{said(kind)}</b>{" "}
							<span class="small soft">{sheet.generic ? t("typical, read your bag") : sheet.name}</span>
						</summary>
						<SheetShelf kind={kind} sheet={sheet} />
						<Field
							label={t("Name on the sheet")}
							field={`sheets/${kind}/name`}
							value={sheet.name}
							onChange={(name) =>
								edit(`sheets/${kind}/name`, (draft) => {
									const s = draft.sheets[kind];
									if (s) s.name = name;
								})
							}
						/>
						{vocabulary.value
							.filter((word) => word.step === kind)
							.map((word) => (
								<ValueField
									key={word.name}
									word={word}
									label={labelOf(word)}
									field={`sheets/${kind}/values/${word.name}`}
									value={sheet.values[word.name] ?? ""}
									hint={sheet.generic && sheet.values[word.name] ? t("typical, read your bag") : undefined}
									onChange={(typed) =>
										edit(`sheets/${kind}/${word.name}`, (draft) => {
											const s = draft.sheets[kind];
											if (!s) return;
											s.values[word.name] = typed;
											s.generic = false;
										})
									}
								/>
							))}
					</details>
				);
			})}
		</Section>
	);
}
