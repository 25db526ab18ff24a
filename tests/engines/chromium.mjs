// A tab of Chromium, in the same terms as those of the other engines.
import { browse, open } from "../browser/harness.mjs";

export async function openChromium(address) {
	const { context, end } = await browse();
	const { page, complaints } = await open(context, address);
	return {
		complaints: () => complaints,
		end,
		reload: () => page.reload(),
		run: (work, ...given) => page.evaluate(`(${work})(...${JSON.stringify(given)})`),
		find: async (finder, name) => (await page.evaluateHandle(`(${finder})(${JSON.stringify(name)})`)).asElement(),
		click: (element) => element.click(),
		type: (element, text) => element.fill(text),
	};
}
