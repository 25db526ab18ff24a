// A count of one takes the singular: "1 bags last" becomes "1 bag lasts", "1 sacos usados" becomes "1 saco usado". What is said of a count is
// written in the plural once; every text with a value in it passes here.

const singular: Record<string, Record<string, string>> = {
	en: {
		bags: "bag",
		batches: "batch",
		packs: "pack",
		readings: "reading",
		prices: "price",
		rows: "row",
		lines: "line",
		rules: "rule",
		errors: "error",
		jobs: "job",
		checks: "check",
		tests: "test",
		lifts: "lift",
		corners: "corner",
		doors: "door",
		drains: "drain",
		pipes: "pipe",
		fixings: "fixing",
		trips: "trip",
		probes: "probe",
		spots: "spot",
		words: "word",
		changes: "change",
		marks: "mark",
		sheets: "sheet",
		rulebooks: "rulebook",
	},
	es: {
		sacos: "saco",
		usados: "usado",
		amasadas: "amasada",
		envases: "envase",
		viajes: "viaje",
		lecturas: "lectura",
		precios: "precio",
		tomados: "tomado",
		tomadas: "tomada",
		filas: "fila",
		dejadas: "dejada",
		líneas: "línea",
		reglas: "regla",
		errores: "error",
		trabajos: "trabajo",
		comprobaciones: "comprobación",
		ensayos: "ensayo",
		capas: "capa",
		esquinas: "esquina",
		puntos: "punto",
		palabras: "palabra",
		cambios: "cambio",
		marcas: "marca",
		guardados: "guardado",
		guardadas: "guardada",
		fichas: "ficha",
		puertas: "puerta",
		desagües: "desagüe",
		tubos: "tubo",
		abiertas: "abierta",
		dibujadas: "dibujada",
		numeradas: "numerada",
		cambiadas: "cambiada",
		fijaciones: "fijación",
		sondas: "sonda",
		reglamentos: "reglamento",
		alcanzan: "alcanza",
		coinciden: "coincide",
		difieren: "difiere",
		están: "está",
	},
};

/** Verbs behind what is counted. */
const verbs: Record<string, Record<string, string>> = {
	en: { are: "is", last: "lasts", differ: "differs" },
	es: { alcanzan: "alcanza", coinciden: "coincide", difieren: "difiere", están: "está" },
};

/** A one by itself, with up to three words after it. */
const counted = /(?<![\d.,/:\u202f])1((?: \p{L}+){1,3})/gu;

/** Puts what follows a count of one into the singular. */
export function singulars(text: string, language: string): string {
	if (!text.includes("1 ")) return text;
	const words = singular[language] ?? {};
	const all = { ...words, ...verbs[language] };
	return text.replace(counted, (whole, rest: string) => {
		const [first = "", ...others] = rest.slice(1).split(" ");
		if (!words[first]) return whole;
		return ["1", words[first], ...others.map((word) => all[word] ?? word)].join(" ");
	});
}
