// What a request that failed throws: a code for programs, a message and a remedy for people.
import type { Problem } from "./contract";

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
