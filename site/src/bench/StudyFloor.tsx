// Flatness now and wanted, height indicators, and the heights all round.
import type { DoorHeightsStudy, FlatnessStudy, IndicatorsStudy, RoomStudy } from "../engine/contract";
import { Section } from "../parts/fields";
import { roomStudy } from "../state/study";
import { number, said, t } from "../words/words";

export function Flatness({ studied }: { studied: RoomStudy }) {
	const flatness = studied.flatness;
	if (!flatness) return null;
	const worst = flatness.gaps.find((gap) => !gap.kept) ?? flatness.gaps[0];
	return (
		<Section
			title={t("Flatness")}
			id="study-flatness"
			says={
				worst ? t("{depth} now, {limit} wanted", { depth: said(worst.depth.text), limit: said(worst.limit.text) }) : ""
			}
		>
			<p class="small">
				{flatness.stated
					? t("Wanted: {name}.", { name: said(flatness.name) })
					: t("Wanted: {name}, which suits the finish. Name another under “Air, finish and crew”.", {
							name: said(flatness.name),
						})}
			</p>
			<div class="study-scroll">
				<div class="wide" tabIndex={0}>
					<table class="study-table">
						<caption>{t("The largest gap under a straightedge on the bare deck, anywhere, in any direction")}</caption>
						<thead>
							<tr>
								<th scope="col">{t("Straightedge")}</th>
								<th scope="col">{t("Allowed")}</th>
								<th scope="col">{t("Now")}</th>
								<th scope="col">{t("Source")}</th>
							</tr>
						</thead>
						<tbody>
							{flatness.gaps.map((gap) => (
								<tr key={gap.name}>
									<th scope="row">{said(gap.length.text)}</th>
									<td>{said(gap.limit.text)}</td>
									<td>
										{said(gap.fault) || said(gap.depth.text)} {!gap.fault && (gap.kept ? t("kept") : t("over"))}
									</td>
									<td class="small soft">{said(gap.source)}</td>
								</tr>
							))}
						</tbody>
					</table>
				</div>
			</div>
			<FNumbers flatness={flatness} />
			<h3>{t("What pouring does not cure")}</h3>
			<ul class="bulleted small">
				{flatness.cures.map((says) => (
					<li key={says}>{said(says)}</li>
				))}
			</ul>
		</Section>
	);
}

function FNumbers({ flatness }: { flatness: FlatnessStudy }) {
	if (!flatness.all) {
		return (
			<p class="small soft">
				{t("F-numbers need twelve readings or more on a straight line, 12 in (or 300 mm) apart; none was found.")}
			</p>
		);
	}
	return (
		<div class="study-scroll">
			<div class="wide" tabIndex={0}>
				<table class="study-table">
					<caption>{t("F-numbers of the bare deck, along lines of readings")}</caption>
					<thead>
						<tr>
							<th scope="col">{t("Line")}</th>
							<th scope="col">{t("Readings")}</th>
							<th scope="col">FF</th>
							<th scope="col">FL</th>
						</tr>
					</thead>
					<tbody>
						{flatness.lines.map((line, i) => (
							<tr key={i}>
								<th scope="row">
									{`(${number(line.from.x, 2)}, ${number(line.from.y, 2)}) – (${number(line.to.x, 2)}, ${number(line.to.y, 2)}) m`}
								</th>
								<td>{line.readings}</td>
								<td>{said(line.flatness)}</td>
								<td>{said(line.levelness)}</td>
							</tr>
						))}
						<tr>
							<th scope="row">{t("All together")}</th>
							<td>{flatness.all.readings}</td>
							<td>{said(flatness.all.flatness)}</td>
							<td>{said(flatness.all.levelness)}</td>
						</tr>
					</tbody>
				</table>
			</div>
			<p class="small">
				{t("Classes that this reaches: {classes}.", {
					classes:
						flatness.classes
							.filter((c) => c.kept)
							.map((c) => `${said(c.name)} (${c.flatness}/${c.levelness})`)
							.join(", ") || t("none"),
				})}
				{flatness.all.rescaled &&
					` ${t("Read every 300 mm and converted to 12 in: not the standard’s own procedure.")}`}
			</p>
		</div>
	);
}

export function Indicators({ studied }: { studied: RoomStudy }) {
	const indicators = studied.indicators;
	if (!indicators) return null;
	return (
		<Section
			title={t("Indicators")}
			id="study-indicators"
			says={t("{count} to set", { count: indicators.pins.length })}
		>
			<PinTable indicators={indicators} />
			<p class="caution">
				{indicators.heated
					? t("This floor is heated: screw and drill nothing. Glue the indicators or use feet that stand on their own.")
					: t(
							"Know what lies under the deck before you screw or drill: pipes, cables, heating. Where you don’t, glue them.",
						)}
			</p>
		</Section>
	);
}

function PinTable({ indicators }: { indicators: IndicatorsStudy }) {
	return (
		<div class="study-scroll">
			<div class="wide" tabIndex={0}>
				<table class="study-table">
					<caption>
						{t("Height indicators in walking order, {spacing} apart, {clearance} clear of walls and pipes", {
							spacing: said(indicators.spacing.text),
							clearance: said(indicators.clearance.text),
						})}
					</caption>
					<thead>
						<tr>
							<th scope="col">{t("Indicator")}</th>
							<th scope="col">x</th>
							<th scope="col">y</th>
							<th scope="col">{t("Head over the deck")}</th>
						</tr>
					</thead>
					<tbody>
						{indicators.pins.map((pin, i) => (
							<tr key={i}>
								<th scope="row">{i + 1}</th>
								<td>{said(pin.x.text)}</td>
								<td>{said(pin.y.text)}</td>
								<td>{said(pin.head.text)}</td>
							</tr>
						))}
					</tbody>
				</table>
			</div>
		</div>
	);
}

/** The indicators on paper, for the floor. */
export function PrintedIndicators({ id }: { id: string | undefined }) {
	const indicators = roomStudy(id)?.indicators;
	return indicators && indicators.pins.length > 0 ? (
		<div class="print-only">
			<PinTable indicators={indicators} />
		</div>
	) : null;
}

const classWords = (): Record<string, string> => ({
	flush: t("May stay upright"),
	bevel: t("Reducer with a bevel"),
	ramp: t("Ramp"),
});

export function Heights({ studied }: { studied: RoomStudy }) {
	const heights = studied.heights;
	if (!heights) return null;
	return (
		<Section
			title={t("Heights all round")}
			id="study-heights"
			says={
				heights.rise
					? t("the floor rises {rise} on average", { rise: said(heights.rise.text) })
					: t("thickness of the finish not said")
			}
		>
			{heights.finish ? (
				<p class="small">{t("The finish adds {finish} over the pour.", { finish: said(heights.finish.text) })}</p>
			) : (
				<p class="small">{t("Say how thick the finish is, and the steps at the doors are worked out.")}</p>
			)}
			{heights.doors.map((door) => (
				<DoorHeights key={door.id} door={door} />
			))}
			{heights.passed.length > 0 && (
				<ul class="bulleted small">
					{heights.passed.map((one) => (
						<li key={one.id}>
							{one.extension.si >= 0
								? t("{name}: needs {height} more to meet the finished floor.", {
										name: one.name || said(one.kind),
										height: said(one.extension.text),
									})
								: t("{name}: stands proud of the finished floor by {height}.", {
										name: one.name || said(one.kind),
										height: said(one.extension.text).replace("-", ""),
									})}
						</li>
					))}
				</ul>
			)}
			<p class="small soft">
				{t(
					"Steps after ADA Standards §303: 1/4 in upright, 1/2 in with a bevel of 1 in 2, more by a ramp. Risers after IBC 1009.3.1 and IRC R311.7.5.1. The local code goes first.",
				)}
			</p>
		</Section>
	);
}

function DoorHeights({ door }: { door: DoorHeightsStudy }) {
	return (
		<div class="card" data-door={door.name}>
			<h3>{door.name || t("Door")}</h3>
			<dl class="pairs">
				<Pair label={t("Dam, at least this high")} text={said(door.dam.text)} />
				<Pair label={t("Finished floor over the deck")} text={said(door.rise?.text)} />
				<Pair label={t("Step to the floor beyond")} text={said(door.step?.text)} />
				<Pair label={t("It takes")} text={door.class ? (classWords()[door.class] ?? door.class) : undefined} />
				<Pair
					label={t("Length of it")}
					text={
						door.run && door.leastRun
							? door.run.si === door.leastRun.si
								? said(door.run.text)
								: t("{run}; {least} where 1/4 in stays upright", {
										run: said(door.run.text),
										least: said(door.leastRun.text),
									})
							: undefined
					}
				/>
				<Pair label={t("Door leaf clears the floor by")} text={said(door.clearance?.text)} />
				<Pair
					label={t("To take off the leaf")}
					text={door.trim && door.trim.si > 0 ? said(door.trim.text) : undefined}
				/>
				{door.stair && (
					<>
						<Pair
							label={t("Riser at this floor, the others")}
							text={`${said(door.stair.riser.text)}, ${said(door.stair.other.text)}`}
						/>
						<Pair
							label={t("Risers differ by")}
							text={`${said(door.stair.variation.text)} ${door.stair.uniform ? t("kept") : t("more than 3/8 in")}`}
						/>
						{!door.stair.low && <Pair label={t("Highest riser")} text={t("over 7 3/4 in")} />}
					</>
				)}
			</dl>
		</div>
	);
}

function Pair({ label, text }: { label: string; text: string | undefined }) {
	return text ? (
		<div>
			<dt>{label}</dt>
			<dd>{text}</dd>
		</div>
	) : null;
}
