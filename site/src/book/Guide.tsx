// The guide: every word that a rule may use, with its dimension, its meaning and an example, and every function. Both come from the engine.
import { useState } from "preact/hooks";
import { functions, vocabulary } from "../state/job";
import { said, t } from "../words/words";

export function Guide() {
	const [wanted, setWanted] = useState("");
	const has = (text: string) => text.toLowerCase().includes(wanted.toLowerCase());
	const [opened, setOpened] = useState(false); // long tables, drawn when somebody wants them
	const words = vocabulary.value.filter((word) => has(`${word.name} ${said(word.meaning)} ${word.dimension}`));
	const calls = functions.value.filter((one) => has(`${one.name} ${said(one.help)}`));
	return (
		<section class="card" aria-labelledby="guide-title">
			<h2 id="guide-title">{t("Guide: words and functions")}</h2>
			<p class="small">
				{t(
					"Quantities carry dimensions: mm(10) is a length, 10 is a bare number, and adding a length to a mass is an error at its place. a ?? b takes b where nobody has said a. && is and, || is or, ! is not; condition ? this : that chooses.",
				)}
			</p>
			<div class="field">
				<label for="guide-find">{t("Find a word or a function")}</label>
				<input id="guide-find" type="search" value={wanted} onInput={(event) => setWanted(event.currentTarget.value)} />
			</div>
			<details open={wanted !== ""} onToggle={() => setOpened(true)}>
				<summary>{t("Words: {count}", { count: words.length })}</summary>
				<div class="guide-table">
					<table class="trace">
						<thead>
							<tr>
								<th scope="col">{t("Word")}</th>
								<th scope="col">{t("What it is")}</th>
								<th scope="col">{t("Meaning")}</th>
								<th scope="col">{t("Example")}</th>
							</tr>
						</thead>
						<tbody>
							{(opened ? words : []).map((word) => (
								<tr key={word.name}>
									<td>
										<code>{word.name}</code>
									</td>
									<td>
										{word.kind === "choice"
											? word.choices.map((choice) => `"${choice}"`).join(", ")
											: said(word.dimension) || (word.kind === "truth" ? t("yes or no") : t("text"))}
									</td>
									<td>
										{said(word.meaning)}{" "}
										<span class="soft">{t("One for each {scope}.", { scope: said(word.scope) })}</span>
									</td>
									<td>{said(word.example)}</td>
								</tr>
							))}
						</tbody>
					</table>
				</div>
			</details>
			<details open={wanted !== ""} onToggle={() => setOpened(true)}>
				<summary>{t("Functions: {count}", { count: calls.length })}</summary>
				<div class="guide-table">
					<table class="trace">
						<tbody>
							{(opened ? calls : []).map((one) => (
								<tr key={one.name}>
									<td>
										<code>{one.call}</code>
									</td>
									<td>{said(one.help)}</td>
								</tr>
							))}
						</tbody>
					</table>
				</div>
			</details>
		</section>
	);
}
