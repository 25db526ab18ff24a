// What each step asks, and why: the vocabulary's own words where the step is one of them.
import { wordNamed } from "../bench/WordField";
import type { GuideStep } from "../engine/contract";
import { said, t } from "../words/words";
import { openChecks } from "./guide";

export type Asked = { question: string; why: string };

export function questionOf(step: GuideStep): Asked {
	if (step.kind === "word") {
		const word = wordNamed(step.word);
		return { question: said(word?.question ?? step.word), why: said(word?.why) };
	}
	return ours()[step.kind] ?? { question: step.kind, why: "" };
}

function ours(): Record<string, Asked> {
	return {
		outline: {
			question: t("How big is the room?"),
			why: t(
				"Area times depth is what fills the bags. Measure from wall to wall, with the skirting off if it comes off.",
			),
		},
		"keep-outs": {
			question: t("Does anything stand in the room that stays?"),
			why: t("Nothing is poured under a bath, a shower recess or a kitchen island that stays where it is."),
		},
		doors: {
			question: t("Where are the doors, and by which one do you leave?"),
			why: t("The pour runs out of an open door, so each one gets a dam. It ends at the door by which you leave."),
		},
		drains: {
			question: t("Does anything come up through the floor?"),
			why: t(
				"A drain must stay open and at the right height; a pipe wants a collar so that the pour doesn’t run down beside it.",
			),
		},
		survey: {
			question: t("How will you read the heights?"),
			why: t("All that matters is how far each spot lies under one level line. Any of these ways gives that."),
		},
		readings: {
			question: t("What does it read at each spot?"),
			why: t(
				"The bag count is as good as these numbers. More of them help most along the walls and where the floor looks low.",
			),
		},
		leveller: {
			question: t("Which leveller will you pour?"),
			why: t(
				"Bags differ in what they fill and how thin they may be. Typical values do for a first idea; buy by the bag’s own.",
			),
		},
		result: { question: t("What it comes to"), why: "" },
	};
}

export function chapterWord(chapter: string): string {
	const words: Record<string, string> = {
		room: t("The room"),
		heights: t("Heights"),
		deck: t("What is underneath"),
		finish: t("What goes on top"),
		products: t("The bag"),
		crew: t("Who pours"),
		result: t("The result"),
		proof: t("Proving the deck"),
		before: t("Before the first bag"),
	};
	return words[chapter] ?? chapter;
}

/** What some open questions leave unchecked, in words. */
export function unchecked(steps: GuideStep[]): string {
	const { checks, stops } = openChecks(steps);
	if (checks === 0) return "";
	return stops > 0
		? t("Checks that stay open then: {checks}. Of these, might say “Don’t pour”: {stops}.", { checks, stops })
		: t("Checks that stay open then: {checks}.", { checks });
}
