// What stands where a page will be in a moment.
import { t } from "../words/words";

export function Busy({ says }: { says?: string }) {
	return (
		<main id="main" class="busy" aria-busy="true">
			<p role="status">{says ?? t("Opening…")}</p>
			<progress aria-label={says ?? t("Opening…")} />
		</main>
	);
}
