// An expression with an editor that knows the vocabulary. The editor is fetched when a rule is first opened; until then, and where it can't be had,
// a plain text box does the same work.
import { useEffect, useId, useRef, useState } from "preact/hooks";
import type { Error as RuleError } from "../engine/contract";
import { t } from "../words/words";
import type { Editor } from "./editor";
import { RuleErrors } from "./RuleErrors";

export function Expression(props: {
	label: string;
	value: string;
	errors: RuleError[];
	onChange: (text: string) => void;
}) {
	const id = useId();
	const place = useRef<HTMLDivElement>(null);
	const editor = useRef<Editor | null>(null);
	const [plain, setPlain] = useState(false);
	const changed = useRef(props.onChange);
	changed.current = props.onChange;
	const written = useRef(new Set<string>()); // what came out of the editor and may come back a keystroke later
	useEffect(() => {
		let here = true;
		import("./editor")
			.then(({ edit }) => {
				if (!here || !place.current) return;
				editor.current = edit(place.current, props.value, props.label, (text) => {
					written.current.add(text);
					changed.current(text);
				});
			})
			.catch(() => setPlain(true));
		return () => {
			here = false;
			editor.current?.end();
			editor.current = null;
		};
	}, []);
	useEffect(() => {
		if (written.current.has(props.value)) return;
		written.current.clear();
		editor.current?.put(props.value);
	}, [props.value]);
	useEffect(() => editor.current?.mark(props.errors), [props.errors]);
	return (
		<div class="field expression">
			<span class="pick-label" id={id}>
				{props.label}
			</span>
			{plain ? (
				<textarea
					class="code"
					aria-labelledby={id}
					rows={3}
					value={props.value}
					onInput={(event) => props.onChange(event.currentTarget.value)}
				/>
			) : (
				<div class="code-place" ref={place} />
			)}
			<div aria-live="polite">
				<RuleErrors errors={props.errors} />
			</div>
			{props.value === "" && !plain && (
				<p class="field-hint">{t("Type a word’s first letters for a list of what fits; Ctrl+Space shows it too.")}</p>
			)}
		</div>
	);
}
