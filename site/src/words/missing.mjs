// Lists the page's texts that have no Spanish yet, file by file: node site/src/words/missing.mjs
import { pageTexts } from "./collect.mjs";
import { load } from "./tables.mjs";

const { page } = await load("words/es.ts");
const { texts } = pageTexts();
const missing = [...texts].filter(([text]) => !Object.hasOwn(page, text));
for (const [text, file] of missing) console.log(`${file}: ${JSON.stringify(text)}`);
console.log(`${missing.length} of ${texts.size} texts of the page have no Spanish`);
