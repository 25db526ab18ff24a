// The floor map.
import type { Table } from "../../words";

export const map: Table = {
	"Floor map": "Mapa del piso",
	"Tap the floor…": "Toque el piso…",
	"Add readings by tapping": "Agregar lecturas tocando",
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
	Carriers: "Apoyos",
	"Moisture tests": "Ensayos de humedad",
	"Shown on the map": "Se muestra en el mapa",
	"The deck may be {text} off here": "La base puede diferir {text} aquí",
	"gap {depth} under {length}": "holgura de {depth} bajo {length}",
	"carries the plane": "sostiene el plano",
	"cut {height}": "rebajar {height}",
	"test {number}": "ensayo {number}",
	"read here next": "lea aquí después",
};
