// Small pictures of how to measure, drawn for this page. Floor and walls in ink, what is measured or used in the chalk line's blue.
import type { ComponentChildren, JSX } from "preact";

/** The frame of every picture. */
function Frame({ children }: { children: ComponentChildren }) {
	return (
		<svg class="pic" viewBox="0 0 200 120" aria-hidden="true">
			{children}
		</svg>
	);
}

const line = (d: string) => <path class="pic-line" d={d} />;
const hot = (d: string) => <path class="pic-hot" d={d} />;
const thin = (d: string) => <path class="pic-thin" d={d} />;
const solid = (d: string) => <path class="pic-solid" d={d} />;

/** A measure between two ends with an arrowhead at each. */
function measure(x1: number, y1: number, x2: number, y2: number): JSX.Element {
	const length = Math.hypot(x2 - x1, y2 - y1);
	const size = Math.min(6, length / 4) / length; // a short one has small heads, so that they don't meet
	const [ux, uy] = [size * (x2 - x1), size * (y2 - y1)];
	const head = (x: number, y: number, s: number) =>
		`M${x + s * (ux - uy / 2)} ${y + s * (uy + ux / 2)}L${x} ${y}L${x + s * (ux + uy / 2)} ${y + s * (uy - ux / 2)}`;
	return hot(`M${x1} ${y1}L${x2} ${y2}${head(x1, y1, 1)}${head(x2, y2, -1)}`);
}

const deckLine = "M0 100c30-2 50 6 80 8s60-10 120-6v18H0z";

export function TapePicture() {
	return (
		<Frame>
			{line("M30 20H170V100H30z")}
			{measure(34, 60, 166, 60)}
			{measure(100, 24, 100, 96)}
		</Frame>
	);
}

export function KeepOutPicture() {
	return (
		<Frame>
			{line("M30 16H170V104H30z")}
			{solid("M110 30h44v40h-44z")}
			{measure(34, 80, 110, 80)}
			{measure(132, 74, 132, 102)}
		</Frame>
	);
}

export function DoorPicture() {
	return (
		<Frame>
			{line("M20 90H76M124 90H180M20 90V20M180 90V20")}
			{thin("M76 90A48 48 0 01124 42M124 90V42")}
			{measure(22, 104, 75, 104)}
			{measure(78, 104, 122, 104)}
		</Frame>
	);
}

export function DrainPicture() {
	return (
		<Frame>
			{line("M30 16V104H180")}
			<circle class="pic-solid" cx="120" cy="46" r="14" />
			<circle class="pic-thin" cx="120" cy="46" r="8" />
			{measure(34, 46, 104, 46)}
			{measure(120, 62, 120, 102)}
		</Frame>
	);
}

/** Laser on its tripod, the level line, and a staff read where the line meets it. */
export function LaserPicture() {
	return (
		<Frame>
			{solid(deckLine)}
			{line("M40 46L26 100M40 46L54 102M40 46V100")}
			{solid("M30 26h20v20H30z")}
			{hot("M50 36H186")}
			{line("M140 16v88M152 14v90M140 16h12")}
			{thin("M140 50h6M140 64h6M140 78h6M140 92h6")}
			<circle class="pic-dot" cx="146" cy="36" r="5" />
			{measure(168, 40, 168, 102)}
		</Frame>
	);
}

/** A straight board levelled from the high spot, and a rule from its lower edge to the floor. */
export function BoardPicture() {
	return (
		<Frame>
			{solid("M0 84c30-4 40 2 70 18s70 8 130-6v24H0z")}
			{line("M8 68H186V80H8z")}
			{solid("M76 56h48v12H76z")}
			<circle class="pic-dot" cx="100" cy="62" r="3.5" />
			{solid("M172 80h10v17h-10z")}
			{measure(106, 82, 106, 106)}
			{measure(60, 82, 60, 96)}
		</Frame>
	);
}

export function DatumPicture() {
	return (
		<Frame>
			{solid(deckLine)}
			{thin("M10 84H190")}
			{measure(60, 84, 60, 106)}
			{measure(150, 84, 150, 103)}
			{line("M10 84l-6-8h12z")}
		</Frame>
	);
}

export function BagPicture() {
	return (
		<Frame>
			{line("M62 10h76l6 12-4 86H60l-4-86z")}
			{thin("M58 24h84")}
			{hot("M70 40h30M70 58h42M70 76h24M70 94h36")}
			{thin("M112 40h18M124 58h8M106 76h24M118 94h12")}
		</Frame>
	);
}

function Drops() {
	return (
		<Frame>
			{solid("M0 84H200V120H0z")}
			{hot("M30 84q14-18 28 0zM86 84q14-8 28 0zM146 86h24")}
			{thin("M36 96l4 8M46 96l-4 8M92 94l4 14M108 94l-4 14M150 92l4 20M164 92l-4 20")}
		</Frame>
	);
}

/** Sheets over joists, cut through. */
function Section() {
	return (
		<Frame>
			{solid("M10 50H190V66H10z")}
			{line("M40 66v44h16V66M140 66v44h16V66")}
			{measure(100, 50, 100, 66)}
			{thin("M92 34l8 14 8-14")}
		</Frame>
	);
}

function Screws() {
	return (
		<Frame>
			{solid("M10 50H190V66H10z")}
			{line("M40 66v44h16V66M140 66v44h16V66")}
			{hot("M42 46h12M48 46v44M142 46h12M148 46v44")}
		</Frame>
	);
}

function Tapping() {
	return (
		<Frame>
			{solid("M0 86H200V110H0z")}
			{line("M96 78V40h18v38zM105 40L160 14")}
			{hot("M70 78q-8-8-4-18M60 80q-12-14-6-30M140 78q8-8 4-18M150 80q12-14 6-30")}
		</Frame>
	);
}

function Wiping() {
	return (
		<Frame>
			{solid("M0 84H200V110H0z")}
			{line("M70 84q-4-30 30-32t40 32z")}
			{hot("M30 74h28M24 66h26M150 74h28")}
		</Frame>
	);
}

function Gaps() {
	return (
		<Frame>
			{line("M150 8v52M170 8v52")}
			{solid("M0 74H92V92H0zM106 74H158V92h-52z")}
			{hot("M99 60v44M93 98l6 8 6-8M166 66v38M160 98l6 8 6-8")}
		</Frame>
	);
}

function Probe() {
	return (
		<Frame>
			{solid("M0 54H200V114H0z")}
			{line("M84 10h32v26H84zM92 36v8M108 36v8")}
			{hot("M92 44v34M108 44v34")}
		</Frame>
	);
}

function LeafGap() {
	return (
		<Frame>
			{solid("M0 96H200V114H0z")}
			{line("M70 6V82H130V6")}
			<circle class="pic-line" cx="118" cy="44" r="4" />
			{measure(100, 83, 100, 95)}
		</Frame>
	);
}

function Dam() {
	return (
		<Frame>
			{solid("M0 90H200V112H0z")}
			{line("M104 60h12v30h-12zM60 10V60M160 10V60")}
			{hot("M4 72c30-4 60 2 98 0M102 90v-6M118 90v-6")}
		</Frame>
	);
}

function Stair() {
	return (
		<Frame>
			{line("M10 104H70V76H110V48H150V20H190")}
			{measure(60, 78, 60, 103)}
			{measure(100, 50, 100, 75)}
		</Frame>
	);
}

function Thermometer() {
	return (
		<Frame>
			{solid("M0 100H200V116H0z")}
			{line("M94 14a6 6 0 0112 0v54a12 12 0 11-12 0z")}
			{hot("M100 76V40")}
			<circle class="pic-dot" cx="100" cy="78" r="6" />
			{thin("M112 22h8M112 34h8M112 46h8M112 58h8")}
		</Frame>
	);
}

function Draught() {
	return (
		<Frame>
			{solid("M0 100H200V116H0z")}
			{line("M120 12v6")}
			{hot("M120 18q6 30 26 56")}
			{thin("M30 36h50q12 0 12-10M30 52h64M30 68h44q12 0 12 10")}
		</Frame>
	);
}

function Hands() {
	const person = (x: number) => (
		<g key={x}>
			<circle class="pic-line" cx={x} cy="26" r="11" />
			{line(`M${x - 18} 100V66q0-22 18-22t18 22v34`)}
		</g>
	);
	return <Frame>{[60, 104, 148].map(person)}</Frame>;
}

function Bucket() {
	return (
		<Frame>
			{line("M60 50l8 60h64l8-60zM60 50q40-12 80 0M60 50q40 12 80 0")}
			{hot("M100 8v80M86 88q14-10 28 0-14 10-28 0")}
			{solid("M84 6h32v16H84z")}
		</Frame>
	);
}

function Layers() {
	return (
		<Frame>
			{solid("M10 76H190V104H10z")}
			{thin("M10 60H190")}
			{hot("M12 36H96V54H12zM104 36H188V54H104z")}
			{measure(100, 36, 100, 75)}
		</Frame>
	);
}

function Below() {
	return (
		<Frame>
			{solid("M20 50H180V62H20z")}
			{line("M20 10V114H180V10")}
			{hot("M100 70q-7 10 0 14 7-4 0-14zM124 76q-7 10 0 14 7-4 0-14z")}
			{thin("M60 114V94h26v20")}
		</Frame>
	);
}

function Heating() {
	return (
		<Frame>
			{line("M20 12H180V108H20z")}
			{hot("M34 26H160a8 8 0 010 16H44a8 8 0 000 16H156a8 8 0 010 16H44a8 8 0 000 16H166")}
		</Frame>
	);
}

function Shower() {
	return (
		<Frame>
			{solid("M20 100H180V112H20z")}
			{line("M60 100V18h44v10M90 28h28l4 8H86z")}
			{hot("M92 44l-4 14M104 44v14M116 44l4 14M88 68l-4 14M104 68v14M120 68l4 14")}
		</Frame>
	);
}

const ofWord: Record<string, () => JSX.Element> = {
	"room.occupied_below": Below,
	"room.heated": Heating,
	"room.wet": Shower,
	"survey.error": LaserPicture,
	"deck.kind": Section,
	"deck.absorbency": Drops,
	"deck.thickness": Section,
	"deck.sound": Tapping,
	"deck.clean": Wiping,
	"deck.gaps_filled": Gaps,
	"deck.screwed": Screws,
	"slab.humidity": Probe,
	"deck.moisture": Probe,
	"door.leaf_gap": LeafGap,
	"door.dammed": Dam,
	"stair.place": Stair,
	"stair.nearest": Stair,
	"stair.riser": Stair,
	"air.speed": Draught,
	"crew.people": Hands,
	"crew.mixers": Bucket,
	"crew.buckets": Bucket,
	"bucket.size": Bucket,
	"order.confidence": BagPicture,
};

/** The picture for a word: its own, or the one of its family. */
export function pictureOf(word: string): JSX.Element | null {
	const Own = ofWord[word];
	if (Own) return <Own />;
	if (/temperature|humidity/.test(word)) return <Thermometer />;
	if (word.startsWith("finish.")) return <Layers />;
	if (word.startsWith("joist") || word.startsWith("deck.")) return <Section />;
	return null;
}
