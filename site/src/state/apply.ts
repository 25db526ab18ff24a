// Writing what the engine offers into the open job: fields by their path in the job document.
import type { FieldSet, Job } from "../engine/contract";

type Node = Record<string, unknown>;

/** Writes each field. A yes-or-no field of the job's own takes yes and no. */
export function write(draft: Job, sets: FieldSet[]): void {
	for (const set of sets) {
		const path = set.field.split("/");
		const last = path.pop() ?? "";
		let node = draft as unknown as Node;
		for (const part of path) node = node[part] as Node;
		node[last] = typeof node[last] === "boolean" ? set.to === "yes" : set.to;
	}
}
