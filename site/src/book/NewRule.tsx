// A rule from scratch: a figure or a check, with its first example, tried on the open job while it is written.
import { useId, useState } from "preact/hooks";
import type { Rule } from "../engine/contract";
import { Choice, Pick } from "../parts/fields";
import { changeRule } from "../state/book";
import { job, vocabulary } from "../state/job";
import { go } from "../state/route";
import { ruleNamed } from "../state/rules";
import { said, t } from "../words/words";
import { Examples } from "./Examples";
import { Outcomes } from "./Outcomes";
import { RuleErrors } from "./RuleErrors";
import { RuleForm } from "./RuleForm";
import { useTried } from "./RulePanel";

const scopes = ["job", "room", "deck", "door", "penetration"];

function blank(check: boolean): Rule {
	const common = { name: "", theme: t("My own"), for: "deck", words: "", source: "", examples: [] };
	return check
		? { ...common, check, weight: "watch", applies: "", holds: "", says: "", remedy: "" }
		: { ...common, check, dimension: "length", value: "" };
}

export function NewRule() {
	const [rule, setRule] = useState<Rule | null>(null);
	return (
		<section class="card" aria-labelledby="new-title">
			<h2 id="new-title">{t("A rule of your own")}</h2>
			<p class="small soft">
				{t(
					"A figure is a named value; a check is a condition that must hold. Both may use every word in the guide below.",
				)}
			</p>
			{rule ? (
				<Draft rule={rule} onChange={setRule} />
			) : (
				<div class="row">
					<button type="button" onClick={() => setRule(blank(true))}>
						{t("New check")}
					</button>
					<button type="button" onClick={() => setRule(blank(false))}>
						{t("New figure")}
					</button>
				</div>
			)}
		</section>
	);
}

function Draft({ rule, onChange }: { rule: Rule; onChange: (rule: Rule | null) => void }) {
	const id = useId();
	const tried = useTried(rule.name === "" ? null : rule);
	const taken = ruleNamed(rule.name) !== undefined;
	const errors = tried?.view.errors ?? [];
	const dimensions = [...new Set(vocabulary.value.map((word) => word.dimension).filter(Boolean))].sort();
	return (
		<>
			<div class="field">
				<label for={id}>
					{rule.check ? t("Name, with hyphens: two-people-on-sunday") : t("Name, with underscores: my_least_depth")}
				</label>
				<input
					id={id}
					type="text"
					value={rule.name}
					onInput={(event) => onChange({ ...rule, name: event.currentTarget.value.trim() })}
				/>
				{taken && <p class="field-error">{t("The rulebook has a rule of this name already.")}</p>}
			</div>
			<Pick
				label={t("One outcome for each")}
				value={rule.for}
				onChange={(scope) => onChange({ ...rule, for: scope })}
				choices={scopes.map((scope) => ({ value: scope, label: said(scope) }))}
			/>
			{!rule.check && (
				<Choice
					label={t("What it is")}
					value={rule.kind === "truth" ? "truth" : (rule.dimension ?? "")}
					onChange={(dimension) =>
						onChange(
							dimension === "truth"
								? { ...rule, kind: "truth", dimension: "" }
								: { ...rule, kind: "quantity", dimension },
						)
					}
					choices={[
						{ value: "truth", label: t("yes or no") },
						...dimensions.map((name) => ({ value: name, label: said(name) })),
					]}
				/>
			)}
			<RuleForm rule={rule} errors={errors.filter((error) => error.field)} onChange={onChange} />
			<RuleErrors errors={errors.filter((error) => !error.field)} />
			<Examples
				rule={rule}
				results={tried?.view.examples ?? []}
				onChange={(examples) => onChange({ ...rule, examples })}
			/>
			{job.value && tried && <Outcomes on={tried.on} />}
			<div class="row">
				<button
					type="button"
					class="button-main"
					disabled={rule.name === "" || taken}
					onClick={async () => {
						await changeRule({ ...rule, examples: (rule.examples ?? []).filter((line) => line.trim()) });
						go("rules", rule.name);
					}}
				>
					{errors.length > 0 ? t("Keep it with its errors") : t("Keep this rule")}
				</button>
				<button type="button" onClick={() => onChange(null)}>
					{t("Leave it")}
				</button>
			</div>
		</>
	);
}
