// What is kept of a job, and the engine that is started again.
import type { Table } from "../../said";

export const kept: Table = {
	"What is kept of {name}": "Lo que se guarda de {name}",
	"On this device, in this browser": "En este dispositivo, en este navegador",
	"All of it is kept, last {time}. It was read back from the disk.":
		"Todo está guardado, la última vez {time}. Se volvió a leer del disco.",
	"Keeping…": "Guardando…",
	"Ask the browser to keep it": "Pedir al navegador que lo conserve",
	"The browser has promised not to clear it by itself when the device runs short of room.":
		"El navegador ha prometido no borrarlo por sí solo cuando falte espacio en el dispositivo.",
	"The browser has not promised to keep it: it may clear it when the device runs short of room. Files of your own are the surest.":
		"El navegador no ha prometido conservarlo: puede borrarlo cuando falte espacio en el dispositivo. Lo más seguro son sus propios archivos.",
	"This browser does not say whether it may clear it by itself. Files of your own are the surest.":
		"Este navegador no dice si puede borrarlo por sí solo. Lo más seguro son sus propios archivos.",
	"In files of your own": "En sus propios archivos",
	"Last exported {time}.": "Exportado por última vez {time}.",
	"Never exported.": "Nunca exportado.",
	"{count} changes are in no file yet.": "{count} cambios no están todavía en ningún archivo.",
	"The job is as it was {time}. What it was until now is the first of the earlier states.":
		"El trabajo está como estaba {time}. Como era hasta ahora es el primero de los estados anteriores.",
	"Earlier states": "Estados anteriores",
	"While a job is changed its state is put aside every ten minutes; the last fifty stay.":
		"Mientras se cambia un trabajo, su estado se aparta cada diez minutos; quedan los últimos cincuenta.",
	"None yet.": "Ninguno todavía.",
	"rooms: {rooms}, readings: {readings}": "habitaciones: {rooms}, lecturas: {readings}",
	"Go back to this": "Volver a este",
	"Kept {time}": "Guardado {time}",
	"Exported {time}": "Exportado {time}",
	"Never exported": "Nunca exportado",
	"This job is open in another tab or window, and is changed there. Here you can only look at it. Close it there, and you can change it here.":
		"Este trabajo está abierto en otra pestaña o ventana, y se cambia allí. Aquí solo puede mirarlo. Ciérrelo allí y podrá cambiarlo aquí.",
	"In no file of yours: {count} changes of this job. A file outlives a lost phone and a cleared browser.":
		"En ningún archivo suyo: {count} cambios de este trabajo. Un archivo sobrevive a un teléfono perdido y a un navegador borrado.",
	"I have read it": "Lo he leído",
	"Remind me in a few days": "Recordármelo en unos días",
	"exported {when}": "exportado {when}",
	"never exported": "nunca exportado",
	"Jobs, sheets, rulebooks, prices and settings are in the file. “Open a job file” brings them back.":
		"Trabajos, fichas, reglamentos, precios y ajustes están en el archivo. «Abrir un archivo de trabajo» los devuelve.",
	"Save everything as one file": "Guardar todo en un archivo",
	"Jobs with something in them that is in no file of yours: {count} of {all}.":
		"Trabajos con algo que no está en ningún archivo suyo: {count} de {all}.",
	"{count} jobs match; the last {shown} are shown.": "{count} trabajos coinciden; se muestran los últimos {shown}.",
	"Taken: {sheets} sheets, {books} rulebooks.": "Tomado: {sheets} fichas, {books} reglamentos.",
	"The price list was taken.": "Se tomó la lista de precios.",
};
