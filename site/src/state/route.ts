// Which view is shown, by the address's fragment: "#/" the first screen, "#/job/ID" the bench, "#/steps/ID/QUESTION" the job step by step.
import { signal } from "@preact/signals";

export type Route = { view: string; id: string; part: string };

function read(): Route {
	const [, view = "", id = "", part = ""] = location.hash.split("/");
	return { view, id: decodeURIComponent(id), part: decodeURIComponent(part) };
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
