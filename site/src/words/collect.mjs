// Collects the English texts of the page: every literal that is given to t().
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const source = dirname(dirname(fileURLToPath(import.meta.url)));
const call = /(?<![\w.$])t\(\s*(?:"((?:[^"\\]|\\.)*)"|`([^`$]*)`|(.{0,60}))/g;

/** The texts with the file that each stands in first, and the calls whose text isn't written out. */
export function pageTexts() {
	const texts = new Map();
	const unclear = [];
	for (const file of readdirSync(source, { recursive: true }).sort()) {
		if (!/\.tsx?$/.test(file) || file.startsWith("words")) continue;
		for (const [, quoted, plain, other] of readFileSync(join(source, file), "utf8").matchAll(call)) {
			if (other !== undefined) unclear.push(`${file}: t(${other}`);
			else {
				const text = plain ?? JSON.parse(`"${quoted}"`);
				if (!texts.has(text)) texts.set(text, file);
			}
		}
	}
	return { texts, unclear };
}
