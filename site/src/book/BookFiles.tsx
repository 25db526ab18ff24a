// The rulebook and sheets as one file to read, hand on and take in, with a look at what changes first; and bringing a later shipped version in.
import { useEffect, useState } from "preact/hooks";
import { call } from "../engine/client";
import type { KindSheet, Merged, Preview, Rule, RuleChange } from "../engine/contract";
import { OpenFile } from "../parts/OpenFile";
import { book, bookText, takeText, useShipped } from "../state/book";
import { fileName, save } from "../state/files";
import { job, newId } from "../state/job";
import { readable } from "../words/rule";
import { said, t } from "../words/words";

const mostBytes = 1 << 20;

export function BookFiles() {
	const [preview, setPreview] = useState<Preview | null>(null);
	const [told, setTold] = useState("");
	const look = async (file: File) => {
		if (file.size > mostBytes) {
			setTold(t("This file is larger than any rulebook. Nothing was changed."));
			return;
		}
		setTold("");
		setPreview(await call("books.preview", { text: await file.text(), book: bookText.value }));
	};
	return (
		<section class="card" aria-labelledby="files-title">
			<h2 id="files-title">{t("Hand it on")}</h2>
			<p class="small soft">
				{t("One file that anybody can read: your rules, the sheets you kept, and those of the open job.")}
			</p>
			<div class="row">
				<button type="button" onClick={() => exportBook().catch((error: Error) => setTold(said(error.message)))}>
					{t("Save rulebook and sheets as a file")}
				</button>
				<OpenFile label={t("Open a rulebook file…")} accept=".txt,.rules,text/plain" take={look} tell={setTold} />
				{book.value && (
					<button type="button" class="button-quiet" onClick={() => useShipped()}>
						{t("Go back to the shipped rulebook, whole")}
					</button>
				)}
			</div>
			<p role="status" class="small">
				{told}
			</p>
			{preview && (
				<Look
					preview={preview}
					onTake={async () => {
						setTold(await take(preview));
						setPreview(null);
					}}
					onLeave={() => setPreview(null)}
				/>
			)}
		</section>
	);
}

async function exportBook(): Promise<void> {
	const text = bookText.value || (await call("books.shipped", {})).text;
	const kept = (await call("sheets.list", {})).sheets.map((one): KindSheet => ({ kind: one.kind, sheet: one.sheet }));
	const open = Object.entries(job.value?.sheets ?? {})
		.filter(([, sheet]) => !sheet.generic)
		.map(([kind, sheet]): KindSheet => ({ kind, sheet }));
	const extra = open.filter((one) => !kept.some((other) => JSON.stringify(other) === JSON.stringify(one)));
	const file = await call("books.write", { book: text, sheets: [...kept, ...extra] });
	save(fileName(t("rulebook and sheets"), "txt"), file.text, "text/plain");
}

/** Takes a file in as it was looked at. */
async function take(preview: Preview): Promise<string> {
	if (preview.book) await takeText(preview.book);
	for (const sheet of preview.sheets) await call("sheets.keep", { id: newId("sheet"), ...sheet });
	return t("Taken: {rules} rules changed, {sheets} sheets kept.", {
		rules: preview.rules.length,
		sheets: preview.sheets.length,
	});
}

function Look(props: { preview: Preview; onTake: () => void; onLeave: () => void }) {
	const { preview } = props;
	return (
		<div class="preview" role="region" aria-label={t("What the file would change")}>
			<h3>{t("What the file would change")}</h3>
			{preview.problems.map((problem) => (
				<p class="field-error" key={`${problem.field}/${problem.message}`}>
					{problem.field}: {said(problem.message)} {said(problem.remedy)}
				</p>
			))}
			{preview.problems.length > 0 && <p>{t("Nothing of it can be taken.")}</p>}
			{preview.errors.length > 0 && (
				<details open>
					<summary>
						{t("{count} errors in its rules: what is wrong comes out as faulty and stops nothing else", {
							count: preview.errors.length,
						})}
					</summary>
					<ul class="field-error">
						{preview.errors.map((error, i) => (
							<li key={i}>
								{error.rule} {said(error.message)} {said(error.remedy)}
							</li>
						))}
					</ul>
				</details>
			)}
			{preview.problems.length === 0 && preview.rules.length === 0 && <p>{t("No rule says anything else.")}</p>}
			<Changes changes={preview.rules} />
			{preview.sheets.map((one, i) => (
				<details key={i}>
					<summary>{t("Sheet of a {kind}: {name}", { kind: said(one.kind), name: one.sheet.name })}</summary>
					<pre class="rule-text">
						{Object.entries(one.sheet.values)
							.map(([word, typed]) => `${word}: ${typed}`)
							.join("\n")}
					</pre>
				</details>
			))}
			<div class="row">
				{preview.problems.length === 0 && (
					<button type="button" class="button-main" onClick={props.onTake}>
						{t("Take it")}
					</button>
				)}
				<button type="button" onClick={props.onLeave}>
					{t("Leave it")}
				</button>
			</div>
		</div>
	);
}

function Changes({ changes }: { changes: RuleChange[] }) {
	return (
		<ul>
			{changes.map((change) => (
				<li key={change.name}>
					<details>
						<summary>
							{readable(change.name)}{" "}
							<span class="small soft">{change.before ? (change.after ? t("changed") : t("left out")) : t("new")}</span>
						</summary>
						<Sides left={change.before?.text} right={change.after?.text} names={[t("Now"), t("Then")]} />
					</details>
				</li>
			))}
		</ul>
	);
}

function Sides(props: { left?: string; right?: string; names: [string, string] }) {
	return (
		<div class="side-by-side">
			{[props.left, props.right].map((text, i) => (
				<figure key={props.names[i]}>
					<figcaption class="small">{props.names[i]}</figcaption>
					<pre class="rule-text">{text ?? t("(no such rule)")}</pre>
				</figure>
			))}
		</div>
	);
}

/** Where another rulebook ships than the one that the person's began from: what it brings, and where both changed. */
export function Update() {
	const [merged, setMerged] = useState<Merged | null>(null);
	const [ships, setShips] = useState("");
	const current = book.value;
	useEffect(() => {
		setMerged(null);
		if (!current) return;
		call("books.shipped", {})
			.then(async ({ text }) => {
				setShips(text);
				if (current.base !== text && current.base !== "")
					setMerged(await call("books.merge", { book: current.text, base: current.base }));
			})
			.catch(() => {});
	}, [current]);
	if (!merged) return null;
	return (
		<section class="card" aria-labelledby="update-title">
			<h2 id="update-title">{t("A later rulebook has shipped")}</h2>
			<p>
				{t("It changes {count} rules of yours. Rules that you changed stay as you have them.", {
					count: merged.rules.length,
				})}
			</p>
			<Changes changes={merged.rules} />
			{merged.conflicts.map((conflict) => (
				<div class="conflict" key={conflict.name}>
					<h3>{t("Both changed: {rule}", { rule: readable(conflict.name) })}</h3>
					<Sides
						left={conflict.users?.text}
						right={conflict.shipped?.text}
						names={[t("Yours, which stays"), t("Shipped now")]}
					/>
					{conflict.shipped && (
						<button type="button" onClick={() => settle(merged, conflict.name, conflict.shipped?.rule).then(setMerged)}>
							{t("Take the shipped one")}
						</button>
					)}
				</div>
			))}
			<button type="button" class="button-main" onClick={() => takeText(merged.book, ships)}>
				{t("Bring my rulebook up to it")}
			</button>
		</section>
	);
}

/** Takes the shipped side of a conflict into the merged book. */
async function settle(merged: Merged, name: string, rule: Rule | undefined): Promise<Merged> {
	if (!rule) return merged;
	const when = new Date().toISOString().slice(0, 10);
	const { text } = await call("books.change", { book: merged.book, rule, who: t("shipped rule taken"), when });
	return { ...merged, book: text, conflicts: merged.conflicts.filter((one) => one.name !== name) };
}
