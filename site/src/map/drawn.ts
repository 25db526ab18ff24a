// What the map is given to draw.
import type { BatchPlan, Point, RoomPlan, RoomStudy } from "../engine/contract";
import type { PatchState } from "../pour/PatchMap";
import { layers } from "../state/study";
import type { Board, View } from "./view";

export type Batches = { list: BatchPlan[]; stateOf: (batch: number) => PatchState };

export type DrawingProps = {
	room: RoomPlan;
	study: RoomStudy | undefined;
	batches: Batches | null;
	picked: number | null;
	problemAt?: Point;
	line: { from: Point; to: Point } | null;
	cursor: Point | null;
	view: View;
	size: Board;
};

/** Batches cover the depths, and the words for them. */
export function depthShown(props: DrawingProps): boolean {
	return layers.value.has("depth") && !props.batches;
}
