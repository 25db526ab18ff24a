// Where the page begins.
import "../style/tokens.css";
import "../style/page.css";
import "../style/bar.css";
import "../style/start.css";
import "../style/bench.css";
import "../style/map.css";
import "../style/rules.css";
import "../style/pour.css";
import "../style/day.css";
import "../style/study.css";
import "../style/counter.css";
import "../style/steps.css";
import "../style/help.css";
import "../style/sheet.css";
import "../style/papers.css";
import "../style/kept.css";
import { render } from "preact";
import { App } from "./App";
import { registerServiceWorker } from "./sw/register";
import { choose, usualLanguage } from "./words/words";

const page = document.getElementById("page");

function draw(update: (() => void) | null): void {
	if (page) render(<App update={update} />, page);
}

async function begin(): Promise<void> {
	await choose(usualLanguage()).catch(() => choose("en"));
	draw(null);
	await registerServiceWorker((switchOver) => draw(switchOver));
}

void begin();
