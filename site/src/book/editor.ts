// The expression editor: CodeMirror with completion from the vocabulary and the functions, and errors in place. Fetched only on the rulebook page.
import {
	autocompletion,
	type Completion,
	type CompletionContext,
	type CompletionResult,
	closeBrackets,
	closeBracketsKeymap,
	completionKeymap,
} from "@codemirror/autocomplete";
import { defaultKeymap, history, historyKeymap } from "@codemirror/commands";
import { type Diagnostic, setDiagnostics } from "@codemirror/lint";
import { EditorState } from "@codemirror/state";
import { drawSelection, EditorView, keymap } from "@codemirror/view";
import type { Error as RuleError } from "../engine/contract";
import { functions, vocabulary } from "../state/job";
import { view as bookView } from "../state/rules";
import { said } from "../words/words";

export interface Editor {
	put(text: string): void;
	mark(errors: RuleError[]): void;
	end(): void;
}

/** Puts an editor into a place of the page. */
export function edit(place: HTMLElement, text: string, label: string, changed: (text: string) => void): Editor {
	// In a shadow root the editor's styles are adopted sheets; in the document they would be inline, which the page's policy forbids.
	const root = place.shadowRoot ?? place.attachShadow({ mode: "open" });
	const editor = new EditorView({
		parent: root,
		root,
		state: EditorState.create({
			doc: text,
			extensions: [
				history(),
				drawSelection(),
				closeBrackets(),
				autocompletion({ override: [complete], icons: false }),
				keymap.of([...closeBracketsKeymap, ...defaultKeymap, ...historyKeymap, ...completionKeymap]),
				EditorView.lineWrapping,
				look,
				EditorView.contentAttributes.of({ "aria-label": label, spellcheck: "false" }),
				EditorView.updateListener.of((update) => {
					if (update.docChanged && !update.transactions.some((one) => one.isUserEvent("put")))
						changed(update.state.doc.toString());
				}),
			],
		}),
	});
	return {
		put: (next) => {
			const now = editor.state.doc;
			if (now.toString() !== next)
				editor.dispatch({ changes: { from: 0, to: now.length, insert: next }, userEvent: "put" });
		},
		mark: (errors) =>
			editor.dispatch(
				setDiagnostics(
					editor.state,
					errors.map((error) => diagnostic(error, editor)),
				),
			),
		end: () => editor.destroy(),
	};
}

const look = EditorView.theme({
	"&": { color: "var(--ink)", fontSize: "var(--text-small)" },
	"&.cm-focused": { outline: "3px solid var(--chalk)", outlineOffset: "2px" },
	".cm-content": { padding: "var(--gap-3) 0", caretColor: "var(--ink)", fontFamily: "var(--face-figures)" },
	".cm-scroller": { fontFamily: "var(--face-figures)" },
	".cm-cursor": { borderLeftColor: "var(--ink)" },
	"&.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground": { background: "var(--chalk-wash)" },
	".cm-selectionBackground": { background: "var(--chalk-wash)" },
	".cm-tooltip": {
		color: "var(--ink)",
		background: "var(--paper-raised)",
		border: "1px solid var(--line-strong)",
		maxWidth: "min(34rem, 90vw)",
		zIndex: "5",
	},
	".cm-tooltip.cm-tooltip-autocomplete > ul > li": { padding: "var(--gap-2)", lineHeight: "1.4" },
	".cm-tooltip-autocomplete ul li[aria-selected]": { color: "var(--chalk-ink)", background: "var(--chalk)" },
	".cm-tooltip.cm-completionInfo": { padding: "var(--gap-2) var(--gap-3)", fontFamily: "var(--face)" },
	".cm-completionDetail": { fontStyle: "normal", opacity: "0.8" },
	".cm-lintRange-error": {
		backgroundImage: "none",
		textDecoration: "underline wavy var(--stop) 1.5px",
		textUnderlineOffset: "3px",
	},
	".cm-tooltip-lint": { padding: "var(--gap-2)", fontFamily: "var(--face)" },
	".cm-diagnostic-error": { borderLeft: "4px solid var(--stop)" },
});

/** The engine counts in UTF-16, as the editor does; an error of the whole field marks all of it. */
function diagnostic(error: RuleError, editor: EditorView): Diagnostic {
	const length = editor.state.doc.length;
	const from = Math.min(error.from, length);
	const to = error.to > error.from ? Math.min(error.to, length) : length;
	return { from, to, severity: "error", message: `${said(error.message)} ${said(error.remedy)}` };
}

function complete(context: CompletionContext): CompletionResult | null {
	const word = context.matchBefore(/[A-Za-z_][\w.]*/);
	if (!word && !context.explicit) return null;
	return { from: word ? word.from : context.pos, options: options(), validFor: /^[\w.]*$/ };
}

function options(): Completion[] {
	const words = vocabulary.value.map((word) => ({
		label: word.name,
		detail: word.dimension || word.kind,
		info: `${said(word.meaning)}${word.example ? ` ${word.example}` : ""}`,
		boost: 2,
	}));
	const figures = (bookView.value?.rules ?? [])
		.filter((one) => !one.rule.check)
		.map((one) => ({
			label: one.rule.name,
			detail: one.rule.dimension || one.rule.kind || "",
			info: one.rule.words ?? "",
			boost: 1,
		}));
	const calls = functions.value.map((one) => ({
		label: one.name,
		detail: one.call,
		info: one.help,
		apply: `${one.name}(`,
	}));
	return [...words, ...figures, ...calls];
}
