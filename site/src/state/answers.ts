// Where in a job the answers to a subject's words stand, and their path for finding a problem's field; and giving one.
import type { Job, Room, Subject } from "../engine/contract";
import { edit } from "./job";

export const dontKnow = "don't know";

type Holder = { answers: Record<string, string>; path: string };

function holderOf(job: Job, subject: Subject): Holder | undefined {
	if (subject.scope === "job") return { answers: job.answers, path: "answers" };
	const index = job.rooms.findIndex((room) => room.id === subject.room);
	const room = job.rooms[index];
	return room && inRoom(room, `rooms/${index}`, subject);
}

function inRoom(room: Room, path: string, subject: Subject): Holder | undefined {
	const lists = {
		deck: ["decks", room.decks],
		door: ["doors", room.doors],
		penetration: ["penetrations", room.penetrations],
	} as const;
	if (subject.scope === "room") return { answers: room.answers, path: `${path}/answers` };
	const [name, list] = lists[subject.scope as keyof typeof lists] ?? [];
	const index = list?.findIndex((one) => one.id === subject.id) ?? -1;
	const found = list?.[index];
	return found && { answers: found.answers, path: `${path}/${name}/${index}/answers` };
}

/** The answers that hold a subject's words, to read or to change in a draft. */
export function answersOf(job: Job, subject: Subject): Record<string, string> | undefined {
	return holderOf(job, subject)?.answers;
}

/** The path of a subject's word in the job document. */
export function fieldOf(job: Job, subject: Subject, word: string): string {
	return `${holderOf(job, subject)?.path}/${word}`;
}

/** Answers a word of a subject. */
export function answer(word: string, subject: Subject, typed: string): void {
	edit(`${word}/${subject.room}/${subject.id}`, (draft) => {
		const answers = answersOf(draft, subject);
		if (answers) answers[word] = typed;
	});
}
