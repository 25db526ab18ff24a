// What the counter writes for spreadsheet programs, in the page's language. The engine parts and guards the fields.
import { call } from "../engine/client";
import type { Price, Shop, TakeOffLine } from "../engine/contract";
import { decimalComma, english, said, t } from "../words/words";

/** A take-off: a row a thing and size of pack, with its reasons at the end. */
export async function listCSV(lines: TakeOffLine[]): Promise<string> {
	return (await call("csv.write", { rows: [listNames(), ...lines.flatMap(listRows)], comma: decimalComma() })).text;
}

function listNames(): string[] {
	return [
		t("group"),
		t("item"),
		t("need"),
		t("packs"),
		t("pack"),
		t("pack holds"),
		t("left over"),
		t("mass"),
		t("quoted"),
		t("stock code"),
		t("price of one"),
		t("amount"),
		t("because"),
	];
}

/** What counts for the whole line stands in its first row only, so that columns add up. */
function listRows(line: TakeOffLine): string[][] {
	return line.parts.map(({ pack, packs, price }, i) => {
		const once = (text: string) => (i === 0 ? text : "");
		return [
			said(line.group),
			said(line.item),
			once(said(line.need.text)),
			String(packs),
			said(line.packName),
			said(pack.text),
			once(said(line.leftover.text)),
			once(said(line.mass.text)),
			line.quoted ? t("yes") : t("no"),
			price?.code ?? "",
			money(price?.each),
			money(price?.amount),
			once(line.because.map((reason) => said(reason.says)).join(" ")),
		];
	});
}

/** Money as a spreadsheet program takes it for a number: nothing between thousands. */
function money(text = ""): string {
	return decimalComma() ? text.replace(".", ",") : text;
}

/** A shop's price list, which priceList() takes back as it was. */
export async function pricesCSV(shop: Shop): Promise<string> {
	const names = [t("item"), t("pack"), t("price"), t("tax class"), t("stock code"), t("cost")];
	const prices = shop.prices.map((row) => ({ ...row, item: nameOf(row.item) }));
	return (await call("prices.write", { shop: { ...shop, prices }, names, comma: decimalComma() })).text;
}

/** A price list as read, its items by the names that the engine knows. */
export function priceList(prices: Price[]): Price[] {
	return prices.map((row) => ({ ...row, item: english(row.item) }));
}

/** An item's name in the page's language where that leads back to it; what a person called it stays. */
function nameOf(item: string): string {
	const says = said(item);
	return english(says) === item ? says : item;
}
