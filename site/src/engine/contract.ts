// Made from the Go sources by "make contract". Don't edit: change the Go types, then make it again.

/** Every request: what it carries and what its reply brings. */
export interface Contract {
	"hello": { body: Greeting; reply: Greeted };
	"plan": { body: PlanJob; reply: Plan };
	"study": { body: PlanJob; reply: Study };
	"spot": { body: SpotOfRoom; reply: SpotPlan };
	"section": { body: LineOfRoom; reply: SectionPlan };
	"guide": { body: PlanJob; reply: Guide };
	"field-sheet": { body: PlanJob; reply: FieldSheet };
	"explain": { body: ExplainRule; reply: Explanation };
	"pour": { body: PlanJob; reply: PourDay };
	"pour.replan": { body: PourNow; reply: PourRest };
	"calendar.write": { body: CalendarOf; reply: FileText };
	"vocabulary": { body: Nothing; reply: Words };
	"books.shipped": { body: Nothing; reply: BookText };
	"books.check": { body: BookText; reply: CheckedBook };
	"books.view": { body: BookText; reply: BookView };
	"books.change": { body: ChangeRule; reply: BookText };
	"books.leave-out": { body: NamedRule; reply: BookText };
	"books.merge": { body: MergeBook; reply: Merged };
	"books.write": { body: BookFile; reply: FileText };
	"books.preview": { body: BroughtFile; reply: Preview };
	"rules.on": { body: PlanJob; reply: RulesOnJob };
	"rules.try": { body: DraftRule; reply: Tried };
	"rules.rewrite": { body: RewriteNumber; reply: Rewritten };
	"clear": { body: ClearRule; reply: Clearing };
	"readings.read": { body: BringReadings; reply: Brought };
	"quantity.read": { body: TypedQuantity; reply: ReadAmount };
	"quantity.write": { body: WantedText; reply: WrittenAmount };
	"takeoff": { body: PriceJob; reply: TakeOff };
	"csv.write": { body: CSVOf; reply: FileText };
	"takeoff.planes": { body: PriceJob; reply: PlaneCosts };
	"prices.read": { body: PriceText; reply: PriceList };
	"prices.write": { body: PricesOf; reply: FileText };
	"prices.set": { body: TypedPrice; reply: ShopBody };
	"after": { body: PlanJob; reply: AfterPlan };
	"jobs.read": { body: FileText; reply: MadeJob };
	"jobs.write": { body: MadeJob; reply: FileText };
	"jobs.new": { body: WantedJob; reply: MadeJob };
	"jobs.demo": { body: Nothing; reply: MadeJob };
	"jobs.list": { body: Wanted; reply: Found };
	"jobs.open": { body: Named; reply: OpenedJob };
	"jobs.keep": { body: KeepJob; reply: Standing };
	"jobs.put-off": { body: Named; reply: Standing };
	"jobs.copy": { body: CopyJob; reply: OpenedJob };
	"jobs.delete": { body: Named; reply: Nothing };
	"jobs.undelete": { body: Named; reply: Nothing };
	"jobs.erase": { body: Named; reply: Nothing };
	"jobs.revisions": { body: Named; reply: RevisionList };
	"jobs.restore": { body: RestoreJob; reply: OpenedJob };
	"jobs.export": { body: ExportJobs; reply: FileText };
	"jobs.import": { body: FileText; reply: Imported };
	"sheets.list": { body: Nothing; reply: SheetList };
	"sheets.keep": { body: KeptSheet; reply: KeptAt };
	"sheets.delete": { body: Named; reply: Nothing };
	"books.list": { body: Nothing; reply: BookList };
	"books.open": { body: Named; reply: Book };
	"books.keep": { body: Book; reply: KeptAt };
	"books.delete": { body: Named; reply: Nothing };
	"shop.open": { body: Nothing; reply: ShopBody };
	"shop.keep": { body: ShopBody; reply: KeptAt };
	"past": { body: PastWanted; reply: Past };
	"settings.open": { body: Nothing; reply: SettingsText };
	"settings.keep": { body: SettingsText; reply: Nothing };
}

/** Greeting is how page and engine make sure that they belong together. */
export interface Greeting {
	build: string;
}

/** Greeted says what the engine is. */
export interface Greeted {
	build: string;
	jobFormat: number;
}

/** PlanJob carries a job to be worked out, by the rulebook of this text or by the one that ships. */
export interface PlanJob {
	job: Job;
	book?: string;
}

/** Job is everything entered for one piece of work. Quantities are kept as the person typed them ("3/8 in", "9.5 mm") and read on use,
 * so that nothing entered is ever rounded or lost. Every list of things with an ID keeps the order in which the person made it. */
export interface Job {
	format: number;
	id: string;
	name: string;
	/** how the plan shows quantities; what was typed stays as typed */
	units: System;
	rooms: Room[];
	/** words of scope job: crew, air, finish, tolerance wanted */
	answers: Answers;
	/** by kind: leveller, primer, patch, aggregate, barrier */
	sheets: Record<string, Sheet>;
	notes: string;
	/** when the whole job begins, local: 2026-05-02T08:00; empty: times count from the first day */
	start?: string;
	/** what happened on pour day, one a room */
	record?: PourRecord[];
	/** what is quoted for it */
	offer?: Offer;
	/** what came of it */
	after?: AfterPour;
}

/** System is the family of units that a job is shown in. */
export type System = "metric" | "us";

/** Room is one pour: an outline with what stands in it, the readings taken in it, and where the finish plane goes. */
export interface Room {
	id: string;
	name: string;
	outline: Shape;
	keepOuts: KeepOut[];
	doors: Door[];
	penetrations: Penetration[];
	/** the first covers whatever the others don't */
	decks: DeckArea[];
	readings: Readings;
	/** what is said of a floor that nobody has read yet */
	rough?: Rough;
	plane: PlaneChoice;
	/** dammed off into bays where the crew can't keep the wet edge in one pour */
	inBays?: boolean;
	answers: Answers;
}

/** Shape is an outline as entered. At moves a keep-out's or deck area's rectangle off the room's origin. */
export interface Shape {
	how: string;
	length?: string;
	width?: string;
	area?: string;
	at?: Spot;
	walk?: Leg[];
	corners?: Spot[];
}

/** Spot is a place in plan as typed. */
export interface Spot {
	x: string;
	y: string;
}

/** Leg is one wall of a walk: its length, then the turn at its end: "left", "right", or degrees to the left ("45", "-30"). */
export interface Leg {
	length: string;
	turn: string;
}

/** KeepOut is a part of the room where nothing is poured: a shower recess, a bath, an island. */
export interface KeepOut {
	id: string;
	name: string;
	shape: Shape;
}

/** Door is an opening in a wall. Wall counts from 0 in the order of the outline; At is the distance from that wall's start to the near jamb. */
export interface Door {
	id: string;
	name: string;
	wall: number;
	at: string;
	width: string;
	/** the way out on pour day */
	exit: boolean;
	/** height of the floor beyond, read like the room's readings */
	neighbour: string;
	answers: Answers;
}

/** Answers holds what a person answered, by the vocabulary's word: "deck.kind": "plywood", "air.temperature": "18 °C".
 * "don't know" is an answer that leaves the word unanswered on purpose. */
export type Answers = Record<string, string>;

/** Penetration is a drain, flange or pipe that comes up through the floor. */
export interface Penetration {
	id: string;
	name: string;
	/** drain, flange, pipe */
	kind: string;
	at: Spot;
	diameter: string;
	/** of its top, read like the room's readings */
	height: string;
	answers: Answers;
}

/** DeckArea is a part of the deck of one kind. A room's first area has no shape: it is all that the others leave. */
export interface DeckArea {
	id: string;
	name: string;
	shape?: Shape;
	answers: Answers;
	tests?: MoistureTest[];
}

/** MoistureTest is one moisture test as typed: where it was made, what it gave, how deep its probe sat and how long it stood. */
export interface MoistureTest {
	at?: Spot;
	/** humidity, emission, or for a plastic sheet damp or dry */
	value: string;
	/** of a probe */
	depth: string;
	waited: string;
}

/** Readings is the survey. Bare numbers take the two units, as a column of a field book does. */
export interface Readings {
	sense: string;
	positionUnit: string;
	heightUnit: string;
	rows: Reading[];
}

/** Reading is one measured height as typed. */
export interface Reading {
	x: string;
	y: string;
	height: string;
	/** kept, but left out of the plan */
	off?: boolean;
}

/** Rough is how deep the pour will be as far as anybody knows: on average, or at its least and its greatest. Without a least depth the pour
 * is taken to start at what the deck needs. */
export interface Rough {
	mean?: string;
	least?: string;
	greatest?: string;
}

/** PlaneChoice is where the person wants the finish plane. */
export interface PlaneChoice {
	how: string;
	/** least-volume: "1 %" */
	slopeLimit?: string;
	/** door: its ID */
	door?: string;
	/** hand */
	height?: string;
	/** lifts a level plane above the lowest that would do */
	raise?: string;
}

/** Sheet is the figures of one product as its bag states them, as words of the kind's own scope ("sheet.yield": "0.55 L/kg"). */
export interface Sheet {
	name: string;
	/** shipped, typical values: the bag goes first */
	generic: boolean;
	values: Answers;
	/** the ID of the kept sheet that this is a copy of */
	kept?: string;
}

/** PourRecord is what happened to one pour of a room. */
export interface PourRecord {
	/** ID */
	room: string;
	/** which of the room's pours, as the plan names it */
	part?: string;
	/** the moment the pour began, RFC 3339; every other moment is written the same way */
	started: string;
	ended?: string;
	batches: BatchRecord[];
	/** temperatures as measured */
	air?: string;
	deck?: string;
	water?: string;
	mix?: string;
	/** of the flow ring */
	spread?: string;
	/** lot numbers on the bags */
	lots?: string;
	who?: string;
	notes?: string;
}

/** BatchRecord is what happened to one batch; a moment is empty until it was tapped. */
export interface BatchRecord {
	/** from 1 */
	batch: number;
	started?: string;
	poured?: string;
	done?: string;
	skipped?: boolean;
	/** mixed */
	bags?: number;
	/** measured out */
	water?: string;
	note?: string;
}

/** Offer is what is said on a job's quote. The customer's name stays on this device: a shared job leaves it out. */
export interface Offer {
	number: string;
	/** 2026-05-02 */
	date: string;
	customer: string;
	/** this customer's: "5 %" */
	discount: string;
	delivered: boolean;
	/** the hands' hours are priced too */
	labour: boolean;
	/** by a line's key: quoted or left out, against what is usual */
	lines: Record<string, boolean>;
}

/** AfterPour is what came of a job: bags used and left over, and the depth as it was measured on the finished pour. */
export interface AfterPour {
	/** bags opened */
	used: string;
	/** bags left over */
	left: string;
	/** mean depth as measured */
	depth: string;
	notes: string;
}

/** Plan is everything worked out from a job. Amounts carry their SI value and the text in the job's units, so that the page never converts. */
export interface Plan {
	units: string;
	problems: Problem[];
	rooms: RoomPlan[];
	totals: Totals;
	findings: Finding[];
	questions: Question[];
	/** the words that questions wait for and that are true of the job */
	holds: string[];
}

/** Problem is something in the job that can't be read or worked out, for the person who must act: where, what was given, what would work.
 * The rest of the plan is still worked out where it doesn't depend on it. */
export interface Problem {
	code: string;
	/** path in the job document: "rooms/0/outline/length" */
	field: string;
	given?: string;
	message: string;
	remedy: string;
	/** the spot in plan, where there is one */
	at?: Point;
}

/** Point is a spot in plan, metres. */
export interface Point {
	x: number;
	y: number;
}

/** RoomPlan is one room worked out: what to draw and what it comes to. Plan coordinates are metres. */
export interface RoomPlan {
	id: string;
	name: string;
	/** the outline could be read */
	drawn: boolean;
	outline: Outline;
	/** the path of an outline that can't be, to show where it goes wrong */
	sketch: Point[];
	/** wall i runs from corner i to the next */
	walls: Amount[];
	closing: ClosingPlan | null;
	area: Amount;
	perimeter: Amount;
	doors: DoorPlan[];
	penetrations: PenetrationPlan[];
	decks: DeckPlan[];
	readings: ReadingPlan[];
	/** what the surface rests on, in words; empty without readings */
	surface: string;
	/** nil without readings */
	plane: PlanePlan | null;
	/** nil without a plane */
	pour: PourPlan | null;
	/** the words that questions wait for and that are true of it */
	holds: string[];
	/** nil where the floor was read, or nothing is said of it */
	rough: RoughPlan | null;
}

/** Outline is a room in plan: one outer ring, and holes where nothing is poured (keep-outs). */
export interface Outline {
	outer: Ring;
	holes: Ring[];
}

/** Ring is a closed polygon; the last corner joins the first, which is not repeated. Either orientation. */
export type Ring = Point[];

/** Amount is a quantity for people and for programs. */
export interface Amount {
	si: number;
	text: string;
}

/** ClosingPlan is how far a walk round the walls missed its start. */
export interface ClosingPlan {
	error: Amount;
	/** perimeter over error, as a traverse's closure is stated */
	oneIn: number;
}

/** DoorPlan is a door in plan with what the floor does to it. */
export interface DoorPlan {
	id: string;
	name: string;
	from: Point;
	to: Point;
	exit: boolean;
	/** of the pour at the door */
	depth: Amount | null;
	/** finished floor over the bare deck */
	rise: Amount | null;
	/** finished floor less the floor beyond */
	step: Amount | null;
	holds: string[];
}

/** PenetrationPlan is a drain, flange or pipe in plan. */
export interface PenetrationPlan {
	id: string;
	name: string;
	kind: string;
	at: Point;
	radius: number;
	/** its top over the finished floor */
	proud: Amount | null;
	holds: string[];
}

/** DeckPlan is one deck area with the figures that go by it. */
export interface DeckPlan {
	id: string;
	name: string;
	kind: string;
	outline: Outline;
	area: Amount;
	/** the least depth that the rulebook asks for */
	least: Amount;
	figures: FigurePlan[];
	depths: Depths | null;
	/** it is the room's first area: all that the others leave */
	covering: boolean;
	/** the words that questions wait for and that are true of it */
	holds: string[];
	/** nil where the deck needs no tests */
	moisture: MoisturePlan | null;
}

/** FigurePlan is a figure of the rulebook with its value on this job. */
export interface FigurePlan {
	name: string;
	words: string;
	state: State;
	text: string;
	missing: string[];
	/** rules behind it that say something else than the shipped ones */
	changed?: string[];
}

/** State is how a figure or a check came out. */
export type State = "known" | "kept" | "broken" | "unanswered" | "idle" | "faulty" | "off";

/** Depths is the pour's depth over some ground. */
export interface Depths {
	least: Amount;
	leastAt: Point;
	mean: Amount;
	greatest: Amount;
	greatestAt: Point;
}

/** MoisturePlan is the moisture tests of one deck: how many, how deep, where, and whether those made satisfy their method. */
export interface MoisturePlan {
	method: string;
	source: string;
	needed: number;
	/** of probes, where the slab's thickness is known */
	probeDepth: Amount | null;
	spots: TestSpot[];
	/** those entered one by one, in their order */
	tests: MoistureTestPlan[];
	satisfied: boolean;
	/** what is missing or wrong, in words */
	open: string[];
}

/** TestSpot is where one moisture test goes. */
export interface TestSpot {
	at: Point;
	x: Amount;
	y: Amount;
}

/** MoistureTestPlan is one test as entered, held against its method. */
export interface MoistureTestPlan {
	at: Point | null;
	/** what is missing or wrong, in words; empty: it counts */
	open: string[];
}

/** ReadingPlan is one reading in plan. A floor of more than four hundred readings shows none. */
export interface ReadingPlan {
	/** in the job's list */
	row: number;
	/** to the tenth of a millimetre */
	at: Point;
	/** of the pour over it */
	depth: string;
}

/** PlanePlan is the finish plane: heights go up, from the job's own datum. */
export interface PlanePlan {
	how: string;
	a: number;
	b: number;
	c: number;
	/** slope */
	fall: Amount;
	/** what the staff reads on the finished pour (at the room's middle), in the sense of the readings */
	staff: Amount;
	/** the spot that holds the plane up */
	highest: Point | null;
}

/** PourPlan is the pour in one room. */
export interface PourPlan {
	volume: Amount;
	depths: Depths;
	/** area */
	poured: Amount;
	/** area where the deck stands above the plane */
	dry: Amount;
	contours: ContourPlan[];
	bands: BandPlan[];
	/** exact, before waste and rounding */
	bags: number;
}

/** ContourPlan is the lines of one depth. */
export interface ContourPlan {
	depth: Amount;
	/** SVG path data, millimetres, y downwards */
	path: string;
	/** where its depth may be written, the best place first */
	labels: Point[];
}

/** BandPlan is the ground between two depths. Step counts from 0 at the shallowest of Steps, for the page's ramp. */
export interface BandPlan {
	from: Amount;
	to: Amount;
	step: number;
	steps: number;
	/** SVG path data, millimetres, y downwards */
	path: string;
}

/** RoughPlan is a pour over a floor that nobody has read. */
export interface RoughPlan {
	mean: Amount;
	/** nil where only a mean is said */
	least: Amount | null;
	greatest: Amount | null;
	/** of the mean depth, one standard deviation */
	doubt: Amount;
	volume: Amount;
	/** exact, before waste and rounding */
	bags: number;
}

/** Totals is what the job comes to. */
export interface Totals {
	area: Amount;
	/** between deck and plane */
	volume: Amount;
	/** what stays in buckets and on tools */
	waste: Amount;
	/** to buy */
	bags: number;
	bagsExact: number;
	bagMass: Amount;
	bagYield: Amount;
	bagWater: Amount;
	/** for one bag */
	waterLeast: Amount;
	waterMost: Amount;
	/** mass to carry */
	powder: Amount;
	/** to mix it all */
	water: Amount;
	/** powder and water */
	load: Amount;
	/** every room has a pour */
	ready: boolean;
}

/** Finding is one check on one subject. */
export interface Finding {
	rule: string;
	theme: string;
	weight: string;
	state: State;
	words?: string;
	says: string;
	remedy: string;
	caution?: string;
	source?: string;
	asks?: string;
	off?: string;
	missing?: string[];
	margin?: Margin;
	fault?: Error;
	trace?: Step[];
	subject: Subject;
	/** where on the map, if anywhere */
	at: Point | null;
	/** rules behind it that say something else than the shipped ones */
	changed?: string[];
}

/** Margin is how far a comparison is from tipping over: zero or more when the check is kept, zero or less when broken. */
export interface Margin {
	/** SI */
	value: number;
	dimension: Dimension;
	/** Value as a share of the limit it is measured against; puts margins of different dimensions in order */
	share: number;
	text: string;
}

/** Dimension is what a quantity measures, as exponents of the base quantities. Point marks a temperature that is a reading on the scale
 * (20 °C), not a difference (warmer by 20 °C). Dimensions compare with ==. */
export interface Dimension {
	Length: number;
	Mass: number;
	Time: number;
	Temperature: number;
	Money: number;
	Point: boolean;
}

/** Error is something wrong with a rulebook or with one rule, told to the person who can put it right. */
export interface Error {
	code: string;
	rule?: string;
	/** value, applies, holds, says, remedy, example, ... */
	field?: string;
	/** in the book's text, from 1; 0 when the rule was not read from text */
	line?: number;
	/** in characters, from 1 */
	column?: number;
	/** UTF-16 offsets into the field's own text */
	from: number;
	to: number;
	/** what stands there */
	found?: string;
	message: string;
	/** what would work */
	remedy?: string;
}

/** Step is one sub-expression of a trace. From and To are UTF-16 offsets into the field's expression. */
export interface Step {
	/** value, applies or holds */
	field: string;
	/** the rule whose field it is: the one explained, or a figure that it uses */
	of: string;
	from: number;
	to: number;
	depth: number;
	text: string;
	/** the word or figure, where the step is one */
	name?: string;
	/** with its unit; empty when not reached or missing */
	value: string;
	reached: boolean;
	missing?: boolean;
	/** for a word: where its value came from */
	given?: Given;
}

/** Given is a value with where it came from. */
export interface Given {
	value: Value;
	/** one of the From constants */
	from: string;
	/** the place in the job that holds it */
	where?: string;
	/** as the person typed it */
	typed?: string;
}

/** Value is one value of a kind: Number in SI units for a quantity, Text for a choice or a text, Truth for yes or no. */
export interface Value {
	kind: Kind;
	number?: number;
	text?: string;
	truth?: boolean;
}

/** Kind is what sort of value a word or a figure has. */
export type Kind = "quantity" | "choice" | "truth" | "text";

/** Subject is what a finding or a figure is about. */
export interface Subject {
	scope: string;
	/** ID */
	room: string;
	/** of the deck area, door or penetration */
	id: string;
	name: string;
}

/** Question is something that a rule would like to know and nobody has said. */
export interface Question {
	word: string;
	subject: Subject;
	step: string;
	question: string;
	why: string;
	how: string;
	/** that stay unanswered without it */
	checks: string[];
	/** what that risks, check by check */
	risks?: Risk[];
	dontKnow: boolean;
}

/** Risk is what stays open where a check can't be made: how grave it would be, and who could come to harm. */
export interface Risk {
	rule: string;
	weight: string;
	caution: string;
}

/** Study is what stands behind a plan and takes longer to work out: how sure the bags are, where to measure next, what other planes would cost,
 * what grinding saves, lifts, flatness, height indicators, and the heights all round. */
export interface Study {
	/** nil until every room has a pour */
	bags: BagsStudy | null;
	rooms: RoomStudy[];
}

/** BagsStudy is how many bags are enough, and how surely. All counts hold the waste; those to buy are whole. */
export interface BagsStudy {
	/** expected need, bags */
	mean: number;
	/** standard deviation of the need, bags */
	deviation: number;
	/** enough one time in two */
	half: number;
	ninety: number;
	ninetyNine: number;
	/** the one chosen */
	confidence: string;
	/** at that confidence */
	buy: number;
	causes: CauseStudy[];
}

/** CauseStudy is one cause of doubt: its standard deviation in bags, and its share of the whole doubt (of the variance). */
export interface CauseStudy {
	cause: string;
	bags: number;
	share: number;
}

/** RoomStudy is one room studied. Without a pour there is nothing in it. */
export interface RoomStudy {
	id: string;
	ready: boolean;
	bags: BagsStudy | null;
	next: NextStudy | null;
	doubts: DoubtStudy[];
	suspects: SuspectStudy[];
	/** suspects were looked for; they aren't among a great many readings */
	screened: boolean;
	planes: PlaneStudy[];
	grinding: GrindStudy | null;
	lifts: LiftsStudy[];
	flatness: FlatnessStudy | null;
	indicators: IndicatorsStudy | null;
	heights: HeightsStudy | null;
	problems: Problem[];
}

/** NextStudy is where one more reading helps most. */
export interface NextStudy {
	at: Point;
	x: Amount;
	y: Amount;
	/** by how much it narrows what one would buy to have enough nine times in ten */
	bags: number;
	/** it isn't worth taking */
	enough: boolean;
}

/** DoubtStudy is a square of floor with the standard deviation of the deck's height there. Step counts from 0 where it is least to 4. */
export interface DoubtStudy {
	corners: Point[];
	text: string;
	step: number;
}

/** SuspectStudy is a reading that the others don't bear out. Heights are written as they were read. */
export interface SuspectStudy {
	/** in the job's list */
	row: number;
	at: Point;
	read: Amount;
	expected: Amount;
	/** by how much the deck would stand higher there than the others say */
	off: Amount;
	/** that many standard deviations */
	deviations: number;
	/** what leaving it out adds to the bags */
	bags: number;
}

/** PlaneStudy is one way to place the finish plane and what it comes to. */
export interface PlaneStudy {
	/** what makes it the room's own */
	choice: PlaneChoice;
	chosen: boolean;
	/** name of the door that it goes through */
	door: string;
	/** with waste */
	bags: number;
	volume: Amount;
	least: Amount;
	greatest: Amount;
	slope: Amount;
	/** across the room */
	fall: Amount;
	/** deck above the plane */
	dry: Amount;
	/** by how much it misses the least depth, where it does */
	short: Amount | null;
	shortAt: Point | null;
	carriers: CarrierStudy[];
	doors: PlaneDoorStudy[];
}

/** CarrierStudy is a spot that stops a plane from going lower: a reading's row, or -1 for a spot at a wall that nobody read. */
export interface CarrierStudy {
	at: Point;
	row: number;
}

/** PlaneDoorStudy is what a door gets from a plane. */
export interface PlaneDoorStudy {
	id: string;
	name: string;
	depth: Amount;
	step: Amount | null;
	/** empty without a step */
	class: StepClass;
}

/** StepClass is what a change in level at a door asks for. */
export type StepClass = "flush" | "bevel" | "ramp";

/** GrindStudy is what taking down the high spots saves. */
export interface GrindStudy {
	limits: GrindLimitStudy[];
	cuts: CutStudy[];
}

/** GrindLimitStudy is the most that the rulebook lets come off one deck. */
export interface GrindLimitStudy {
	deck: string;
	most: Amount;
}

/** CutStudy is one step of the curve: what comes off at most, what it saves, and the spots to cut. */
export interface CutStudy {
	height: Amount;
	/** saved */
	bags: number;
	area: Amount;
	/** of deck that comes off */
	volume: Amount;
	/** the largest first */
	spots: SpotStudy[];
	/** more spots than are listed */
	others: number;
}

/** SpotStudy is one high spot to cut. */
export interface SpotStudy {
	at: Point;
	x: Amount;
	y: Amount;
	height: Amount;
	area: Amount;
	volume: Amount;
}

/** LiftsStudy is the pour parted into lifts, of leveller alone or with aggregate in the lower ones. */
export interface LiftsStudy {
	filled: boolean;
	/** thickness of one of its lower lifts */
	most: Amount;
	/** of leveller, all lifts, with waste */
	bags: number;
	lifts: LiftStudy[];
	problem: Problem | null;
}

/** LiftStudy is one lift, in the order of pouring. */
export interface LiftStudy {
	/** its top under the finish plane */
	below: Amount;
	/** covers the whole floor */
	whole: boolean;
	area: Amount;
	volume: Amount;
	/** of leveller, with waste */
	bags: number;
	least: Amount;
	greatest: Amount;
	/** nil where it takes none */
	aggregate: Amount | null;
	/** out of the tin, over it before the next lift; nil over the last */
	primer: Amount | null;
	/** polygons of the ground it covers; empty where that is the whole floor */
	ground: Point[][];
	/** lines along which it ends */
	edge: Point[][];
}

/** FlatnessStudy holds the deck against the flatness wanted. */
export interface FlatnessStudy {
	name: string;
	/** by the person; else it is what suits the finish */
	stated: boolean;
	gaps: GapStudy[];
	/** what the pour leaves, in words */
	cures: string[];
	lines: FNumbersStudy[];
	/** of all lines together */
	all: FNumbersStudy | null;
	classes: FNumberClasses[];
}

/** GapStudy is the largest gap under a straightedge of one length on the deck as it is. */
export interface GapStudy {
	name: string;
	source: string;
	length: Amount;
	limit: Amount;
	depth: Amount;
	kept: boolean;
	from: Point;
	at: Point;
	to: Point;
	/** why it could not be worked out */
	fault: string;
}

/** FNumbersStudy is F-numbers in words: "28.8", or "no departure". */
export interface FNumbersStudy {
	from: Point;
	to: Point;
	readings: number;
	flatness: string;
	levelness: string;
	/** read at 300 mm */
	rescaled: boolean;
}

/** FNumberClasses is a class of floor with the overall F-numbers that it asks for. */
export interface FNumberClasses {
	name: string;
	flatness: number;
	levelness: number;
	kept: boolean;
}

/** IndicatorsStudy is where to set height indicators, in walking order. */
export interface IndicatorsStudy {
	spacing: Amount;
	clearance: Amount;
	pins: IndicatorStudy[];
	/** nothing may be screwed or drilled */
	heated: boolean;
}

/** IndicatorStudy is one height indicator. */
export interface IndicatorStudy {
	at: Point;
	x: Amount;
	y: Amount;
	/** over the deck */
	head: Amount;
}

/** HeightsStudy is what the new floor does to everything that it meets. */
export interface HeightsStudy {
	/** thickness over the pour */
	finish: Amount | null;
	/** finished floor over the deck, on average */
	rise: Amount | null;
	doors: DoorHeightsStudy[];
	/** drains, flanges, pipes */
	passed: PassedHeightsStudy[];
}

/** DoorHeightsStudy is one door all round. */
export interface DoorHeightsStudy {
	id: string;
	name: string;
	/** the deepest that the pour stands against it */
	dam: Amount;
	/** finished floor over the bare deck */
	rise: Amount | null;
	step: Amount | null;
	class: StepClass;
	/** of the bevel or ramp */
	run: Amount | null;
	/** where 1/4 in stays upright */
	leastRun: Amount | null;
	/** of the leaf over the finished floor */
	clearance: Amount | null;
	/** to take off the leaf */
	trim: Amount | null;
	stair: StairStudy | null;
}

/** StairStudy is the stair that meets the floor at a door, once the floor is in. */
export interface StairStudy {
	/** the one next to the floor */
	riser: Amount;
	other: Amount;
	variation: Amount;
	/** within 3/8 in */
	uniform: boolean;
	/** no riser over 7 3/4 in */
	low: boolean;
}

/** PassedHeightsStudy is one drain, flange or pipe. */
export interface PassedHeightsStudy {
	id: string;
	name: string;
	kind: string;
	/** to add so that its top meets the finished floor; below zero it stands proud */
	extension: Amount;
}

/** SpotOfRoom is a spot of a room to look at, metres in plan. */
export interface SpotOfRoom {
	job: Job;
	book?: string;
	room: string;
	at: Point;
}

/** SpotPlan is one spot of a floor. Heights are written as they would be read in the room. */
export interface SpotPlan {
	/** there is a pour at the spot; else there is nothing to say of it */
	poured: boolean;
	x: Amount;
	y: Amount;
	deck: Amount;
	plane: Amount;
	/** below zero where the deck stands above the plane */
	depth: Amount;
}

/** LineOfRoom is a line to cut a room along, metres in plan. */
export interface LineOfRoom {
	job: Job;
	book?: string;
	room: string;
	from: Point;
	to: Point;
}

/** SectionPlan is a floor cut upright along a line. What is drawn is in metres: x along the line, y over the lowest deck on it. */
export interface SectionPlan {
	from: Point;
	to: Point;
	length: Amount;
	/** the highest that is drawn */
	high: number;
	/** a line for each stretch where the floor is poured */
	decks: Point[][];
	/** the finish plane over each stretch */
	planes: Point[][];
	/** the last to pour first; those under it are drawn over it */
	lifts: SectionLift[];
	/** in even steps */
	stations: SectionPlace[];
	/** nil where nothing of the line is poured */
	least: SectionPlace | null;
	greatest: SectionPlace | null;
}

/** SectionLift is one lift, from its top down to the deck. */
export interface SectionLift {
	/** in the order of pouring */
	number: number;
	shapes: Point[][];
}

/** SectionPlace is a place on the line. */
export interface SectionPlace {
	along: Amount;
	/** as it would be read */
	deck: Amount;
	plane: Amount;
	depth: Amount;
}

/** Guide is a job as a walk of questions, one after the other in the order of the work, for somebody who does this for the first time. What changes the
 * plan comes before the result. What only proves the deck, and what is to be made true before a bag is opened, are chapters of their own behind it. */
export interface Guide {
	steps: GuideStep[];
	/** the first step before the result that is open; the result where none is */
	next: string;
	/** steps before the result that are open */
	open: number;
}

/** GuideStep is one question. */
export interface GuideStep {
	id: string;
	/** room, heights, deck, finish, products, crew, result, proof, before */
	chapter: string;
	/** outline, keep-outs, doors, drains, survey, readings, word, leveller, result */
	kind: string;
	/** index in the job */
	room: number;
	subject: Subject;
	/** of a word's question */
	word: string;
	/** open, answered, unknown (don't know), optional (may be passed over) */
	state: string;
	/** that stay unanswered without it */
	checks: string[];
	/** answers that many would give, to be taken with one tap */
	offers: string[];
	/** the step to go on to; empty after the result */
	after: string;
	/** the step to go on to without the rest of the chapter */
	skip: string;
}

/** FieldSheet is what a person takes into the rooms: where to read, with room for what is read. */
export interface FieldSheet {
	rooms: FieldSheetRoom[];
}

/** FieldSheetRoom is one room's spots: those entered already, or else a regular spread of them. */
export interface FieldSheetRoom {
	id: string;
	/** nobody has entered a place yet */
	suggested: boolean;
	/** how far suggested spots stand apart at most */
	apart: Amount;
	/** squares to draw under the plan, a usual measure of the job's units */
	grid: Amount;
	spots: FieldSpot[];
}

/** FieldSpot is a place to read, counted along the rows of a walk that turns at each wall. */
export interface FieldSpot {
	/** in the job's list; of a suggested spot, where it would stand */
	row: number;
	at: Point;
	x: Amount;
	y: Amount;
	/** as typed; empty where it is not read yet */
	height: string;
}

/** ExplainRule names one rule on one subject of a job. */
export interface ExplainRule {
	job: Job;
	book?: string;
	rule: string;
	subject: Subject;
}

/** Explanation is one rule on one subject, step by step. */
export interface Explanation {
	rule: Rule | null;
	/** the rule as the rulebook writes it */
	text: string;
	steps: Step[];
}

/** Rule is a figure (a named value) or a check (a condition that must hold). Expressions keep their line breaks. */
export interface Rule {
	/** otherwise a figure */
	check: boolean;
	/** lower_snake for a figure, lower-hyphen for a check */
	name: string;
	theme: string;
	/** its scope */
	for: string;
	words?: string;
	/** empty: a quantity */
	kind?: Kind;
	/** of a quantity, by name */
	dimension?: string;
	/** of a choice */
	choices?: string[];
	value?: string;
	/** where a check holds, and where a figure is worth telling; empty: always */
	applies?: string;
	weight?: string;
	holds?: string;
	says?: string;
	remedy?: string;
	asks?: string;
	caution?: string;
	source?: string;
	/** "deck.kind = plywood, depth.least = 6 mm => broken" */
	examples?: string[];
	/** why it is switched off; empty: it is on */
	off?: string;
	/** what it said before and who changed it, oldest first */
	history?: string[];
	/** comments */
	notes?: Note[];
}

/** Note is a comment: the lines as written, and the field before which they stand ("" for the rule's first line, "example 2" for the second example). */
export interface Note {
	before: string;
	text: string;
}

/** PourDay is the pour worked out: batches, patches, the crew's clock, temperatures, and the whole job in order. Times are seconds from the start of
 * each room's pour. */
export interface PourDay {
	units: string;
	problems: Problem[];
	rooms: RoomPour[];
	/** the checks that only the clock or the pour itself can answer */
	findings: Finding[];
	mix: MixPlan;
	setting: SettingPlan;
	sheet: RunSheet;
}

/** RoomPour is one pour: a room in one go, one lift of it, or one bay of a lift. A room's pours follow each other in order. */
export interface RoomPour {
	/** of the room */
	id: string;
	name: string;
	/** names it among the room's pours: "lift 2, bay 1"; empty for the only one */
	part: string;
	/** from 1 */
	lift: number;
	lifts: number;
	/** from 1 */
	bay: number;
	bays: number;
	/** nobody has read the floor: its batches have no place on it */
	rough: boolean;
	note: string;
	outline: Outline;
	/** to set before it */
	dams: Dam[];
	/** why it can't be planned, and what would help; empty where it can */
	why: string;
	exits: Point[];
	batches: BatchPlan[];
	/** of all batches */
	bags: number;
	/** the longest way from the door */
	walk: Amount;
	/** with the crew there is; nil where it can't be worked out */
	clock: ClockPlan | null;
	fewest: ClockPlan | null;
}

/** Dam is a straight stop across the floor. */
export interface Dam {
	from: Point;
	to: Point;
	/** m */
	length: number;
}

/** BatchPlan is one batch and the patch of floor that it covers. */
export interface BatchPlan {
	/** from 1, in the order of the pour */
	number: number;
	bags: number;
	powder: Amount;
	/** mixed in; nil for none */
	aggregate: Amount | null;
	/** to be measured out */
	water: Amount;
	/** water that the sheet allows for it */
	least: Amount;
	most: Amount;
	/** of the measure; 0 where the amount lies between two */
	marks: number;
	/** one mark */
	mark: Amount;
	note: string;
	/** that the floor takes of it */
	volume: Amount;
	/** over in the last one */
	left: Amount;
	area: Amount;
	/** from the door */
	distance: Amount;
	polygons: Ring[];
	label: Point;
	/** the nearest, by its place in the room's list */
	exit: number;
}

/** ClockPlan is who does what when, with how close it comes to the limits. */
export interface ClockPlan {
	timeline: Timeline;
	lasts: Amount;
	longestWait: Amount;
	oldestBatch: Amount;
	says: string;
}

/** Timeline is the pour by the clock. */
export interface Timeline {
	/** those with work to do; never more than given */
	crew: Crew;
	tasks: Task[];
	/** s, the last bucket back */
	finish: number;
	/** every shared edge, by batches */
	waits: Wait[];
	/** s */
	longestWait: number;
	/** s, the longest from powder in the water to spread */
	oldestFlow: number;
	/** flow time and wet edge both */
	kept: boolean;
}

/** Crew is who and what there is to work with. No barrow: buckets are carried by hand. */
export interface Crew {
	people: number;
	mixers: number;
	buckets: number;
	barrows: number;
}

/** Task is one piece of work: seconds from the start of the pour, and who and what it takes, numbered from 1; 0 where none. */
export interface Task {
	batch: number;
	kind: string;
	start: number;
	end: number;
	person: number;
	mixer: number;
	bucket: number;
	barrow: number;
}

/** Wait is how long a shared edge stands: from the end of the one pour to the end of the other, s. */
export interface Wait {
	/** batch */
	from: number;
	to: number;
	seconds: number;
	/** m */
	length: number;
}

/** MixPlan is how warm the mix comes out, and how warm the water must be. */
export interface MixPlan {
	/** nil while powder or water has none */
	temperature: Amount | null;
	coldest: Amount;
	warmest: Amount;
	/** coldest water that keeps within the window; nil: any */
	waterFrom: Amount | null;
	waterTo: Amount | null;
	says: string;
	/** the sheet's least spread of the flow ring */
	spreadFrom: Amount | null;
	spreadTo: Amount | null;
	/** nil until it is measured */
	spread: SpreadResult | null;
}

/** SpreadResult is a measured spread against the sheet's, with what to do about it. */
export interface SpreadResult {
	outcome: string;
	/** m to the nearer limit; below zero when outside */
	margin: number;
	says: string;
}

/** SettingPlan is the sheet's times at the temperatures there are, with the model that says so. */
export interface SettingPlan {
	says: string;
	/** temperature that bounds flow and wet edge */
	fastest: Amount;
	/** temperature that bounds walking, tiling and covering */
	slowest: Amount;
	flow: Amount;
	wetEdge: Amount;
	walk: Amount;
	tile: Amount;
	cover: Amount;
}

/** RunSheet is the whole job in order. Relative ones count from 08:00 of a first day, written as 2001-01-01. */
export interface RunSheet {
	/** why there is none; empty where there is */
	why: string;
	relative: boolean;
	entries: PourEntry[];
}

/** Entry is a step with its clock times, local, as 2006-01-02T15:04:05. The hold's times are empty where there is none, and HoldLatest where it has no end. */
export interface PourEntry {
	id: string;
	title: string;
	who: string;
	hands: Hand[];
	start: string;
	end: string;
	hold: string;
	holdEarliest: string;
	holdLatest: string;
	cautions: string[];
	/** which window this step comes too late for, and what to do */
	missed: string;
}

/** Hand is what one person of the crew does in a pour. Whoever carries a batch pours and spreads it. */
export interface Hand {
	/** from 1 */
	person: number;
	mixes: boolean;
	carries: boolean;
}

/** PourNow is a pour under way, of a room or a part of it, at a moment, RFC 3339. */
export interface PourNow {
	job: Job;
	book?: string;
	room: string;
	part: string;
	now: string;
}

/** PourRest is how a pour under way stands, and what is still to do. Times are seconds since it began. */
export interface PourRest {
	now: number;
	batches: BatchNow[];
	/** the one that closes first comes first */
	edges: OpenEdge[];
	/** of what is still to do */
	clock: ClockPlan;
}

/** BatchNow is one batch as it stands: what happened, and where it hasn't, what is planned. */
export interface BatchNow {
	number: number;
	state: string;
	/** its water is measured */
	starts: number;
	/** mixed and rested */
	ready: number;
	/** the bucket is empty */
	pours: number;
	done: number;
	/** spread by then, or thrown away */
	flowTo: number;
}

/** OpenEdge is a poured edge that still waits for the next batch. */
export interface OpenEdge {
	/** batch */
	from: number;
	to: number;
	/** it joins until then */
	closes: number;
}

/** CalendarOf is what goes into a calendar file: the events of a job, in the page's words, and the moment of writing, RFC 3339. */
export interface CalendarOf {
	job: string;
	stamp: string;
	events: Event[];
}

/** Event is a hold of a run sheet as it goes into a calendar, in the words of whoever reads it: from the end of its step to the earliest that the next
 * may start, local, as 2006-01-02T15:04:05. */
export interface Event {
	id: string;
	title: string;
	from: string;
	to: string;
	/** line by line */
	about: string[];
}

/** FileText is a file's content. */
export interface FileText {
	text: string;
}

/** Nothing is the body or the reply of a kind that needs none. */
export type Nothing = Record<string, never>;

/** Words is the vocabulary, with the functions that rules may call. */
export interface Words {
	words: WordPlan[];
	functions: Function[];
}

/** WordPlan is a word of the vocabulary for the page: how to ask for it and how to explain it. */
export interface WordPlan {
	name: string;
	scope: string;
	kind: Kind;
	dimension: string;
	choices: string[];
	asked: boolean;
	step: string;
	/** the word that must be true for it to be asked; empty: always */
	when: string;
	meaning: string;
	example: string;
	question: string;
	why: string;
	how: string;
	/** usual unit */
	metric: string;
	us: string;
}

/** Function is one function's help. */
export interface Function {
	name: string;
	/** how it is written */
	call: string;
	help: string;
}

/** BookText is a rulebook as its text. */
export interface BookText {
	text: string;
}

/** CheckedBook is what is wrong with a rulebook, and how its examples came out. */
export interface CheckedBook {
	errors: Error[];
	examples: ExampleResult[];
}

/** ExampleResult is one example run. */
export interface ExampleResult {
	rule: string;
	/** from 0 */
	number: number;
	text: string;
	passed: boolean;
	wanted: string;
	got: string;
	/** where it can't be read */
	error?: Error;
}

/** BookView is a rulebook as the page shows it: every rule with what is wrong with it, its examples run, its numbers, and what shipped in its place. */
export interface BookView {
	title: string;
	version: string;
	rules: RuleView[];
	errors: Error[];
	/** shipped rules that this book leaves out */
	left: RuleText[];
}

/** RuleView is one rule of a book. */
export interface RuleView {
	rule: Rule;
	text: string;
	/** nil: it is the person's own */
	shipped: RuleText | null;
	/** it says something else than the shipped one */
	changed: boolean;
	errors: Error[];
	examples: ExampleResult[];
	literals: Literal[];
	/** figures */
	uses: string[];
	/** words */
	needs: string[];
}

/** RuleText is a rule with the text that the rulebook writes for it. */
export interface RuleText {
	rule: Rule;
	text: string;
}

/** Literal is one number of an expression: "mm(10)", or "3" on its own. From and To are UTF-16 offsets into the field's text. */
export interface Literal {
	/** value, applies or holds */
	field: string;
	from: number;
	to: number;
	/** as the expression has it */
	text: string;
	/** as a person types it: "10 mm" */
	shown: string;
	/** its symbol; empty: a bare number */
	unit: string;
}

/** ChangeRule is a rule to put into a book, with who changed it and when, for its history. */
export interface ChangeRule {
	book?: string;
	rule: Rule;
	who: string;
	when: string;
}

/** NamedRule is one rule of a book. */
export interface NamedRule {
	book?: string;
	name: string;
}

/** MergeBook is a person's book with what had shipped when they began. */
export interface MergeBook {
	book: string;
	base: string;
}

/** Merged is a person's book brought up to what ships now. */
export interface Merged {
	book: string;
	/** what of the person's book changes by it */
	rules: RuleChange[];
	/** rules that both sides changed: the person's stand until they say otherwise */
	conflicts: RuleConflict[];
}

/** RuleChange is one rule before and after. A nil side has no such rule. */
export interface RuleChange {
	name: string;
	before: RuleText | null;
	after: RuleText | null;
}

/** RuleConflict is a rule that both the person and the shipped book changed. A nil side has no such rule. */
export interface RuleConflict {
	name: string;
	base: RuleText | null;
	users: RuleText | null;
	shipped: RuleText | null;
}

/** BookFile is a rulebook and sheets. An empty book is the shipped one. */
export interface BookFile {
	book: string;
	sheets: KindSheet[];
}

/** KindSheet is a sheet with the kind of product that it is for. */
export interface KindSheet {
	kind: string;
	sheet: Sheet;
}

/** BroughtFile is a file with the book that it would change. */
export interface BroughtFile {
	text: string;
	book?: string;
}

/** Preview is what taking a file in would change. */
export interface Preview {
	/** of the file: nothing of it can be taken then */
	problems: Problem[];
	/** of its rules, which come out faulty */
	errors: Error[];
	/** the rulebook as it would be */
	book: string;
	rules: RuleChange[];
	sheets: KindSheet[];
}

/** RulesOnJob is every rule on every part of a job. */
export interface RulesOnJob {
	on: RuleOn[];
}

/** RuleOn is how one figure or check comes out on one part of a job. */
export interface RuleOn {
	rule: string;
	subject: Subject;
	state: State;
	/** a figure's value, or what a broken check says */
	text: string;
	margin: Margin | null;
	missing: string[];
	fault: Error | null;
}

/** DraftRule is a rule as somebody is writing it, tried in a book and, where one is open, on a job. */
export interface DraftRule {
	job: Job | null;
	book?: string;
	rule: Rule;
}

/** Tried is a rule as somebody is writing it: what is wrong with it, its examples run, and how it comes out on a job. */
export interface Tried {
	view: RuleView;
	/** the rule on every part of the job */
	on: RuleOn[];
	/** against the book as it stands; nil without a job */
	effect: Effect | null;
}

/** Effect is what a change does to a job's plan. */
export interface Effect {
	bagsBefore: number;
	bagsAfter: number;
	/** nil where nothing is priced */
	money: MoneyTold | null;
	/** checks that break by it */
	broken: Affected[];
	/** checks that no longer break */
	cleared: Affected[];
}

/** MoneyTold is what a job's take-off comes to before and after a change, as text with the currency. By is signed; empty where it stays the same. */
export interface MoneyTold {
	before: string;
	after: string;
	by: string;
}

/** Affected is one check on one subject. */
export interface Affected {
	rule: string;
	weight: string;
	subject: Subject;
	/** of one that breaks */
	says: string;
}

/** RewriteNumber puts what was typed in the place of one number of a rule's field. */
export interface RewriteNumber {
	rule: Rule;
	field: string;
	from: number;
	typed: string;
}

/** Rewritten is a field's new text. */
export interface Rewritten {
	text: string;
}

/** ClearRule names a check to clear; a shop prices what clears it. */
export interface ClearRule {
	job: Job;
	book?: string;
	rule: string;
	subject: Subject;
	shop?: Shop;
}

/** Shop is how somebody prices: the price list, tax, delivery, and what is printed round a quote. */
export interface Shop {
	name: string;
	address: string;
	terms: string;
	/** how long a quote holds: "30 d" */
	valid: string;
	/** number of the next quote */
	next: number;
	currency: string;
	/** of the currency's smallest unit */
	digits: number;
	inclusive: boolean;
	/** of tax: by line or by sum */
	rounding: string;
	classes: ShopClass[];
	/** price of one delivery */
	delivery: string;
	deliveryClass: string;
	/** price of an hour's work */
	hour: string;
	hourClass: string;
	prices: Price[];
}

/** ShopClass is a tax class with its rate as typed. */
export interface ShopClass {
	name: string;
	rate: string;
}

/** Price is one row of a price list. Pack is as typed ("25 kg", "5 L"); an item may have several rows, one a pack. */
export interface Price {
	item: string;
	pack: string;
	price: Money;
	class: string;
	code: string;
	/** what the shop pays; zero where the list doesn't say */
	cost: Money;
}

/** Money is an amount in a currency's smallest unit: 1250 is 12.50 in a currency of two digits. */
export type Money = number;

/** Clearing is what would clear one finding. */
export interface Clearing {
	remedies: Remedy[];
	/** what was tried and clears it at no value that makes sense */
	tried: string[];
	/** what was not tried, because the job is large */
	left: string[];
}

/** Remedy is one change that clears a check. */
export interface Remedy {
	/** what is changed */
	label: string;
	/** as it stands; empty: not said */
	from: string;
	to: string;
	/** decided, measured or sheet */
	sort: string;
	/** what to write into the job */
	sets: FieldSet[];
	effect: Effect;
}

/** FieldSet is one field of the job with what to write there. */
export interface FieldSet {
	/** path in the job document */
	field: string;
	to: string;
}

/** BringReadings is a list of readings as text, and the survey that it is to join. */
export interface BringReadings {
	text: string;
	readings: Readings;
}

/** Brought is what came of reading a list of readings: the good ones, and the lines that can't be read. */
export interface Brought {
	readings: Readings;
	/** Field is the line: "line 7" */
	problems: Problem[];
	/** bad lines beyond those listed */
	more: number;
}

/** TypedQuantity is a quantity as a person typed it. A bare number is of BareUnit, if there is one. */
export interface TypedQuantity {
	typed: string;
	dimension: Dimension;
	bareUnit?: string;
}

/** ReadAmount is a quantity in SI base units. */
export interface ReadAmount {
	si: number;
}

/** WantedText is a quantity in SI base units to be written for people. */
export interface WantedText {
	si: number;
	dimension: Dimension;
	units: System;
}

/** WrittenAmount is a quantity as text. */
export interface WrittenAmount {
	text: string;
}

/** PriceJob is a job to be taken off and priced by a shop; without one nothing is priced. */
export interface PriceJob {
	job: Job;
	book?: string;
	shop?: Shop;
}

/** TakeOff is everything to buy for a job, with what it comes to. */
export interface TakeOff {
	units: string;
	/** every room has a depth */
	ready: boolean;
	problems: Problem[];
	lines: TakeOffLine[];
	/** what the list would like to know and takes as usual meanwhile */
	asks: Question[];
	/** nil until every room has a depth */
	bags: BagsStudy | null;
	survey: SurveySaves | null;
	/** of all that is quoted */
	mass: Amount;
	hand: Journeys;
	vehicle: Journeys;
	labour: LabourPlan | null;
	bill: BillPlan | null;
	/** the quote holds until this day; empty where that isn't known */
	until: string;
}

/** TakeOffLine is one thing to buy in whole packs. */
export interface TakeOffLine {
	key: string;
	group: string;
	item: string;
	need: Amount;
	packName: string;
	/** by size of pack, the largest first; never empty */
	parts: LinePack[];
	/** of all sizes */
	packs: number;
	leftover: Amount;
	mass: Amount;
	because: Reason[];
	/** how long it may stand in the shop; nil where that doesn't matter */
	keeps: Amount | null;
	/** what was made before this day is too old on the day of the pour; empty where no day is chosen */
	tooOld: string;
	quoted: boolean;
}

/** LinePack is how many packs of one size a line takes. */
export interface LinePack {
	/** what one holds */
	pack: Amount;
	packs: number;
	/** nil where the price list has none */
	price: LinePrice | null;
}

/** LinePrice is packs of one size priced. Margin is for the desk alone. */
export interface LinePrice {
	item: string;
	code: string;
	each: string;
	/** before the discount */
	amount: string;
	/** empty where the price list has no cost */
	margin: string;
}

/** Reason is one step of a quantity: what is said, and the rule that says so, if one does. */
export interface Reason {
	says: string;
	rule: string;
	source: string;
}

/** SurveySaves is what one quick survey would spare on a floor that nobody has read: bags to buy now, and once it is read. */
export interface SurveySaves {
	/** of the mean depth now, one standard deviation */
	doubt: Amount;
	/** once it is read */
	after: Amount;
	buy: number;
	/** bags to buy then, if the mean depth comes out as said */
	surely: number;
	fewer: number;
	/** at the price list's price; empty without one */
	saves: string;
	readings: number;
}

/** Journeys is how often one goes. Says tells why where it can't be worked out. */
export interface Journeys {
	count: number;
	capacity: Amount;
	says: string;
}

/** LabourPlan is hands' hours. */
export interface LabourPlan {
	hours: Amount;
	steps: Reason[];
}

/** BillPlan is what it comes to, as text in the shop's currency. */
export interface BillPlan {
	currency: string;
	inclusive: boolean;
	discount: string;
	/** of the discount; empty for none */
	rate: string;
	delivery: string;
	labour: string;
	net: string;
	taxes: BillTax[];
	tax: string;
	total: string;
	/** of the lines whose cost is known, before tax; for the desk alone */
	margin: string;
	/** items that the price list lacks */
	unpriced: string[];
	/** the total in the currency's smallest unit */
	amount: number;
}

/** BillTax is one tax class of a bill. */
export interface BillTax {
	name: string;
	rate: string;
	net: string;
	tax: string;
}

/** CSVOf is a table in the page's words, and whether decimals in it have a comma. */
export interface CSVOf {
	rows: string[][];
	comma: boolean;
}

/** PlaneCosts is what the whole list comes to with each of a job's planes, in the order of the study's. */
export interface PlaneCosts {
	rooms: RoomPlaneCosts[];
	/** why there are none; empty where there are */
	why: string;
}

/** RoomPlaneCosts is one room's planes priced, the rest of the job as it is. */
export interface RoomPlaneCosts {
	id: string;
	planes: PlaneCost[];
}

/** PlaneCost is what a job comes to with a plane. */
export interface PlaneCost {
	choice: PlaneChoice;
	/** bags of leveller, at the confidence chosen */
	buy: number;
	/** of all that is quoted and priced, with the currency */
	total: string;
	amount: number;
}

/** PriceText is a price list as text, for a shop. */
export interface PriceText {
	text: string;
	shop: Shop;
}

/** PriceList is a price list read, with the rows that can't be. */
export interface PriceList {
	prices: Price[];
	bad: BadRow[];
}

/** BadRow is a row that couldn't be read. Line counts from 1; zero is the text as a whole. */
export interface BadRow {
	line: number;
	given: string;
	message: string;
	remedy: string;
}

/** PricesOf is a shop whose price list is written, with what the page calls its columns, and whether decimals in it have a comma. */
export interface PricesOf {
	shop: Shop;
	names: string[];
	comma: boolean;
}

/** TypedPrice is a price as typed beside an item in a pack. */
export interface TypedPrice {
	shop: Shop;
	item: string;
	pack: string;
	price: string;
}

/** ShopBody is a shop. */
export interface ShopBody {
	shop: Shop;
}

/** AfterPlan is one job's outcome. Amounts that nobody gave are nil. */
export interface AfterPlan {
	/** bags that the take-off asked for */
	planned: number;
	/** bags */
	used: Amount | null;
	left: Amount | null;
	/** mean depth as planned */
	meant: Amount | null;
	/** as measured */
	depth: Amount | null;
	/** that was poured: area by the measured depth, or else as planned */
	volume: Amount | null;
	/** that volume over the bags used: what a bag fills, waste and all */
	perBag: Amount | null;
	says: string;
	problems: Problem[];
}

/** MadeJob is a job that is kept nowhere yet. */
export interface MadeJob {
	job: Job;
}

/** WantedJob says in which units a new job is to be. */
export interface WantedJob {
	units: System;
}

/** Wanted says which jobs are looked for: those whose name and rooms hold every word of Find, in any case, and the first Most of them (0: all). */
export interface Wanted {
	find?: string;
	most?: number;
	/** the deleted ones instead of the others */
	deleted?: boolean;
}

/** Found is the jobs that were looked for, last kept first. */
export interface Found {
	jobs: KeptEntry[];
	/** of all that match */
	count: number;
	/** of all there are, whatever was looked for */
	all: number;
	/** of those, how many have changes that are in no file */
	unsaved: number;
}

/** Entry is one line of the list of jobs. */
export interface KeptEntry {
	id: string;
	name: string;
	/** names */
	rooms: string[];
	kept: string;
	/** empty: never */
	exported: string;
	/** empty: it is not */
	deleted: string;
}

/** Named is what a request about one kept document says. */
export interface Named {
	id: string;
}

/** OpenedJob is a job and how it stands. */
export interface OpenedJob {
	kept: string;
	/** empty: never */
	exported: string;
	/** changes since, that are in no file */
	unsaved: number;
	/** it is time to export */
	remind: boolean;
	job: Job;
}

/** KeepJob carries a job to be kept. */
export interface KeepJob {
	job: Job;
}

/** Standing is how a job stands: on this device, and in the person's own files. */
export interface Standing {
	kept: string;
	/** empty: never */
	exported: string;
	/** changes since, that are in no file */
	unsaved: number;
	/** it is time to export */
	remind: boolean;
}

/** CopyJob names a job to copy and the copy. */
export interface CopyJob {
	id: string;
	name: string;
}

/** RevisionList is a job's earlier states, newest first. */
export interface RevisionList {
	revisions: Revision[];
}

/** Revision is an earlier state of a job. */
export interface Revision {
	number: number;
	/** when it was the job's state */
	kept: string;
	name: string;
	rooms: number;
	/** of all rooms */
	readings: number;
}

/** RestoreJob names an earlier state of a job. */
export interface RestoreJob {
	id: string;
	number: number;
}

/** ExportJobs says which jobs go into the file; none named means everything that is kept. */
export interface ExportJobs {
	ids: string[];
}

/** Imported is what came of reading a file. */
export interface Imported {
	/** added */
	jobs: KeptEntry[];
	/** jobs that were here already */
	same: number;
	sheets: number;
	books: number;
	/** the price list: taken where there was none */
	shop: boolean;
}

/** SheetList is the kept product sheets. */
export interface SheetList {
	sheets: KeptSheet[];
}

/** Sheet is a product sheet kept for later jobs. */
export interface KeptSheet {
	id: string;
	/** leveller, primer, ... */
	kind: string;
	sheet: Sheet;
}

/** KeptAt says when something was kept: it is on the disk and was read back. */
export interface KeptAt {
	kept: string;
}

/** BookList is the kept rulebooks. */
export interface BookList {
	books: Book[];
}

/** Book is a rulebook kept for later jobs, as its text, with the text that shipped when it was begun or last brought up to date. */
export interface Book {
	id: string;
	title: string;
	text: string;
	base: string;
}

/** PastWanted says in which units past jobs are added up, and by which rulebook. */
export interface PastWanted {
	units: System;
	book?: string;
}

/** Past is what a person's bags filled over all jobs whose bags were counted. */
export interface Past {
	jobs: number;
	bags: number;
	volume: Amount;
	/** waste and all */
	perBag: Amount;
	/** what to state as the bag's yield, so that with the rulebook's waste it comes out as it did */
	yield: string;
	says: string;
}

/** SettingsText is a person's settings by name. */
export interface SettingsText {
	values: Settings;
}

/** Settings are a person's own, by name: language, units, last rulebook. */
export type Settings = Record<string, string>;
