// The head of a page of paper: what it is, of which job, and of which day, so that an old print isn't taken for the new one.
import type { ComponentChildren } from "preact";
import { job } from "../state/job";
import { region, t } from "../words/words";

export function PaperHead({ title, children }: { title: string; children?: ComponentChildren }) {
	const today = new Date().toLocaleDateString(region(), { day: "numeric", month: "long", year: "numeric" });
	return (
		<header class="paper-title">
			<h2>{title}</h2>
			<p>
				{[job.value?.name, t("printed {day}", { day: today })].filter(Boolean).join(" · ")}
				{children && (
					<>
						{" · "}
						<b>{children}</b>
					</>
				)}
			</p>
		</header>
	);
}
