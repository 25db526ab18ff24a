// The moisture tests of one deck: how many, how deep, where, and what those made still lack.

import type { MoisturePlan } from "../engine/contract";
import { said, t } from "../words/words";

export function MoistureTests({ tests }: { tests: MoisturePlan }) {
	return (
		<details class="word-group">
			<summary>
				{t("Where to test for moisture")}{" "}
				<span class="small soft">
					{tests.satisfied ? t("done as the method asks") : t("{needed} tests", { needed: tests.needed })}
				</span>
			</summary>
			<p class="small">
				{t("{method}: {needed} tests on this deck.", { method: said(tests.method), needed: tests.needed })}{" "}
				{tests.probeDepth && t("Probes sit {depth} deep.", { depth: said(tests.probeDepth.text) })}
			</p>
			<ol class="small">
				{tests.spots.map((spot) => (
					<li key={`${spot.x.si}/${spot.y.si}`}>{t("x {x}, y {y}", { x: said(spot.x.text), y: said(spot.y.text) })}</li>
				))}
			</ol>
			{tests.open.length > 0 && (
				<ul class="small">
					{tests.open.map((open) => (
						<li key={open}>{said(open)}</li>
					))}
				</ul>
			)}
			<p class="small soft">
				{t("Find cables, pipes and floor heating before you drill.")} {said(tests.source)}
			</p>
		</details>
	);
}
