// One bag is a bag, in either language; every other count, and what only looks like one, stays as it is.
import assert from "node:assert/strict";
import { test } from "node:test";
import { load } from "./tables.mjs";

const { singulars } = await load("words/one.ts");

test("one of a thing is said in the singular", () => {
	for (const [language, plural, says] of [
		["en", "1 bags", "1 bag"],
		["en", "16, 1 bags", "16, 1 bag"],
		["en", "1 bags used of 12", "1 bag used of 12"],
		["en", "It may take 1 bags or 21 bags", "It may take 1 bag or 21 bags"],
		["en", "1.1 bags, 0.1 bags, 11 bags, 1/1 bags", "1.1 bags, 0.1 bags, 11 bags, 1/1 bags"],
		["en", "1 m and 1 kg", "1 m and 1 kg"],
		["es", "1 sacos usados de 12", "1 saco usado de 12"],
		["es", "Leveller: 1 sacos de 25 kg.", "Leveller: 1 saco de 25 kg."],
		["es", "1 sacos alcanzan en el 90 %", "1 saco alcanza en el 90 %"],
		["es", "1 cambios no están todavía en ningún archivo", "1 cambio no está todavía en ningún archivo"],
		["es", "1 reglas difieren de las de origen", "1 regla difiere de las de origen"],
		["es", "Todas las preguntas (1 abiertas)", "Todas las preguntas (1 abierta)"],
		["en", "1 bags last in 90 % of cases", "1 bag lasts in 90 % of cases"],
		["en", "1 doors, 1 drains or pipes", "1 door, 1 drain or pipe"],
		["en", "1 changes are in no file yet", "1 change is in no file yet"],
		["en", "the last 1 are shown", "the last 1 are shown"],
		["es", "10\u202f001 sacos, 2,1 sacos", "10\u202f001 sacos, 2,1 sacos"],
		["es", "1 de 2 amasadas", "1 de 2 amasadas"],
		["es", "A mano, 25 kg por viaje: 1 viajes.", "A mano, 25 kg por viaje: 1 viaje."],
	])
		assert.equal(singulars(plural, language), says);
});
