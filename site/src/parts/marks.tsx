// The marks of a check's weight and outcome: each differs in word and form, never in colour alone.
import { t } from "../words/words";

const shapes: Record<string, string> = {
	stop: "M5 1h6l4 4v6l-4 4H5l-4-4V5zM4 7v2h8V7z",
	fix: "M8 1l7.5 13.5h-15zM7 6v4.5h2V6zM7 11.5v2h2v-2z",
	watch: "M8 3c4 0 7 3.500 8 5-1 1.500-4 5-8 5S1 9.500 0 8c1-1.500 4-5 8-5zM8 5a3 3 0 100 6 3 3 0 000-6z",
	kept: "M1.500 8.500l1.500-1.500 3 3 7-7.500 1.500 1.500L6 13z",
	ask: "M8 0a8 8 0 100 16A8 8 0 008 0zM7 12h2v2H7zM5 6c0-2 1.300-3 3-3s3 1 3 2.700c0 2-2 2.300-2 4.300H7c0-2.700 2-3 2-4.200 0-.5-.4-.9-1-.9s-1 .4-1 1.100z",
};

/** The words of a weight, as a person says them. */
export function weightWord(weight: string): string {
	switch (weight) {
		case "stop":
			return t("Don’t pour");
		case "fix":
			return t("Put right first");
		case "watch":
			return t("Keep an eye on it");
		case "kept":
			return t("In order");
	}
	return t("Not answered");
}

export function Weight({ weight, count }: { weight: string; count?: number }) {
	return (
		<span class={`weight weight-${weight}`}>
			<svg viewBox="0 0 16 16" aria-hidden="true">
				<path d={shapes[weight] ?? shapes.ask} fill="currentColor" fill-rule="evenodd" />
			</svg>
			{count !== undefined && <b>{count}</b>} {weightWord(weight)}
		</span>
	);
}
