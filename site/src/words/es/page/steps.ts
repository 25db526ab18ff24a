// The job step by step.
import type { Table } from "../../said";

export const steps: Table = {
	"A laser and a staff": "Un láser y una mira",
	"Set the laser up level. Stand a staff or a folding rule on each spot and read where the beam meets it.":
		"Instale el láser a nivel. Ponga una mira o un metro plegable en cada punto y lea dónde lo cruza el haz.",
	"A straight board and a level": "Una tabla recta y un nivel",
	"Rest the board on the highest spot, level it, and measure from its lower edge down to the floor.":
		"Apoye la tabla en el punto más alto, nivélela y mida desde su borde inferior hasta el piso.",
	"I have heights already": "Ya tengo alturas",
	"Heights above one mark: a larger number is higher ground.":
		"Alturas sobre una marca: un número mayor es terreno más alto.",
	"More on how to survey a room": "Más sobre cómo medir una habitación",
	"The room’s size comes first: go back to it, and the spots to read are laid out here.":
		"Primero van las medidas de la habitación: vuelva a ellas y los puntos por leer se reparten aquí.",
	"{count} spots, at most {apart} apart, make a fair survey. Or tap the floor where you want to read.":
		"{count} puntos, separados {apart} como máximo, hacen una medición aceptable. O toque el piso donde quiera leer.",
	"Use these {count} spots": "Usar estos {count} puntos",
	"Print this as a field sheet to take into the room": "Imprimir esto como hoja de campo para llevarla a la habitación",
	"Spot {n} of {count}": "Punto {n} de {count}",
	"{x} from the left, {y} from below": "{x} desde la izquierda, {y} desde abajo",
	"Reading at spot {n}": "Lectura en el punto {n}",
	"Spot before": "Punto anterior",
	Done: "Listo",
	"Next spot": "Punto siguiente",
	"{read} of {count} read. Tap a spot to go to it, or the floor to add one.":
		"{read} de {count} leídos. Toque un punto para ir a él, o el piso para agregar uno.",
	"Take this spot out": "Quitar este punto",
	"Which leveller": "Qué autonivelante",
	"Typical values for now": "Valores típicos por ahora",
	"I have the bag here": "Tengo el saco aquí",
	"More from the bag: times and temperatures": "Más del saco: tiempos y temperaturas",
	"What one bag fills is often given as litres of mix, or as area at a depth: 1 m² at 1 mm is 1 L.":
		"Lo que rinde un saco suele darse en litros de mezcla, o como área a una profundidad: 1 m² a 1 mm es 1 L.",
	"Answer what is open ({count})": "Responder lo que falta ({count})",
	"Darker is deeper. {least} at its thinnest, {mean} on average, {greatest} at its deepest.":
		"Más oscuro es más profundo. {least} en lo más delgado, {mean} en promedio, {greatest} en lo más profundo.",
	"bag of leveller, {mass}": "saco de autonivelante, de {mass}",
	"bags of leveller, {mass} each": "sacos de autonivelante, de {mass} cada uno",
	"{buy} bags last in {confidence} of cases, {half} in half of them.":
		"{buy} sacos alcanzan en el {confidence} de los casos, {half} en la mitad.",
	"What to put right": "Qué corregir",
	"No check found anything against it.": "Ninguna comprobación encontró nada en contra.",
	"Nobody checked: {checks}.": "Nadie comprobó: {checks}.",
	"To buy and to carry": "Por comprar y acarrear",
	"Leveller: {count} bags of {mass}.": "Autonivelante: {count} sacos de {mass}.",
	"Water: {bag} a bag, measured every time.": "Agua: {bag} por saco, medida cada vez.",
	"Primer, {deck}:": "Imprimación, {deck}:",
	deck: "base",
	"not known yet": "todavía no se sabe",
	"Perimeter strip, dams for the doors, sealant for gaps, a mixing drill with its paddle, buckets, a measuring jug.":
		"Tira perimetral, diques para las puertas, sellador para las rendijas, un taladro mezclador con su paleta, cubetas, una jarra medidora.",
	"Goggles, waterproof gloves, a dust mask for each person: wet cement burns, its dust harms the lungs.":
		"Gafas, guantes impermeables y una mascarilla para cada persona: el cemento fresco quema y su polvo daña los pulmones.",
	"What next": "Qué sigue",
	"The whole list, with prices": "La lista completa, con precios",
	"Plan pour day hour by hour": "Planear el día del vertido hora por hora",
	"See everything on one page": "Ver todo en una página",
	"Print this": "Imprimir esto",
	"Hold the tape flat on the floor, wall to wall. A room with more than four corners: choose “Round the walls” and walk it, wall by wall.":
		"Ponga la cinta plana sobre el piso, de pared a pared. Si la habitación tiene más de cuatro esquinas, elija «Recorriendo las paredes» y recórrala pared por pared.",
	"Give its size, and how far its near corner is from the room’s first corner, to the right and away from you.":
		"Dé sus medidas y a qué distancia está su esquina más cercana de la primera esquina de la habitación, hacia la derecha y alejándose de usted.",
	"Measure along the wall from its start to the opening, then the opening. Walls are counted in the picture; each starts where the one before it ends.":
		"Mida a lo largo de la pared desde su inicio hasta el vano, y luego el vano. Las paredes están numeradas en el dibujo; cada una empieza donde termina la anterior.",
	"If you know it: read it as you read the room’s own heights. It tells how the two floors will meet.":
		"Si lo sabe: leído como las alturas de la habitación. Dice cómo se encontrarán los dos pisos.",
	"Measure to its middle from the room’s first corner: to the right along the first wall, then away from it.":
		"Mida hasta su centro desde la primera esquina de la habitación: hacia la derecha por la primera pared y luego alejándose de ella.",
	"The room": "La habitación",
	Heights: "Alturas",
	"What is underneath": "Lo que hay debajo",
	"The bag": "El saco",
	"Who pours": "Quién vierte",
	"The result": "El resultado",
	"{n} of {count}": "{n} de {count}",
	"How far along": "Cuánto se ha avanzado",
	Back: "Atrás",
	"Go on without": "Seguir sin responder",
	"{count} bags to buy, by what is known so far": "{count} sacos por comprar, con lo que se sabe hasta ahora",
	"{count} bags by the survey as it is": "{count} sacos según la medición tal como está",
	"All questions ({open} open)": "Todas las preguntas ({open} abiertas)",
	answered: "respondida",
	"you don’t know": "usted no lo sabe",
	open: "abierta",
	"may be passed over": "se puede omitir",
	"Then what goes by it stays open.": "Entonces queda abierto lo que depende de esto.",
	"Then nobody checks:": "Entonces nadie comprueba:",
	"How big is the room?": "¿Qué medidas tiene la habitación?",
	"Area times depth is what fills the bags. Measure from wall to wall, with the skirting off if it comes off.":
		"El área por la profundidad es lo que llenan los sacos. Mida de pared a pared, con el zócalo quitado si se va a quitar.",
	"Does anything stand in the room that stays?": "¿Hay algo en la habitación que se queda?",
	"Nothing is poured under a bath, a shower recess or a kitchen island that stays where it is.":
		"No se vierte nada debajo de una bañera, un receso de ducha o una isla de cocina que se quedan donde están.",
	"Where are the doors, and by which one do you leave?": "¿Dónde están las puertas y por cuál sale usted?",
	"The pour runs out of an open door, so each one gets a dam. It ends at the door by which you leave.":
		"El vertido se escapa por una puerta abierta, así que cada una lleva un dique. Termina en la puerta por la que usted sale.",
	"Does anything come up through the floor?": "¿Sale algo a través del piso?",
	"A drain must stay open and at the right height; a pipe wants a collar so that the pour doesn’t run down beside it.":
		"Un desagüe debe quedar abierto y a la altura correcta; un tubo necesita un collarín para que el vertido no se escurra junto a él.",
	"How will you read the heights?": "¿Cómo va a leer las alturas?",
	"All that matters is how far each spot lies under one level line. Any of these ways gives that.":
		"Solo importa cuánto queda cada punto por debajo de una misma línea de nivel. Cualquiera de estas maneras lo da.",
	"What does it read at each spot?": "¿Qué se lee en cada punto?",
	"The bag count is as good as these numbers. More of them help most along the walls and where the floor looks low.":
		"La cuenta de sacos es tan buena como estos números. Más lecturas ayudan sobre todo junto a las paredes y donde el piso se ve bajo.",
	"Which leveller will you pour?": "¿Qué autonivelante va a verter?",
	"Bags differ in what they fill and how thin they may be. Typical values do for a first idea; buy by the bag’s own.":
		"Los sacos difieren en lo que rinden y en lo delgados que pueden quedar. Los valores típicos sirven para una primera idea; compre según los del propio saco.",
	"What it comes to": "El resultado final",
	"There is no bag count yet: it comes as soon as the room’s size and a few heights are in.":
		"Todavía no hay cuenta de sacos: aparece en cuanto estén el tamaño de la habitación y unas alturas.",
	"Nothing can be checked before there is a floor.": "Nada se puede comprobar antes de que haya un piso.",
	"Stiffness, fastenings, moisture: whether this floor can carry a pour at all.":
		"Rigidez, fijaciones, humedad: si este piso soporta un vertido.",
	"What can only be done shortly before: cleaning, closing gaps, dams, and the right air.":
		"Lo que solo se puede hacer poco antes: limpiar, cerrar rendijas, poner diques, y el aire adecuado.",
	"Every question is answered.": "Todas las preguntas están contestadas.",
	"Go through them ({count})": "Repasarlas ({count})",
	"Laying out the questions…": "Preparando las preguntas…",
	"Skip this chapter": "Saltar este capítulo",
	"Usual answers": "Respuestas habituales",
	"Proving the deck": "Comprobar la base",
	"Before the first bag": "Antes del primer saco",
	"Checks that stay open then: {checks}. Of these, might say “Don’t pour”: {stops}.":
		"Comprobaciones que quedan abiertas: {checks}. De ellas, podrían decir «No vierta»: {stops}.",
	"Checks that stay open then: {checks}.": "Comprobaciones que quedan abiertas: {checks}.",
};
