// The rulebook as the rulebook page shows it, and how every rule comes out on the open job. Both follow the book and the job while the page is open.
import { effect, signal } from "@preact/signals";
import { callLatest } from "../engine/client";
import type { BookView, RuleOn, RuleView } from "../engine/contract";
import { bookText, bookTrouble } from "./book";
import { job } from "./job";

export const view = signal<BookView | null>(null);
export const outcomes = signal<RuleOn[]>([]);

/** Follows the book and the job until what it gives is called. */
export function follow(): () => void {
	const stopView = effect(() => {
		const text = bookText.value;
		tell(async () => {
			const seen = await callLatest("books.view", { text });
			if (seen) view.value = seen;
		});
	});
	const stopOn = effect(() => {
		const open = job.value;
		const book = bookText.value;
		if (!open) outcomes.value = [];
		else
			tell(async () => {
				const worked = await callLatest("rules.on", { job: open, book });
				if (worked) outcomes.value = worked.on;
			});
	});
	return () => {
		stopView();
		stopOn();
	};
}

function tell(work: () => Promise<void>): void {
	work().catch((error: Error) => {
		bookTrouble.value = error.message;
	});
}

export function ruleNamed(name: string): RuleView | undefined {
	return view.value?.rules.find((one) => one.rule.name === name);
}
