// The record of pour day beside the plan: what was meant and what happened, batch by batch, to complete and to print.
import type { PourRecord } from "../engine/contract";
import { Field } from "../parts/fields";
import { region, t } from "../words/words";
import { BatchTable } from "./BatchTable";
import { type Pouring, recordOf, write, writeBatch } from "./record";
import type { Shown } from "./worked";

export function RecordSheet({ shown: { pour } }: { shown: Shown }) {
	const record = recordOf(pour);
	if (!record) return null;
	return (
		<section class="record" aria-labelledby="record">
			<h2 id="record">{t("Record of the pour")}</h2>
			<p>
				{t("Began {start}", { start: new Date(record.started).toLocaleString(region()) })}
				{record.ended && `, ${t("ended {end}", { end: new Date(record.ended).toLocaleTimeString(region()) })}`}.
			</p>
			<RecordFields pour={pour} record={record} />
			<BatchTable
				pour={pour}
				record={record}
				unknown="—"
				written={(field, batch, came) =>
					came && (
						<input
							type="text"
							aria-label={
								field === "water"
									? t("Water measured for batch {n}", { n: batch.number })
									: t("Note on batch {n}", { n: batch.number })
							}
							value={came[field] ?? ""}
							onInput={(event) => writeBatch(pour, batch.number, field, event.currentTarget.value)}
						/>
					)
				}
			/>
		</section>
	);
}

/** What is written down besides the taps. */
export function RecordFields({ pour, record }: { pour: Pouring; record: PourRecord }) {
	const fields: { name: keyof PourRecord; label: string }[] = [
		{ name: "who", label: t("Who poured") },
		{ name: "lots", label: t("Lot numbers on the bags") },
		{ name: "air", label: t("Air, measured") },
		{ name: "deck", label: t("Deck, measured") },
		{ name: "water", label: t("Water, measured") },
		{ name: "mix", label: t("Mix, measured") },
		{ name: "spread", label: t("Flow ring, measured") },
		{ name: "notes", label: t("Notes") },
	];
	return (
		<div class="row row-even record-fields">
			{fields.map(({ name, label }) => (
				<Field
					key={name}
					label={label}
					field={`record/${name}`}
					value={String(record[name] ?? "")}
					onChange={(typed) => write(pour, name, typed)}
				/>
			))}
		</div>
	);
}
