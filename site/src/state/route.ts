// Which view is shown, by the address's fragment: "#/" the first screen, "#/job/ID" the bench.
import { signal } from "@preact/signals";

export type Route = { view: string; id: string };

function read(): Route {
	const [, view = "", id = ""] = location.hash.split("/");
	return { view, id: decodeURIComponent(id) };
}

export const route = signal<Route>(read());

addEventListener("hashchange", () => {
	route.value = read();
});

export function go(view: string, id = ""): void {
	location.hash = `#/${[view, id].filter(Boolean).map(encodeURIComponent).join("/")}`;
}
