// The study of one room under the map: how sure the bags are, where to read next, and what the floor asks for beside the pour.
import type { BagsStudy, RoomStudy } from "../engine/contract";
import { Section } from "../parts/fields";
import { job, plan } from "../state/job";
import { roomStudy, study, studying, studyTrouble } from "../state/study";
import { number, said, t } from "../words/words";
import { reckoned, signed } from "./bags";
import { editRoom } from "./RoomEntry";
import { Flatness, Heights, Indicators } from "./StudyFloor";
import { HighSpots, Lifts, Planes } from "./StudyPlanes";

export function StudyPanel({ index, onPick }: { index: number; onPick: (row: number) => void }) {
	const room = job.value?.rooms[index];
	const studied = roomStudy(room?.id);
	return (
		<section
			class="study"
			aria-label={t("Study")}
			aria-busy={studying.value}
			data-study={studying.value ? "coming" : "here"}
		>
			<p class="study-says no-print" role="status">
				{studyTrouble.value
					? `${t("This could not be worked out.")} ${said(studyTrouble.value)}`
					: studying.value && plan.value?.totals.ready
						? t("How sure, where to put the plane: working it out…")
						: ""}
			</p>
			{studied && (
				<>
					<Survey index={index} studied={studied} onPick={onPick} />
					<Planes index={index} studied={studied} />
					<HighSpots studied={studied} />
					<Lifts studied={studied} />
					<Flatness studied={studied} />
					<Indicators studied={studied} />
					<Heights studied={studied} />
					{studied.problems.map((problem) => (
						<p key={problem.code} class="field-error study-says">
							{said(problem.message)} {said(problem.remedy)}
						</p>
					))}
				</>
			)}
		</section>
	);
}

const causeWords = (): Record<string, string> => ({
	ground: t("Ground between the readings that nobody measured"),
	reading: t("The error of a reading"),
	yield: t("What a bag fills, more or less than its sheet says"),
	dosing: t("How the water is measured out"),
});

function Survey(props: { index: number; studied: RoomStudy; onPick: (row: number) => void }) {
	const { studied, index } = props;
	const several = (study.value?.rooms.length ?? 0) > 1;
	return (
		<Section
			title={t("Survey")}
			id="study-survey"
			open
			says={
				studied.suspects.length > 0
					? t("{count} readings to look at", { count: studied.suspects.length })
					: studied.next?.enough
						? t("enough readings")
						: t("one more reading helps")
			}
		>
			{studied.bags && <Spread bags={studied.bags} title={several ? t("This room") : t("Bags, and how surely")} />}
			{several && study.value?.bags && <Spread bags={study.value.bags} title={t("All rooms")} />}
			<NextReading index={index} studied={studied} />
			<Suspects {...props} />
		</Section>
	);
}

function Spread({ bags, title }: { bags: BagsStudy; title: string }) {
	return (
		<>
			<div class="study-scroll">
				<div class="wide" tabIndex={0}>
					<table class="study-table">
						<caption>{title}</caption>
						<thead>
							<tr>
								<th scope="col">{t("Enough, this surely")}</th>
								<th scope="col">{t("50 %")}</th>
								<th scope="col">{t("90 %")}</th>
								<th scope="col">{t("99 %")}</th>
							</tr>
						</thead>
						<tbody>
							<tr>
								<th scope="row">{t("Bags to buy")}</th>
								<td>{bags.half}</td>
								<td>{bags.ninety}</td>
								<td>{bags.ninetyNine}</td>
							</tr>
						</tbody>
					</table>
				</div>
			</div>
			<p class="small">
				{t("Expected: {mean} bags, give or take {deviation} (one standard deviation), with what stays in buckets.", {
					mean: reckoned(bags.mean),
					deviation: number(bags.deviation, 2),
				})}
			</p>
			<ul class="causes" aria-label={t("Where the doubt comes from")}>
				{bags.causes.map((cause) => (
					<li key={cause.cause}>
						<span>{causeWords()[cause.cause] ?? cause.cause}</span>
						<meter min={0} max={1} value={cause.share} aria-hidden="true" />
						<b>{Math.round(100 * cause.share)} %</b>
					</li>
				))}
			</ul>
		</>
	);
}

function NextReading({ index, studied }: { index: number; studied: RoomStudy }) {
	const next = studied.next;
	if (!next) return null;
	const spot = { x: said(next.x.text), y: said(next.y.text), bags: number(next.bags, 2) };
	return (
		<div class="row">
			<p class="next-says">
				{next.enough
					? t(
							"Enough readings: the best spot for one more (x {x}, y {y}) would take only {bags} bags off the doubt.",
							spot,
						)
					: t("Read next at x {x}, y {y}: it takes {bags} bags off the doubt.", spot)}
			</p>
			<button
				type="button"
				onClick={() =>
					editRoom(index, "readings/rows", (room) => {
						room.readings.rows.push({ x: next.x.text, y: next.y.text, height: "" });
					})
				}
			>
				{t("Add this spot to the readings")}
			</button>
		</div>
	);
}

function Suspects({ index, studied, onPick }: { index: number; studied: RoomStudy; onPick: (row: number) => void }) {
	if (!studied.screened) {
		return <p class="small">{t("There are too many readings to hold each against the others.")}</p>;
	}
	if (studied.suspects.length === 0) {
		return <p class="small">{t("Every reading fits the others.")}</p>;
	}
	return (
		<div class="study-scroll">
			<div class="wide" tabIndex={0}>
				<table class="study-table">
					<caption>{t("Readings that the others don’t bear out: read them again")}</caption>
					<thead>
						<tr>
							<th scope="col">{t("Reading")}</th>
							<th scope="col">{t("Read")}</th>
							<th scope="col">{t("Expected")}</th>
							<th scope="col">{t("Bags without it")}</th>
							<th scope="col">
								<span class="unseen">{t("Do")}</span>
							</th>
						</tr>
					</thead>
					<tbody>
						{studied.suspects.map((suspect) => (
							<tr key={suspect.row} data-suspect={suspect.row + 1}>
								<th scope="row">
									<button type="button" class="button-quiet" onClick={() => onPick(suspect.row)}>
										{suspect.row + 1}
									</button>
								</th>
								<td>{said(suspect.read.text)}</td>
								<td>{said(suspect.expected.text)}</td>
								<td>{signed(suspect.bags)}</td>
								<td>
									<button
										type="button"
										onClick={() =>
											editRoom(index, `readings/rows/${suspect.row}/off`, (room) => {
												const row = room.readings.rows[suspect.row];
												if (row) row.off = true;
											})
										}
									>
										{t("Leave out")}
									</button>
								</td>
							</tr>
						))}
					</tbody>
				</table>
			</div>
		</div>
	);
}
