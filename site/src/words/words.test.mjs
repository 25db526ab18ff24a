// Spanish is whole: every text of the page has it, none is left over, and the same values stand in both; what the engine says is said.
import assert from "node:assert/strict";
import { test } from "node:test";
import { pageTexts } from "./collect.mjs";
import { load } from "./tables.mjs";

const { page, engine, sayer, unsayer } = await load("words/es.ts", "words/said.ts");
const { texts, unclear } = pageTexts();
const values = (text) => (text.match(/\{[^{}]+\}/g) ?? []).sort();

test("every text of the page is written out where it is said", () => {
	assert.deepEqual(unclear, []);
});

test("every text of the page has Spanish", () => {
	assert.deepEqual(
		[...texts].filter(([text]) => !Object.hasOwn(page, text)),
		[],
	);
});

test("no Spanish is left of a text that the page no longer has", () => {
	assert.deepEqual(
		Object.keys(page).filter((text) => !texts.has(text)),
		[],
	);
});

test("the same values stand in both languages", () => {
	for (const [english, spanish] of [...Object.entries(page), ...Object.entries(engine)])
		assert.deepEqual(values(spanish), values(english), english);
});

test("sentences are said with their values, numbers by the language, what was typed as typed", () => {
	const say = sayer(engine);
	for (const [english, spanish] of [
		["9.5 mm", "9,5 mm"],
		["5' 7 1/2\"", "5' 7 1/2\""],
		["12346", "12\u202f346"],
		["1.867 per m²", "1,867 por m²"],
		["2 h 30 min", "2 h 30 min"],
		["plywood, gypsum", "contrachapado, yeso"],
		[
			"The pour is 6.5 mm at its thinnest over plywood; over wood it needs 10 mm.",
			"El vertido mide 6,5 mm en lo más delgado sobre contrachapado; sobre madera necesita 10 mm.",
		],
		["Powder in one bag: 25 kg.", "Polvo en un saco: 25 kg."],
		["Pour: normal", "Verter: normal"],
		[
			"“1.5 fo” is a unit of length; what is wanted is mass.",
			"“1.5 fo” es una unidad de longitud; lo que se pide es masa.",
		],
		["Split the job. Check the readings.", "Divida el trabajo. Compruebe las lecturas."],
		["nobody knows these words", "nobody knows these words"],
	])
		assert.equal(say(english, ","), spanish);
	assert.equal(say("9.5 mm", "."), "9.5 mm");
});

test("a thing named in Spanish is the engine's own again, what was typed stays", () => {
	const unsay = unsayer(engine);
	for (const [spanish, english] of [
		["Autonivelante", "Leveller"],
		["Masilla de reparación", "Patch"],
		["IMPRIMACIÓN ", "primer"],
		["Leveller", "Leveller"],
		["Losetas 12,5 mm", "Losetas 12,5 mm"],
	])
		assert.equal(unsay(spanish), english);
});
