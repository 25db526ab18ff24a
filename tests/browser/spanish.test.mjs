// The page in Spanish: chosen once and kept, no English left on any page, nothing wider than a phone, numbers with their comma.
import assert from "node:assert/strict";
import { mkdirSync, readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import ICAL from "ical.js";
import { load } from "../../site/src/words/tables.mjs";
import { browse, open, serve } from "./harness.mjs";

const artefacts = new URL("../artefacts/spanish/", import.meta.url);
const { page: table, engine } = await load("words/es.ts");
const english = new Set(
	[...Object.entries(table), ...Object.entries(engine)]
		.filter(([text, says]) => text !== says && !text.includes("{"))
		.map(([text]) => text),
);
for (const same of Object.values(engine)) english.delete(same);
for (const same of Object.values(table)) english.delete(same);

let server;
before(async () => {
	mkdirSync(artefacts, { recursive: true });
	server = await serve();
});
after(async () => {
	await server.end();
});

const view = (name, shows) => async (page) => {
	await page.evaluate((to) => {
		location.hash = ["help", "rules", "counter"].includes(to)
			? `#/${to}`
			: `#/${to}/${sessionStorage.getItem("last job")}`;
	}, name);
	await page.waitForSelector(shows);
	await page.waitForTimeout(1000);
};

const pages = {
	first: async () => {},
	bench: async (page) => {
		await page.getByRole("button", { name: "Abrir el trabajo de muestra" }).click();
		await page.waitForSelector(".band");
		await page.waitForSelector('[data-study="here"]');
		await page.evaluate(() => {
			for (const details of document.querySelectorAll("details:not(.why)")) details.open = true;
		});
		await page.waitForTimeout(1000);
	},
	pour: view("pour", ".pour-verdict"),
	buy: view("buy", ".quote-lines"),
	steps: view("steps", ".step"),
	sheet: view("sheet", ".paper-tables"),
	papers: view("papers", ".scale-map .pin"),
	help: view("help", ".help-words"),
	rules: view("rules", ".rules-entry"),
	counter: view("counter", "main"),
};

/** Texts on the page that are English by the tables. What somebody typed, and code, is left out. */
function texts() {
	const found = [];
	const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
	for (let node = walk.nextNode(); node; node = walk.nextNode()) {
		const text = node.textContent.trim();
		if (text && !node.parentElement.closest("script, style, code, pre, option[lang]")) found.push(text);
	}
	for (const element of document.querySelectorAll("[aria-label], [title], [placeholder]"))
		for (const name of ["aria-label", "title", "placeholder"])
			if (element.getAttribute(name)) found.push(element.getAttribute(name));
	return found;
}

/** What stands out farthest to the right of the screen. */
function widest() {
	const right = (element) => element.getBoundingClientRect().right;
	const scrolls = (element) => element.closest("svg") || getComputedStyle(element).position === "fixed";
	const out = [...document.querySelectorAll("main *")].filter((e) => right(e) > innerWidth + 1 && !scrolls(e));
	return out.slice(0, 6).map((e) => `${e.tagName}.${e.className} ${Math.round(right(e))}`).join(", ");
}

for (const [width, height] of [
	[1280, 900],
	[360, 740],
]) {
	test(`the whole page is in Spanish at ${width} pixels`, async (t) => {
		const { context, end } = await browse({ viewport: { width, height }, locale: "es-ES" });
		t.after(end);
		const { page, complaints } = await open(context, server.address);
		await page.waitForSelector('[data-engine="ready"]');
		assert.equal(await page.evaluate(() => document.documentElement.lang), "es");
		const faults = [];
		for (const [name, go] of Object.entries(pages)) {
			await go(page);
			const here = (await page.evaluate(texts)).filter((text) => english.has(text));
			faults.push(...[...new Set(here)].map((text) => `${name}: English is left: ${text}`));
			const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
			if (wide > 0) faults.push(`${name} is ${wide} px wider than the screen: ${await page.evaluate(widest)}`);
			await page.screenshot({ path: new URL(`${name}-${width}.png`, artefacts).pathname });
		}
		assert.deepEqual(faults, []);
		assert.deepEqual(complaints, []);
	});
}

test("a language is chosen at any time, kept through a reload, and loses nothing", async (t) => {
	const { context, end } = await browse({ locale: "en-US" });
	t.after(end);
	const { page } = await open(context, server.address);
	await page.getByRole("button", { name: "Open the demo job" }).click();
	await page.waitForSelector(".totals");
	await page.getByLabel("Language").selectOption("es");
	await page.waitForSelector('html[lang="es"]');
	await page.getByText("Por comprar").first().waitFor();
	await page.reload();
	await page.waitForSelector('html[lang="es"] .band');
	assert.match(await page.locator(".totals").innerText(), /\d,\d/);
	await page.getByLabel("Idioma").selectOption("en");
	await page.waitForSelector('html[lang="en"]');
	assert.match(await page.locator(".totals").innerText(), /\d\.\d/);
});

const saved = async (page, name) => {
	const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name }).click()]);
	return { name: download.suggestedFilename(), text: readFileSync(await download.path(), "utf8") };
};

test("what is saved for a spreadsheet or a calendar is in Spanish, and a price list of Spanish names is read back", async (t) => {
	const { context, end } = await browse({ locale: "es-ES" });
	t.after(end);
	const { page, complaints } = await open(context, server.address);
	await pages.bench(page);
	await pages.buy(page);
	await page.getByText("Precios y tienda").click();
	const prices = "ARTÍCULO;Envase;Precio;IVA;Código\r\nAutonivelante;25 kg;1.024,50;standard;0012345\r\nImprimación;5 L;38,90;standard;=P\r\n";
	const file = { name: "precios.csv", mimeType: "text/csv", buffer: Buffer.from(prices, "latin1") };
	await page.locator(".shop input[type=file]").setInputFiles(file);
	await page.getByText("2 precios tomados, 0 filas dejadas fuera.").waitFor();
	await page.locator(".quote-lines tbody tr", { hasText: "Autonivelante" }).locator(".print-only", { hasText: "1024,50" }).waitFor({ state: "attached" });

	const list = await saved(page, "Guardar la lista como CSV");
	const rows = list.text.replace("\uFEFF", "").split("\r\n");
	assert.equal(rows[0], "grupo;artículo;necesario;envases;envase;contenido del envase;sobra;masa;cotizado;código;precio de uno;importe;porque");
	const leveller = rows.find((row) => row.startsWith("vertido;Autonivelante;")).split(";");
	assert.deepEqual([...leveller.slice(4, 6), ...leveller.slice(8, 11)], ["saco", "25 kg", "sí", "0012345", "1024,50"]);
	assert.equal(leveller[11], (1024.5 * Number(leveller[3])).toFixed(2).replace(".", ","));
	assert.match(list.text, /;Imprimación;.*;'=P;38,90;/);
	const cells = rows.flatMap((row) => row.split(/[;"]|: |\. /)).map((cell) => cell.trim().replace(/\.$/, ""));
	assert.deepEqual(cells.filter((cell) => english.has(cell) || english.has(`${cell}.`)), [], "English is left in the list");

	const own = await saved(page, "Guardarla como CSV");
	assert.equal(own.name, "precios.csv");
	assert.equal(own.text, "\uFEFFartículo;envase;precio;clase de impuesto;código\r\nAutonivelante;25 kg;1024,50;standard;0012345\r\nImprimación;5 L;38,90;standard;'=P\r\n");
	await page.locator(".shop input[type=file]").setInputFiles({ ...file, buffer: Buffer.from(own.text) });
	await page.getByText("2 precios tomados, 0 filas dejadas fuera.").waitFor();
	assert.equal((await saved(page, "Guardarla como CSV")).text, own.text);

	await pages.pour(page);
	await page.getByLabel("El trabajo empieza").fill("2026-05-04T08:00");
	await page.locator("[data-step=strip]", { hasText: "may" }).waitFor();
	const { text } = await saved(page, "Guardar las esperas como archivo de calendario");
	assert.ok(text.split("\r\n").every((line) => Buffer.byteLength(line) <= 75));
	const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((one) => new ICAL.Event(one));
	const held = await page.locator(".run-sheet tbody tr").evaluateAll((all) => all.filter((row) => row.cells[4].innerText.trim()).map((row) => row.cells[2].querySelector("b").textContent));
	assert.deepEqual(events.map((one) => one.description.split("\n")[0].replace("Después de: ", "")).sort(), held.sort());
	for (const { summary, description } of events) {
		assert.match(description, /\nSeguir no antes de: .*\d\d:\d\d\./);
		for (const line of [summary, ...description.split("\n")]) assert.ok(!english.has(line), `English is left: ${line}`);
	}
	assert.deepEqual(complaints, []);
});
