// Planes side by side, what grinding saves, and the lifts of a deep pour.
import type { CutStudy, LiftsStudy, PlaneStudy, RoomStudy } from "../engine/contract";
import { Section } from "../parts/fields";
import { cutShown, planeCost, planeCosts } from "../state/study";
import { number, said, t } from "../words/words";
import { reckoned, signed } from "./bags";
import { editRoom } from "./RoomEntry";

export function Planes({ index, studied }: { index: number; studied: RoomStudy }) {
	const chosen = studied.planes.find((plane) => plane.chosen);
	const level = studied.planes.find((plane) => plane.choice.how === "level");
	const least = studied.planes.find((plane) => plane.choice.how === "least-volume");
	const saved = level && least ? level.bags - least.bags : 0;
	return (
		<Section
			title={t("Planes")}
			id="study-planes"
			says={
				saved > 0.05 ? t("least volume saves {bags} bags on level", { bags: reckoned(saved) }) : t("level is least")
			}
		>
			<div class="study-scroll">
				<div class="wide" tabIndex={0}>
					<table class="study-table">
						<caption>{t("Where the top of the pour may go, and what it costs")}</caption>
						<thead>
							<tr>
								<th scope="col">{t("Plane")}</th>
								<th scope="col">{t("Bags")}</th>
								<th scope="col">{t("Cost")}</th>
								<th scope="col">{t("Depth")}</th>
								<th scope="col">{t("Fall across")}</th>
								<th scope="col">{t("At the doors")}</th>
							</tr>
						</thead>
						<tbody>
							{studied.planes.map((plane) => (
								<PlaneRow key={nameOf(plane)} index={index} room={studied.id} plane={plane} against={chosen} />
							))}
						</tbody>
					</table>
				</div>
			</div>
			<p class="small soft">
				{said(planeCosts.value?.why) ||
					t("The cost is the whole list’s total with that plane, as the quote has it: what is ticked and priced.")}
			</p>
			{least && <Carried plane={chosen ?? least} />}
		</Section>
	);
}

function nameOf(plane: PlaneStudy): string {
	switch (plane.choice.how) {
		case "least-volume":
			return t("Least volume, up to {limit}", { limit: plane.choice.slopeLimit ?? "" });
		case "door":
			return plane.choice.slopeLimit
				? t("Through {door}, up to {limit}", { door: plane.door || t("the door"), limit: plane.choice.slopeLimit })
				: t("Level through {door}", { door: plane.door || t("the door") });
		case "hand":
			return t("By hand");
	}
	return t("Level");
}

function PlaneRow(props: { index: number; room: string; plane: PlaneStudy; against: PlaneStudy | undefined }) {
	const { plane, against } = props;
	return (
		<tr class={plane.chosen ? "chosen" : undefined} data-plane={nameOf(plane)}>
			<th scope="row">
				{nameOf(plane)}
				{plane.short && (
					<span class="short"> {t("misses the least depth by {short}", { short: said(plane.short.text) })}</span>
				)}
				{plane.dry.si > 0 && <span class="short"> {t("{area} stays bare", { area: said(plane.dry.text) })}</span>}
				<button
					type="button"
					class="choose"
					aria-pressed={plane.chosen}
					onClick={() =>
						editRoom(props.index, "plane", (room) => {
							room.plane = plane.choice;
						})
					}
				>
					{plane.chosen ? t("Chosen") : t("Choose")}
				</button>
			</th>
			<td>
				{reckoned(plane.bags)}
				{against && !plane.chosen && <span class="soft small"> {signed(plane.bags - against.bags)}</span>}
			</td>
			<td data-cost>{said(planeCost(props.room, plane.choice)) || "—"}</td>
			<td>{t("{from} to {to}", { from: said(plane.least.text), to: said(plane.greatest.text) })}</td>
			<td>
				{said(plane.fall.text)}
				{plane.slope.si > 0 && <span class="soft small amount"> ({said(plane.slope.text)})</span>}
			</td>
			<td>
				{plane.doors.map((door) => (
					<div key={door.id}>
						{door.name || t("Door")}:{" "}
						<span class="amount">
							{door.step ? t("step {step}", { step: said(door.step.text) }) : said(door.depth.text)}
						</span>
						{door.class && <span class="soft small"> {said(door.class)}</span>}
					</div>
				))}
			</td>
		</tr>
	);
}

function Carried({ plane }: { plane: PlaneStudy }) {
	if (plane.carriers.length === 0) return null;
	const spots = plane.carriers.map((c) =>
		c.row >= 0
			? t("reading {n}", { n: c.row + 1 })
			: t("the wall at x {x} m, y {y} m", { x: number(c.at.x, 2), y: number(c.at.y, 2) }),
	);
	return <p class="small">{t("The chosen plane stands on {spots}.", { spots: spots.join("; ") })}</p>;
}

export function HighSpots({ studied }: { studied: RoomStudy }) {
	const grinding = studied.grinding;
	if (!grinding) return null;
	const cut = grinding.cuts[Math.min(cutShown.value, grinding.cuts.length - 1)];
	const last = grinding.cuts.at(-1);
	return (
		<Section
			title={t("High spots")}
			id="study-spots"
			says={
				last
					? t("{height} off saves {bags} bags", { height: said(last.height.text), bags: reckoned(last.bags) })
					: t("nothing may come off")
			}
		>
			<p class="small">
				{grinding.limits
					.map((limit) => `${limit.deck || t("Deck")}: ${t("{most} at most", { most: said(limit.most.text) })}`)
					.join("; ")}
				{". "}
				{t("The rulebook’s figure for grinding, or what the deck’s own answer says, sets the limit.")}
			</p>
			{last && (
				<>
					<div class="study-scroll">
						<div class="wide" tabIndex={0}>
							<table class="study-table">
								<caption>{t("What taking the high spots down saves")}</caption>
								<thead>
									<tr>
										<th scope="col">{t("Take off")}</th>
										<th scope="col">{t("Bags saved")}</th>
										<th scope="col">{t("Area to cut")}</th>
										<th scope="col">{t("Deck cut away")}</th>
										<th scope="col">{t("Spots")}</th>
									</tr>
								</thead>
								<tbody>
									{grinding.cuts.map((one, i) => (
										<tr key={one.height.si} class={one === cut ? "chosen" : undefined}>
											<th scope="row">
												<button type="button" aria-pressed={one === cut} onClick={() => show(i)}>
													{said(one.height.text)}
												</button>
											</th>
											<td>{reckoned(one.bags)}</td>
											<td>{atLeast(one.area)}</td>
											<td>{said(one.volume.text)}</td>
											<td>{one.spots.length + one.others}</td>
										</tr>
									))}
								</tbody>
							</table>
						</div>
					</div>
					{cut && <Spots cut={cut} />}
					<p class="caution">
						{t(
							"Grinding concrete or screed makes silica dust: shroud and extraction or water, a fitting mask, nobody else in the room, and never dry sweeping. Old coverings and adhesive may hold asbestos or lead: have them tested first. Local rules go first.",
						)}
					</p>
				</>
			)}
		</Section>
	);
}

function show(i: number): void {
	cutShown.value = i;
}

function atLeast(area: { si: number; text: string }): string {
	return area.si > 0 && area.si < 0.005 ? t("a hand’s breadth") : said(area.text);
}

function Spots({ cut }: { cut: CutStudy }) {
	return (
		<div class="study-scroll">
			<div class="wide" tabIndex={0}>
				<table class="study-table">
					<caption>{t("The spots to cut, for {height} off", { height: said(cut.height.text) })}</caption>
					<thead>
						<tr>
							<th scope="col">x</th>
							<th scope="col">y</th>
							<th scope="col">{t("Take off")}</th>
							<th scope="col">{t("Area")}</th>
							<th scope="col">{t("Deck cut away")}</th>
						</tr>
					</thead>
					<tbody>
						{cut.spots.map((spot, i) => (
							<tr key={i}>
								<td>{said(spot.x.text)}</td>
								<td>{said(spot.y.text)}</td>
								<td>{said(spot.height.text)}</td>
								<td>{atLeast(spot.area)}</td>
								<td>{said(spot.volume.text)}</td>
							</tr>
						))}
					</tbody>
				</table>
			</div>
			{cut.others > 0 && <p class="small">{t("and smaller ones: {count}", { count: cut.others })}</p>}
		</div>
	);
}

export function Lifts({ studied }: { studied: RoomStudy }) {
	const plain = studied.lifts[0];
	if (!plain) return null;
	return (
		<Section
			title={t("Lifts")}
			id="study-lifts"
			says={
				plain.problem
					? t("can’t be parted")
					: plain.lifts.length === 1
						? t("one lift")
						: t("{count} lifts", { count: plain.lifts.length })
			}
		>
			{studied.lifts.map((way) => (
				<LiftTable key={String(way.filled)} way={way} />
			))}
			{studied.lifts.some((way) => way.lifts.length > 1) && (
				<p class="small">
					{t(
						"Prime again over each lift before the next, once it may be walked on and within its primer’s time. A lower lift ends at a dam along its edge, as high as it is thick there.",
					)}
				</p>
			)}
		</Section>
	);
}

function LiftTable({ way }: { way: LiftsStudy }) {
	if (way.problem) {
		return (
			<p class="field-error">
				{said(way.problem.message)} {said(way.problem.remedy)}
			</p>
		);
	}
	return (
		<div class="study-scroll">
			<div class="wide" tabIndex={0}>
				<table class="study-table">
					<caption>
						{way.filled
							? t("With aggregate in the lower lifts, {most} at most each", { most: said(way.most.text) })
							: t("Leveller alone, {most} at most each", { most: said(way.most.text) })}
					</caption>
					<thead>
						<tr>
							<th scope="col">{t("Lift")}</th>
							<th scope="col">{t("Top under the finish")}</th>
							<th scope="col">{t("Thickness")}</th>
							<th scope="col">{t("Area")}</th>
							<th scope="col">{t("Volume")}</th>
							<th scope="col">{t("Bags")}</th>
							{way.filled && <th scope="col">{t("Aggregate")}</th>}
							{way.lifts.length > 1 && <th scope="col">{t("Primer over it")}</th>}
						</tr>
					</thead>
					<tbody>
						{way.lifts.map((lift, i) => (
							<tr key={lift.below.si}>
								<th scope="row">
									{i + 1} {lift.whole ? t("whole floor") : t("low ground")}
								</th>
								<td>{said(lift.below.text)}</td>
								<td>{t("{from} to {to}", { from: said(lift.least.text), to: said(lift.greatest.text) })}</td>
								<td>{said(lift.area.text)}</td>
								<td>{said(lift.volume.text)}</td>
								<td>{reckoned(lift.bags)}</td>
								{way.filled && <td>{lift.aggregate ? said(lift.aggregate.text) : "—"}</td>}
								{way.lifts.length > 1 && <td>{lift.primer ? said(lift.primer.text) : "—"}</td>}
							</tr>
						))}
					</tbody>
				</table>
			</div>
		</div>
	);
}
