// A job that came in an address: looked at first, kept only when the person says so.
import { useEffect, useState } from "preact/hooks";
import { call } from "../engine/client";
import type { Job, Plan } from "../engine/contract";
import { FloorMap } from "../map/FloorMap";
import { open } from "../state/job";
import { go } from "../state/route";
import { unpack } from "../state/share";
import { said, t } from "../words/words";

export function Shared({ id }: { id: string }) {
	const [found, setFound] = useState<{ job: Job; plan: Plan } | null>(null);
	const [wrong, setWrong] = useState("");
	useEffect(() => {
		setWrong("");
		look(id).then(setFound, () =>
			setWrong(
				t(
					"This link holds no job that can be read. It may have been cut short on its way: ask for it again, or for the job as a file.",
				),
			),
		);
	}, [id]);
	if (wrong) {
		return (
			<main class="start" id="main">
				<p role="alert">{wrong}</p>
				<button type="button" onClick={() => go("")}>
					{t("To the first screen")}
				</button>
			</main>
		);
	}
	if (!found) return <main class="start" id="main" aria-busy="true" />;
	const { job, plan } = found;
	const take = async () => {
		const { job: fresh } = await call("jobs.new", { units: job.units });
		open({ ...job, id: fresh.id });
		go("job", fresh.id);
	};
	return (
		<main class="start" id="main">
			<div class="start-lead">
				<h1>{job.name || t("Job without a name")}</h1>
				<p>{t("This job came in a link. It is kept nowhere until you take it.")}</p>
			</div>
			<ul class="shared-rooms">
				{plan.rooms.map((room, i) => (
					<li key={room.id}>
						<b>{room.name || t("Room {n}", { n: i + 1 })}</b> {said(room.area.text)}
						{room.readings.length > 0 && `, ${t("{count} readings", { count: room.readings.length })}`}
						{room.rough && `, ${t("about {depth} deep", { depth: said(room.rough.mean.text) })}`}
					</li>
				))}
				{plan.totals.ready && (
					<li>{t("{bags} bags, {volume}", { bags: plan.totals.bags, volume: said(plan.totals.volume.text) })}</li>
				)}
			</ul>
			{plan.rooms[0]?.drawn && (
				<div>
					<FloorMap alone room={plan.rooms[0]} picked={null} onPick={() => {}} onAdd={() => {}} onOutline={() => {}} />
				</div>
			)}
			<div class="row">
				<button type="button" class="button-main" onClick={take}>
					{t("Take it as a job of mine")}
				</button>
				<button type="button" onClick={() => go("")}>
					{t("Leave it")}
				</button>
			</div>
		</main>
	);
}

async function look(packed: string): Promise<{ job: Job; plan: Plan }> {
	const { job } = await call("jobs.read", { text: await unpack(packed) });
	return { job, plan: await call("plan", { job, book: "" }) };
}
