// What a request that failed throws: a code for programs, a message and a remedy for people.
import type { Problem } from "./contract";

/** What a person is told of an error: what is wrong, and what would work. */
export function inWords(error: unknown): string[] {
	const { message, remedy } = error as Partial<EngineError>;
	return [message, remedy].filter((text): text is string => !!text);
}

export class EngineError extends Error {
	readonly code: string;
	readonly field: string;
	readonly given: string;
	readonly remedy: string;

	constructor(problem: Partial<Problem> & { message: string }) {
		super(problem.message);
		this.name = "EngineError";
		this.code = problem.code ?? "error";
		this.field = problem.field ?? "";
		this.given = problem.given ?? "";
		this.remedy = problem.remedy ?? "";
	}
}
