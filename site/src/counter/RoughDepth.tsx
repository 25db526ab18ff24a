// How deep the pour will be as far as anybody knows: one depth, or the least and the greatest.
import type { Room } from "../engine/contract";
import { withUnit } from "../parts/fields";
import { t } from "../words/words";
import { Quick } from "./fields";

export function RoughDepth(props: {
	room: Room;
	path: string;
	us: boolean;
	change: (field: string, alter: (room: Room) => void) => void;
}) {
	const { room, path, us, change } = props;
	const depth = (text: string) => withUnit(text, us ? "in" : "mm");
	const rough = room.rough ?? {};
	const ranged = rough.greatest !== undefined && rough.greatest !== "";
	const setFrom = (typed: string) =>
		change("rough/from", (r) => {
			r.rough = ranged ? { ...r.rough, least: typed } : { mean: typed };
		});
	const setTo = (typed: string) =>
		change("rough/to", (r) => {
			const from = r.rough?.least ?? r.rough?.mean ?? "";
			r.rough = typed.trim() ? { least: from, greatest: typed } : { mean: from };
		});
	return (
		<>
			<Quick
				label={ranged ? t("Least depth") : t("Depth, about")}
				value={rough.least ?? rough.mean ?? ""}
				field={`${path}/rough/${ranged ? "least" : "mean"}`}
				full={depth}
				onChange={setFrom}
			/>
			<Quick
				label={t("to, at its deepest")}
				value={rough.greatest ?? ""}
				field={`${path}/rough/greatest`}
				full={depth}
				onChange={setTo}
			/>
		</>
	);
}
