// What a person does on the page, in terms of what they see: press what is named so, fill in what is labelled so, wait until it shows.
import assert from "node:assert/strict";
import { until } from "./wait.mjs";

/** Presses the first button or link of a name. */
export async function press(tab, name) {
	await tab.click(await seen(tab, called, name));
}

/** Types into the first field of a label. */
export async function fill(tab, label, text) {
	await tab.type(await seen(tab, labelled, label), text);
}

/** Gives what stands in the first field of a label. */
export async function filled(tab, label) {
	return tab.run(`(label) => (${labelled})(label)?.value`, label);
}

/** Waits until a look at the page gives something, and gives it. */
export function shown(tab, look, ...given) {
	return until(String(look), () => tab.run(look, ...given));
}

/** Waits until a look at the page gives the same for two seconds, and gives it. */
export async function settled(tab, look) {
	for (let before; ; ) {
		const now = await shown(tab, look);
		if (now === before) return now;
		before = now;
		await new Promise((resolve) => setTimeout(resolve, 2000));
	}
}

function seen(tab, finder, name) {
	return until(name, async () => (await tab.run(`(name) => !!(${finder})(name)`, name)) && tab.find(finder, name));
}

function called(name) {
	const nameOf = (element) => element.getAttribute("aria-label") ?? element.innerText.trim();
	const found = [...document.querySelectorAll("button, a")].find((element) => nameOf(element) === name);
	found?.scrollIntoView({ block: "center" });
	return found;
}

function labelled(label) {
	const labels = [...document.querySelectorAll("label")].filter((element) => element.innerText.trim() === label);
	const found = document.querySelector(`[aria-label="${label}"]`) ?? labels[0]?.control;
	found?.scrollIntoView({ block: "center" });
	return found;
}

/** Nothing went wrong on the pages so far. */
export async function quiet(tab) {
	assert.deepEqual(await tab.complaints(), []);
}
