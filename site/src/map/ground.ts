// Looking into the ground: what the engine says of a spot, and of a line. The newest question wins; what came before stays shown until then.
import { useEffect, useState } from "preact/hooks";
import { callLatest } from "../engine/client";
import type { Point, SectionPlan, SpotPlan } from "../engine/contract";
import { bookText } from "../state/book";
import { job, trouble } from "../state/job";
import { said, t } from "../words/words";

export type Line = { from: Point; to: Point };

function fail(error: Error): void {
	trouble.value = error.message;
}

/** What stands at a spot of a room; null while nothing is pointed at. */
export function useSpot(room: string, at: Point | null): SpotPlan | null {
	const [found, setFound] = useState<SpotPlan | null>(null);
	const open = job.value;
	useEffect(() => {
		let gone = false;
		if (!open || !at) setFound(null);
		else
			callLatest("spot", { job: open, book: bookText.peek(), room, at })
				.then((said) => said && !gone && setFound(said))
				.catch(fail);
		return () => {
			gone = true;
		};
	}, [open, room, at?.x, at?.y]);
	return found;
}

/** A room cut along a line. */
export function useSection(room: string, line: Line | null): SectionPlan | null {
	const [found, setFound] = useState<SectionPlan | null>(null);
	const open = job.value;
	useEffect(() => {
		if (!open || !line) setFound(null);
		else
			callLatest("section", { job: open, book: bookText.peek(), room, ...line })
				.then((said) => said && setFound(said))
				.catch(fail);
	}, [open, room, line?.from.x, line?.from.y, line?.to.x, line?.to.y]);
	return found;
}

/** A spot in words. */
export function spotSays(spot: SpotPlan): string {
	const place = { x: said(spot.x.text), y: said(spot.y.text) };
	if (!spot.poured) return t("x {x}, y {y}: no pour here", place);
	const values = { ...place, depth: said(spot.depth.text), deck: said(spot.deck.text), plane: said(spot.plane.text) };
	return t("x {x}, y {y}: pour {depth} · deck reads {deck} · finish reads {plane}", values);
}
