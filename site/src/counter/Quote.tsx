// The quote: what is bought, each price beside it, and what it comes to. It is what the printer gets.
import { useState } from "preact/hooks";
import { readable } from "../bench/Findings";
import { call, isEngineError } from "../engine/client";
import type { BillPlan, TakeOff, TakeOffLine } from "../engine/contract";
import { job, plan } from "../state/job";
import { editOffer, keepShop, shop, takeOff } from "../state/takeoff";
import { said, t } from "../words/words";

export function Quote({ list }: { list?: boolean }) {
	const worked = takeOff.value;
	if (!worked || worked.lines.length === 0) return null;
	const printed = worked.lines.filter((line) => line.quoted);
	return (
		<section class="quote" aria-label={list ? t("Shopping list") : t("Quote")}>
			<QuoteHead list={list} worked={worked} />
			<Floors />
			<table class="quote-lines">
				<thead>
					<tr>
						<th scope="col">{t("Item")}</th>
						<th scope="col">{t("Needed")}</th>
						<th scope="col" class="quote-number">
							{t("Packs")}
						</th>
						<th scope="col">{t("Pack")}</th>
						{list ? (
							<th scope="col">{t("Left over")}</th>
						) : (
							<>
								<th scope="col" class="quote-number">
									{t("Each")}
								</th>
								<th scope="col" class="quote-number">
									{t("Amount")}
								</th>
							</>
						)}
					</tr>
				</thead>
				<tbody>
					{worked.lines.map((line) => (
						<Line key={line.key} line={line} list={list} />
					))}
				</tbody>
			</table>
			{!list && worked.bill && worked.bill.amount > 0 && <Sums bill={worked.bill} />}
			{list && (
				<p class="small">
					{t("{count} packs, {mass} in all.", {
						count: printed.reduce((sum, line) => sum + line.packs, 0),
						mass: said(worked.mass.text),
					})}
				</p>
			)}
			<Foot worked={worked} list={list} />
		</section>
	);
}

function QuoteHead({ list, worked }: { list?: boolean; worked: TakeOff }) {
	const offer = job.value?.offer;
	const seller = shop.value;
	return (
		<div class="quote-head print-only">
			<div>
				<b>{seller?.name}</b>
				<p class="quote-lines-of-text">{seller?.address}</p>
			</div>
			<div>
				<h1>
					{list ? t("Shopping list") : t("Quote")} {!list && offer?.number}
				</h1>
				{job.value?.name !== t("Quote {number}", { number: offer?.number ?? "" }) && <p>{job.value?.name}</p>}
				{offer?.customer && <p>{t("For {customer}", { customer: offer.customer })}</p>}
				{offer?.date && (
					<p>
						{offer.date}
						{!list && worked.until && ` · ${t("holds until {day}", { day: worked.until })}`}
					</p>
				)}
			</div>
		</div>
	);
}

/** What the quote is for: each room's area, deck and depth. */
function Floors() {
	return (
		<ul class="quote-floors print-only">
			{plan.value?.rooms.map((room, i) => {
				const depth = room.rough?.mean ?? room.pour?.depths.mean;
				const decks = room.decks.map((deck) => said(deck.kind)).filter(Boolean);
				return (
					<li key={room.id}>
						{[
							room.name || t("Room {n}", { n: i + 1 }),
							said(room.area.text),
							decks.join(", "),
							depth && t("{depth} deep on average", { depth: said(depth.text) }),
						]
							.filter(Boolean)
							.join(" · ")}
					</li>
				);
			})}
		</ul>
	);
}

function Line({ line, list }: { line: TakeOffLine; list?: boolean }) {
	const [open, setOpen] = useState(false);
	const pack = packText(line);
	return (
		<>
			<tr class={line.quoted ? undefined : "quote-out no-print"}>
				<th scope="row">
					<label class="quote-tick">
						<input
							type="checkbox"
							class="no-print"
							tabIndex={-1}
							checked={line.quoted}
							aria-label={t("Quote {item}", { item: said(line.item) })}
							onChange={(event) => {
								const quoted = event.currentTarget.checked;
								editOffer(`lines/${line.key}`, (offer) => {
									offer.lines[line.key] = quoted;
								});
							}}
						/>
						<span>{said(line.item)}</span>
					</label>
				</th>
				<td>
					<button
						type="button"
						class="quote-why no-print"
						tabIndex={-1}
						aria-expanded={open}
						aria-label={t("Why {need} of {item}", { need: said(line.need.text), item: said(line.item) })}
						onClick={() => setOpen(!open)}
					>
						{said(line.need.text)}
					</button>
					<span class="print-only">{said(line.need.text)}</span>
				</td>
				<td class="quote-number quote-packs">{line.packs}</td>
				<td>{pack}</td>
				{list ? (
					<td>{said(line.leftover.text)}</td>
				) : (
					<>
						<td class="quote-number">
							<PriceBox line={line} />
							<span class="print-only">{said(line.price?.each)}</span>
						</td>
						<td class="quote-number">
							{said(line.price?.amount)}
							{line.price?.margin && <span class="quote-margin no-print">{said(line.price.margin)}</span>}
						</td>
					</>
				)}
			</tr>
			{open && (
				<tr class="quote-because">
					<td colSpan={6}>
						<Because line={line} />
					</td>
				</tr>
			)}
		</>
	);
}

/** A pack by what it holds; what is counted one by one by its name. */
function packText(line: TakeOffLine): string {
	return line.pack.text === "1"
		? said(line.packName)
		: t("{name} of {holds}", { name: said(line.packName), holds: said(line.pack.text) });
}

export function Because({ line }: { line: TakeOffLine }) {
	return (
		<ol class="because">
			{line.because.map((reason, i) => (
				<li key={`${i} ${reason.says}`}>
					{said(reason.says)}
					{reason.rule && (
						<>
							{" "}
							<a href={`#/rules/${encodeURIComponent(reason.rule)}`}>{readable(reason.rule)}</a>{" "}
							<span class="soft">{said(reason.source)}</span>
						</>
					)}
				</li>
			))}
			{line.keeps && (
				<li>{t("Keeps {time} closed and dry: look at the date on the pack.", { time: said(line.keeps.text) })}</li>
			)}
		</ol>
	);
}

/** A price typed here goes into the price list. */
function PriceBox({ line }: { line: TakeOffLine }) {
	const [typing, setTyping] = useState<string | null>(null);
	const [wrong, setWrong] = useState("");
	const keep = async (typed: string) => {
		const seller = shop.value;
		setTyping(null);
		if (!seller || typed === (line.price?.each ?? "")) return;
		try {
			const item = line.price?.item ?? line.item;
			const own = seller.prices.find((row) => row.item === line.price?.item && row.code === line.price?.code);
			const { shop: next } = await call("prices.set", {
				shop: seller,
				item,
				pack: own?.pack ?? packOf(line),
				price: typed,
			});
			setWrong("");
			keepShop(next);
		} catch (error) {
			setWrong(isEngineError(error) ? said(error.message) : String(error));
		}
	};
	return (
		<>
			<input
				type="text"
				class="price-box no-print"
				inputMode="decimal"
				aria-label={t("Price of one {pack} of {item}", { pack: said(line.packName), item: said(line.item) })}
				aria-invalid={wrong ? true : undefined}
				value={typing ?? line.price?.each ?? ""}
				onInput={(event) => setTyping(event.currentTarget.value)}
				onBlur={(event) => keep(event.currentTarget.value.trim())}
			/>
			{wrong && <p class="field-error no-print">{wrong}</p>}
		</>
	);
}

function packOf(line: TakeOffLine): string {
	return line.pack.text === "1" ? "" : line.pack.text;
}

function Sums({ bill }: { bill: BillPlan }) {
	return (
		<dl class="quote-sums">
			{bill.discount && (
				<Sum label={t("Discount {rate}", { rate: said(bill.rate) })} value={`−${said(bill.discount)}`} />
			)}
			{bill.delivery && <Sum label={t("Delivery")} value={said(bill.delivery)} />}
			{bill.labour && <Sum label={t("Labour")} value={said(bill.labour)} />}
			<Sum label={t("Net")} value={said(bill.net)} />
			{bill.taxes.map((tax) => (
				<Sum
					key={tax.name}
					label={t("{name} tax, {rate} of {net}", { name: tax.name, rate: said(tax.rate), net: said(tax.net) })}
					value={said(tax.tax)}
				/>
			))}
			<Sum main label={t("Total")} value={`${said(bill.total)} ${bill.currency}`} />
			{bill.margin && (
				<div class="no-print soft">
					<dt>{t("Margin, not printed")}</dt>
					<dd>{said(bill.margin)}</dd>
				</div>
			)}
		</dl>
	);
}

function Sum({ label, value, main }: { label: string; value: string; main?: boolean }) {
	return (
		<div class={main ? "quote-total" : undefined}>
			<dt>{label}</dt>
			<dd>{value}</dd>
		</div>
	);
}

function Foot({ worked, list }: { worked: TakeOff; list?: boolean }) {
	const bill = worked.bill;
	const unpriced = bill?.unpriced ?? [];
	return (
		<div class="quote-foot small">
			{!list && unpriced.length > 0 && (
				<p>
					{t("Without a price yet, and not in the total: {items}.", {
						items: unpriced.map((item) => said(item)).join(", "),
					})}
				</p>
			)}
			{worked.survey && worked.bags && (
				<p>
					{t("Nobody has measured this floor. It may take {few} bags or {many}; reading it first narrows that down.", {
						few: worked.bags.half,
						many: worked.bags.ninetyNine,
					})}
				</p>
			)}
			<p>{t("The sheet on the bag goes first. Look at the dates on bags and tins.")}</p>
			{!list && shop.value?.terms && <p class="quote-lines-of-text">{shop.value.terms}</p>}
		</div>
	);
}
