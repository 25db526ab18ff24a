// The shop: price list from and to CSV, tax, delivery, hours, and what is printed round a quote. Kept in this browser.
import { useState } from "preact/hooks";
import { call } from "../engine/client";
import type { BadRow, Shop } from "../engine/contract";
import { Choice, Pick, RemoveButton, Section } from "../parts/fields";
import { OpenFile } from "../parts/OpenFile";
import { fileName, save } from "../state/files";
import { editShop, shop } from "../state/takeoff";
import { said, t } from "../words/words";
import { priceList, pricesCSV } from "./csv";
import { Quick } from "./fields";

type TextField = "name" | "valid" | "currency" | "delivery" | "hour";

export function ShopEntry() {
	const seller = shop.value;
	if (!seller) return null;
	const text = (field: TextField, label: string, hint?: string) => (
		<Quick
			label={label}
			hint={hint}
			field={`shop/${field}`}
			value={seller[field]}
			onChange={(typed) =>
				editShop((draft) => {
					draft[field] = typed;
				})
			}
		/>
	);
	return (
		<div class="shop no-print">
			<Section
				title={t("Prices and shop")}
				says={t("{count} prices, kept in this browser", { count: seller.prices.length })}
			>
				<PriceFile seller={seller} />
				<div class="row row-even">
					{text("currency", t("Currency"))}
					<Choice
						label={t("Smallest coin")}
						value={String(seller.digits)}
						onChange={(digits) =>
							editShop((draft) => {
								draft.digits = Number(digits);
							})
						}
						choices={[
							{ value: "2", label: "0.01" },
							{ value: "0", label: "1" },
							{ value: "3", label: "0.001" },
						]}
					/>
				</div>
				<Pick
					label={t("Prices are")}
					value={seller.inclusive ? "with" : "without"}
					onChange={(way) =>
						editShop((draft) => {
							draft.inclusive = way === "with";
						})
					}
					choices={[
						{ value: "without", label: t("without tax") },
						{ value: "with", label: t("with tax") },
					]}
				/>
				<Pick
					label={t("Tax is rounded")}
					value={seller.rounding}
					onChange={(way) =>
						editShop((draft) => {
							draft.rounding = way;
						})
					}
					choices={[
						{ value: "sum", label: t("once, on the sum") },
						{ value: "line", label: t("on every line") },
					]}
				/>
				<Classes seller={seller} />
				<div class="row row-even">
					{text("delivery", t("Delivery, price"))}
					{text("hour", t("Hour of work, price"))}
					{text("valid", t("A quote holds"), t("for example 30 d"))}
				</div>
				{text("name", t("Name of the shop"))}
				<Lines field="address" label={t("Address")} />
				<Lines field="terms" label={t("Your terms, printed under the quote")} />
			</Section>
		</div>
	);
}

function PriceFile({ seller }: { seller: Shop }) {
	const [told, setTold] = useState("");
	const [bad, setBad] = useState<BadRow[]>([]);
	const take = async (file: File) => {
		const { prices, bad: left } = await call("prices.read", { text: await bytesOf(file), shop: seller });
		setBad(left);
		setTold(t("{count} prices taken, {bad} rows left out.", { count: prices.length, bad: left.length }));
		if (prices.length > 0) {
			editShop((draft) => {
				draft.prices = priceList(prices);
			});
		}
	};
	return (
		<>
			<div class="row">
				<OpenFile label={t("Open a price list (CSV)…")} accept=".csv,.tsv,.txt,text/csv" take={take} tell={setTold} />
				<button
					type="button"
					onClick={async () => save(fileName(t("prices"), "csv"), await pricesCSV(seller), "text/csv")}
				>
					{t("Save it as CSV")}
				</button>
			</div>
			<p class="field-hint">
				{t(
					"Columns: item, pack, price, tax class, stock code, cost. Items are found by their name on the list or by the sheet’s name.",
				)}
			</p>
			<p role="status" class="small">
				{told}
			</p>
			{bad.length > 0 && (
				<ul class="field-error">
					{bad.slice(0, 10).map((row) => (
						<li key={row.line}>
							{t("Line {n}: {message} {remedy}", { n: row.line, message: said(row.message), remedy: said(row.remedy) })}
						</li>
					))}
				</ul>
			)}
		</>
	);
}

/** A file's bytes as the engine takes them: UTF-8 where it is that, else one letter a byte, which the engine knows how to read. */
async function bytesOf(file: File): Promise<string> {
	const bytes = await file.arrayBuffer();
	try {
		return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
	} catch {
		return new TextDecoder("windows-1252").decode(bytes);
	}
}

function Classes({ seller }: { seller: Shop }) {
	return (
		<fieldset class="shop-classes">
			<legend class="pick-label">{t("Tax classes")}</legend>
			{seller.classes.map((row, i) => (
				<div class="row" key={`${i}`}>
					<Quick
						hideLabel
						label={t("Name of tax class {n}", { n: i + 1 })}
						field={`shop/classes/${i}/name`}
						value={row.name}
						onChange={(name) =>
							editShop((draft) => {
								const found = draft.classes[i];
								if (!found) return;
								if (draft.deliveryClass === found.name) draft.deliveryClass = name;
								if (draft.hourClass === found.name) draft.hourClass = name;
								found.name = name;
							})
						}
					/>
					<Quick
						hideLabel
						label={t("Rate of tax class {n}", { n: i + 1 })}
						field={`shop/classes/${i}/rate`}
						value={row.rate}
						onChange={(rate) =>
							editShop((draft) => {
								const found = draft.classes[i];
								if (found) found.rate = rate;
							})
						}
					/>
					{seller.classes.length > 1 && (
						<RemoveButton
							what={row.name}
							onClick={() =>
								editShop((draft) => {
									draft.classes.splice(i, 1);
								})
							}
						/>
					)}
				</div>
			))}
			<button
				type="button"
				class="button-quiet"
				onClick={() =>
					editShop((draft) => {
						draft.classes.push({ name: t("reduced"), rate: "0 %" });
					})
				}
			>
				{t("Add a tax class")}
			</button>
		</fieldset>
	);
}

function Lines({ field, label }: { field: "address" | "terms"; label: string }) {
	return (
		<div class="field">
			<label for={`shop-${field}`}>{label}</label>
			<textarea
				id={`shop-${field}`}
				rows={3}
				value={shop.value?.[field]}
				onInput={(event) => {
					const typed = event.currentTarget.value;
					editShop((draft) => {
						draft[field] = typed;
					});
				}}
			/>
		</div>
	);
}
