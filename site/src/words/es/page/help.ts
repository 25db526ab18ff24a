// The help.
import type { Table } from "../../said";

export const help: Table = {
	Help: "Ayuda",
	"Back to the job": "Volver al trabajo",
	"Help entries": "Temas de la ayuda",
	"What Lowspot asks and works out": "Lo que Lowspot pregunta y calcula",
	"Find a word": "Buscar una palabra",
	"{count} words": "{count} palabras",
	"For example {example}.": "Por ejemplo {example}.",
	"How to survey a room": "Cómo medir una habitación",
	"The bag and pour day": "El saco y el día del vertido",
	"What the marks mean": "Qué significan las marcas",
	Words: "Palabras",
	"Take care": "Tenga cuidado",
	"With a laser and a staff": "Con un láser y una mira",
	"Set the laser on its tripod where it sees the whole room, let it level itself, and leave it there until the last reading.":
		"Ponga el láser en su trípode donde vea toda la habitación, deje que se nivele solo y no lo mueva hasta la última lectura.",
	"Stand a staff, a folding rule or a batten with a tape upright on each spot and read where the beam crosses it. A larger number is lower ground.":
		"Ponga derecha en cada punto una mira, un metro plegable o un listón con cinta y lea dónde la cruza el haz. Un número mayor es terreno más bajo.",
	"Read the first spot again at the end. If it has changed by more than 2 mm (1/16 in), the laser moved: read the room again.":
		"Lea otra vez el primer punto al final. Si cambió más de 2 mm (1/16 in), el láser se movió: lea de nuevo la habitación.",
	"Check the laser itself: read two spots from one end of the room, then from the other. The difference must be the same both times.":
		"Compruebe el láser mismo: lea dos puntos desde un extremo de la habitación y luego desde el otro. La diferencia debe ser la misma las dos veces.",
	"With a straight board and a level": "Con una tabla recta y un nivel",
	"Find the highest spot: lay a straight board of 2 m or more here and there, and see where it rocks.":
		"Encuentre el punto más alto: ponga una tabla recta de 2 m o más en varios lugares y vea dónde se balancea.",
	"Rest one end on that spot, put the level on the board and lift the other end until it is level. The board’s lower edge is the line.":
		"Apoye un extremo en ese punto, ponga el nivel sobre la tabla y levante el otro extremo hasta que quede a nivel. El borde inferior de la tabla es la línea.",
	"Measure from that edge down to the floor at each spot under the board. On the high spot itself you read 0.":
		"Mida desde ese borde hasta el piso en cada punto bajo la tabla. En el punto alto mismo se lee 0.",
	"To go on, rest the board on a block as high as the last reading and level it again. Each move adds a little error, so go back to the first spot at the end.":
		"Para seguir, apoye la tabla en un taco tan alto como la última lectura y nivélela otra vez. Cada paso suma un pequeño error, así que vuelva al primer punto al final.",
	"Turn the board end for end once: a bent board or a level that is off shows itself.":
		"Dé vuelta la tabla una vez, punta por punta: una tabla torcida o un nivel descalibrado se delatan.",
	"Where to read": "Dónde leer",
	"One reading to the square metre (10 sq ft), four at least, is a fair start. The page lays the spots out, and the field sheet takes them into the room on paper.":
		"Una lectura por metro cuadrado (10 sq ft), cuatro al menos, es un buen comienzo. La página reparte los puntos y la hoja de campo los lleva en papel a la habitación.",
	"Read close to the walls, at every door, at drains, and wherever your foot feels a dip or a ridge.":
		"Lea junto a las paredes, en cada puerta, en los desagües y donde el pie sienta una hondonada o un lomo.",
	"A reading that differs from those around it is more often a stone under the staff than a hole. Read it again.":
		"Una lectura distinta de todas las de su alrededor es más a menudo una piedra bajo la mira que un hoyo. Léala de nuevo.",
	"Measuring the room": "Medir la habitación",
	"Lay the tape flat on the floor, wall to wall. Measure both walls of a pair: rooms are seldom square.":
		"Ponga la cinta plana sobre el piso, de pared a pared. Mida las dos paredes de cada par: las habitaciones rara vez están a escuadra.",
	"A room with more than four corners is walked: each wall’s length, then the turn at its end. The page shows by how much the walk misses its start and shares the error out.":
		"Una habitación con más de cuatro esquinas se recorre: el largo de cada pared y luego el giro en su extremo. La página muestra cuánto le falta al recorrido para cerrar y reparte el error.",
	"How to read a bag": "Cómo leer un saco",
	"Mass of powder: on the front. What it fills: “yield”, “consumption” or “coverage”. 1 m² at 1 mm takes 1 L of mix; {mass} of powder to the square metre and millimetre means that {bag} fill about {volume}.":
		"Masa del polvo: en el frente. Lo que rinde: «rendimiento» o «consumo». 1 m² a 1 mm lleva 1 L de mezcla; {mass} de polvo por metro cuadrado y milímetro significa que {bag} llenan unos {volume}.",
	"Water: as litres for one bag, often with a least and a most. More water than that makes a weak, dusty floor; less won’t flow.":
		"Agua: en litros por saco, muchas veces con un mínimo y un máximo. Más agua da un piso débil y polvoriento; con menos no fluye.",
	"Thickness: the least and the greatest, often different on wood and with aggregate. Below the least it cracks; above the greatest it goes in two lifts.":
		"Espesor: el mínimo y el máximo, a menudo distintos sobre madera y con árido. Bajo el mínimo se agrieta; sobre el máximo va en dos capas.",
	"Time: working or flow time from the first water; when it may be walked on, tiled and covered. All at about 20 °C (68 °F): slower when cold, faster when warm.":
		"Tiempo: tiempo de trabajo o de fluidez desde la primera agua; cuándo se puede pisar, colocar baldosa y cubrir. Todo a unos 20 °C (68 °F): más lento con frío, más rápido con calor.",
	"Primer: which one for which deck, how much water, how long it dries. The bag in your hand goes before anything that this page says.":
		"Imprimación: cuál para cada base, cuánta agua, cuánto tarda en secar. El saco que tiene en la mano va antes que todo lo que dice esta página.",
	"Air, deck and water on pour day": "Aire, base y agua el día del vertido",
	"Deck and air between 10 °C and 30 °C (50 °F and 86 °F) are usual; the bag says which. A cold deck slows the mix, a hot one sets it under the rake.":
		"Lo usual es base y aire entre 10 °C y 30 °C (50 °F y 86 °F); el saco lo dice. Una base fría retrasa la mezcla, una caliente la endurece bajo el rastrillo.",
	"Close windows and turn fans off until it has set: a draught dries the skin before the middle.":
		"Cierre las ventanas y apague los ventiladores hasta que fragüe: una corriente de aire seca la piel antes que el centro.",
	"Don’t pour, Put right first, Keep an eye on it": "No vierta, Corregir antes, Vigilar",
	"Don’t pour: with this as it is, the floor may fail or somebody may come to harm. Change it, then plan again.":
		"No vierta: así como está, el piso puede fallar o alguien puede salir lastimado. Cámbielo y planee de nuevo.",
	"Put right first: it can be done before pour day, and it must be. What to do stands under the mark.":
		"Corregir antes: se puede hacer antes del día del vertido, y hay que hacerlo. Lo que hay que hacer está debajo de la marca.",
	"Keep an eye on it: it may go well. Know of it, and look at it on the day.":
		"Vigilar: puede salir bien. Téngalo presente y mírelo ese día.",
	"In order: checked, and nothing found. Not answered: nobody has said what the check needs, so nobody has checked. A mark is never left out because an answer is missing.":
		"En orden: comprobado y sin nada en contra. Sin respuesta: nadie ha dicho lo que la comprobación necesita, así que nadie ha comprobado. Nunca se omite una marca porque falte una respuesta.",
	"What the pour lands on: its kind, how stiff, dry and sound it is. One room may have several.":
		"Sobre lo que cae el vertido: de qué tipo es, qué tan rígida, seca y firme. Una habitación puede tener varias.",
	"One measured height at one spot: how far the floor lies under a level line, or over a mark.":
		"Una altura medida en un punto: cuánto queda el piso debajo de una línea de nivel, o encima de una marca.",
	Surface: "Superficie",
	"The deck’s shape worked out from the readings, with how sure it is between them.":
		"La forma de la base calculada con las lecturas, con qué tan segura es entre ellas.",
	"Where the top of the pour goes. Level at the highest ground plus the least depth; or flat with a slight fall, which takes fewer bags; or brought to the height of a door.":
		"Dónde va la cara superior del vertido. A nivel, en el terreno más alto más la profundidad mínima; o plana con una ligera caída, que lleva menos sacos; o llevada a la altura de una puerta.",
	"One layer of a pour. Where the floor is deeper than the bag allows at once, it is poured in lifts, with primer between.":
		"Una capa de un vertido. Donde el piso es más hondo de lo que el saco permite de una vez, se vierte en capas, con imprimación entre ellas.",
	Sheet: "Ficha",
	"The figures of one product as its bag states them. Sheets that come with the page are typical values, no product’s.":
		"Las cifras de un producto como las dice su saco. Las fichas que trae la página son valores típicos, de ningún producto.",
	Batch: "Amasada",
	"What one bucket holds: whole bags with their water.": "Lo que lleva una cubeta: sacos enteros con su agua.",
	"Wet edge": "Borde fresco",
	"The poured front that the next batch must meet while it still flows. Come too late, and a ridge stays.":
		"El frente vertido que la próxima amasada debe encontrar mientras todavía fluye. Si se llega tarde, queda un lomo.",
	"Take-off": "Lista de materiales",
	"The list of everything to buy, with quantities and prices.":
		"La lista de todo lo que hay que comprar, con cantidades y precios.",
	"Run sheet": "Hoja de ruta",
	"The work in order, with the clock, the waits and who does what.":
		"El trabajo en orden, con la hora, las esperas y quién hace qué.",
	"Every figure and check that the page goes by, with its source. You can change any of them, and see what it changes.":
		"Cada cifra y comprobación con que trabaja la página, con su fuente. Puede cambiar cualquiera y ver qué cambia con ella.",
	"How far a check is from breaking, in its own unit.":
		"Cuánto le falta a una comprobación para incumplirse, en su propia unidad.",
	"Doors, dams and the way out": "Puertas, diques y la salida",
	"Every door of the room needs a dam as high as the pour. The pour ends at the way out: mark the door by which you leave.":
		"Cada puerta de la habitación necesita un dique tan alto como el vertido. El vertido termina en la salida: marque la puerta por la que usted sale.",
	"Height indicator": "Indicador de altura",
	"A pin or a screw set to the finished height before the pour, so that you see when the mix has reached it.":
		"Un pasador o un tornillo puesto a la altura terminada antes del vertido, para que vea cuándo la mezcla la alcanza.",
	"90 % sure": "90 % seguro",
	"The bag count is a guess with a spread. Bags for 90 % last in nine pours out of ten like this one.":
		"La cuenta de sacos es una estimación con dispersión. Los sacos para el 90 % alcanzan en nueve de cada diez vertidos como este.",
	"Grinding, sweeping and opening bags raise dust with silica, which scars the lungs. Use a vacuum made for it, a fitting mask, and wet where you can.":
		"Desbastar, barrer y abrir sacos levanta polvo con sílice, que deja cicatrices en los pulmones. Use una aspiradora hecha para ello, una mascarilla que ajuste, y moje donde pueda.",
	"Old floors": "Pisos viejos",
	"Old tiles, backing, glue and paint may hold asbestos or lead. Have them tested before you cut, grind or scrape; the law where you live says who may take them out.":
		"Las baldosas, bases, colas y pinturas viejas pueden contener asbesto o plomo. Hágalas analizar antes de cortar, desbastar o raspar; la ley de donde vive dice quién puede retirarlas.",
	"Wet cement": "Cemento fresco",
	"It burns skin and eyes. Waterproof gloves, goggles, long sleeves; wash off at once with much water, and see a doctor for the eyes.":
		"Quema la piel y los ojos. Guantes impermeables, gafas, mangas largas; lávese enseguida con mucha agua y, si es en los ojos, acuda a un médico.",
	Lifting: "Levantar",
	"Bags weigh 20 kg to 25 kg and there are many. Two people, a barrow, and the stack near the mixer.":
		"Los sacos pesan de 20 kg a 25 kg y son muchos. Dos personas, una carretilla, y la pila cerca del mezclador.",
	"Water and power": "Agua y electricidad",
	"Buckets of water and mixing drills stand together: only from an outlet with a residual current device (a GFCI), and no cable across the pour.":
		"Cubetas de agua y taladros mezcladores están juntos: solo desde un tomacorriente con interruptor diferencial (GFCI), y ningún cable por encima del vertido.",
	"Heated floors": "Pisos con calefacción",
	"Cables and pipes lie just under the surface. Don’t drill, screw or grind unless you know where. Switch it off before and after, as its maker says.":
		"Los cables y tubos están justo bajo la superficie. No taladre, atornille ni desbaste si no sabe dónde. Apáguela antes y después, como dice su fabricante.",
	Structure: "Estructura",
	"A pour of 20 mm weighs about 40 kg on every square metre. A springy or old floor may need somebody licensed to look at it first.":
		"Un vertido de 20 mm pesa unos 40 kg en cada metro cuadrado. Un piso que cede o uno viejo puede necesitar que antes lo vea alguien con licencia.",
	"What goes before this page": "Lo que va antes que esta página",
	"Local codes, the product’s own sheet and licensed practice go before anything that is worked out here.":
		"Los códigos locales, la ficha del propio producto y el oficio con licencia van antes que todo lo que aquí se calcula.",
};
