// The first screen, the bar and what every page shares.
import type { Table } from "../../said";

export const start: Table = {
	"To the content": "Ir al contenido",
	"A new version is ready. What you entered is kept.":
		"Hay una versión nueva lista. Lo que usted escribió se conserva.",
	"Switch to it now": "Cambiar a ella ahora",
	"Loading the engine: {share} %": "Cargando el motor: {share} %",
	"The engine failed and was started again. Nothing you typed is lost.":
		"El motor falló y se inició de nuevo. Nada de lo que escribió se perdió.",
	"The engine would not start again. Reload the page; what was kept is still there.":
		"El motor no volvió a arrancar. Recargue la página; lo guardado sigue ahí.",
	"Copy a report": "Copiar un informe",
	"To the first screen": "A la primera pantalla",
	"Step by step": "Paso a paso",
	Language: "Idioma",
	"Lowspot, first screen": "Lowspot, primera pantalla",
	"Name of the job": "Nombre del trabajo",
	"Name this job": "Póngale nombre a este trabajo",
	"Parts of the job": "Partes del trabajo",
	More: "Más",
	Undo: "Deshacer",
	Redo: "Rehacer",
	"Help: {title}": "Ayuda: {title}",
	"Remove {what}": "Quitar {what}",
	"In order": "En orden",
	"Not answered": "Sin respuesta",
	"Level a floor in one pour, with the right number of bags.":
		"Nivele un piso en un solo vertido, con el número justo de sacos.",
	"Enter the room and a few heights. Lowspot draws the low ground, counts bags and water, and says what to put right before a bucket is opened. Everything stays on this device.":
		"Escriba la habitación y unas cuantas alturas. Lowspot dibuja las zonas bajas, cuenta sacos y agua, y dice qué corregir antes de abrir el primer saco. Todo se queda en este dispositivo.",
	"My first pour": "Mi primer vertido",
	"One question at a time, with why it matters and how to measure it. “Don’t know” is an answer.":
		"Una pregunta a la vez, con por qué importa y cómo medirlo. «No sé» también es una respuesta.",
	"Plan it step by step": "Planearlo paso a paso",
	"I know floors": "Conozco los pisos",
	"Room, readings, sheets, checks and rulebook on one page.":
		"Habitación, lecturas, fichas, comprobaciones y reglamento en una sola página.",
	"Start a new job": "Empezar un trabajo nuevo",
	"An area and a rough depth: a priced list, ready to print.":
		"Un área y una profundidad aproximada: una lista con precios, lista para imprimir.",
	"Make a quote": "Hacer una cotización",
	"See one first": "Ver uno primero",
	"A laundry with a sagging hall, measured and planned. Change anything in it.":
		"Una lavandería con un pasillo hundido, medidos y planeados. Cambie lo que quiera.",
	"Open the demo job": "Abrir el trabajo de muestra",
	"Kept on this device, in this browser": "Guardados en este dispositivo, en este navegador",
	"Open a job file…": "Abrir un archivo de trabajo…",
	"Find a job": "Buscar un trabajo",
	"No job yet. Measure a room and plan it step by step, or open the demo job to see what comes of it.":
		"Todavía no hay ningún trabajo. Mida una habitación y planéela paso a paso, o abra el trabajo de muestra para ver qué resulta.",
	"kept {when}": "guardado {when}",
	"Save as file": "Guardar como archivo",
	"Copy of {name}": "Copia de {name}",
	job: "trabajo",
	Copy: "Copiar",
	"“{name}” deleted.": "«{name}» borrado.",
	Delete: "Borrar",
	"This file is larger than any job. Choose a job file.":
		"Este archivo es más grande que cualquier trabajo. Elija un archivo de trabajo.",
	"{count} jobs taken; here already: {same}.": "{count} trabajos tomados; ya estaban aquí: {same}.",
	"This file can’t be read.": "Este archivo no se puede leer.",
	"My rulebook": "Mi reglamento",
	"changed here": "cambiado aquí",
	"This job isn’t here": "Este trabajo no está aquí",
	"A job is kept in the browser in which it was entered. Open it there, or open its file here.":
		"Los trabajos se guardan en el navegador en que se introdujeron. Ábralo allí, o abra aquí su archivo.",
	"Opening…": "Abriendo…",
};
