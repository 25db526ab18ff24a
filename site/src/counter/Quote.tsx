// The quote: what is bought, each price beside it, and what it comes to. It is what the printer gets.
import { useState } from "preact/hooks";
import { call, isEngineError } from "../engine/client";
import type { BillPlan, LinePack, TakeOff, TakeOffLine } from "../engine/contract";
import { job, plan } from "../state/job";
import { editOffer, keepShop, shop, takeOff } from "../state/takeoff";
import { readable } from "../words/rule";
import { region, said, t } from "../words/words";

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
	const [first, ...others] = line.parts;
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
					{list && line.keeps && <p class="quote-keeps small">{keepsSays(line)}</p>}
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
				{first && <Packs line={line} part={first} list={list} />}
			</tr>
			{others.map((part) => (
				<tr key={part.pack.text} class={line.quoted ? undefined : "quote-out no-print"}>
					<td colSpan={2} />
					<Packs line={line} part={part} list={list} />
				</tr>
			))}
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

type PartProps = { line: TakeOffLine; part: LinePack };

/** Packs of one size: how many, of what, and their price or, on the list, what stays over of all. */
function Packs({ line, part, list }: PartProps & { list?: boolean }) {
	return (
		<>
			<td class="quote-number quote-packs">{part.packs}</td>
			<td>{packText(line, part)}</td>
			{list ? (
				<td>{part === line.parts[0] && said(line.leftover.text)}</td>
			) : (
				<>
					<td class="quote-number">
						<PriceBox line={line} part={part} />
						<span class="print-only">{said(part.price?.each)}</span>
					</td>
					<td class="quote-number">
						{said(part.price?.amount)}
						{part.price?.margin && <span class="quote-margin no-print">{said(part.price.margin)}</span>}
					</td>
				</>
			)}
		</>
	);
}

/** A pack by what it holds; what is counted one by one by its name. */
function packText(line: TakeOffLine, part: LinePack): string {
	return part.pack.text === "1"
		? said(line.packName)
		: t("{name} of {holds}", { name: said(line.packName), holds: said(part.pack.text) });
}

/** How long a line may stand in the shop, by the day where the work has one. */
function keepsSays(line: TakeOffLine): string {
	const time = said(line.keeps?.text);
	return line.tooOld
		? t("Keeps {time} unopened: if made before {day}, it is too old on the day of the pour.", {
				time,
				day: dayOf(line.tooOld),
			})
		: t("Keeps {time} unopened: look at the date on the pack.", { time });
}

function dayOf(day: string): string {
	return new Date(`${day}T12:00`).toLocaleDateString(region(), { day: "numeric", month: "short", year: "numeric" });
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
			{line.keeps && <li>{keepsSays(line)}</li>}
		</ol>
	);
}

/** A price typed here goes into the price list. */
function PriceBox({ line, part }: PartProps) {
	const [typing, setTyping] = useState<string | null>(null);
	const [wrong, setWrong] = useState("");
	const keep = async (typed: string) => {
		const seller = shop.value;
		setTyping(null);
		if (!seller || typed === (part.price?.each ?? "")) return;
		try {
			const item = part.price?.item ?? line.item;
			const rows = seller.prices.filter((row) => row.item === item && row.code === part.price?.code);
			const own = rows.find((row) => row.pack === part.pack.text) ?? rows[0];
			const { shop: next } = await call("prices.set", {
				shop: seller,
				item,
				pack: own?.pack ?? packOf(part),
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
				aria-label={t("Price of one {pack} of {item}", { pack: packText(line, part), item: said(line.item) })}
				aria-invalid={wrong ? true : undefined}
				value={typing ?? part.price?.each ?? ""}
				onInput={(event) => setTyping(event.currentTarget.value)}
				onBlur={(event) => keep(event.currentTarget.value.trim())}
			/>
			{wrong && <p class="field-error no-print">{wrong}</p>}
		</>
	);
}

function packOf(part: LinePack): string {
	return part.pack.text === "1" ? "" : part.pack.text;
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
					label={t("{name} tax, {rate} of {net}", { name: said(tax.name), rate: said(tax.rate), net: said(tax.net) })}
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
					{t(
						"Nobody has measured this floor. It may take {few} bags or {many}; measuring it first narrows that down.",
						{
							few: worked.bags.half,
							many: worked.bags.ninetyNine,
						},
					)}
				</p>
			)}
			<p>{t("The sheet on the bag goes first. Look at the dates on bags and tins.")}</p>
			{!list && shop.value?.terms && <p class="quote-lines-of-text">{shop.value.terms}</p>}
		</div>
	);
}
