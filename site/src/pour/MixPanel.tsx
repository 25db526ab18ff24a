// How warm the mix comes out, how warm the water must be, and the flow ring against the sheet.
import { WordField } from "../bench/WordField";
import type { PourDay, Subject } from "../engine/contract";
import { said, t } from "../words/words";

const jobSubject: Subject = { scope: "job", room: "", id: "", name: "" };

export function MixPanel({ day }: { day: PourDay }) {
	const { mix } = day;
	return (
		<section class="mix" aria-labelledby="mix">
			<h2 id="mix">{t("Mix and flow ring")}</h2>
			<p>
				{mix.temperature
					? t("Powder and water come to {mixed}; the sheet wants {coldest} to {warmest}.", {
							mixed: said(mix.temperature.text),
							coldest: said(mix.coldest.text),
							warmest: said(mix.warmest.text),
						})
					: t("The sheet wants the mix at {coldest} to {warmest}.", {
							coldest: said(mix.coldest.text),
							warmest: said(mix.warmest.text),
						})}{" "}
				{said(mix.says)}
			</p>
			{mix.spreadFrom && (
				<p>
					{t("Flow ring: {from} to {to}.", { from: said(mix.spreadFrom.text), to: said(mix.spreadTo?.text) })}{" "}
					{mix.spread && <b data-outcome={mix.spread.outcome}>{said(mix.spread.says)}</b>}
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
