// The rooms as somebody tells them at the counter: size, depth, deck. One row a room.
import { useId } from "preact/hooks";
import { wordNamed } from "../bench/WordField";
import type { Job, Room } from "../engine/contract";
import { RemoveButton } from "../parts/fields";
import { plan } from "../state/job";
import { said, t } from "../words/words";
import { Quick, sized } from "./fields";
import { RoughDepth } from "./RoughDepth";

export type Change = (field: string, change: (draft: Job) => void) => void;

export function RoughRooms({ job, change }: { job: Job; change: Change }) {
	return (
		<section class="counter-rooms" aria-label={t("Rooms")}>
			{job.rooms.map((room, index) => (
				<RoughRoom key={room.id} job={job} room={room} index={index} change={change} />
			))}
		</section>
	);
}

function RoughRoom(props: { job: Job; room: Room; index: number; change: Change }) {
	const { job, room, index, change } = props;
	const us = job.units === "us";
	const path = `rooms/${index}`;
	const inRoom = (field: string, alter: (room: Room) => void) =>
		change(`${path}/${field}`, (draft) => {
			const found = draft.rooms[index];
			if (found) alter(found);
		});
	return (
		<fieldset class="counter-room">
			<legend class={job.rooms.length > 1 ? undefined : "unseen"}>{t("Room {n}", { n: index + 1 })}</legend>
			<Quick
				label={t("Area, or length × width")}
				value={room.outline.area ?? ""}
				field={`${path}/outline/area`}
				full={(text) => sized(text, us)}
				autoFocus
				onChange={(typed) =>
					inRoom("outline/area", (r) => {
						r.outline = { how: "area", area: typed };
					})
				}
			/>
			<RoughDepth room={room} path={path} us={us} change={inRoom} />
			<DeckChoice room={room} onChange={(kind) => inRoom("deck", (r) => setDeck(r, kind))} />
			{job.rooms.length > 1 && (
				<RemoveButton
					what={t("Room {n}", { n: index + 1 })}
					onClick={() =>
						change("rooms", (draft) => {
							draft.rooms.splice(index, 1);
						})
					}
				/>
			)}
			<RoomSays index={index} />
		</fieldset>
	);
}

function setDeck(room: Room, kind: string): void {
	const deck = room.decks[0];
	if (!deck) return;
	if (kind) deck.answers["deck.kind"] = kind;
	else delete deck.answers["deck.kind"];
}

function DeckChoice({ room, onChange }: { room: Room; onChange: (kind: string) => void }) {
	const id = useId();
	return (
		<div class="field">
			<label for={id}>{t("Deck")}</label>
			<select
				id={id}
				value={room.decks[0]?.answers["deck.kind"] ?? ""}
				onChange={(event) => onChange(event.currentTarget.value)}
			>
				<option value="">{t("not said")}</option>
				{wordNamed("deck.kind")?.choices.map((choice) => (
					<option key={choice} value={choice}>
						{said(choice)}
					</option>
				))}
			</select>
		</div>
	);
}

/** What the room comes to, and what is wrong with the depth said. */
function RoomSays({ index }: { index: number }) {
	const room = plan.value?.rooms[index];
	const broken = plan.value?.findings.filter(
		(f) =>
			f.state === "broken" &&
			f.subject.room === room?.id &&
			["rough-depth-enough", "thin-over-wood", "thin-over-mineral", "one-lift"].includes(f.rule),
	);
	if (!room?.rough) return null;
	return (
		<div class="counter-room-says small">
			{said(room.area.text)} × {said(room.rough.mean.text)} = {said(room.rough.volume.text)}
			{broken?.map((finding) => (
				<p class="field-error" key={finding.rule}>
					{said(finding.says)} {said(finding.remedy)}
				</p>
			))}
		</div>
	);
}
