// Fields: what a person types is kept as typed; a bare number is kept with its unit; an error stands beside its field.
import type { ComponentChildren } from "preact";
import { useId, useState } from "preact/hooks";
import { entryOfSection } from "../help/entries";
import { problemOf } from "../state/job";
import { to } from "../state/route";
import { said, t } from "../words/words";

const bareNumber = /^[\d\s.,/+−-]+$/;

/** Puts the field's usual unit behind a bare number. */
export function withUnit(text: string, unit: string): string {
	const trimmed = text.trim();
	return unit && trimmed && bareNumber.test(trimmed) && /\d/.test(trimmed) ? `${trimmed} ${unit}` : text;
}

type FieldProps = {
	label: string;
	field: string;
	value: string;
	onChange: (value: string) => void;
	hint?: string;
	unit?: string;
	hideLabel?: boolean;
	placeholder?: string;
	inputMode?: "text" | "decimal" | "numeric";
};

/** A text or quantity field with its label, unit and error. */
export function Field(props: FieldProps) {
	const id = useId();
	const problem = problemOf(props.field);
	const unit = props.unit ?? "";
	const [typing, setTyping] = useState<string | null>(null); // shown while it is typed; what is kept has its unit already
	const shown = typing ?? props.value;
	const bare = unit !== "" && (shown.trim() === "" || bareNumber.test(shown));
	return (
		<div class={`field${problem && props.value.trim() ? " field-wrong" : ""}`}>
			<label for={id} class={props.hideLabel ? "unseen" : undefined}>
				{props.label}
			</label>
			<span class="field-box">
				<input
					id={id}
					type="text"
					autocomplete="off"
					inputMode={props.inputMode ?? "text"}
					value={shown}
					placeholder={props.placeholder}
					data-field={props.field}
					aria-describedby={`${id}-note`}
					aria-invalid={problem && props.value.trim() ? true : undefined}
					onInput={(event) => {
						const typed = event.currentTarget.value;
						setTyping(typed);
						props.onChange(withUnit(typed, unit));
					}}
					onBlur={() => setTyping(null)}
				/>
				{bare && (
					<span class="field-unit" aria-hidden="true">
						{unit}
					</span>
				)}
			</span>
			<Note id={`${id}-note`} field={props.field} value={props.value} hint={props.hint} />
		</div>
	);
}

function Note(props: { id: string; field: string; value: string; hint?: string }) {
	const problem = problemOf(props.field);
	if (problem && props.value.trim() !== "") {
		return (
			<p id={props.id} class="field-error">
				{said(problem.message)} {said(problem.remedy)}
			</p>
		);
	}
	return props.hint ? (
		<p id={props.id} class="field-hint">
			{props.hint}
		</p>
	) : (
		<span id={props.id} hidden />
	);
}

type ChoiceProps = {
	label: string;
	value: string;
	choices: { value: string; label: string }[];
	onChange: (value: string) => void;
	hint?: string;
	empty?: string;
	field?: string;
};

/** One of a list. The first, empty choice means that nobody has said. */
export function Choice(props: ChoiceProps) {
	const id = useId();
	const problem = props.value !== "" && props.field ? problemOf(props.field) : undefined;
	return (
		<div class={`field${problem ? " field-wrong" : ""}`}>
			<label for={id}>{props.label}</label>
			<select
				id={id}
				value={props.value}
				data-field={props.field}
				aria-invalid={problem ? true : undefined}
				aria-describedby={`${id}-note`}
				onChange={(event) => props.onChange(event.currentTarget.value)}
			>
				{props.empty !== undefined && <option value="">{props.empty}</option>}
				{props.choices.map((choice) => (
					<option key={choice.value} value={choice.value}>
						{choice.label}
					</option>
				))}
			</select>
			{props.field && <Note id={`${id}-note`} field={props.field} value={props.value} />}
			{props.hint && <p class="field-hint">{props.hint}</p>}
		</div>
	);
}

/** A row of buttons of which one is pressed. */
export function Pick(props: {
	label: string;
	value: string;
	choices: { value: string; label: string }[];
	onChange: (value: string) => void;
	hideLabel?: boolean;
}) {
	const id = useId();
	return (
		<div class="field pick-field" role="radiogroup" aria-labelledby={id}>
			<span id={id} class={props.hideLabel ? "unseen" : "pick-label"}>
				{props.label}
			</span>
			<div class="pick">
				{props.choices.map((choice) => (
					<label key={choice.value} class="pick-choice">
						<input
							type="radio"
							name={id}
							checked={choice.value === props.value}
							onChange={() => props.onChange(choice.value)}
						/>
						<span>{choice.label}</span>
					</label>
				))}
			</div>
		</div>
	);
}

/** A section that opens and closes, with a line that says what is in it. */
export function Section(props: {
	title: string;
	says?: string;
	open?: boolean;
	id?: string;
	children: ComponentChildren;
}) {
	return (
		<div class="helped">
			<details class="section" open={props.open} id={props.id}>
				<summary>
					<h2>{props.title}</h2>
					{props.says && <span class="section-says">{props.says}</span>}
				</summary>
				<div class="section-body">{props.children}</div>
			</details>
			<HelpMark section={props.id} title={props.title} />
		</div>
	);
}

/** A “?” that opens the help on a section, where there is some. */
function HelpMark({ section, title }: { section: string | undefined; title: string }) {
	const entry = entryOfSection[section ?? ""];
	return entry ? (
		<a class="help-mark" href={to("help", entry)}>
			<span class="unseen">{t("Help: {title}", { title })}</span>
		</a>
	) : null;
}

/** A button that takes something away, told in words for a screen reader. */
export function RemoveButton(props: { what: string; onClick: () => void }) {
	return (
		<button
			type="button"
			class="button-quiet"
			aria-label={t("Remove {what}", { what: props.what })}
			title={t("Remove {what}", { what: props.what })}
			onClick={props.onClick}
		>
			✕
		</button>
	);
}
