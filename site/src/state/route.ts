// Which view is shown, by the address's fragment: "#/" the first screen, "#/job/ID" the bench, "#/steps/ID/QUESTION" the job step by step.
import { signal } from "@preact/signals";

export type Route = { view: string; id: string; part: string };

function read(): Route {
	const [, view = "", id = "", part = ""] = location.hash.split("/");
	return { view, id: decoded(id), part: decoded(part) };
}

/** An address that somebody cut or mistyped is taken as it stands. */
function decoded(part: string): string {
	try {
		return decodeURIComponent(part);
	} catch {
		return part;
	}
}

export const route = signal<Route>(read());

addEventListener("hashchange", () => {
	route.value = read();
});

/** The address of a view. */
export function to(view: string, id = "", part = ""): string {
	return `#/${[view, id, part].filter(Boolean).map(encodeURIComponent).join("/")}`;
}

export function go(view: string, id = "", part = ""): void {
	location.hash = to(view, id, part);
}
