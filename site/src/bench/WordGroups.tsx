// Words of the vocabulary as foldable groups, one a step of the work; a word that makes no sense here, as the plan says, is left out.

import type { Subject, WordPlan } from "../engine/contract";
import { answersOf } from "../state/answers";
import { job, vocabulary } from "../state/job";
import { t } from "../words/words";
import { WordField } from "./WordField";

export const jobSubject: Subject = { scope: "job", room: "", id: "", name: "" };

const titles = (): Record<string, string> => ({
	joists: t("Joists"),
	sheets: t("Sheets and fasteners"),
	surface: t("Surface, cracks and joints"),
	moisture: t("Moisture"),
	priming: t("Priming"),
	heating: t("Heating"),
	"old floor": t("Old floor"),
	edges: t("Closing the room"),
	lifting: t("Carrying and lifting"),
	dust: t("Dust"),
	people: t("Skin, power, fumes"),
});

/** The asked words of a step that make sense while the given conditions hold. */
function wordsOf(scope: string, step: string, holds: string[], without: string[]): WordPlan[] {
	return vocabulary.value.filter(
		(word) =>
			word.asked &&
			word.scope === scope &&
			word.step === step &&
			!without.includes(word.name) &&
			(word.when === "" || holds.includes(word.when)),
	);
}

interface GroupProps {
	subject: Subject;
	step: string;
	holds: string[] | undefined;
	without?: string[];
}

/** Every word of one step, one under the other. */
export function Words({ subject, step, holds, without }: GroupProps) {
	return (
		<>
			{wordsOf(subject.scope, step, holds ?? [], without ?? []).map((word) => (
				<WordField key={word.name} name={word.name} subject={subject} />
			))}
		</>
	);
}

/** One step's words, folded, with how many are answered. */
export function WordGroup({ subject, step, holds, without }: GroupProps) {
	const words = wordsOf(subject.scope, step, holds ?? [], without ?? []);
	const answers = job.value && answersOf(job.value, subject);
	if (words.length === 0) return null;
	const answered = words.filter((word) => (answers?.[word.name] ?? "") !== "").length;
	return (
		<details class="word-group" data-step={step}>
			<summary>
				{titles()[step] ?? step}{" "}
				<span class="small soft">{t("{answered} of {count} answered", { answered, count: words.length })}</span>
			</summary>
			{words.map((word) => (
				<WordField key={word.name} name={word.name} subject={subject} />
			))}
		</details>
	);
}
