// Help: every term and every way of measuring, on one page that works with no network.
import { useEffect, useState } from "preact/hooks";
import type { WordPlan } from "../engine/contract";
import { useGrowing } from "../parts/grow";
import { Weight, weightWord } from "../parts/marks";
import { job, vocabulary } from "../state/job";
import { route, to } from "../state/route";
import { BagPicture, BoardPicture, LaserPicture, pictureOf, TapePicture } from "../steps/pictures";
import { said, t } from "../words/words";
import { type HelpEntry, helpParts } from "./entries";

const pictures: Record<string, () => preact.JSX.Element | null> = {
	laser: LaserPicture,
	board: BoardPicture,
	tape: TapePicture,
	bag: BagPicture,
	thermometer: () => pictureOf("air.temperature"),
};

export function Help() {
	const wanted = route.value.id;
	useEffect(() => {
		const entry = document.getElementById(`help-${wanted}`);
		entry?.scrollIntoView();
		entry?.querySelector<HTMLElement>("h3")?.focus({ preventScroll: true });
	}, [wanted]);
	const parts = helpParts();
	return (
		<main class="help" id="main">
			<h1>{t("Help")}</h1>
			{job.value && (
				<p class="no-print">
					<a class="button" href={to("job", job.value.id)}>
						{t("Back to the job")}
					</a>
				</p>
			)}
			<nav class="help-list no-print" aria-label={t("Help entries")}>
				{parts.map((part) => (
					<section key={part.title}>
						<h2>{part.title}</h2>
						<ul>
							{part.entries.map((entry) => (
								<li key={entry.id}>
									<a href={to("help", entry.id)}>{entry.title}</a>
								</li>
							))}
						</ul>
					</section>
				))}
			</nav>
			{parts.map((part) => (
				<section key={part.title} class="help-part">
					<h2>{part.title}</h2>
					{part.entries.map((entry) => (
						<Entry key={entry.id} entry={entry} />
					))}
				</section>
			))}
			<Vocabulary />
		</main>
	);
}

function Entry({ entry }: { entry: HelpEntry }) {
	const Picture = entry.picture ? pictures[entry.picture] : undefined;
	return (
		<article class="help-entry" id={`help-${entry.id}`}>
			<h3 tabIndex={-1}>{entry.title}</h3>
			{entry.id === "marks" && (
				<p class="row">
					{["stop", "fix", "watch", "kept", "ask"].map((weight) => (
						<Weight key={weightWord(weight)} weight={weight} />
					))}
				</p>
			)}
			{Picture && <Picture />}
			{entry.says.map((text) => (
				<p key={text}>{text}</p>
			))}
		</article>
	);
}

/** Everything that rules may speak of, as the engine explains it. */
function Vocabulary() {
	const [wanted, setWanted] = useState("");
	const words = vocabulary.value.filter((word) => matches(word, wanted));
	const drawn = useGrowing(words);
	return (
		<section class="help-part" id="help-vocabulary">
			<h2>{t("What Lowspot asks and works out")}</h2>
			<div class="field no-print">
				<label for="help-find">{t("Find a word")}</label>
				<input id="help-find" type="search" value={wanted} onInput={(event) => setWanted(event.currentTarget.value)} />
			</div>
			<p role="status" class="small soft">
				{t("{count} words", { count: words.length })}
			</p>
			<dl class="help-words">
				{drawn.map((word) => (
					<Word key={word.name} word={word} />
				))}
			</dl>
		</section>
	);
}

function Word({ word }: { word: WordPlan }) {
	return (
		<div>
			<dt>
				{said(word.meaning)} <code>{word.name}</code>
			</dt>
			<dd>
				{word.why && <span>{said(word.why)} </span>}
				{word.how && <span>{t("How: {how}", { how: said(word.how) })} </span>}
				{word.example && <span class="soft">{t("For example {example}.", { example: said(word.example) })}</span>}
			</dd>
		</div>
	);
}

function matches(word: WordPlan, wanted: string): boolean {
	if (wanted.trim() === "") return true;
	const text = `${word.name} ${said(word.meaning)} ${said(word.why)} ${said(word.how)}`.toLowerCase();
	return wanted
		.toLowerCase()
		.split(/\s+/)
		.every((part) => text.includes(part));
}
