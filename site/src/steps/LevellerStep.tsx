// The leveller: typical values for a first idea, or what the bag says.
import { useState } from "preact/hooks";
import { labelOf, ValueField } from "../bench/WordField";
import { edit, job, vocabulary } from "../state/job";
import { to } from "../state/route";
import { t } from "../words/words";
import { goOn, type StepProps } from "./guide";
import { How } from "./How";
import { BagPicture } from "./pictures";

const shownFirst = 6; // the vocabulary puts first what the bag count goes by

export function LevellerStep({ step }: StepProps) {
	const sheet = job.value?.sheets.leveller;
	const [own, setOwn] = useState(sheet?.generic === false);
	if (!sheet) return null;
	const words = vocabulary.value.filter((word) => word.step === "leveller");
	const field = (word: (typeof words)[number]) => (
		<ValueField
			key={word.name}
			word={word}
			label={labelOf(word)}
			field={`sheets/leveller/values/${word.name}`}
			value={sheet.values[word.name] ?? ""}
			onChange={(typed) =>
				edit(`sheets/leveller/${word.name}`, (draft) => {
					const one = draft.sheets.leveller;
					if (!one) return;
					one.values[word.name] = typed;
					one.generic = false;
				})
			}
		/>
	);
	return (
		<>
			<div class="answers" role="group" aria-label={t("Which leveller")}>
				<button type="button" aria-pressed={!own} onClick={() => goOn(step.id)}>
					{t("Typical values for now")}
				</button>
				<button type="button" aria-pressed={own} onClick={() => setOwn(true)}>
					{t("I have the bag here")}
				</button>
			</div>
			{own && (
				<>
					{words.slice(0, shownFirst).map(field)}
					<details>
						<summary>{t("More from the bag: times and temperatures")}</summary>
						<div class="step-more">{words.slice(shownFirst).map(field)}</div>
					</details>
				</>
			)}
			<How
				picture={<BagPicture />}
				text={t("What one bag fills is often given as litres of mix, or as area at a depth: 1 m² at 1 mm is 1 L.")}
			/>
			<p>
				<a href={to("help", "bag")}>{t("How to read a bag")}</a>
			</p>
		</>
	);
}
