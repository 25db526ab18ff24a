// The field sheet.
import type { Table } from "../../said";

export const sheet: Table = {
	"See everything": "Ver todo",
	"Print the field sheet": "Imprimir la hoja de campo",
	"Give the room’s size first: the sheet is drawn from it.":
		"Primero dé las medidas de la habitación: la hoja se dibuja con ellas.",
	"Field sheet: {room}": "Hoja de campo: {room}",
	"Read by": "Leído por",
	"Line or mark": "Línea o marca",
	"Heights up from one mark, in {unit}.": "Alturas hacia arriba desde una marca, en {unit}.",
	"Readings down from one level line, in {unit}: a larger number is lower ground.":
		"Lecturas hacia abajo desde una línea de nivel, en {unit}: un número mayor es terreno más bajo.",
	"One square is {grid}. Read spot 1 again at the end.": "Un cuadro es {grid}. Lea el punto 1 otra vez al final.",
	"Notes: dips, ridges, loose or hollow places, pipes": "Notas: hondonadas, lomos, zonas sueltas o huecas, tubos",
	"Spots {from} on": "Puntos desde el {from}",
	"No.": "N.º",
	away: "alejándose",
	reads: "lectura",
};
