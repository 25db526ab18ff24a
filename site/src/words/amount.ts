// Amounts as the engine writes them ("12.5 mm", "2 h 30 min", "3' 4 1/2\"") with the decimal sign of another language, and the thousands of a
// long number set apart by a thin space. The symbols of units stay, but for the few that are words.

const units =
	"mm cm m km in ft yd sq cu fl oz lb lbf kg g t mL L gal qt h min s d % °C °F K kPa MPa Pa GPa psi psf N kN mph ° × : – ± m² mm² m³ m⁴ L/kg m²/L m²/kg kg/m³ kg/m² kg/m²/h L/min L/s km/h m/s ft³/lb lb/ft² lb/ft³ lb/ft²/h ft/gal ft/lb ft/min gal/min g/(m2 lb/(1000 ft2 h) EUR USD";
const symbols = new Set(units.split(" "));
const numeral = /^[-−+±≈]?\d+(?:\.\d+)?(?:\/\d+)?(?:e[-+]?\d+)?(?:['"%°]|ths)?,?$/;
const narrow = "\u202f";

/** Writes an amount with another decimal sign; undefined where the text is no amount. Unit words are said by a table. */
export function amount(text: string, point: string, table: Record<string, string>): string | undefined {
	const parts = text.split(" ");
	if (!parts.some((part) => numeral.test(part))) return undefined;
	const says = parts.map((part) => {
		if (numeral.test(part)) return numberSays(part, point);
		if (symbols.has(part)) return part;
		return unitWords.has(part) ? (table[part] ?? part) : undefined;
	});
	return says.every((part) => part !== undefined) ? says.join(" ") : undefined;
}

const unitWords = new Set(["per"]);

/** A text of a table with the decimals of its amounts ("1.5 kg") written with another sign; what is no amount ("§10.1") stays. */
export function withPoint(text: string, point: string): string {
	return point === "." ? text : text.replace(inText, (_, whole: string, rest: string) => `${whole}${point}${rest}`);
}

const inText =
	/(?<![\d.])(\d+)\.(\d+)(?= (?:mm|m|kg|L|t|kPa|MPa|psf|in|lb|°C|°F|%|m²|µm|MB|h|min|s|m\/s)(?![\p{L}]))/gu;

function numberSays(part: string, point: string): string {
	const [whole = "", decimals] = part.split(".");
	const parted = whole.replace(/\d{5,}/, (digits) => digits.replace(/\B(?=(\d{3})+$)/g, narrow));
	return decimals === undefined ? parted : `${parted}${point}${decimals}`;
}
