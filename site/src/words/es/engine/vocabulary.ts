// The vocabulary: what each word means, how it is asked, why it matters and how it is measured.
import type { Table } from "../../said";

export const vocabulary: Table = {
	"Somebody's room is below this one.": "Hay una habitación de alguien debajo de esta.",
	"Is there a room below?": "¿Hay una habitación debajo?",
	"A leak finds the ceiling below before you find the leak.":
		"Una fuga llega al techo de abajo antes de que usted encuentre la fuga.",
	"Think of the floor's other side: a flat, a hall, a cellar that is used.":
		"Piense en el otro lado del piso: un apartamento, un pasillo, un sótano que se usa.",
	"Heating cables or pipes lie in or on the deck.": "Hay cables o tubos de calefacción en la base o sobre ella.",
	"Is there heating in or on this floor?": "¿Hay calefacción en este piso o sobre él?",
	"Drilling, grinding and screwing into a heated floor can hit what carries heat, water or mains power.":
		"Taladrar, desbastar y atornillar en un piso con calefacción puede dar con lo que lleva calor, agua o corriente de la red.",
	"Look for a thermostat with a floor sensor or a manifold; ask the owner.":
		"Busque un termostato con sensor de piso o un colector; pregunte al dueño.",
	"How exact is one reading?": "¿Qué tan exacta es una lectura?",
	"The doubt of every reading is part of the doubt of the bag count.":
		"La duda de cada lectura es parte de la duda de la cuenta de sacos.",
	"Read the same spot five times: if the readings lie within 2 mm of each other, answer 1 mm.":
		"Lea el mismo punto cinco veces: si las lecturas difieren en menos de 2 mm, responda 1 mm.",
	"The room gets wet: shower, bath, laundry.": "La habitación se moja: ducha, baño, lavandería.",
	"Will this floor get wet in use?": "¿Se va a mojar este piso con el uso?",
	"Wet rooms want waterproofing over the pour, and some pours must not stay wet.":
		"Las habitaciones mojadas piden impermeabilización sobre el vertido, y algunos vertidos no deben quedar mojados.",
	"Shower rooms, bathrooms and laundries count as wet.": "Duchas, baños y lavanderías cuentan como mojados.",
	"What the pour lands on.": "Sobre lo que cae el vertido.",
	"What is the deck made of?": "¿De qué es la base?",
	"Primer, least depth and how the deck must be made ready all follow from it.":
		"De ella dependen la imprimación, la profundidad mínima y cómo hay que preparar la base.",
	"Look at a cut edge or a bare spot: sheets, boards, or something poured.":
		"Mire un borde cortado o un punto desnudo: paneles, tablas, o algo vertido.",
	"How fast the deck drinks a drop of water.": "Qué tan rápido absorbe la base una gota de agua.",
	"How fast does a drop of water soak in?": "¿Qué tan rápido se absorbe una gota de agua?",
	"The primer's strength and number of coats go by it.":
		"De ello dependen la concentración de la imprimación y el número de manos.",
	"Put down a few drops: gone in a minute is porous, still standing after ten minutes is dense, between is normal.":
		"Ponga unas gotas: si desaparecen en un minuto es porosa, si siguen ahí a los diez minutos es densa, entre ambas es normal.",
	"Thickness of the sheets or boards over the joists, or of the slab.":
		"Espesor de los paneles o tablas sobre las viguetas, o de la losa.",
	"How thick is it?": "¿Qué espesor tiene?",
	"A thin deck bends between the joists and cracks what is poured on it.":
		"Una base delgada flecta entre las viguetas y agrieta lo que se vierte sobre ella.",
	"Measure at a hole, a pipe or the edge of a hatch.": "Mida en un agujero, un tubo o el borde de una trampilla.",
	"Solid everywhere: nothing loose, hollow or springing.": "Firme en todas partes: nada suelto, hueco o que ceda.",
	"Is the deck solid everywhere?": "¿Está firme la base en todas partes?",
	"What is loose under a pour breaks the pour.": "Lo que está suelto debajo de un vertido rompe el vertido.",
	"Walk all of it, tap with a hammer handle, listen for a hollow sound, look for boards that move.":
		"Camínela toda, golpee con el mango de un martillo, escuche si suena hueco, busque tablas que se muevan.",
	"Free of dust, wax, paint, oil and old adhesive.": "Libre de polvo, cera, pintura, aceite y adhesivo viejo.",
	"Is it clean to the bare deck?": "¿Está limpia hasta la base desnuda?",
	"Primer sticks to the deck or to the dirt, not to both.":
		"La imprimación se pega a la base o a la suciedad, no a las dos.",
	"Vacuum, then wipe with a dark cloth: it should stay dark.":
		"Aspire y luego pase un paño oscuro: debe quedar oscuro.",
	"Joints, holes and edges are filled or taped.": "Juntas, huecos y bordes están rellenos o con cinta.",
	"Are all gaps and holes closed?": "¿Están cerrados todos los huecos y rendijas?",
	"A pour runs through any gap that water would find.":
		"Un vertido corre por cualquier rendija que encontraría el agua.",
	"Look for light from below; check pipes, sheet joints, the gap under the plasterboard.":
		"Busque luz desde abajo; revise tubos, juntas de panel, la rendija bajo el tablero de yeso.",
	"Sheets or boards are screwed to every joist.": "Los paneles o tablas están atornillados a cada vigueta.",
	"Is it screwed down to every joist?": "¿Está atornillada a cada vigueta?",
	"A sheet that lifts by a hair breaks the bond above it.":
		"Un panel que se levanta un pelo rompe la adherencia de encima.",
	"Count screws along one joist; add some where a foot can move the sheet.":
		"Cuente los tornillos a lo largo de una vigueta; agregue algunos donde el pie mueva el panel.",
	"How long ago the slab or screed was placed.": "Hace cuánto se colocó la losa o el contrapiso.",
	"How old is the slab or screed?": "¿Qué edad tiene la losa o el contrapiso?",
	"Young concrete still gives off water and still shrinks.":
		"El hormigón joven todavía despide agua y todavía se contrae.",
	"Ask the builder; over a year old, answer 1000 d.":
		"Pregunte al constructor; si tiene más de un año, responda 1000 d.",
	"Relative humidity in the slab at the probe's depth.": "Humedad relativa en la losa a la profundidad de la sonda.",
	"What is the relative humidity in the slab?": "¿Cuál es la humedad relativa en la losa?",
	"Too much of it lifts primer, pour and floor years later.":
		"Si es demasiada, levanta imprimación, vertido y piso años después.",
	"Probes in drilled holes, read after a day at least.":
		"Sondas en agujeros taladrados, leídas después de un día al menos.",
	"Moisture of the wood by mass.": "Humedad de la madera en masa.",
	"How wet is the wood?": "¿Qué tan húmeda está la madera?",
	"Wet wood shrinks under the pour and cracks it.": "La madera húmeda se contrae bajo el vertido y lo agrieta.",
	"Pin meter, several places, near walls and pipes too.":
		"Medidor de agujas, en varios lugares, también junto a paredes y tubos.",
	"The most that may be ground off.": "Lo máximo que se puede desbastar.",
	"How much may be ground off this deck?": "¿Cuánto se puede desbastar de esta base?",
	"High spots that come off save bags all over the room.":
		"Los puntos altos que se rebajan ahorran sacos en toda la habitación.",
	"Concrete: well above the steel; ask who built it. Leave it empty for what the rulebook says.":
		"Hormigón: quedar bien por encima del acero; pregunte a quien lo construyó. Déjelo vacío para usar lo que dice el reglamento.",
	"Gap between the bare deck and the door leaf's lower edge.":
		"Holgura entre la base desnuda y el borde inferior de la hoja.",
	"How much gap is there under the door?": "¿Cuánta holgura hay bajo la puerta?",
	"A raised floor can stop the door.": "Un piso más alto puede trabar la puerta.",
	"Measure from the deck to the leaf with the door closed and half open.":
		"Mida de la base a la hoja con la puerta cerrada y a medio abrir.",
	"A dam closes this door before the pour.": "Un dique cierra esta puerta antes del vertido.",
	"Will this door be dammed?": "¿Se pondrá un dique en esta puerta?",
	"An open door is where the pour leaves the room.":
		"Una puerta abierta es por donde el vertido sale de la habitación.",
	"A batten set in sealant, as high as the pour and a bit.":
		"Un listón puesto sobre sellador, tan alto como el vertido y un poco más.",
	"Whether a stair starts or ends here.": "Si aquí empieza o termina una escalera.",
	"Does a stair meet the floor here?": "¿Llega una escalera al piso aquí?",
	"A raised floor makes the first or the last riser odd, and people fall on an odd riser.":
		"Un piso más alto deja desigual la primera o la última contrahuella, y la gente se cae en una contrahuella desigual.",
	"Foot: it goes up from this floor. Head: it comes up to it.": "Pie: sube desde este piso. Cabeza: sube hasta él.",
	"Riser next to this floor, from the bare deck.": "Contrahuella junto a este piso, desde la base desnuda.",
	"How high is the riser next to this floor, from the bare deck?":
		"¿Qué altura tiene la contrahuella junto a este piso, desde la base desnuda?",
	"It is the one that the new floor changes.": "Es la que cambia con el piso nuevo.",
	"Measure from the deck to the tread, or from the last tread up to the deck.":
		"Mida de la base a la huella, o de la última huella a la base.",
	"The stair's other risers.": "Las demás contrahuellas de la escalera.",
	"How high are the stair's other risers?": "¿Qué altura tienen las demás contrahuellas de la escalera?",
	"All risers of a stair should be the same within 3/8 in (9.5 mm).":
		"Todas las contrahuellas de una escalera deben ser iguales dentro de 3/8 in (9.5 mm).",
	"Measure from tread to tread, the finish on it included.": "Mida de huella a huella, incluido el acabado.",
	"Air in the room on pour day.": "Aire en la habitación el día del vertido.",
	"How warm will the room be?": "¿Qué temperatura tendrá la habitación?",
	"Every time on the bag goes with the temperature.": "Todos los tiempos del saco dependen de la temperatura.",
	"A thermometer at knee height, away from sun and heater.":
		"Un termómetro a la altura de la rodilla, lejos del sol y del calefactor.",
	"Relative humidity of the air.": "Humedad relativa del aire.",
	"How humid is the air?": "¿Qué tan húmedo está el aire?",
	"Dry air dries the skin of the pour, wet air puts dew on a cold deck.":
		"El aire seco seca la piel del vertido, el aire húmedo deja rocío en una base fría.",
	"A hygrometer, an hour in the room.": "Un higrómetro, una hora en la habitación.",
	"Draught over the floor.": "Corriente de aire sobre el piso.",
	"Is there a draught?": "¿Hay corriente de aire?",
	"Moving air dries and cracks the surface.": "El aire en movimiento seca y agrieta la superficie.",
	"Closed room 0; a thread that leans is about 2 km/h; papers that move are about 10 km/h.":
		"Habitación cerrada 0; un hilo que se inclina son unos 2 km/h; papeles que se mueven son unos 10 km/h.",
	"The deck's own surface.": "La superficie misma de la base.",
	"How warm is the deck itself?": "¿Qué temperatura tiene la base misma?",
	"The pour takes the deck's temperature, not the air's.": "El vertido toma la temperatura de la base, no la del aire.",
	"Contact or infrared thermometer at the coldest corner.":
		"Termómetro de contacto o infrarrojo en la esquina más fría.",
	"Mixing water.": "Agua de amasado.",
	"How warm is the mixing water?": "¿Qué temperatura tiene el agua de amasado?",
	"It sets the mix's temperature quicker than anything else.":
		"Fija la temperatura de la mezcla más rápido que cualquier otra cosa.",
	"Thermometer in a bucket after the tap has run for a minute.":
		"Termómetro en una cubeta después de dejar correr la llave un minuto.",
	"The bags, where they are stored.": "Los sacos, donde están guardados.",
	"How warm are the bags?": "¿Qué temperatura tienen los sacos?",
	"Cold bags from a van set late, hot ones at once.":
		"Los sacos fríos de una camioneta fraguan tarde, los calientes de inmediato.",
	"Thermometer between two bags for ten minutes.": "Termómetro entre dos sacos durante diez minutos.",
	"Hands on pour day.": "Manos el día del vertido.",
	"How many people pour?": "¿Cuántas personas vierten?",
	"One person can't mix and spread at once for long.":
		"Una persona no puede mezclar y extender a la vez por mucho tiempo.",
	"Count only who stays from the first bucket to the last.":
		"Cuente solo a quien se queda desde la primera cubeta hasta la última.",
	"Mixing drills or mixers.": "Taladros mezcladores o mezcladores.",
	"How many mixers?": "¿Cuántos mezcladores?",
	"The mixer is most often what the others wait for.": "El mezclador es casi siempre lo que esperan los demás.",
	"Only those with the right paddle and power.": "Solo los que tienen la paleta y la potencia correctas.",
	"Mixing buckets.": "Cubetas de mezclar.",
	"How many mixing buckets?": "¿Cuántas cubetas de mezclar?",
	"Two buckets or more keep the floor fed.": "Dos cubetas o más mantienen abastecido el piso.",
	"Clean, straight-sided, all the same size.": "Limpias, de lados rectos, todas del mismo tamaño.",
	"How big is a bucket?": "¿De qué tamaño es una cubeta?",
	"It limits the bags mixed at once.": "Limita los sacos que se mezclan a la vez.",
	"It is printed on most; else fill it with a measuring jug.":
		"Está impreso en la mayoría; si no, llénela con una jarra medidora.",
	"Barrows to carry buckets in; none where they are carried by hand.":
		"Carretillas para llevar cubetas; ninguna donde se llevan a mano.",
	"How many barrows?": "¿Cuántas carretillas?",
	"By hand or by barrow, each bucket has a way to go.":
		"A mano o en carretilla, cada cubeta tiene que recorrer un camino.",
	"Count only those that fit through every door on the way.":
		"Cuente solo las que caben por todas las puertas del camino.",
	"How far from the door is it mixed?": "¿A qué distancia de la puerta se mezcla?",
	"A long way with a full bucket eats into the time that the mix flows.":
		"Un camino largo con una cubeta llena se come el tiempo en que fluye la mezcla.",
	"Pace it out: a stride is about 0.75 m.": "Cuéntelo a pasos: un paso largo son unos 0.75 m.",
	"How sure you want to be not to run out.": "Qué tan seguro quiere estar de que no le falte.",
	"How sure do you want to be that the bags last?": "¿Qué tan seguro quiere estar de que alcancen los sacos?",
	"Running out in the middle of a pour costs the floor; spare bags cost their price.":
		"Quedarse sin material a mitad de un vertido cuesta el piso; los sacos de reserva cuestan su precio.",
	"What goes on top.": "Lo que va encima.",
	"What goes on top of it?": "¿Qué va encima?",
	"Each finish asks for its own flatness and stiffness.": "Cada acabado pide su propia planitud y rigidez.",
	"A tile is large when any edge is 15 in (381 mm) or more.":
		"Una baldosa es grande cuando algún borde mide 15 in (381 mm) o más.",
	"Thickness of the finish with its adhesive.": "Espesor del acabado con su adhesivo.",
	"How thick is the finish with what it is laid in?": "¿Qué espesor tiene el acabado con aquello en que se coloca?",
	"Doors, stairs and the next room meet the finish, not the pour.":
		"Puertas, escaleras y la habitación de al lado se encuentran con el acabado, no con el vertido.",
	"Tile plus about 3 mm to 6 mm of adhesive.": "Baldosa más unos 3 mm a 6 mm de adhesivo.",
	"The flatness wanted.": "La planitud que se pide.",
	"How flat must the floor be?": "¿Qué tan plano debe quedar el piso?",
	"The pour is judged by it, and so is who pays for a second one.":
		"Con ella se juzga el vertido, y también quién paga un segundo.",
	"The contract or the finish's own sheet says; leave it open for what suits the finish.":
		"Lo dice el contrato o la ficha del acabado; déjelo abierto para usar lo que conviene al acabado.",
	"Spread of the flow ring with the first batch.": "Extensión del anillo de fluidez con la primera amasada.",
	"How far did the flow ring spread?": "¿Cuánto se extendió el anillo de fluidez?",
	"It is the one test of the mix that takes a minute and needs no laboratory.":
		"Es la única prueba de la mezcla que toma un minuto y no necesita laboratorio.",
	"Fill the ring on a flat, clean, dry pane, lift it in one go, and measure two diameters when it has come to rest.":
		"Llene el anillo sobre un vidrio plano, limpio y seco, levántelo de una vez y mida dos diámetros cuando haya quedado quieto.",
	"The longest that an edge waits for the next batch.": "Lo máximo que un borde espera a la próxima amasada.",
	"How long an edge joins the next batch at the temperatures there are.":
		"Cuánto tiempo un borde se une con la próxima amasada a las temperaturas que hay.",
	"The longest from powder in the water to spread.": "Lo máximo desde el polvo en el agua hasta extenderlo.",
	"How long a batch flows at the temperatures there are.": "Cuánto fluye una amasada a las temperaturas que hay.",
	"Batches to mix for this room.": "Amasadas por mezclar para esta habitación.",
	"From the first water to the last bucket back.": "Desde la primera agua hasta que vuelve la última cubeta.",
	"The cables or pipes are found and marked.": "Los cables o tubos están ubicados y marcados.",
	"Are the cables or pipes found and marked?": "¿Están ubicados y marcados los cables o tubos?",
	"A pin, a screw or a grinder through one floods the room or kills.":
		"Un pasador, un tornillo o una desbastadora que atraviesa uno inunda la habitación o mata.",
	"A thermal camera while it warms up, or the layer's own drawing; never guess.":
		"Una cámara térmica mientras calienta, o el plano del instalador; nunca adivine.",
	"Tested and written down: cable by resistance and insulation, pipes under pressure.":
		"Ensayada y anotada: el cable por resistencia y aislamiento, los tubos a presión.",
	"Was the heating tested before the pour and is it written down?":
		"¿Se ensayó la calefacción antes del vertido y está anotado?",
	"After the pour nobody can tell who broke it.": "Después del vertido nadie puede decir quién la rompió.",
	"Cables: a licensed electrician measures. Pipes: the heating trade leaves them under pressure during the pour.":
		"Cables: mide un electricista con licencia. Tubos: el instalador de calefacción los deja a presión durante el vertido.",
	"How much pour will stand over the cables or pipes?": "¿Cuánto vertido quedará sobre los cables o tubos?",
	"Thin cover cracks and makes hot stripes.": "Un recubrimiento delgado se agrieta y deja franjas calientes.",
	"From the top of the highest cable or pipe to the finish plane.":
		"Desde lo alto del cable o tubo más alto hasta el plano de acabado.",
	"How long it will have been off when the pour starts.": "Cuánto tiempo llevará apagada cuando empiece el vertido.",
	"How long will the heating have been off?": "¿Cuánto tiempo llevará apagada la calefacción?",
	"A warm floor dries the primer wrong and sets the pour from below.":
		"Un piso caliente seca mal la imprimación y fragua el vertido desde abajo.",
	"Switch it off at the thermostat and the breaker or valve, and note the day.":
		"Apáguela en el termostato y en el interruptor o la válvula, y anote el día.",
	"Something old is lifted, scraped, sanded or ground.": "Se levanta, raspa, lija o desbasta algo viejo.",
	"Will anything old be lifted, scraped, sanded or ground?": "¿Se va a levantar, raspar, lijar o desbastar algo viejo?",
	"What old floors hold harms only when it becomes dust, and then for good.":
		"Lo que contienen los pisos viejos solo daña cuando se hace polvo, y entonces para siempre.",
	"Old tile, sheet, adhesive, levelling compound and paint count.":
		"Cuentan la baldosa, las láminas, el adhesivo, el nivelador y la pintura viejos.",
	"Year in which the old floor was laid.": "Año en que se colocó el piso viejo.",
	"In which year was the old floor laid?": "¿En qué año se colocó el piso viejo?",
	"Asbestos was put into floors and adhesives for most of the last century, and lead into paint and glaze.":
		"Se puso asbesto en pisos y adhesivos durante la mayor parte del siglo pasado, y plomo en pintura y esmalte.",
	"Papers, the owner, or the house's age; where nobody knows, take the house's.":
		"Los papeles, el dueño, o la edad de la casa; donde nadie lo sabe, use la de la casa.",
	"A laboratory found no asbestos or lead in samples of all its layers.":
		"Un laboratorio no encontró asbesto ni plomo en muestras de todas sus capas.",
	"Did a laboratory find it free of asbestos and lead?": "¿Un laboratorio lo encontró libre de asbesto y plomo?",
	"Nobody can tell by looking.": "Nadie puede saberlo a simple vista.",
	"Have a trained person take samples of each layer; until the paper is there the answer is no.":
		"Haga que una persona capacitada tome muestras de cada capa; hasta tener el papel, la respuesta es no.",
	"A perimeter strip stands along every wall, post and pipe.":
		"Hay una tira perimetral a lo largo de cada pared, poste y tubo.",
	"Will a strip stand along every wall, post and pipe?": "¿Habrá una tira a lo largo de cada pared, poste y tubo?",
	"A pour that touches the walls has nowhere to go and cracks or drums.":
		"Un vertido que toca las paredes no tiene adónde ir y se agrieta o suena hueco.",
	"Foam strip, set before the pour and cut off after.": "Tira de espuma, puesta antes del vertido y cortada después.",
	"Thickness of the perimeter strip.": "Espesor de la tira perimetral.",
	"How thick is the strip?": "¿Qué espesor tiene la tira?",
	"It is the room's movement joint.": "Es la junta de movimiento de la habitación.",
	"It is printed on the roll.": "Está impreso en el rollo.",
	"Height of the strip over the deck.": "Altura de la tira sobre la base.",
	"How high is the strip over the deck?": "¿Qué altura tiene la tira sobre la base?",
	"The pour must not run over it.": "El vertido no debe pasar por encima.",
	"From the deck, not from the roll's edge.": "Desde la base, no desde el borde del rollo.",
	"Spacing of the strip's fixings.": "Separación de las fijaciones de la tira.",
	"How far apart is the strip fixed?": "¿Cada cuánto está fijada la tira?",
	"Between fixings it leans, and the pour runs behind it.":
		"Entre fijaciones se inclina, y el vertido corre por detrás.",
	"Staples or adhesive dots; measure from one to the next.": "Grapas o puntos de adhesivo; mida de uno al siguiente.",
	"Joints at walls, pipes and sheets are sealed.": "Las juntas con paredes, tubos y paneles están selladas.",
	"Are the joints at walls, pipes and sheets sealed?": "¿Están selladas las juntas con paredes, tubos y paneles?",
	"The pour runs through any gap that water would find.":
		"El vertido corre por cualquier rendija que encontraría el agua.",
	"Sealant or foam, left to cure; then pour a cup of water where you doubt it.":
		"Sellador o espuma, dejados fraguar; luego eche una taza de agua donde tenga dudas.",
	"Height of the dam over the deck.": "Altura del dique sobre la base.",
	"How high is the dam over the deck?": "¿Qué altura tiene el dique sobre la base?",
	"A dam that is overrun is none.": "Un dique que se desborda no es un dique.",
	"From the deck to the batten's top.": "Desde la base hasta lo alto del listón.",
	"A collar of strip stands round it.": "Tiene alrededor un collarín de tira.",
	"Is there a collar round it?": "¿Tiene un collarín alrededor?",
	"A pipe grows and shrinks with what runs through it and breaks a pour that holds it.":
		"Un tubo crece y se encoge con lo que pasa por él y rompe un vertido que lo sujeta.",
	"Foam strip wound round and taped.": "Tira de espuma enrollada alrededor y con cinta.",
	"The drain is plugged and dammed for the pour.": "El desagüe está tapado y con dique para el vertido.",
	"Is the drain plugged and dammed?": "¿Está el desagüe tapado y con dique?",
	"What runs in sets in the trap.": "Lo que entra fragua en el sifón.",
	"A test plug or taped sheet below the grate, and a ring as high as the pour.":
		"Un tapón de prueba o lámina con cinta bajo la rejilla, y un anillo tan alto como el vertido.",
	"The flange is screwed to the structure, its fasteners don't rust.":
		"La brida está atornillada a la estructura, sus fijaciones no se oxidan.",
	"Is the flange screwed to the structure?": "¿Está la brida atornillada a la estructura?",
	"A flange that moves breaks its seal, and the pour is no base to screw to.":
		"Una brida que se mueve rompe su sello, y el vertido no es una base para atornillar.",
	"Try to turn it; look at its screws.": "Intente girarla; mire sus tornillos.",
	"Time planned from priming to the pour.": "Tiempo previsto desde imprimar hasta el vertido.",
	"How long after priming will you pour?": "¿Cuánto después de imprimar va a verter?",
	"Too early the primer is wet, too late it no longer holds on to the pour.":
		"Demasiado pronto la imprimación está mojada, demasiado tarde ya no sujeta el vertido.",
	"Count from the last coat to the first bucket.": "Cuente desde la última mano hasta la primera cubeta.",
	"Sun falls on the floor.": "El sol cae sobre el piso.",
	"Does the sun fall on the floor?": "¿Cae el sol sobre el piso?",
	"A sunny patch sets first and curls.": "Una zona al sol fragua primero y se levanta.",
	"Think of the hours after the pour, not only of the pour.":
		"Piense en las horas después del vertido, no solo en el vertido.",
	"How the room is warmed for the pour.": "Cómo se calienta la habitación para el vertido.",
	"Is the room warmed for the pour, and how?": "¿Se calienta la habitación para el vertido, y cómo?",
	"Burning fuel gives off carbon monoxide, water and carbon dioxide, which dusts the pour's skin.":
		"El combustible al quemarse despide monóxido de carbono, agua y dióxido de carbono, que vuelve polvorienta la piel del vertido.",
	"Electric: radiator or fan heater. Fuel: gas, oil or paraffin without a flue.":
		"Eléctrico: radiador o calefactor de aire. Combustible: gas, petróleo o queroseno sin salida de humos.",
	"The mixing water is fit to drink.": "El agua de amasado es potable.",
	"Is the mixing water fit to drink?": "¿Es potable el agua de amasado?",
	"Salt, soil and soap change the setting.": "Sal, tierra y jabón cambian el fraguado.",
	"From the mains; not from a rain barrel, nor a bucket that held anything.":
		"De la red; no de un barril de lluvia ni de una cubeta que tuvo otra cosa.",
	"Way from the vehicle to where it is mixed.": "Camino desde el vehículo hasta donde se mezcla.",
	"How far are the bags carried?": "¿A qué distancia se llevan los sacos?",
	"Twenty bags over twenty metres are close to a kilometre on foot, half of it loaded.":
		"Veinte sacos por veinte metros son casi un kilómetro a pie, la mitad con carga.",
	"Pace it out, stairs counted as three times their length.":
		"Cuéntelo a pasos, contando las escaleras como tres veces su largo.",
	"Bags that one person carries at a time.": "Sacos que lleva una persona a la vez.",
	"How many bags does one person carry at a time?": "¿Cuántos sacos lleva una persona a la vez?",
	"One is already at the limit.": "Uno ya está en el límite.",
	"On a trolley, count what is on it.": "Con un carrito, cuente los que van en él.",
	"Hands in front of the ankles when a bag is lifted.": "Manos por delante de los tobillos al levantar un saco.",
	"How far in front of the ankles are the hands when lifting a bag?":
		"¿A qué distancia de los tobillos están las manos al levantar un saco?",
	"Each hand's breadth away from the body takes kilograms off what a back stands.":
		"Cada palmo lejos del cuerpo le quita kilogramos a lo que aguanta una espalda.",
	"From the middle between the ankles to the middle between the hands; close to the body is 250 mm.":
		"Desde el punto medio entre los tobillos hasta el punto medio entre las manos; junto al cuerpo son 250 mm.",
	"Hands above the floor when the lift starts.": "Manos sobre el piso al empezar a levantar.",
	"How high are the hands when the lift starts?": "¿A qué altura están las manos al empezar a levantar?",
	"From the floor is worst; from a table at 750 mm best.":
		"Desde el piso es lo peor; desde una mesa a 750 mm, lo mejor.",
	"From the floor to the hands on the bag.": "Desde el piso hasta las manos en el saco.",
	"How far up a bag is lifted.": "Hasta qué altura se levanta un saco.",
	"How far up is a bag lifted?": "¿Hasta qué altura se levanta un saco?",
	"Further is harder.": "Más lejos es más duro.",
	"From where the hands start to where they stop, for example the bucket's rim.":
		"Desde donde empiezan las manos hasta donde paran, por ejemplo el borde de la cubeta.",
	"Lifts a minute while mixing.": "Levantamientos por minuto al mezclar.",
	"How many bags are lifted in a minute?": "¿Cuántos sacos se levantan en un minuto?",
	"The oftener, the less.": "Cuanto más seguido, menos.",
	"One bag every two minutes is 0.5. Leave it open for that.":
		"Un saco cada dos minutos es 0.5. Déjelo abierto para ese valor.",
	"Bags in one stack on the deck.": "Sacos en una pila sobre la base.",
	"How many bags stand in one stack?": "¿Cuántos sacos hay en una pila?",
	"A stack of twenty weighs half a tonne on a quarter of a square metre.":
		"Una pila de veinte pesa media tonelada sobre un cuarto de metro cuadrado.",
	"Count the bags of the highest stack that will stand on a deck.":
		"Cuente los sacos de la pila más alta que va a estar sobre una base.",
	"What one stack stands on.": "Sobre qué área se apoya una pila.",
	"What area does a stack stand on?": "¿Sobre qué área se apoya una pila?",
	"The load goes by it.": "De ello depende la carga.",
	"Length times width of a bag, or of the pallet. Leave it open for a bag of 0.24 m².":
		"Largo por ancho de un saco, o de la tarima. Déjelo abierto para un saco de 0.24 m².",
	"What the floor is meant to carry.": "Lo que el piso está hecho para cargar.",
	"What is the floor meant to carry?": "¿Qué carga está hecho para soportar el piso?",
	"Joists and stacks are held against it.": "Con ello se comparan las viguetas y las pilas.",
	"Drawings or the local code; leave it open for 40 psf (1.92 kPa), usual in homes.":
		"Los planos o el código local; déjelo abierto para 40 psf (1.92 kPa), usual en viviendas.",
	"What makes dust on this job, the worst of it.": "Lo que produce polvo en este trabajo, lo peor.",
	"What makes dust here: which tool, and how is the dust held down?":
		"¿Qué produce polvo aquí: qué herramienta, y cómo se controla el polvo?",
	"Silica dust scars lungs for good, and each tool has a rule of its own.":
		"El polvo de sílice deja cicatrices en los pulmones para siempre, y cada herramienta tiene su propia regla.",
	"Choose what is used longest; none where nothing is ground, drilled or sawn in concrete, mortar or tile.":
		"Elija lo que se usa más tiempo; ninguna donde no se desbasta, taladra ni corta hormigón, mortero o baldosa.",
	"How long in one shift.": "Cuánto tiempo en un turno.",
	"How long in one shift?": "¿Cuánto tiempo en un turno?",
	"Beyond four hours more is asked for.": "Más allá de cuatro horas se pide más.",
	"Add up the time that the tool runs, with short breaks.":
		"Sume el tiempo que funciona la herramienta, con las pausas cortas.",
	"Indoors or in an enclosed place.": "En interior o en un lugar cerrado.",
	"Is it done indoors?": "¿Se hace en interior?",
	"Dust stays indoors.": "El polvo se queda en el interior.",
	"A room with open windows is still indoors.": "Una habitación con las ventanas abiertas sigue siendo interior.",
	"The vacuum has a HEPA filter.": "La aspiradora tiene un filtro HEPA.",
	"Has the vacuum a HEPA filter?": "¿Tiene la aspiradora un filtro HEPA?",
	"Other filters blow the finest dust back into the room.":
		"Otros filtros devuelven a la habitación el polvo más fino.",
	"It is printed on the filter: 99.97 % at 0.3 µm, or class H.":
		"Está impreso en el filtro: 99.97 % a 0.3 µm, o clase H.",
	"Protection factor of the respirator worn; 0 for none.":
		"Factor de protección del respirador que se usa; 0 si no hay.",
	"Which protection factor has the respirator that is worn?":
		"¿Qué factor de protección tiene el respirador que se usa?",
	"It must be at least what the task asks for.": "Debe ser al menos lo que pide la tarea.",
	"A fitted half mask with P100 or P3 filters counts as 10, a full-face mask 50; a loose paper mask counts as 0.":
		"Una media máscara ajustada con filtros P100 o P3 cuenta como 10, una máscara completa 50; una mascarilla de papel suelta cuenta como 0.",
	"Diameter of the wheel.": "Diámetro del disco.",
	"How big is the wheel?": "¿De qué tamaño es el disco?",
	"The vacuum's airflow goes by it.": "De ello depende el caudal de la aspiradora.",
	"It is printed on the wheel: 4 1/2, 5 or 7 in are usual.": "Está impreso en el disco: 4 1/2, 5 o 7 in son usuales.",
	"Air that the vacuum draws.": "Aire que aspira la aspiradora.",
	"How much air does the vacuum draw?": "¿Cuánto aire aspira la aspiradora?",
	"A weak vacuum leaves the dust in the air.": "Una aspiradora débil deja el polvo en el aire.",
	"Its plate, as L/s, m³/h or cu ft/min; a clogged filter halves it.":
		"Su placa, en L/s, m³/h o cu ft/min; un filtro tapado lo reduce a la mitad.",
	"Waterproof gloves, long sleeves, boots and goggles for everybody.":
		"Guantes impermeables, mangas largas, botas y gafas para todos.",
	"Does everybody have waterproof gloves, long sleeves, boots and goggles?":
		"¿Tienen todos guantes impermeables, mangas largas, botas y gafas?",
	"Wet cement burns skin and eyes, without pain at first.":
		"El cemento fresco quema la piel y los ojos, al principio sin dolor.",
	"Lay them out the day before, with a bottle of clean water for eyes.":
		"Prepárelos el día antes, con una botella de agua limpia para los ojos.",
	"Every mixer is plugged into a residual-current device (ground-fault interrupter).":
		"Cada mezclador está conectado a un interruptor diferencial (GFCI).",
	"Is every mixer plugged into a residual-current device (ground-fault interrupter)?":
		"¿Está cada mezclador conectado a un interruptor diferencial (GFCI)?",
	"Mixers stand in water.": "Los mezcladores están en el agua.",
	"Press its test button; use a plug-in one where the socket has none.":
		"Pulse su botón de prueba; use uno enchufable donde el tomacorriente no lo tenga.",
	"Foam, solvent sealant, resin primer or a resin barrier is used.":
		"Se usa espuma, sellador con solvente, imprimación de resina o una barrera de resina.",
	"Is foam, solvent sealant, or a resin primer or barrier used?":
		"¿Se usa espuma, sellador con solvente, o una imprimación o barrera de resina?",
	"Their vapours burn and harm.": "Sus vapores arden y dañan.",
	"Look for a flame or a health sign on the label.": "Busque en la etiqueta una llama o un símbolo de salud.",
	"The room is aired and free of flames and pilot lights while they are used.":
		"La habitación está ventilada y sin llamas ni pilotos mientras se usan.",
	"Will the room be aired, with every flame and pilot light out?":
		"¿Estará ventilada la habitación, con toda llama y piloto apagados?",
	"Vapour runs along the floor to the boiler.": "El vapor corre por el piso hasta la caldera.",
	"Before the pour: windows open, gas off. For the pour itself the windows are closed again.":
		"Antes del vertido: ventanas abiertas, gas cerrado. Para el vertido mismo se cierran de nuevo las ventanas.",
	"The deck is poured, laid or glued: concrete, screed, gypsum, tile, stone or adhesive residue.":
		"La base es vertida, colocada o pegada: hormigón, contrapiso, yeso, baldosa, piedra o residuo de adhesivo.",
	"The deck is gypsum.": "La base es de yeso.",
	"The deck is screed.": "La base es un contrapiso.",
	"The deck is tile or stone.": "La base es baldosa o piedra.",
	"The deck is adhesive residue.": "La base es residuo de adhesivo.",
	"The joists are of a size that the list doesn't hold.": "Las viguetas son de un tamaño que la lista no tiene.",
	"Moisture was measured by probes.": "La humedad se midió con sondas.",
	"Moisture was measured by calcium chloride.": "La humedad se midió con cloruro de calcio.",
	"Moisture was looked for under a plastic sheet.": "La humedad se buscó bajo una lámina de plástico.",
	"How far the joists bend under live load.": "Cuánto flectan las viguetas bajo carga viva.",
	"Span over the bend under live load: 360 reads L/360.": "Luz entre la flecha bajo carga viva: 360 se lee L/360.",
	"How far the joists bend under live and dead load, pour and finish too.":
		"Cuánto flectan las viguetas bajo carga viva y muerta, también vertido y acabado.",
	"Span over the bend under all load.": "Luz entre la flecha bajo toda la carga.",
	"Greatest bending stress in the joists under all load.":
		"Mayor esfuerzo de flexión en las viguetas bajo toda la carga.",
	"Bending stress that the grade allows.": "Esfuerzo de flexión que permite la clase.",
	"Weight of the pour on the deck.": "Peso del vertido sobre la base.",
	"All dead load: the floor's own, the pour and the finish.":
		"Toda la carga muerta: la del piso mismo, el vertido y el acabado.",
	"Length of the joints between the sheets, the sheets laid from one corner.":
		"Longitud de las juntas entre los paneles, colocados desde una esquina.",
	"Sheets and parts of sheets.": "Paneles y partes de panel.",
	"Fasteners that the sheets take.": "Fijaciones que llevan los paneles.",
	"What the joints between the sheets take.": "Lo que llevan las juntas entre los paneles.",
	"Patch powder for the joints, loose.": "Polvo de reparación para las juntas, suelto.",
	"Patch powder for the joints.": "Polvo de reparación para las juntas.",
	"Water for the joints' patch.": "Agua para la masilla de las juntas.",
	"Moisture tests that this area needs by the way it was measured.":
		"Ensayos de humedad que necesita esta área según cómo se midió.",
	"How deep a humidity probe sits in this slab.": "A qué profundidad va una sonda de humedad en esta losa.",
	"Pour at its deepest in the room.": "El vertido en lo más profundo de la habitación.",
	"When the slowest deck's primer in this room is dry.":
		"Cuándo está seca la imprimación de la base más lenta de esta habitación.",
	"When the first deck's primer in this room must be poured on.":
		"Cuándo hay que verter sobre la imprimación de la primera base de esta habitación.",
	"It is a drain.": "Es un desagüe.",
	"It is a flange.": "Es una brida.",
	"Temperature at which this air wets a surface.": "Temperatura a la que este aire moja una superficie.",
	"How far the deck is above the dew point.": "Cuánto está la base por encima del punto de rocío.",
	"How humid the air may be over this deck.": "Qué tan húmedo puede estar el aire sobre esta base.",
	"How fast a fresh pour loses water to this air.": "Qué tan rápido pierde agua un vertido fresco con este aire.",
	"The draught in which a fresh pour loses just as much as it may.":
		"La corriente de aire con la que un vertido fresco pierde justo lo que puede perder.",
	"Trips with bags.": "Viajes con sacos.",
	"What may be lifted like this (NIOSH).": "Lo que se puede levantar así (NIOSH).",
	"A bag over what may be lifted.": "Un saco entre lo que se puede levantar.",
	"Load under one stack of bags.": "Carga bajo una pila de sacos.",
	"Bags that one stack may have on this floor.": "Sacos que puede tener una pila en este piso.",
	"Something on this job makes silica dust.": "Algo en este trabajo produce polvo de sílice.",
	"The vacuum's airflow goes by the wheel.": "El caudal de la aspiradora depende del disco.",
	"Protection factor that the task needs; 0 for none.": "Factor de protección que necesita la tarea; 0 si ninguno.",
	"Least depth on concrete and screed.": "Profundidad mínima sobre hormigón y contrapiso.",
	"Least depth on wood.": "Profundidad mínima sobre madera.",
	"Greatest depth of one lift.": "Profundidad máxima de una capa.",
	"Greatest depth of one lift with aggregate.": "Profundidad máxima de una capa con árido.",
	"The bag allows wood decks.": "El saco permite bases de madera.",
	"How long to mix.": "Cuánto tiempo mezclar.",
	"Rest after mixing, before it is poured.": "Reposo después de mezclar, antes de verter.",
	"How long it flows from the first water, at 20 °C.": "Cuánto fluye desde la primera agua, a 20 °C.",
	"How long a poured edge still joins the next batch, at 20 °C.":
		"Cuánto tiempo un borde vertido todavía se une con la próxima amasada, a 20 °C.",
	"When it may be walked on.": "Cuándo se puede pisar.",
	"When it may be tiled.": "Cuándo se puede poner baldosa.",
	"When it may be covered by what lets no moisture out.": "Cuándo se puede cubrir con lo que no deja salir la humedad.",
	"Coldest deck and air it may be poured in.": "Base y aire más fríos en que se puede verter.",
	"Warmest deck and air it may be poured in.": "Base y aire más calientes en que se puede verter.",
	"Coldest fresh mix.": "Mezcla fresca más fría.",
	"Warmest fresh mix.": "Mezcla fresca más caliente.",
	"Density when set.": "Densidad ya fraguado.",
	"Least spread of the flow ring.": "Extensión mínima del anillo de fluidez.",
	"Most spread of the flow ring.": "Extensión máxima del anillo de fluidez.",
	"Compressive strength at 28 days.": "Resistencia a la compresión a los 28 días.",
	"Primer to water on porous decks, by volume.": "Imprimación por agua en bases porosas, en volumen.",
	"Primer to water on normal decks, by volume.": "Imprimación por agua en bases normales, en volumen.",
	"Parts primer to one part water on dense decks; leave empty for undiluted.":
		"Partes de imprimación por una parte de agua en bases densas; déjelo vacío si va sin diluir.",
	"Undiluted on dense decks.": "Sin diluir en bases densas.",
	"Undiluted on wood.": "Sin diluir sobre madera.",
	"Coats on porous decks.": "Manos en bases porosas.",
	"Coats on other decks.": "Manos en otras bases.",
	"Area that one measure of the mix covers, one coat.": "Área que cubre una medida de la mezcla, una mano.",
	"Least drying before the pour.": "Secado mínimo antes del vertido.",
	"Latest pour after priming.": "Vertido a más tardar después de imprimar.",
	"What one tin holds.": "Lo que contiene una lata.",
	"What a smaller tin holds, where there is one.": "Lo que contiene una lata menor, si la hay.",
	"How long a closed bag keeps, dry.": "Cuánto dura un saco cerrado, en seco.",
	"How long a closed tin keeps, free of frost.": "Cuánto dura una lata cerrada, sin heladas.",
	"How long a closed bag of patch keeps, dry.": "Cuánto dura un saco cerrado de masilla, en seco.",
	"Powder to water by volume.": "Polvo por agua en volumen.",
	"Cure before primer.": "Fraguado antes de la imprimación.",
	"Most aggregate, by the powder's mass.": "Árido máximo, por la masa del polvo.",
	"Density of the grain itself.": "Densidad del grano mismo.",
	"Greatest humidity in the slab that the barrier holds back.": "Mayor humedad en la losa que retiene la barrera.",
	"Area that one measure covers, one coat.": "Área que cubre una medida, una mano.",
	"Coats of the barrier.": "Manos de la barrera.",
	"How long a drop of water stands on the clean deck.": "Cuánto aguanta una gota de agua sobre la base limpia.",
	"How long does a drop of water stand on it?": "¿Cuánto aguanta una gota de agua sobre ella?",
	"Primer strength goes by what the deck drinks, and a drop tells it better than a look.":
		"La concentración de la imprimación depende de lo que absorbe la base, y una gota lo dice mejor que una mirada.",
	"A few drops on clean, dry spots; time until they are gone, or stop at ten minutes.":
		"Unas gotas en puntos limpios y secos; el tiempo hasta que desaparecen, o pare a los diez minutos.",
	"Oil, wax, curing compound, sealer or paint is in the surface.":
		"Hay aceite, cera, curador, sellador o pintura en la superficie.",
	"Is there oil, wax, sealer, paint or curing compound in the surface?":
		"¿Hay aceite, cera, sellador, pintura o curador en la superficie?",
	"Primer holds on to what is in the pores, and comes off with it.":
		"La imprimación se agarra a lo que hay en los poros, y se desprende con ello.",
	"Water that beads on concrete, dark spots, a smell: scratch and wet it to see.":
		"Agua que forma gotas sobre el hormigón, manchas oscuras, un olor: raspe y moje para verlo.",
	"A soft or dusty skin lies on top (laitance).": "Hay encima una piel blanda o polvorienta (lechada).",
	"Is there a soft or dusty skin on top?": "¿Hay encima una piel blanda o polvorienta?",
	"A pour shrinks and pulls; it tears a weak skin off the deck.":
		"Un vertido se contrae y tira; arranca de la base una piel débil.",
	"Scratch a cross with a nail or a steel blade: a sound deck only shows a bright line.":
		"Raye una cruz con un clavo o una hoja de acero: una base firme solo muestra una línea clara.",
	"Least pull-off strength of the surface.": "Resistencia mínima al arranque de la superficie.",
	"What did the pull-off tests give, the lowest of them?": "¿Qué dieron los ensayos de arranque, el menor de ellos?",
	"It is the one test that says what the surface holds, in numbers.":
		"Es el único ensayo que dice en números lo que aguanta la superficie.",
	"Glued disks pulled with a gauge (ASTM C1583); usual on trade jobs only.":
		"Discos pegados que se arrancan con un medidor (ASTM C1583); usual solo en obras profesionales.",
	"Widest crack.": "Grieta más ancha.",
	"How wide is the widest crack?": "¿Qué ancho tiene la grieta más ancha?",
	"A crack is filled before the pour, or it comes through.":
		"Una grieta se rellena antes del vertido, o vuelve a aparecer.",
	"A crack-width card or a feeler gauge; 0 mm where there is none.":
		"Una tarjeta de grietas o una galga; 0 mm donde no hay ninguna.",
	"A crack moves: its sides stand at odds, or it opens and closes.":
		"Una grieta se mueve: sus lados están a distinta altura, o se abre y se cierra.",
	"Does any crack move?": "¿Se mueve alguna grieta?",
	"No pour bridges a crack that moves.": "Ningún vertido puentea una grieta que se mueve.",
	"Step on both sides; look for one side higher, for fresh edges, for a filled crack that opened again.":
		"Pise a ambos lados; busque un lado más alto, bordes recientes, una grieta rellena que se abrió de nuevo.",
	"Movement joints of the building cross this deck.": "Juntas de movimiento del edificio cruzan esta base.",
	"Do movement joints cross this deck?": "¿Cruzan juntas de movimiento esta base?",
	"Poured over, a movement joint breaks the pour along its own crooked line.":
		"Si se vierte encima, una junta de movimiento rompe el vertido por su propia línea torcida.",
	"A straight joint through the whole slab, with sealant or a strip in it, in line with one in the wall.":
		"Una junta recta a través de toda la losa, con sellador o una tira dentro, en línea con una de la pared.",
	"Movement joints are carried up through the pour and the finish.":
		"Las juntas de movimiento se prolongan a través del vertido y el acabado.",
	"Will the movement joints be carried up through pour and finish?":
		"¿Se prolongarán las juntas de movimiento a través del vertido y el acabado?",
	"Only what is open from bottom to top can move.": "Solo puede moverse lo que está abierto de abajo arriba.",
	"A strip or profile set over the joint, as high as the finish.":
		"Una tira o un perfil puesto sobre la junta, tan alto como el acabado.",
	"Acidity of the wetted surface (pH).": "Acidez de la superficie mojada (pH).",
	"What does pH paper show on the wetted surface?": "¿Qué muestra el papel de pH sobre la superficie mojada?",
	"High alkali attacks adhesives, and acid says that something was spilled or etched.":
		"Un álcali alto ataca los adhesivos, y un ácido dice que algo se derramó o se grabó.",
	"A puddle 25 mm (1 in) across, wait a minute, then the paper (ASTM F710); clean it 24 h before.":
		"Un charco de 25 mm (1 in), espere un minuto y ponga el papel (ASTM F710); límpielo 24 h antes.",
	"How the moisture was measured.": "Cómo se midió la humedad.",
	"How was the moisture measured?": "¿Cómo se midió la humedad?",
	"Each way has its own number of tests, its own wait and its own limit.":
		"Cada manera tiene su propio número de ensayos, su propia espera y su propio límite.",
	"Probes in drilled holes (ASTM F2170) say most; a taped plastic sheet (ASTM D4263) only shows that it is wet.":
		"Las sondas en agujeros taladrados (ASTM F2170) son las que más dicen; una lámina de plástico pegada (ASTM D4263) solo muestra que está mojada.",
	"The slab lies on the ground.": "La losa está sobre el terreno.",
	"Does the slab lie on the ground?": "¿Está la losa sobre el terreno?",
	"The ground feeds moisture for ever where nothing stops it.":
		"El terreno da humedad para siempre donde nada la detiene.",
	"Think of what is below: earth, or another room.": "Piense en lo que hay debajo: tierra, u otra habitación.",
	"A membrane lies under the slab.": "Hay una membrana debajo de la losa.",
	"Is there a membrane under the slab?": "¿Hay una membrana debajo de la losa?",
	"Without one, today's dry reading says little about next spring.":
		"Sin ella, la lectura seca de hoy dice poco de la próxima primavera.",
	"Drawings, the builder, or a look at the slab's edge.":
		"Los planos, el constructor, o una mirada al borde de la losa.",
	"A moisture barrier goes on this deck before the primer.":
		"Sobre esta base va una barrera de humedad antes de la imprimación.",
	"Will a moisture barrier go on this deck?": "¿Va a llevar esta base una barrera de humedad?",
	"Where a slab would take too long to dry, a barrier holds the damp back.":
		"Donde una losa tardaría demasiado en secar, una barrera retiene la humedad.",
	"Its tin names the humidity that it holds back; see the barrier's sheet.":
		"Su lata nombra la humedad que retiene; vea la ficha de la barrera.",
	"Humidity readings taken in the slab.": "Lecturas de humedad tomadas en la losa.",
	"How many probes were read?": "¿Cuántas sondas se leyeron?",
	"One hole says nothing about the next corner.": "Un agujero no dice nada de la esquina siguiente.",
	"Count holes that were read, not readings of the same hole.":
		"Cuente los agujeros leídos, no las lecturas del mismo agujero.",
	"Sides that the slab dries from.": "Lados por los que seca la losa.",
	"From how many sides does the slab dry?": "¿Por cuántos lados seca la losa?",
	"The probe's depth goes by it.": "De ello depende la profundidad de la sonda.",
	"One: on the ground, on a membrane or on steel deck. Two: free below.":
		"Uno: sobre el terreno, sobre una membrana o sobre lámina de acero. Dos: libre por debajo.",
	"Depth of the probes.": "Profundidad de las sondas.",
	"How deep do the probes sit?": "¿A qué profundidad están las sondas?",
	"Nearer the top a slab is always drier.": "Cerca de la cara superior una losa siempre está más seca.",
	"Measure the hole after cleaning it.": "Mida el agujero después de limpiarlo.",
	"Time from setting the probes to reading them.": "Tiempo desde colocar las sondas hasta leerlas.",
	"How long had the probes stood when they were read?": "¿Cuánto llevaban puestas las sondas cuando se leyeron?",
	"Drilling warms and dries the hole; it needs time to settle.":
		"Taladrar calienta y seca el agujero; necesita tiempo para asentarse.",
	"From closing the hole to the reading.": "Desde cerrar el agujero hasta la lectura.",
	"How long the room had been as warm and dry as in use, before the test.":
		"Cuánto tiempo llevaba la habitación tan caliente y seca como en uso, antes del ensayo.",
	"How long had the room been as warm and dry as in use?":
		"¿Cuánto tiempo llevaba la habitación tan caliente y seca como en uso?",
	"Humidity in a slab goes with its temperature.": "La humedad en una losa depende de su temperatura.",
	"Count from when heating or cooling ran as it will in use.":
		"Cuente desde que la calefacción o el enfriamiento funcionan como lo harán en uso.",
	"Time since the instrument was checked.": "Tiempo desde que se comprobó el instrumento.",
	"When was the instrument last checked?": "¿Cuándo se comprobó el instrumento por última vez?",
	"Probes drift.": "Las sondas se desvían.",
	"Its certificate or the salt test's date, as days before the reading.":
		"Su certificado o la fecha de la prueba de sal, en días antes de la lectura.",
	"Age of the readings.": "Edad de las lecturas.",
	"How old are the readings?": "¿Qué edad tienen las lecturas?",
	"A leak, a wet season or a cut-off heating makes old readings worthless.":
		"Una fuga, una temporada húmeda o una calefacción cortada dejan sin valor las lecturas viejas.",
	"Days from the reading to the pour.": "Días desde la lectura hasta el vertido.",
	"Highest vapour emission.": "Mayor emisión de vapor.",
	"What is the highest vapour emission?": "¿Cuál es la mayor emisión de vapor?",
	"What the slab gives off is what will lift the floor.": "Lo que despide la losa es lo que levantará el piso.",
	"Calcium chloride dishes under domes, weighed before and after (ASTM F1869); the worst counts, never the mean.":
		"Platillos de cloruro de calcio bajo campanas, pesados antes y después (ASTM F1869); cuenta el peor, nunca la media.",
	"Dishes that were weighed.": "Platillos que se pesaron.",
	"How many dishes were weighed?": "¿Cuántos platillos se pesaron?",
	"One dish says nothing about the next corner.": "Un platillo no dice nada de la esquina siguiente.",
	"Only those that stood undisturbed.": "Solo los que estuvieron sin que nadie los tocara.",
	"How long the dishes stood.": "Cuánto tiempo estuvieron los platillos.",
	"How long did the dishes stand?": "¿Cuánto tiempo estuvieron los platillos?",
	"Too short or too long and the number is another one.": "Demasiado poco o demasiado tiempo y el número es otro.",
	"From setting the dome to taking it off.": "Desde poner la campana hasta quitarla.",
	"The plastic sheet was damp below, or the slab under it dark.":
		"La lámina de plástico estaba mojada por debajo, o la losa oscura debajo de ella.",
	"Was the sheet damp below, or the slab under it dark?":
		"¿Estaba mojada la lámina por debajo, o la losa oscura debajo de ella?",
	"Then water is on its way up.": "Entonces viene subiendo agua.",
	"Tape 18 in (457 mm) square of clear sheet tightly all round, lift it after 16 h at least (ASTM D4263).":
		"Pegue bien por todo el contorno un cuadrado de 18 in (457 mm) de lámina transparente, levántelo después de 16 h al menos (ASTM D4263).",
	"Plastic sheets that were taped down.": "Láminas de plástico que se pegaron.",
	"How many sheets were taped down?": "¿Cuántas láminas se pegaron?",
	"One spot says nothing about the next corner.": "Un punto no dice nada de la esquina siguiente.",
	"One for each 500 sq ft (46 m²) or part of it.": "Una por cada 500 sq ft (46 m²) o parte de ello.",
	"How long the sheets lay.": "Cuánto tiempo estuvieron las láminas.",
	"How long did the sheets lay?": "¿Cuánto tiempo estuvieron las láminas?",
	"Moisture takes its time.": "La humedad se toma su tiempo.",
	"From taping to lifting.": "Desde pegarla hasta levantarla.",
	"How the screed lies: bonded to the slab, on a membrane, or on insulation.":
		"Cómo está el contrapiso: adherido a la losa, sobre una membrana, o sobre aislamiento.",
	"Does the screed stick to the slab, lie on a membrane, or float on insulation?":
		"¿Está el contrapiso pegado a la losa, sobre una membrana, o flotando sobre aislamiento?",
	"The freer it lies, the thicker it must be not to crack.":
		"Cuanto más suelto está, más grueso debe ser para no agrietarse.",
	"Look at a pipe, a hole or the wall's foot: foam, foil, or concrete.":
		"Mire en un tubo, un agujero o el pie de la pared: espuma, lámina u hormigón.",
	"The skin is sanded off and vacuumed.": "La piel está lijada y aspirada.",
	"Was the skin sanded off and vacuumed up?": "¿Se lijó y aspiró la piel?",
	"A soft skin forms as gypsum sets, and cement on it makes a layer that swells and splits off.":
		"Al fraguar el yeso se forma una piel blanda, y el cemento sobre ella forma una capa que se hincha y se separa.",
	"Scratch it: dust on the blade means the skin is still there.":
		"Ráspelo: si queda polvo en la hoja, la piel sigue ahí.",
	"Moisture of the gypsum by mass.": "Humedad del yeso en masa.",
	"How wet is the gypsum, by mass?": "¿Qué tan húmedo está el yeso, en masa?",
	"Gypsum that stays wet goes soft.": "El yeso que queda mojado se ablanda.",
	"Carbide bottle or drying a sample at 40 °C, never hotter.":
		"Botella de carburo o secar una muestra a 40 °C, nunca más.",
	"The glaze or polish is ground dull and degreased.":
		"El esmalte o pulido está desbastado hasta quedar mate y desengrasado.",
	"Is the glaze or polish ground dull and washed clean of grease and wax?":
		"¿Está el esmalte o pulido desbastado hasta quedar mate y lavado de grasa y cera?",
	"Primer needs something to hold on to.": "La imprimación necesita de dónde agarrarse.",
	"Wipe with a white cloth; a drop of water should spread.": "Pase un paño blanco; una gota de agua debe extenderse.",
	"Share of tiles that sound hollow.": "Parte de las baldosas que suena hueco.",
	"What share of the tiles sounds hollow?": "¿Qué parte de las baldosas suena hueco?",
	"A hollow tile lets go sooner or later, with all that lies on it.":
		"Una baldosa hueca se suelta tarde o temprano, con todo lo que tiene encima.",
	"Tap every tile with a coin or a hammer's handle and mark those that ring.":
		"Golpee cada baldosa con una moneda o el mango de un martillo y marque las que resuenan.",
	"What the old adhesive is.": "Qué es el adhesivo viejo.",
	"What is the old adhesive?": "¿Qué es el adhesivo viejo?",
	"Black bitumen adhesive stays soft, bleeds, and may hold asbestos.":
		"El adhesivo negro de betún queda blando, mancha, y puede contener asbesto.",
	"Black and brittle or tarry: bitumen. Yellow or white, soft when wet: dispersion. Grey and hard: cement.":
		"Negro y quebradizo o alquitranoso: betún. Amarillo o blanco, blando al mojarse: dispersión. Gris y duro: cemento.",
	"Scraped to a thin stain with no ridges.": "Raspado hasta una mancha delgada sin crestas.",
	"Is it scraped down to a thin stain?": "¿Está raspado hasta una mancha delgada?",
	"Ridges soften under the water in the mix and let go.":
		"Las crestas se ablandan con el agua de la mezcla y se sueltan.",
	"Wet-scrape by hand; what is left should be flat and firm. Never sand before it is tested.":
		"Raspe en húmedo a mano; lo que queda debe ser plano y firme. Nunca lije antes de que se analice.",
	"The tin names this deck.": "La lata nombra esta base.",
	"Does the primer's tin name this deck?": "¿Nombra esta base la lata de la imprimación?",
	"A primer for concrete may never dry on tile, and one for tile may seal wood wrongly.":
		"Una imprimación para hormigón puede no secar nunca sobre baldosa, y una para baldosa puede sellar mal la madera.",
	"Read the list of decks on the tin or on its sheet.": "Lea la lista de bases en la lata o en su ficha.",
	"Size of the joists.": "Tamaño de las viguetas.",
	"What size are the joists?": "¿De qué tamaño son las viguetas?",
	"How far the floor bends goes by the third power of their depth.":
		"Cuánto flecta el piso depende de la tercera potencia de su altura.",
	"Look from below or through a hatch; sawn sizes are smaller than their names: a 2×10 is 1 1/2 in by 9 1/4 in. Choose other for any other size.":
		"Mire desde abajo o por una trampilla; los tamaños aserrados son menores que sus nombres: una 2×10 mide 1 1/2 in por 9 1/4 in. Elija otra para cualquier otro tamaño.",
	"Species and grade of the joists.": "Especie y clase de las viguetas.",
	"What wood are the joists, and which grade?": "¿De qué madera son las viguetas, y de qué clase?",
	"Stiffness differs by a third between species, and tables changed with editions.":
		"La rigidez difiere en un tercio entre especies, y las tablas cambiaron con las ediciones.",
	"Read the stamp on a joist. Where there is none, take the weaker one and ask an engineer.":
		"Lea el sello de una vigueta. Donde no lo haya, tome la más débil y pregunte a un ingeniero.",
	"Joists from middle to middle.": "Viguetas de centro a centro.",
	"How far apart are the joists, from middle to middle?": "¿Qué separación tienen las viguetas, de centro a centro?",
	"Each joist carries its share of the floor, and the sheets bend between them.":
		"Cada vigueta carga su parte del piso, y los paneles flectan entre ellas.",
	"Follow the screw lines, or measure from below.": "Siga las líneas de tornillos, o mida desde abajo.",
	"Joists from support to support.": "Viguetas de apoyo a apoyo.",
	"How far do the joists span?": "¿Qué luz salvan las viguetas?",
	"The bend goes by the fourth power of the span: half a metre more is much more.":
		"La flecha depende de la cuarta potencia de la luz: medio metro más es mucho más.",
	"From the face of one wall or beam to the face of the next, along the joists.":
		"De la cara de una pared o viga a la cara de la siguiente, a lo largo de las viguetas.",
	"The joists run on over a middle support.": "Las viguetas continúan sobre un apoyo intermedio.",
	"Do the joists run on over a beam or wall in the middle?":
		"¿Continúan las viguetas sobre una viga o pared intermedia?",
	"A joist that runs on bends less under the same load. Left open, it is taken as ending at both supports.":
		"Una vigueta continua flecta menos bajo la misma carga. Si no se dice, se toma como terminada en ambos apoyos.",
	"Look from below: one piece over the beam, not two that lap there.":
		"Mire desde abajo: una sola pieza sobre la viga, no dos que se traslapan allí.",
	"Joists whole: no rot, no splits, no notches in the middle third.":
		"Viguetas enteras: sin pudrición, sin rajaduras, sin rebajes en el tercio central.",
	"Are the joists whole: no rot, no splits, no deep notches?":
		"¿Están enteras las viguetas: sin pudrición, sin rajaduras, sin rebajes profundos?",
	"No arithmetic holds for a joist that has been cut or that rots.":
		"Ningún cálculo vale para una vigueta que se cortó o que se pudre.",
	"Look from below with a lamp, push a screwdriver into the ends and under bathrooms.":
		"Mire desde abajo con una lámpara, hunda un destornillador en los extremos y debajo de los baños.",
	"Blocking or bridging stands between the joists.": "Hay travesaños o crucetas entre las viguetas.",
	"Is there blocking or bridging between the joists?": "¿Hay travesaños o crucetas entre las viguetas?",
	"It makes neighbours share a load, so that no joist bends alone beside a stiff one.":
		"Hacen que las vecinas compartan una carga, para que ninguna vigueta flecte sola junto a una rígida.",
	"Look from below: short pieces or crosses between joists, every 2.4 m (8 ft) or closer.":
		"Mire desde abajo: piezas cortas o cruces entre viguetas, cada 2.4 m (8 ft) o menos.",
	"Thickness of a joist.": "Espesor de una vigueta.",
	"How thick is a joist?": "¿Qué espesor tiene una vigueta?",
	"The bend goes by it.": "De ello depende la flecha.",
	"Measure the joist itself, not its name.": "Mida la vigueta misma, no su nombre.",
	"Depth of a joist.": "Altura de una vigueta.",
	"How deep is a joist?": "¿Qué altura tiene una vigueta?",
	"The bend goes by its third power.": "La flecha depende de su tercera potencia.",
	"Measure from the deck's underside to the joist's lower edge.":
		"Mida desde la cara inferior de la base hasta el borde inferior de la vigueta.",
	"Layers of sheets over the joists.": "Capas de paneles sobre las viguetas.",
	"How many layers of sheets lie over the joists?": "¿Cuántas capas de paneles hay sobre las viguetas?",
	"Two layers with staggered joints take the movement out of a joint.":
		"Dos capas con juntas alternadas quitan el movimiento de una junta.",
	"Look at a cut edge, a pipe or a register.": "Mire un borde cortado, un tubo o una rejilla de ventilación.",
	"Joints of one layer lie away from those of the other.": "Las juntas de una capa quedan lejos de las de la otra.",
	"Are the layers' joints staggered?": "¿Están alternadas las juntas de las capas?",
	"Where joints lie over each other the pour cracks along them.":
		"Donde las juntas quedan una sobre otra, el vertido se agrieta a lo largo de ellas.",
	"Compare the screw lines; where it can't be seen, answer don't know.":
		"Compare las líneas de tornillos; donde no se pueda ver, responda no sé.",
	"Every sheet edge lies on a joist, on blocking, or in tongue and groove.":
		"Cada borde de panel descansa en una vigueta, en un travesaño, o en machihembrado.",
	"Is every sheet edge held: on a joist, on blocking, or by tongue and groove?":
		"¿Está sujeto cada borde de panel: en una vigueta, en un travesaño, o por machihembrado?",
	"A free edge dips under a foot, and the pour cracks over it.":
		"Un borde libre se hunde bajo el pie, y el vertido se agrieta encima.",
	"Step on both sides of each joint and look for one that moves alone.":
		"Pise a ambos lados de cada junta y busque uno que se mueva solo.",
	"Gap between the sheets.": "Holgura entre los paneles.",
	"How wide are the gaps between the sheets?": "¿Qué ancho tienen las holguras entre los paneles?",
	"Sheets swell: without a gap they push each other up, and a wide one drinks the pour.":
		"Los paneles se hinchan: sin holgura se empujan hacia arriba, y una ancha se bebe el vertido.",
	"A coin or a drill bit as a gauge; a few joints, take the mean.":
		"Una moneda o una broca como calibre; en varias juntas, tome la media.",
	"Greatest step from sheet to sheet.": "Mayor escalón de panel a panel.",
	"How much does one sheet stand over the next?": "¿Cuánto sobresale un panel del siguiente?",
	"A lip is the pour's thinnest spot, and it says that an edge is not held.":
		"Un resalto es el punto más delgado del vertido, y dice que un borde no está sujeto.",
	"A short straightedge across the joints.": "Una regla recta corta a través de las juntas.",
	"Length of a sheet.": "Largo de un panel.",
	"How long is a sheet?": "¿Qué largo tiene un panel?",
	"It tells how many joints there are to close and how many screws to drive.":
		"Dice cuántas juntas hay que cerrar y cuántos tornillos hay que poner.",
	"Leave it open for 2.44 m by 1.22 m (8 ft by 4 ft).": "Déjelo abierto para 2.44 m por 1.22 m (8 ft por 4 ft).",
	"Width of a sheet.": "Ancho de un panel.",
	"How wide is a sheet?": "¿Qué ancho tiene un panel?",
	"What the sheets are fastened with.": "Con qué están fijados los paneles.",
	"What are the sheets fastened with?": "¿Con qué están fijados los paneles?",
	"Smooth nails and staples work loose; then the deck squeaks, and the pour cracks.":
		"Los clavos lisos y las grapas se aflojan; entonces la base rechina y el vertido se agrieta.",
	"Look at a few heads; pull one if in doubt.": "Mire algunas cabezas; saque una si tiene dudas.",
	"Spacing of the fasteners along sheet edges.": "Separación de las fijaciones a lo largo de los bordes de panel.",
	"How far apart are the fasteners along the sheets' edges?":
		"¿Qué separación tienen las fijaciones a lo largo de los bordes de los paneles?",
	"Edges lift first.": "Los bordes se levantan primero.",
	"Measure along one joint.": "Mida a lo largo de una junta.",
	"Spacing of the fasteners between the edges.": "Separación de las fijaciones entre los bordes.",
	"How far apart are the fasteners on the joists between?":
		"¿Qué separación tienen las fijaciones en las viguetas intermedias?",
	"A sheet that is held at its edges alone drums and bends.":
		"Un panel sujeto solo por los bordes suena hueco y flecta.",
	"Measure along one joist in the middle of a sheet.": "Mida a lo largo de una vigueta en el centro de un panel.",
	"The sheets are of a grade made for damp.": "Los paneles son de una clase hecha para ambientes húmedos.",
	"Are the sheets of a grade made for damp?": "¿Son los paneles de una clase hecha para ambientes húmedos?",
	"Primer and pour bring water, and wet rooms go on doing so; other grades swell at their edges.":
		"Imprimación y vertido traen agua, y las habitaciones mojadas siguen trayéndola; otras clases se hinchan por los bordes.",
	"Read the stamp on a sheet; where there is none, answer don't know.":
		"Lea el sello de un panel; donde no lo haya, responda no sé.",
	"Floor area less keep-outs.": "Área del piso menos las zonas excluidas.",
	"Length of the walls and of the keep-outs' edges.": "Longitud de las paredes y de los bordes de las zonas excluidas.",
	"Greatest straight distance across the room.": "Mayor distancia recta a través de la habitación.",
	"Readings in use.": "Lecturas en uso.",
	"Highest reading less lowest.": "Lectura más alta menos la más baja.",
	"Readings to the area.": "Lecturas por área.",
	"Slope of the finish plane.": "Pendiente del plano de acabado.",
	"Fall of the finish plane across the room.": "Caída del plano de acabado a través de la habitación.",
	"Volume between deck and finish plane.": "Volumen entre la base y el plano de acabado.",
	"Area where the deck stands above the finish plane.": "Área donde la base queda por encima del plano de acabado.",
	"Doors marked as the way out.": "Puertas marcadas como salida.",
	"Area of this deck.": "Área de esta base.",
	"The deck is plywood, OSB, chipboard or boards.": "La base es contrachapado, OSB, aglomerado o tablas.",
	"The deck is concrete, screed or gypsum.": "La base es hormigón, contrapiso o yeso.",
	"Pour at its thinnest over this deck.": "El vertido en lo más delgado sobre esta base.",
	"Pour at its deepest over this deck.": "El vertido en lo más profundo sobre esta base.",
	"Mean depth over this deck.": "Profundidad media sobre esta base.",
	"Finished floor less the floor beyond the door; below zero it is lower.":
		"Piso terminado menos el piso del otro lado de la puerta; por debajo de cero es más bajo.",
	"Depth of the pour at this door.": "Profundidad del vertido en esta puerta.",
	"Finished floor over the bare deck at this door.": "Piso terminado sobre la base desnuda en esta puerta.",
	"The way out on pour day.": "La salida el día del vertido.",
	"Highest less lowest riser of the stair once the floor is in.":
		"Contrahuella más alta menos la más baja de la escalera con el piso ya puesto.",
	"Its top over the finished floor; below zero it is under.":
		"Su parte superior sobre el piso terminado; por debajo de cero está debajo.",
	"What comes through the floor.": "Lo que atraviesa el piso.",
	"Area of all rooms.": "Área de todas las habitaciones.",
	"Volume of all pours, before waste.": "Volumen de todos los vertidos, antes de pérdidas.",
	"Bags of leveller to buy.": "Sacos de autonivelante por comprar.",
	"Leveller powder to carry.": "Polvo de autonivelante por llevar.",
	"Water to mix it.": "Agua para mezclarlo.",
	"What powder and water come to when mixed.": "A lo que llegan polvo y agua al mezclarse.",
};
