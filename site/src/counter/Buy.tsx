// Everything to buy for a job: the list with its reasons, prices, journeys, files, the link, and what came of it.
import { useEffect, useState } from "preact/hooks";
import { call } from "../engine/client";
import { Pick, Section } from "../parts/fields";
import { bookText } from "../state/book";
import { fileName, save } from "../state/files";
import { job } from "../state/job";
import { saveAsFile } from "../state/kept";
import { shareLink } from "../state/share";
import { shop, takeOff, watchTakeOff } from "../state/takeoff";
import { said, t } from "../words/words";
import { AfterEntry } from "./AfterEntry";
import { Sureness } from "./Asked";
import { OfferEntry } from "./Counter";
import { listCSV } from "./csv";
import { Because, Quote } from "./Quote";
import { ShopEntry } from "./ShopEntry";

export function Buy() {
	const [paper, setPaper] = useState("quote");
	useEffect(watchTakeOff, []);
	const worked = takeOff.value;
	return (
		<main class="counter" id="main">
			<div class="counter-entry no-print">
				<h1>{t("To buy")}</h1>
				{worked && !worked.ready && (
					<p class="field-hint">{t("A room has neither readings nor a depth yet: bags are left out until it has.")}</p>
				)}
				<Sureness />
				<Journeys />
				<Section title={t("Quote")} says={job.value?.offer?.customer ?? ""}>
					<OfferEntry />
				</Section>
				<Section title={t("Where each quantity comes from")}>
					{worked?.lines.map((line) => (
						<details key={line.key}>
							<summary>
								{said(line.item)}: {said(line.need.text)}
							</summary>
							<Because line={line} />
						</details>
					))}
				</Section>
				<AfterEntry />
			</div>
			<div class="counter-quote">
				<div class="row no-print counter-ends">
					<Pick
						label={t("Paper")}
						value={paper}
						onChange={setPaper}
						choices={[
							{ value: "quote", label: t("Quote") },
							{ value: "list", label: t("Shopping list") },
						]}
					/>
					<button type="button" class="button-main" onClick={() => print()}>
						{t("Print")}
					</button>
					<Files />
				</div>
				<Quote list={paper === "list"} />
				<ShopEntry />
			</div>
		</main>
	);
}

function Journeys() {
	const worked = takeOff.value;
	if (!worked || worked.mass.si === 0) return null;
	return (
		<p>
			{t("{mass} in all.", { mass: said(worked.mass.text) })}{" "}
			{said(worked.hand.says) ||
				t("By hand, {load} at a time: {count} trips.", {
					load: said(worked.hand.capacity.text),
					count: worked.hand.count,
				})}{" "}
			{said(worked.vehicle.says) ||
				t("By vehicle, {load} at a time: {count}.", {
					load: said(worked.vehicle.capacity.text),
					count: worked.vehicle.count,
				})}
			{worked.labour && ` ${t("Work: {hours} of hands' time.", { hours: said(worked.labour.hours.text) })}`}
		</p>
	);
}

function Files() {
	const [told, setTold] = useState("");
	const current = job.value;
	if (!current) return null;
	const csv = async () => {
		const { lines } = await call("takeoff", { job: current, shop: shop.value ?? undefined, book: bookText.value });
		save(fileName(current.name, "csv"), await listCSV(lines), "text/csv");
	};
	const link = async () => {
		const address = await shareLink(current);
		await navigator.clipboard.writeText(address).catch(() => {});
		setTold(
			address.length > 8000
				? t("Copied. It is long: some mail programs cut such links; a file is surer.")
				: t("Copied. The whole job is in the link; the customer’s name isn’t."),
		);
	};
	return (
		<>
			<button type="button" onClick={csv}>
				{t("Save the list as CSV")}
			</button>
			<button type="button" onClick={() => saveAsFile(current)}>
				{t("Save the job as a file")}
			</button>
			<button type="button" onClick={link}>
				{t("Copy a link to the job")}
			</button>
			<span role="status" class="small">
				{told}
			</span>
		</>
	);
}
