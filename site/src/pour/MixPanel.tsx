// How warm the mix comes out, how warm the water must be, and the flow ring against the sheet.
import { WordField } from "../bench/WordField";
import type { PourDay, Subject } from "../engine/contract";
import { t } from "../words/words";

const jobSubject: Subject = { scope: "job", room: "", id: "", name: "" };

export function MixPanel({ day }: { day: PourDay }) {
	const { mix } = day;
	return (
		<section class="mix" aria-labelledby="mix">
			<h2 id="mix">{t("Mix and flow ring")}</h2>
			<p>
				{mix.temperature
					? t("Powder and water come to {mixed}; the sheet wants {coldest} to {warmest}.", {
							mixed: mix.temperature.text,
							coldest: mix.coldest.text,
							warmest: mix.warmest.text,
						})
					: t("The sheet wants the mix at {coldest} to {warmest}.", {
							coldest: mix.coldest.text,
							warmest: mix.warmest.text,
						})}{" "}
				{mix.says}
			</p>
			{mix.spreadFrom && (
				<p>
					{t("Flow ring: {from} to {to}.", { from: mix.spreadFrom.text, to: mix.spreadTo?.text ?? "" })}{" "}
					{mix.spread && <b data-outcome={mix.spread.outcome}>{mix.spread.says}</b>}
				</p>
			)}
			<div class="row row-even no-print">
				{["powder.temperature", "water.temperature", "mix.spread"].map((word) => (
					<WordField key={word} name={word} subject={jobSubject} />
				))}
			</div>
		</section>
	);
}
