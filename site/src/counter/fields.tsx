// Fields of the counter: the usual unit is put behind a bare number at every keystroke, so that the quote follows while one types.
import { useEffect, useId, useRef, useState } from "preact/hooks";
import { withUnit } from "../parts/fields";
import { problemOf } from "../state/job";
import { priceProblem } from "../state/takeoff";
import { said } from "../words/words";

const product = /^[\d\s.,/]+[x×*][\d\s.,/]+$/;

/** An area or a length × width, with the unit of what it is. */
export function sized(text: string, us: boolean): string {
	if (product.test(text.trim())) return `${text.trim()} ${us ? "ft" : "m"}`;
	return withUnit(text, us ? "sq ft" : "m²");
}

type QuickProps = {
	label: string;
	value: string;
	field: string;
	full?: (typed: string) => string;
	onChange: (full: string) => void;
	hint?: string;
	autoFocus?: boolean;
	hideLabel?: boolean;
	list?: boolean;
};

export function Quick(props: QuickProps) {
	const id = useId();
	const [typing, setTyping] = useState<string | null>(null);
	const input = useRef<HTMLInputElement>(null);
	// Once it is painted: a focus before that has the browser lay out the page in the midst of drawing it.
	useEffect(() => {
		if (props.autoFocus) input.current?.focus();
	}, []);
	const full = props.full ?? ((text: string) => text);
	const problem = problemOf(props.field);
	const wrong = (problem && `${said(problem.message)} ${said(problem.remedy)}`) || priceProblem(props.field);
	const shown = wrong && props.value.trim() !== "" ? wrong : "";
	return (
		<div class={`field${shown ? " field-wrong" : ""}`}>
			<label for={id} class={props.hideLabel ? "unseen" : undefined}>
				{props.label}
			</label>
			<input
				id={id}
				type="text"
				autocomplete="off"
				ref={input}
				data-field={props.field}
				value={typing ?? props.value}
				aria-describedby={`${id}-note`}
				aria-invalid={shown ? true : undefined}
				onInput={(event) => {
					setTyping(event.currentTarget.value);
					props.onChange(full(event.currentTarget.value));
				}}
				onBlur={() => setTyping(null)}
			/>
			<p id={`${id}-note`} class={shown ? "field-error" : "field-hint"} hidden={!shown && !props.hint}>
				{shown || props.hint}
			</p>
		</div>
	);
}
