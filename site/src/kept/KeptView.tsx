// What is kept of a job and where: on this device, in files, and its earlier states, any of which can be made the job's own again.
import { useEffect, useState } from "preact/hooks";
import { call } from "../engine/client";
import type { Job, Revision } from "../engine/contract";
import { SaveButton, when } from "../parts/Kept";
import { job, open } from "../state/job";
import { allKept, settled, stands } from "../state/kept";
import { ask, lasting, lookAtLasting } from "../state/lasting";
import { to } from "../state/route";
import { writer } from "../state/writer";
import { said, t } from "../words/words";

export function KeptView() {
	const current = job.value;
	if (!current) return null;
	return (
		<main class="kept" id="main">
			<p class="no-print">
				<a class="button" href={to("job", current.id)}>
					{t("Back to the floor")}
				</a>
			</p>
			<h1>{t("What is kept of {name}", { name: current.name || t("the job") })}</h1>
			<Here />
			<InFiles />
			<Earlier job={current} />
		</main>
	);
}

function Here() {
	useEffect(() => {
		lookAtLasting().catch(() => {});
	}, []);
	return (
		<section aria-labelledby="kept-here">
			<h2 id="kept-here">{t("On this device, in this browser")}</h2>
			<p>
				{allKept.value
					? t("All of it is kept, last {time}. It was read back from the disk.", {
							time: when(stands.value?.kept ?? ""),
						})
					: t("Keeping…")}
			</p>
			<p data-lasting={lasting.value}>{lastingSays()}</p>
			{lasting.value === "no" && (
				<button type="button" onClick={() => ask()}>
					{t("Ask the browser to keep it")}
				</button>
			)}
		</section>
	);
}

function lastingSays(): string {
	switch (lasting.value) {
		case "yes":
			return t("The browser has promised not to clear it by itself when the device runs short of room.");
		case "no":
			return t(
				"The browser has not promised to keep it: it may clear it when the device runs short of room. Files of your own are the surest.",
			);
	}
	return t("This browser does not say whether it may clear it by itself. Files of your own are the surest.");
}

function InFiles() {
	const { exported = "", unsaved = 0 } = stands.value ?? {};
	return (
		<section aria-labelledby="kept-files">
			<h2 id="kept-files">{t("In files of your own")}</h2>
			<p>{exported ? t("Last exported {time}.", { time: when(exported) }) : t("Never exported.")}</p>
			{unsaved > 0 && <p>{t("{count} changes are in no file yet.", { count: unsaved })}</p>}
			<SaveButton />
		</section>
	);
}

/** A job's earlier states, the newest first. */
function Earlier({ job: current }: { job: Job }) {
	const [revisions, setRevisions] = useState<Revision[] | null>(null);
	const [told, setTold] = useState("");
	const load = () =>
		settled()
			.then(() => call("jobs.revisions", { id: current.id }))
			.then((list) => setRevisions(list.revisions))
			.catch((error: Error) => setTold(said(error.message)));
	useEffect(() => {
		void load();
	}, [current.id]);
	const goBack = async (revision: Revision) => {
		try {
			await settled();
			const opened = await call("jobs.restore", { id: current.id, number: revision.number });
			open(opened.job, opened);
			setTold(
				t("The job is as it was {time}. What it was until now is the first of the earlier states.", {
					time: when(revision.kept),
				}),
			);
			await load();
		} catch (error) {
			setTold(said((error as Error).message));
		}
	};
	return (
		<section aria-labelledby="kept-earlier">
			<h2 id="kept-earlier">{t("Earlier states")}</h2>
			<p>{t("While a job is changed its state is put aside every ten minutes; the last fifty stay.")}</p>
			<p role="status">{told}</p>
			{revisions?.length === 0 && <p class="soft">{t("None yet.")}</p>}
			<ol class="kept-states">
				{revisions?.map((revision) => (
					<li key={revision.number}>
						<span>
							<b>{when(revision.kept)}</b> {revision.name || t("Job without a name")}
							<span class="small soft">
								{" "}
								{t("rooms: {rooms}, readings: {readings}", { rooms: revision.rooms, readings: revision.readings })}
							</span>
						</span>
						<button type="button" disabled={writer.value === "other"} onClick={() => goBack(revision)}>
							{t("Go back to this")}
						</button>
					</li>
				))}
			</ol>
		</section>
	);
}
