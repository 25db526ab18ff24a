// What goes on paper: the floor map to scale and the record of conditions.
import type { Table } from "../../said";

export const papers: Table = {
	"On paper": "En papel",
	"Papers of the job": "Papeles del trabajo",
	"Field sheet": "Hoja de campo",
	"Working it out…": "Calculando…",
	"Floor map to scale": "Plano del piso a escala",
	"Record of conditions": "Registro de condiciones",
	"Nothing to buy yet: give a room and its depth.":
		"Todavía no hay nada que comprar: dé una habitación y su profundidad.",
	"printed {day}": "impreso el {day}",
	"No room can be drawn yet: give its walls, then the map is drawn from them.":
		"Todavía no se puede dibujar ninguna habitación: dé sus paredes y el plano se dibuja con ellas.",
	"Floor map: {room}": "Plano del piso: {room}",
	"Floor of {area}, drawn {scale}": "Piso de {area}, dibujado a {scale}",
	"Scale {scale}": "Escala {scale}",
	"Not to scale": "Sin escala",
	"This room is too large for any usual scale on one page.":
		"Esta habitación es demasiado grande para cualquier escala usual en una página.",
	"The bar is {length} long where the printer kept to scale: print at 100 %, not fitted to the page.":
		"La barra mide {length} si la impresora respetó la escala: imprima al 100 %, sin ajustar a la página.",
	"Boxed numbers: batches, in the order of the pour.": "Números en recuadro: amasadas, en el orden del vertido.",
	"Pins: height indicators, with the height of each head over the deck.":
		"Clavijas: indicadores de altura, con la altura de cada cabeza sobre la base.",
	"A gap in the wall is a door.": "Un hueco en la pared es una puerta.",
	"A dashed line across the floor is a dam.": "Una línea de trazos que cruza el piso es un dique.",
	"Lengths are measured right and away from the small ring.":
		"Las distancias se miden a la derecha y alejándose desde el círculo pequeño.",
	"Only the area is known: the room is drawn as a square.":
		"Solo se conoce el área: la habitación se dibuja como un cuadrado.",
	"Nobody has read this floor yet: batches and indicators follow from its readings.":
		"Nadie ha leído este piso todavía: las amasadas y los indicadores salen de sus lecturas.",
	"The pour can’t be planned yet, so no batches are drawn.":
		"El vertido todavía no se puede planear; por eso no se dibujan amasadas.",
	"Indicators {from} on": "Indicadores desde el {from}",
	head: "cabeza",
	"Record of conditions: {room}": "Registro de condiciones: {room}",
	"Nothing was tapped on pour day: fill it in by hand.": "No se marcó nada el día del vertido: llénelo a mano.",
	Condition: "Condición",
	Planned: "Planeado",
	"The sheet allows": "La ficha permite",
	"As it was": "Como fue",
	Began: "Empezó",
	Ended: "Terminó",
	Lasted: "Duró",
	"Leveller, lot numbers": "Autonivelante, números de lote",
	"Bags mixed": "Sacos mezclados",
	Air: "Aire",
	"Mixing water": "Agua de amasado",
	Mix: "Mezcla",
	"Flow ring": "Anillo de fluidez",
	"{from} to {to}": "{from} a {to}",
	"from {from}": "desde {from}",
	"up to {to}": "hasta {to}",
	Signed: "Firma",
};
