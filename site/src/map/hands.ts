// Pointer, wheel and keys on the board: one finger moves it or draws, two zoom, a press that didn't move is a tap.
import { useRef } from "preact/hooks";
import type { Point } from "../engine/contract";
import { type Board, pan, type View, zoom } from "./view";

export type Hands = {
	board: Board;
	view: View | null;
	setView: (view: View) => void;
	onTap: (at: Point, reach: number) => void;
	onOver: (at: Point | null) => void;
	onDraw?: (from: Point, to: Point) => void; // instead of moving the board
	onArrow?: (x: number, y: number) => boolean; // true where the arrow was taken
};

const still = 6; // pixels that a tap may wander
const thumb = 22; // pixels that a finger's tap reaches
const mouse = 10;

export function useHands(hands: Hands) {
	const { board, view, setView } = hands;
	const fingers = useRef(new Map<number, Point>());
	const start = useRef<Point>({ x: 0, y: 0 });
	const moved = useRef(0);
	return {
		onPointerDown: (event: PointerEvent) => {
			(event.currentTarget as Element).setPointerCapture(event.pointerId);
			fingers.current.set(event.pointerId, local(event));
			start.current = local(event);
			moved.current = 0;
		},
		onPointerMove: (event: PointerEvent) => {
			const now = local(event);
			hands.onOver(now);
			const before = fingers.current.get(event.pointerId);
			if (!before || !view) return;
			fingers.current.set(event.pointerId, now);
			moved.current += Math.hypot(now.x - before.x, now.y - before.y);
			const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1];
			if (other) setView(pinch(view, other, before, now, board));
			else if (moved.current <= still) return;
			else if (hands.onDraw) hands.onDraw(start.current, now);
			else setView(pan(view, now.x - before.x, now.y - before.y));
		},
		onPointerUp: (event: PointerEvent) => {
			const reach = event.pointerType === "mouse" ? mouse : thumb;
			if (fingers.current.size === 1 && moved.current <= still) hands.onTap(local(event), reach);
			fingers.current.delete(event.pointerId);
		},
		onPointerCancel: (event: PointerEvent) => {
			fingers.current.delete(event.pointerId);
		},
		onPointerLeave: () => hands.onOver(null),
		onWheel: (event: WheelEvent) => {
			if (!view || !(event.ctrlKey || event.metaKey || document.activeElement === event.currentTarget)) return;
			event.preventDefault();
			setView(zoom(view, event.deltaY < 0 ? 1.15 : 1 / 1.15, local(event), board));
		},
		onKeyDown: (event: KeyboardEvent) => {
			const [x, y] = arrows[event.key] ?? [0, 0];
			const far = event.shiftKey ? 10 : 1;
			if ((x || y) && hands.onArrow?.(x * far, y * far)) event.preventDefault();
			else if (view && !event.ctrlKey && !event.metaKey) {
				const next = byKey(event.key, view, board);
				if (!next) return;
				event.preventDefault();
				setView(next);
			}
		},
	};
}

const arrows: Record<string, [number, number]> = {
	ArrowLeft: [-1, 0],
	ArrowRight: [1, 0],
	ArrowUp: [0, 1],
	ArrowDown: [0, -1],
};

/** Two fingers: the floor under them stays under them. */
function pinch(view: View, held: Point, before: Point, now: Point, board: Board): View {
	const apart = (p: Point) => Math.max(1, Math.hypot(p.x - held.x, p.y - held.y));
	const moved = pan(view, (now.x - before.x) / 2, (now.y - before.y) / 2);
	return zoom(moved, apart(now) / apart(before), { x: (now.x + held.x) / 2, y: (now.y + held.y) / 2 }, board);
}

function local(event: PointerEvent | WheelEvent): Point {
	const box = (event.currentTarget as Element).getBoundingClientRect();
	return { x: event.clientX - box.left, y: event.clientY - box.top };
}

function byKey(key: string, view: View, board: Board): View | null {
	const [x, y] = arrows[key] ?? [0, 0];
	if (x || y) return pan(view, -40 * x, 40 * y);
	if (key === "+" || key === "=") return zoom(view, 1.25, middle(board), board);
	if (key === "-") return zoom(view, 0.8, middle(board), board);
	return null;
}

export function middle(board: Board): Point {
	return { x: board.width / 2, y: board.height / 2 };
}
