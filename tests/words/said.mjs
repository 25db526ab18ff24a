// Says every text for people in what the engine told, and writes those that come out with English in them. The texts are found by the names of
// their fields; what a person typed (names, answers) is no text of the engine's.
import { load } from "../../site/src/words/tables.mjs";

const { engine, sayer } = await load("words/es.ts", "words/said.ts");
const say = sayer(engine);
const texts = new Set(
	"message remedy says caution source words meaning question why label item packName surface fault title text cautions cures method example tried left choices confidence theme asks open".split(
		" ",
	),
);
const alsoIn = { how: "question", from: "sort", to: "sort", name: "limit" };
const left = new Set();

function look(value, field, owner) {
	if (typeof value === "string") {
		if (isText(field, owner) && english(say(value, ","))) left.add(value);
	} else if (Array.isArray(value)) for (const one of value) look(one, field, owner);
	else if (value) for (const [name, one] of Object.entries(value)) look(one, name, value);
}

function isText(field, owner) {
	if (field === "text" && "reached" in owner) return false; // an expression
	if (owner[field]?.startsWith?.("# ")) return false; // a remark between rules
	if (field === "left" && !Array.isArray(owner.left)) return false;
	if (owner.for && ["says", "remedy", "words", "source", "caution", "asks", "theme"].includes(field)) return true;
	return texts.has(field) || (field in alsoIn && alsoIn[field] in owner) || (field === "how" && "meaning" in owner);
}

// Words that no Spanish sentence holds.
const tell =
	"the of and is are with for not at it that than from over under be been was were has have had its this there where which when what who how by into out up down than then they them their more most less least any every each one two room deck floor pour bag bags water door reading readings sheet joist joists check take give set use read".split(
		" ",
	);
const known = new Set(Object.values(engine).flatMap((text) => text.toLowerCase().split(/[^\p{L}]+/u)));
const words = new Set(tell.filter((word) => !known.has(word)));

function english(text) {
	return text
		.toLowerCase()
		.split(/[^\p{L}]+/u)
		.some((word) => words.has(word));
}

look(JSON.parse(await new Response(process.stdin).text()), "", {});
console.log(JSON.stringify([...left]));
