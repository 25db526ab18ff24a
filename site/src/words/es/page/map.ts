// The floor map.
import type { Table } from "../../said";

export const map: Table = {
	"Floor map": "Mapa del piso",
	"Tap the floor…": "Toque el piso…",
	"Add readings": "Agregar lecturas",
	"Tap the corners in order…": "Toque las esquinas en orden…",
	"Draw the outline": "Dibujar el contorno",
	"Take back a corner": "Quitar la última esquina",
	"Close the outline ({count} corners)": "Cerrar el contorno ({count} esquinas)",
	"Zoom in": "Acercar",
	"Zoom out": "Alejar",
	"Whole floor": "Todo el piso",
	"Map board: arrows move it, plus and minus zoom":
		"Tablero del mapa: las flechas lo mueven, más y menos acercan y alejan",
	"The floor appears here as soon as its length and width are given, or draw it here corner by corner.":
		"El piso aparece aquí en cuanto se den su largo y su ancho, o dibújelo aquí esquina por esquina.",
	"{count} corners drawn": "{count} esquinas dibujadas",
	"An outline that can’t be; the ring marks where.": "Un contorno que no puede ser; el círculo marca dónde.",
	"Floor of {area}; the pour is {least} at its thinnest and {greatest} at its deepest.":
		"Piso de {area}; el vertido mide {least} en lo más delgado y {greatest} en lo más profundo.",
	"Floor of {area}, not measured yet.": "Piso de {area}, todavía sin medir.",
	"way out": "salida",
	"Pour {depth} deep here": "Vertido de {depth} aquí",
	"thinnest {depth}": "más delgado {depth}",
	"deepest {depth}": "más profundo {depth}",
	"Depth of the pour": "Profundidad del vertido",
	"Floor of {area}": "Piso de {area}",
	Doubt: "Duda",
	"Next reading": "Próxima lectura",
	"Moisture tests": "Ensayos de humedad",
	"Shown on the map": "Se muestra en el mapa",
	"The deck may be {text} off here": "La base puede diferir {text} aquí",
	"gap {depth} under {length}": "holgura de {depth} bajo {length}",
	"cut {height}": "rebajar {height}",
	"test {number}": "ensayo {number}",
	"read here next": "lea aquí después",
	"Map board: arrows move the cross-hair, with Shift further":
		"Tablero del mapa: las flechas mueven la cruz, con Mayús más lejos",
	"Read a spot": "Leer un punto",
	"Tap a spot…": "Toque un punto…",
	"Cut a section": "Cortar una sección",
	"Drag a line…": "Trace una línea…",
	"Point at the floor to read depth, deck and finish there.":
		"Señale el piso para leer allí profundidad, base y acabado.",
	"Batches: working them out…": "Amasadas: calculándolas…",
	"Darker is deeper; each line says its depth. △ thinnest, ▽ deepest.":
		"Más oscuro es más profundo; cada línea dice su profundidad. △ lo más delgado, ▽ lo más profundo.",
	"A dot for each; a ring round one that the others don’t bear out.":
		"Un punto por cada una; un círculo en la que las demás no confirman.",
	"Squares: the spots that hold the plane up. An arrow: the way it falls.":
		"Cuadrados: los puntos que sostienen el plano. Una flecha: hacia dónde cae.",
	"Tinted ground takes a lift of its own first; the dashed line is its dam.":
		"El suelo teñido lleva antes una capa propia; la línea a trazos es su dique.",
	"Numbered in the order of the pour; the table is on the Pour page.":
		"Numeradas en el orden del vertido; la tabla está en la página Vertido.",
	"A pin for each height indicator: its number and its height over the deck.":
		"Un pasador por cada indicador de altura: su número y su altura sobre la base.",
	"The stronger the tint, the less sure the deck’s height.":
		"Cuanto más fuerte el tono, menos segura la altura de la base.",
	"A cross where one more reading helps most.": "Una cruz donde más ayuda una lectura más.",
	"Straightedges over the largest gaps of the bare deck: unbroken where within tolerance, dashed where over.":
		"Reglas sobre las mayores holguras de la base desnuda: línea continua donde cumplen la tolerancia, discontinua donde la pasan.",
	"Dotted rings: ground to cut, and by how much.": "Círculos punteados: suelo por rebajar, y cuánto.",
	"Triangles: where the tests go.": "Triángulos: dónde van los ensayos.",
	Table: "Tabla",
	Section: "Sección",
	"Drag on the floor for another line, or give its two ends.": "Trace otra línea en el piso o dé sus dos extremos.",
	"Drag a line over the floor, or choose one here.": "Trace una línea sobre el piso o elija una aquí.",
	"Thinnest to deepest": "De lo más delgado a lo más profundo",
	"Left to right": "De izquierda a derecha",
	"Top to bottom": "De arriba abajo",
	"This line crosses no poured floor.": "Esta línea no cruza ningún piso vertido.",
	"A: from the left": "A: desde la izquierda",
	"A: from below": "A: desde abajo",
	"B: from the left": "B: desde la izquierda",
	"B: from below": "B: desde abajo",
	"Cut here": "Cortar aquí",
	"Section {length} long: the pour is {least} at its thinnest and {greatest} at its deepest.":
		"Sección de {length}: el vertido mide {least} en lo más delgado y {greatest} en lo más profundo.",
	"finish plane": "plano de acabado",
	"Drawn as it is.": "Dibujado tal como es.",
	"Heights are drawn {times} times as tall as they are.":
		"Las alturas se dibujan {times} veces más altas de lo que son.",
	"{count} lifts, numbered in the order of pouring.": "{count} capas numeradas en el orden del vertido.",
	"Place along the line": "Lugar en la línea",
	"lift {number}": "capa {number}",
	"The section as a table": "La sección como tabla",
	"From A to B; heights as they would be read in the room": "De A a B; alturas como se leerían en la habitación",
	"From A": "Desde A",
	"Deck reads": "Lectura en la base",
	"Finish reads": "Lectura en el acabado",
	"x {x}, y {y}: no pour here": "x {x}, y {y}: aquí no hay vertido",
	"x {x}, y {y}: pour {depth} · deck reads {deck} · finish reads {plane}":
		"x {x}, y {y}: vertido {depth} · la base lee {deck} · el acabado lee {plane}",
	"holds the plane up": "sostiene el plano",
	"falls {slope}": "cae {slope}",
	"level: reads {staff}": "a nivel: lee {staff}",
	"Which pour": "Qué vertido",
	"test here": "ensayar aquí",
};
