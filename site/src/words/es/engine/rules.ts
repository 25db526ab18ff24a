// What the shipped rules say: words, sentences, remedies, cautions.
import type { Table } from "../../said";

export const rules: Table = {
	"The thinnest the pour may be over this deck.": "Lo más delgado que puede quedar el vertido sobre esta base.",
	"The deepest that one lift may be.": "Lo más profundo que puede ser una capa.",
	"The deepest that one lift may be when aggregate is mixed in.":
		"Lo más profundo que puede ser una capa cuando se mezcla árido.",
	"The pour is {depth.least} at its thinnest over {deck.kind}; over wood it needs {least_depth}.":
		"El vertido mide {depth.least} en lo más delgado sobre {deck.kind}; sobre madera necesita {least_depth}.",
	"Raise the finish plane by {least_depth - depth.least}, or take down the high spot.":
		"Suba el plano de acabado {least_depth - depth.least}, o rebaje el punto alto.",
	"The pour is {depth.least} at its thinnest over {deck.kind}; it needs {least_depth}.":
		"El vertido mide {depth.least} en lo más delgado sobre {deck.kind}; necesita {least_depth}.",
	"Raise the finish plane by {least_depth - depth.least}, or grind the high spot. Grinding makes silica dust: water or extraction, and a mask.":
		"Suba el plano de acabado {least_depth - depth.least}, o desbaste el punto alto. Desbastar produce polvo de sílice: agua o aspiración, y mascarilla.",
	"The pour is {depth.greatest} at its deepest; one lift may be {greatest_lift}.":
		"El vertido mide {depth.greatest} en lo más profundo; una capa puede medir {greatest_lift}.",
	"Pour in lifts with primer between, fill the low ground with patch first, or use aggregate where the sheet allows it.":
		"Vierta en capas con imprimación entre ellas, rellene antes la zona baja con masilla de reparación, o use árido donde la ficha lo permita.",
	"{pour.dry_area} of the deck stands above the finish plane and stays bare.":
		"{pour.dry_area} de la base quedan por encima del plano de acabado y sin cubrir.",
	"Raise the finish plane, or take the high ground down.": "Suba el plano de acabado, o rebaje el terreno alto.",
	"The pour is {depth.mean} deep on average: that is a screed's work.":
		"El vertido mide {depth.mean} de profundidad en promedio: eso es trabajo para un contrapiso.",
	"Compare the cost with a screed or packed-up boards, and check what the floor may carry.":
		"Compare el costo con un contrapiso o con tablas calzadas, y compruebe lo que puede cargar el piso.",
	"Wet mix weighs about 2 kg a millimetre on a square metre. Ask an engineer before loading an old deck.":
		"La mezcla fresca pesa unos 2 kg por milímetro en un metro cuadrado. Pregunte a un ingeniero antes de cargar una base vieja.",
	"Powder in one bag.": "Polvo en un saco.",
	"What one bag, mixed, fills.": "Lo que llena un saco, ya mezclado.",
	"Least water for one bag.": "Agua mínima para un saco.",
	"Most water for one bag.": "Agua máxima para un saco.",
	"Water measured out for one bag: the middle of what the bag allows.":
		"Agua que se mide para un saco: el punto medio de lo que permite el saco.",
	"What stays in buckets and on tools, as a share of the pour.":
		"Lo que se queda en cubetas y herramientas, como parte del vertido.",
	"Bags are bought in steps of this many.": "Los sacos se compran de a tantos.",
	"The sheet's least water is {water_least} and its most is {water_most}.":
		"El agua mínima de la ficha es {water_least} y la máxima es {water_most}.",
	"Read the two off the bag again; the least stands first.": "Lea otra vez las dos en el saco; la mínima va primero.",
	"The sheet asks for {bag_water / bag_mass} of water; levelling powders usually take 0.12 L/kg to 0.30 L/kg.":
		"La ficha pide {bag_water / bag_mass} de agua; los polvos niveladores suelen llevar de 0.12 L/kg a 0.30 L/kg.",
	"Check the bag's mass and its water on the sheet: one of the two may be for another bag size.":
		"Compruebe en la ficha la masa del saco y su agua: una de las dos puede ser de otro tamaño de saco.",
	"A bag of {bag_mass} is said to fill {bag_yield}, which is {bag_yield / bag_mass}; 0.40 L/kg to 0.80 L/kg is usual.":
		"Se dice que un saco de {bag_mass} llena {bag_yield}, es decir {bag_yield / bag_mass}; lo usual es de 0.40 L/kg a 0.80 L/kg.",
	"Check the yield and the bag's mass on the sheet: the bag count rests on them.":
		"Compruebe en la ficha el rendimiento y la masa del saco: la cuenta de sacos depende de ellos.",
	"The sheet does not allow this leveller over wood.": "La ficha no permite este autonivelante sobre madera.",
	"Choose a leveller whose bag names wood decks, or lay a board that it may go on.":
		"Elija un autonivelante cuyo saco nombre las bases de madera, o ponga un panel sobre el que pueda ir.",
	"{job.bags} bags for {crew.people} pair of hands: the wet edge will not wait.":
		"{job.bags} sacos para {crew.people} par de manos: el borde fresco no espera.",
	"Find a second person, so that one mixes while the other pours.":
		"Busque a una segunda persona, para que una mezcle mientras la otra vierte.",
	"With {crew.buckets} bucket the floor waits while the next batch is mixed.":
		"Con {crew.buckets} cubeta el piso espera mientras se mezcla la próxima amasada.",
	"Have two buckets or more, so that one is mixed while the other is poured.":
		"Tenga dos cubetas o más, para que una se mezcle mientras la otra se vierte.",
	"The primer goes on undiluted over this deck.": "La imprimación va sin diluir sobre esta base.",
	"Parts of primer to one part of water; where it goes on undiluted no water is added and this is not used.":
		"Partes de imprimación por una parte de agua; donde va sin diluir no se agrega agua y esto no se usa.",
	"Coats of primer on this deck.": "Manos de imprimación en esta base.",
	"Area that a measure of the mixed primer covers, one coat.":
		"Área que cubre una medida de la imprimación mezclada, una mano.",
	"Mixed primer for this deck, all coats.": "Imprimación mezclada para esta base, todas las manos.",
	"Primer out of the tin for this deck.": "Imprimación sacada de la lata para esta base.",
	"Water to mix into the primer for this deck.": "Agua que se mezcla con la imprimación para esta base.",
	"Least drying of the primer before the pour.": "Secado mínimo de la imprimación antes del vertido.",
	"Latest pour after priming; later the deck is primed again.":
		"Vertido a más tardar después de imprimar; más tarde la base se imprima de nuevo.",
	"The primer must dry {primer_dry_least} and the pour must come within {primer_dry_most}: that leaves no time to pour.":
		"La imprimación debe secar {primer_dry_least} y el vertido debe llegar antes de {primer_dry_most}: no queda tiempo para verter.",
	"Read the two times off the tin again.": "Lea otra vez los dos tiempos en la lata.",
	"The deck is {deck.kind}, which drinks nothing, yet its absorbency is given as {deck.absorbency}.":
		"La base es {deck.kind}, que no absorbe nada, y sin embargo su absorción se da como {deck.absorbency}.",
	"Test again with a drop of water; a dense deck takes a primer made for it, usually undiluted.":
		"Pruebe otra vez con una gota de agua; una base densa lleva una imprimación hecha para ella, normalmente sin diluir.",
	"Parts of patch powder to one part of water, by volume.":
		"Partes de polvo de reparación por una parte de agua, en volumen.",
	"How long the patch cures before primer.": "Cuánto fragua la masilla antes de la imprimación.",
	"Gaps and holes in the {deck.kind} are still open.":
		"Todavía hay rendijas y huecos abiertos en la base ({deck.kind}).",
	"Fill joints and holes with patch, close pipes and edges with foam or sealant, and let it cure {patch_cure} before primer.":
		"Rellene juntas y huecos con masilla de reparación, cierre tubos y bordes con espuma o sellador, y déjelo fraguar {patch_cure} antes de imprimar.",
	"The thinnest wood deck to pour on.": "La base de madera más delgada sobre la que se vierte.",
	"The {deck.kind} is loose or hollow somewhere.": "La base ({deck.kind}) está suelta o hueca en alguna parte.",
	"Take out or fix what is loose; a pour holds nothing together.":
		"Quite o fije lo que esté suelto; un vertido no sujeta nada.",
	"A deck that gives under a foot may be rotten: have it looked at before you work on it.":
		"Una base que cede bajo el pie puede estar podrida: hágala revisar antes de trabajar sobre ella.",
	"The {deck.kind} is not clean.": "La base ({deck.kind}) no está limpia.",
	"Take off dust, wax, paint, oil and loose adhesive down to the bare deck.":
		"Quite polvo, cera, pintura, aceite y adhesivo suelto hasta la base desnuda.",
	"Old adhesive, tile and paint may hold asbestos or lead: have them tested before you sand or grind. Never dry sweep.":
		"Los adhesivos, baldosas y pinturas viejos pueden contener asbesto o plomo: hágalos analizar antes de lijar o desbastar. Nunca barra en seco.",
	"The {deck.kind} is not screwed to every joist.": "La base ({deck.kind}) no está atornillada a cada vigueta.",
	"Screw it down to every joist, heads below the surface.":
		"Atorníllela a cada vigueta, con las cabezas bajo la superficie.",
	"Know where pipes and cables run before you drive a screw.":
		"Sepa por dónde van tubos y cables antes de poner un tornillo.",
	"The {deck.kind} is {deck.thickness} thick; it needs {least_deck}.":
		"La base ({deck.kind}) tiene {deck.thickness} de espesor; necesita {least_deck}.",
	"Screw another layer on, joints staggered, and measure again.":
		"Atornille otra capa encima, con juntas alternadas, y mida de nuevo.",
	"Boards shrink and move one by one; a pour on them cracks along their joints.":
		"Las tablas se contraen y se mueven una por una; un vertido sobre ellas se agrieta por sus juntas.",
	"Screw a sheet deck over the boards, or lay reinforcement that the sheet on the bag names.":
		"Atornille una base de paneles sobre las tablas, o ponga el refuerzo que nombre la ficha del saco.",
	"The wood holds {deck.moisture} of moisture; 14 % is the most for a pour.":
		"La madera contiene {deck.moisture} de humedad; 14 % es el máximo para un vertido.",
	"Find the leak or let it dry, and measure again.": "Busque la fuga o deje que seque, y mida de nuevo.",
	"The slab holds {slab.humidity} relative humidity; {slab_humidity_most} is the most, the barrier counted where one is planned.":
		"La losa tiene {slab.humidity} de humedad relativa; {slab_humidity_most} es el máximo, contando la barrera donde se ha previsto.",
	"Let it dry and measure again, or use a barrier whose sheet names this humidity.":
		"Deje que seque y mida de nuevo, o use una barrera cuya ficha nombre esta humedad.",
	"The slab is {slab.age} old; most levellers want 28 d.":
		"La losa tiene {slab.age}; la mayoría de los autonivelantes piden 28 d.",
	"Wait, or ask for a leveller whose sheet allows young concrete.":
		"Espere, o pida un autonivelante cuya ficha permita hormigón joven.",
	"Live load that the floor is reckoned with.": "Carga viva con la que se calcula el piso.",
	"What the floor itself weighs, before pour and finish.": "Lo que pesa el piso mismo, antes del vertido y el acabado.",
	"Density of the set pour.": "Densidad del vertido fraguado.",
	"Density of the finish with what it is laid in.": "Densidad del acabado con aquello en que se coloca.",
	"Span over the most that the floor may bend under live load, by finish.":
		"Luz dividida por lo máximo que puede flectar el piso bajo carga viva, según el acabado.",
	"Span over the most that the floor may bend under live and dead load together.":
		"Luz dividida por lo máximo que puede flectar el piso bajo carga viva y muerta juntas.",
	"The farthest that joists may stand apart under a deck of this thickness.":
		"Lo más separadas que pueden estar las viguetas bajo una base de este espesor.",
	"The farthest that fasteners may stand apart along sheet edges.":
		"Lo más separadas que pueden estar las fijaciones a lo largo de los bordes de panel.",
	"The farthest that fasteners may stand apart between the edges.":
		"Lo más separadas que pueden estar las fijaciones entre los bordes.",
	"Patch for joints that stays on the tools, as a share.":
		"Masilla para juntas que se queda en las herramientas, como parte.",
	"Sheet joints to close.": "Juntas de panel por cerrar.",
	"Fasteners that the sheets should have.": "Fijaciones que deberían tener los paneles.",
	"Patch powder to close the sheet joints.": "Polvo de reparación para cerrar las juntas de panel.",
	"Water for that patch.": "Agua para esa masilla.",
	"What the pour adds to the floor's load.": "Lo que el vertido suma a la carga del piso.",
	"Longest span of these joists at the stiffness that the finish needs.":
		"Mayor luz de estas viguetas con la rigidez que necesita el acabado.",
	"Under live load the joists bend by {joist.deflection_live}, which is L/{round(joist.ratio)}; {finish.kind} asks for L/{stiffness_needed}.":
		"Bajo carga viva las viguetas flectan {joist.deflection_live}, es decir L/{round(joist.ratio)}; {finish.kind} pide L/{stiffness_needed}.",
	"Shorten the span to {joist.span_allowed} with a beam or a wall, put joists between, or choose a finish that bends along. Have an engineer draw it.":
		"Acorte la luz a {joist.span_allowed} con una viga o un muro, ponga viguetas intermedias, o elija un acabado que flecte con el piso. Que un ingeniero lo dibuje.",
	"Never cut, notch or drill a joist to make it fit.": "Nunca corte, rebaje ni taladre una vigueta para que encaje.",
	"Under all load, pour and finish too, the joists bend by {joist.deflection_total}, which is L/{round(joist.ratio_total)}; L/{stiffness_all_load} is asked for.":
		"Bajo toda la carga, también vertido y acabado, las viguetas flectan {joist.deflection_total}, es decir L/{round(joist.ratio_total)}; se pide L/{stiffness_all_load}.",
	"Make the pour shallower or lighter, or stiffen the floor. Wood goes on bending for years under a load that stays.":
		"Haga el vertido menos profundo o más ligero, o dé rigidez al piso. La madera sigue flectando durante años bajo una carga que se queda.",
	"Under all load the joists are stressed to {joist.bending}; their grade allows {joist.bending_allowed}.":
		"Bajo toda la carga las viguetas trabajan a {joist.bending}; su clase permite {joist.bending_allowed}.",
	"Don't load this floor further: have an engineer look at it first.":
		"No cargue más este piso: que antes lo vea un ingeniero.",
	"An overloaded floor gives no warning before it breaks.": "Un piso sobrecargado no avisa antes de romperse.",
	"Floor, pour and finish weigh {deck.dead_load} together; span tables stop at 20 psf (0.96 kPa).":
		"Piso, vertido y acabado pesan juntos {deck.dead_load}; las tablas de luces llegan hasta 20 psf (0.96 kPa).",
	"Pour less deep, or ask an engineer whether the floor may carry it.":
		"Vierta menos profundo, o pregunte a un ingeniero si el piso puede cargarlo.",
	"Joists are rotten, split or notched.": "Hay viguetas podridas, rajadas o con rebajes.",
	"Have them mended or doubled before anything is put on this floor.":
		"Hágalas reparar o doblar antes de poner nada sobre este piso.",
	"Don't work under or on a floor that may give way.": "No trabaje debajo ni encima de un piso que puede ceder.",
	"Joists of {joist.span} stand without blocking: each one bends alone.":
		"Viguetas de {joist.span} sin travesaños: cada una flecta sola.",
	"Set solid blocking or bridging every 8 ft (2.4 m) or closer.":
		"Ponga travesaños macizos o crucetas cada 8 ft (2.4 m) o menos.",
	"The joists stand {joist.spacing} apart; a deck of {deck.thickness} goes to {joist_spacing_most}.":
		"Las viguetas están cada {joist.spacing}; una base de {deck.thickness} llega hasta {joist_spacing_most}.",
	"Screw another layer on, or set joists or blocking between.":
		"Atornille otra capa encima, o ponga viguetas o travesaños en medio.",
	"Stone wants two layers of sheets below it; there is {deck.layers}.":
		"La piedra pide dos capas de paneles debajo; hay {deck.layers}.",
	"Screw a second layer on, joints staggered.": "Atornille una segunda capa, con juntas alternadas.",
	"Joints of the two layers lie over each other.": "Las juntas de las dos capas quedan una sobre otra.",
	"Turn or shift the upper layer so that no joint lies within 150 mm (6 in) of one below.":
		"Gire o corra la capa superior para que ninguna junta quede a menos de 150 mm (6 in) de una de abajo.",
	"Some sheet edges hang free between joists.": "Algunos bordes de panel quedan al aire entre viguetas.",
	"Set blocking below each free edge and screw both sheets to it.":
		"Ponga travesaños bajo cada borde libre y atornille ambos paneles a ellos.",
	"The sheets touch ({deck.gap} between them): when they take up water they push each other up.":
		"Los paneles se tocan ({deck.gap} entre ellos): al tomar agua se empujan hacia arriba.",
	"Run a saw through the tight joints, blade set to the sheet's thickness, then close them with patch or tape.":
		"Pase una sierra por las juntas cerradas, con el disco ajustado al espesor del panel, y luego ciérrelas con masilla o cinta.",
	"Know what runs below before you saw.": "Sepa qué pasa por debajo antes de cortar.",
	"One sheet stands {deck.lip} over the next; 2 mm is the most.":
		"Un panel sobresale {deck.lip} del siguiente; 2 mm es el máximo.",
	"Screw the lip down, block the edge below it, and plane what is left.":
		"Atornille el resalto, ponga un travesaño bajo el borde y cepille lo que quede.",
	"The sheets are held by {deck.fastener}, which work loose.":
		"Los paneles están sujetos con {deck.fastener}, que se aflojan.",
	"Drive screws beside them, heads below the surface.": "Ponga tornillos al lado, con las cabezas bajo la superficie.",
	"Edges are fastened every {deck.fastener_edge}; {fastener_edge_most} is the most.":
		"Los bordes están fijados cada {deck.fastener_edge}; {fastener_edge_most} es el máximo.",
	"Drive more screws along the edges; this deck takes {deck.fasteners} in all.":
		"Ponga más tornillos a lo largo de los bordes; esta base lleva {deck.fasteners} en total.",
	"Between the edges the sheets are fastened every {deck.fastener_field}; {fastener_field_most} is the most.":
		"Entre los bordes los paneles están fijados cada {deck.fastener_field}; {fastener_field_most} es el máximo.",
	"Drive more screws along every joist; this deck takes {deck.fasteners} in all.":
		"Ponga más tornillos a lo largo de cada vigueta; esta base lleva {deck.fasteners} en total.",
	"The {deck.kind} is not of a grade made for damp, and the room gets wet.":
		"La base ({deck.kind}) no es de una clase hecha para ambientes húmedos, y la habitación se moja.",
	"Lay sheets of a grade made for damp, or waterproof over the pour and keep every edge dry while you work.":
		"Ponga paneles de una clase hecha para ambientes húmedos, o impermeabilice sobre el vertido y mantenga secos todos los bordes mientras trabaja.",
	"The wood holds {deck.moisture} of moisture only: it will swell when primer and pour bring water.":
		"La madera contiene solo {deck.moisture} de humedad: se hinchará cuando imprimación y vertido traigan agua.",
	"Stop forced drying, let the room come to the humidity that it has in use, and measure again.":
		"Deje el secado forzado, espere a que la habitación llegue a la humedad que tiene en uso y mida de nuevo.",
	"Least strength that the surface must show when pulled.":
		"Resistencia mínima que debe mostrar la superficie al arrancarla.",
	"The widest crack that primer and pour may close by themselves.":
		"La grieta más ancha que imprimación y vertido pueden cerrar por sí solos.",
	"The thinnest screed to pour on, by how it lies.":
		"El contrapiso más delgado sobre el que se vierte, según cómo está colocado.",
	"The surface came off at {deck.pull_off}; it should hold {pull_off_least}.":
		"La superficie se desprendió a {deck.pull_off}; debería aguantar {pull_off_least}.",
	"Take the weak layer off by grinding or shot, vacuum, and pull again.":
		"Quite la capa débil desbastando o granallando, aspire y arranque de nuevo.",
	"Grinding makes silica dust: draw it off at the tool and wear what the task asks for.":
		"Desbastar produce polvo de sílice: aspírelo en la herramienta y use la protección que pide la tarea.",
	"A drop stood for {deck.drop_time}, yet the deck is said to be {deck.absorbency}.":
		"Una gota aguantó {deck.drop_time}, pero se dice que la base es {deck.absorbency}.",
	"Up to a minute is porous, ten minutes or more is dense. Test again on three clean spots, and let the wettest corner decide.":
		"Hasta un minuto es porosa, diez minutos o más es densa. Pruebe otra vez en tres puntos limpios y deje que decida la esquina más mojada.",
	"Oil, wax, sealer or curing compound sits in the surface of the {deck.kind}.":
		"Hay aceite, cera, sellador o curador en la superficie de la base ({deck.kind}).",
	"Take off the contaminated layer by machine; washing only spreads it. Then try a drop of water: it must soak in.":
		"Quite con máquina la capa contaminada; lavarla solo la extiende. Luego pruebe una gota de agua: debe absorberse.",
	"Never dissolve adhesive with solvent: it goes down into the pores, and its vapour burns.":
		"Nunca disuelva adhesivo con solvente: se mete en los poros y su vapor arde.",
	"A soft or dusty skin lies on the {deck.kind}.": "Hay una piel blanda o polvorienta sobre la base ({deck.kind}).",
	"Grind, sand or shot-blast it off down to sound ground and vacuum.":
		"Desbástela, líjela o granállela hasta terreno firme y aspire.",
	"A crack is {deck.crack_width} wide; more than {crack_width_most} shows through.":
		"Una grieta tiene {deck.crack_width} de ancho; más de {crack_width_most} se marca a través del vertido.",
	"Open it, vacuum it, and close it with resin, pins across it where it is long; scatter sand on the wet resin.":
		"Ábrala, aspírela y ciérrela con resina, con grapas a través donde sea larga; espolvoree arena sobre la resina fresca.",
	"A crack in the {deck.kind} moves.": "Una grieta de la base ({deck.kind}) se mueve.",
	"Find out why. Make it a movement joint through pour and finish, or have the slab mended; no pour bridges it.":
		"Averigüe por qué. Hágala junta de movimiento a través del vertido y el acabado, o haga reparar la losa; ningún vertido la puentea.",
	"A crack that grows may be the building's: ask an engineer.":
		"Una grieta que crece puede ser del edificio: pregunte a un ingeniero.",
	"Movement joints cross this deck and are poured over.":
		"Hay juntas de movimiento que cruzan esta base y se vierte sobre ellas.",
	"Set a strip or profile over each joint, as high as the finish, before the pour.":
		"Ponga una tira o un perfil sobre cada junta, tan alto como el acabado, antes del vertido.",
	"The wetted surface shows pH {deck.ph}; 7 to 10 is asked for.":
		"La superficie mojada muestra pH {deck.ph}; se pide de 7 a 10.",
	"Rinse and vacuum, let it dry a day and test again; above 10 moisture is on its way up, below 7 something was spilled.":
		"Enjuague y aspire, deje secar un día y pruebe de nuevo; por encima de 10 viene subiendo humedad, por debajo de 7 se derramó algo.",
	"Wet alkali burns skin and eyes.": "El álcali mojado quema la piel y los ojos.",
	"The {screed.laid} screed is {deck.thickness} thick; it needs {screed_least}.":
		"El contrapiso ({screed.laid}) tiene {deck.thickness} de espesor; necesita {screed_least}.",
	"Take it up, or ask who laid it: a thin screed cracks under a pour that shrinks on it.":
		"Levántelo, o pregunte a quien lo colocó: un contrapiso delgado se agrieta bajo un vertido que se contrae sobre él.",
	"The gypsum still has its skin.": "El yeso todavía tiene su piel.",
	"Sand it, vacuum, and prime so that no cement mix touches bare gypsum.":
		"Líjelo, aspire y aplique imprimación de modo que ninguna mezcla de cemento toque el yeso desnudo.",
	"The gypsum holds {gypsum.moisture} of moisture; 0.5 % is the most, 0.3 % where it is heated.":
		"El yeso contiene {gypsum.moisture} de humedad; 0.5 % es el máximo, 0.3 % donde tiene calefacción.",
	"Let it dry with air moving and measure again.": "Deje que seque con aire en movimiento y mida de nuevo.",
	"Gypsum lies in a room that gets wet: it goes soft where water finds it.":
		"Hay yeso en una habitación que se moja: se ablanda donde lo alcanza el agua.",
	"Take the gypsum out, or waterproof over the pour with turned-up edges and sealed drains.":
		"Quite el yeso, o impermeabilice sobre el vertido con bordes levantados y desagües sellados.",
	"The {deck.kind} still has its glaze or polish.": "La base ({deck.kind}) todavía tiene su esmalte o pulido.",
	"Wash grease and wax off, grind the surface dull, vacuum, and use a primer made for dense decks.":
		"Lave la grasa y la cera, desbaste la superficie hasta dejarla mate, aspire, y use una imprimación hecha para bases densas.",
	"Old glaze may hold lead and old adhesive asbestos: have them tested before you grind.":
		"El esmalte viejo puede contener plomo y el adhesivo viejo asbesto: hágalos analizar antes de desbastar.",
	"{tile.hollow} of the tiles sound hollow; beyond 5 % the bed itself is letting go.":
		"El {tile.hollow} de las baldosas suena hueco; pasado el 5 % es la cama misma la que se suelta.",
	"Take the hollow ones out and fill with patch; where there are many, take all of them up.":
		"Quite las huecas y rellene con masilla; donde sean muchas, levántelas todas.",
	"Old adhesive may hold asbestos: have it tested before you break tiles out.":
		"El adhesivo viejo puede contener asbesto: hágalo analizar antes de romper baldosas.",
	"The old adhesive is {residue.kind}.": "El adhesivo viejo es {residue.kind}.",
	"Have it tested for asbestos, then have it taken off or sealed with a barrier whose sheet names it; a pour does not stay on it.":
		"Hágalo analizar por si contiene asbesto, y luego hágalo retirar o sellar con una barrera cuya ficha lo nombre; un vertido no se sostiene sobre él.",
	"Black adhesive of the last century may hold asbestos. Don't scrape, sand or heat it before the laboratory has answered.":
		"El adhesivo negro del siglo pasado puede contener asbesto. No lo raspe, lije ni caliente antes de que el laboratorio responda.",
	"Ridges of old adhesive still stand.": "Todavía hay crestas de adhesivo viejo.",
	"Wet-scrape them to a thin, firm stain.": "Ráspelas en húmedo hasta una mancha delgada y firme.",
	"Only after a test found no asbestos; wet, never dry.":
		"Solo después de que un análisis no haya encontrado asbesto; en húmedo, nunca en seco.",
	"The most humidity in the slab, with the barrier where one is planned.":
		"La mayor humedad en la losa, con la barrera donde se ha previsto.",
	"The most vapour that the slab may give off.": "El mayor vapor que puede despedir la losa.",
	"Moisture tests that this deck needs.": "Ensayos de humedad que necesita esta base.",
	"How deep a humidity probe sits.": "A qué profundidad va una sonda de humedad.",
	"From setting a probe to reading it.": "Desde colocar una sonda hasta leerla.",
	"How long the room must be as in use before a moisture test.":
		"Cuánto tiempo debe estar la habitación como en uso antes de un ensayo de humedad.",
	"How old a moisture reading may be when the pour starts.":
		"Qué tan vieja puede ser una lectura de humedad cuando empieza el vertido.",
	"Moisture barrier for this deck, all coats.": "Barrera de humedad para esta base, todas las manos.",
	"Nobody measured how wet the {deck.kind} is.": "Nadie midió qué tan mojada está la base ({deck.kind}).",
	"Set {moisture.tests_needed} probes where the map shows them, and read them after {probe_wait_least}.":
		"Ponga {moisture.tests_needed} sondas donde las muestra el mapa y léalas después de {probe_wait_least}.",
	"Probes read: {slab.probes}; {deck.area} needs {moisture.tests_needed}.":
		"Sondas leídas: {slab.probes}; {deck.area} necesitan {moisture.tests_needed}.",
	"Set more where the map shows them; the worst reading counts, never the mean.":
		"Ponga más donde las muestra el mapa; cuenta la peor lectura, nunca la media.",
	"Find cables, pipes and floor heating before you drill.":
		"Ubique cables, tubos y calefacción de piso antes de taladrar.",
	"The probes sit {slab.probe_depth} deep; in this slab they belong at {moisture.probe_depth}.":
		"Las sondas están a {slab.probe_depth} de profundidad; en esta losa van a {moisture.probe_depth}.",
	"Drill fresh holes to {moisture.probe_depth}; nearer the top a slab is always drier than it will be under the floor.":
		"Taladre agujeros nuevos a {moisture.probe_depth}; cerca de la cara superior una losa siempre está más seca de lo que estará bajo el piso.",
	"The probes were read after {slab.probe_wait}; they need {probe_wait_least}.":
		"Las sondas se leyeron después de {slab.probe_wait}; necesitan {probe_wait_least}.",
	"Read them again.": "Léalas de nuevo.",
	"The room had been as warm and dry as in use for {slab.conditioned} when it was measured; it should have been for {conditioned_least}.":
		"La habitación llevaba {slab.conditioned} tan cálida y seca como en uso cuando se midió; debían ser {conditioned_least}.",
	"Run heating or cooling as in use for two days and read again.":
		"Tenga la calefacción o el enfriamiento como en uso durante dos días y lea de nuevo.",
	"The instrument was checked {slab.probe_checked} before; 30 d is the most.":
		"El instrumento se comprobó {slab.probe_checked} antes; 30 d es el máximo.",
	"Check it over the salt, and read again if it was off.":
		"Compruébelo sobre la sal, y lea de nuevo si estaba desviado.",
	"The readings are {slab.reading_age} old; {reading_age_most} is the most.":
		"Las lecturas tienen {slab.reading_age}; {reading_age_most} es el máximo.",
	"Read the probes again.": "Lea las sondas de nuevo.",
	"The slab gives off {slab.emission}; {emission_most} is the most without a barrier.":
		"La losa despide {slab.emission}; {emission_most} es el máximo sin barrera.",
	"Let it dry and measure again, or use a barrier whose sheet names this emission.":
		"Deje que seque y mida de nuevo, o use una barrera cuya ficha nombre esta emisión.",
	"Dishes weighed: {slab.emission_tests}; {deck.area} needs {moisture.tests_needed}.":
		"Platillos pesados: {slab.emission_tests}; {deck.area} necesitan {moisture.tests_needed}.",
	"Set more where the map shows them.": "Ponga más donde los muestra el mapa.",
	"The dishes stood for {slab.emission_time}; 60 h to 72 h is asked for.":
		"Los platillos estuvieron {slab.emission_time}; se piden de 60 h a 72 h.",
	"Set fresh dishes and weigh them in time.": "Ponga platillos nuevos y péselos a tiempo.",
	"The plastic sheet was damp below: water is on its way up.":
		"La lámina de plástico estaba mojada por debajo: viene subiendo agua.",
	"Measure how much with probes, then let it dry or plan a barrier.":
		"Mida con sondas cuánto es, y deje que seque o prevea una barrera.",
	"Sheets taped down: {slab.sheet_tests}; {deck.area} needs {moisture.tests_needed}.":
		"Láminas pegadas: {slab.sheet_tests}; {deck.area} necesitan {moisture.tests_needed}.",
	"Tape more where the map shows them.": "Pegue más donde las muestra el mapa.",
	"The sheets lay for {slab.sheet_time}; 16 h is the least.":
		"Las láminas estuvieron {slab.sheet_time}; 16 h es el mínimo.",
	"Tape them down again overnight.": "Péguelas de nuevo durante la noche.",
	"A taped sheet shows that a slab is wet, not that it is dry: it has no number.":
		"Una lámina pegada muestra que una losa está mojada, no que esté seca: no da un número.",
	"Set probes before you lay a floor on it that lets no moisture out.":
		"Ponga sondas antes de colocar encima un piso que no deja salir la humedad.",
	"The slab lies on the ground with no membrane below and no barrier above.":
		"La losa está sobre el terreno sin membrana debajo y sin barrera encima.",
	"Plan a moisture barrier on top: {barrier_liquid} for this deck.":
		"Prevea una barrera de humedad encima: {barrier_liquid} para esta base.",
	"Least cover of the pour over cables or pipes.": "Recubrimiento mínimo del vertido sobre cables o tubos.",
	"Nobody knows where the heating lies.": "Nadie sabe por dónde va la calefacción.",
	"Find it with a thermal camera and mark it before anything is drilled, screwed or ground.":
		"Ubíquela con una cámara térmica y márquela antes de taladrar, atornillar o desbastar nada.",
	"A damaged cable under a wet pour is live. Leave it to a licensed electrician.":
		"Un cable dañado bajo un vertido fresco tiene corriente. Déjelo a un electricista con licencia.",
	"The heating has no test on record from before the pour.":
		"La calefacción no tiene un ensayo registrado de antes del vertido.",
	"Have cables measured, or pipes put under pressure and left so during the pour, and write the values down.":
		"Haga medir los cables, o poner los tubos a presión y dejarlos así durante el vertido, y anote los valores.",
	"The pour stands {heating.cover} over cables or pipes; it needs {heating_cover_least}.":
		"El vertido queda {heating.cover} sobre cables o tubos; necesita {heating_cover_least}.",
	"Raise the finish plane by {heating_cover_least - heating.cover}.":
		"Suba el plano de acabado {heating_cover_least - heating.cover}.",
	"The heating will have been off for {heating.off}; {heating_off} is the least.":
		"La calefacción llevará {heating.off} apagada; {heating_off} es el mínimo.",
	"Switch it off earlier and warm the room another way; leave it off for {heating_on} after the pour.":
		"Apáguela antes y caliente la habitación de otra manera; déjela apagada {heating_on} después del vertido.",
	"Floors laid after this year are taken to hold no asbestos.":
		"Los pisos colocados después de este año se toman como libres de asbesto.",
	"A floor of about {floor.year} is to be disturbed and no laboratory has looked at it.":
		"Se va a remover un piso de alrededor de {floor.year} y ningún laboratorio lo ha analizado.",
	"Touch nothing until samples of every layer are tested for asbestos and lead. What holds them is taken out by licensed people only.":
		"No toque nada hasta que se analicen muestras de cada capa por asbesto y plomo. Lo que los contiene lo retira solo gente con licencia.",
	"Asbestos fibres and lead dust harm for good, and children most. Once in the room they stay in the room.":
		"Las fibras de asbesto y el polvo de plomo dañan para siempre, y más a los niños. Una vez en la habitación, se quedan en la habitación.",
	"The fewest readings that say something about the floor.": "Las lecturas mínimas que dicen algo del piso.",
	"Readings for {room.area}: {survey.count}; {least_readings} make a fair survey.":
		"Lecturas para {room.area}: {survey.count}; {least_readings} son una medición aceptable.",
	"Take {least_readings - survey.count} more, first along the walls and where the floor looks low.":
		"Tome {least_readings - survey.count} más, primero junto a las paredes y donde el piso se ve bajo.",
	"No door is marked as the way out.": "Ninguna puerta está marcada como salida.",
	"Mark the door by which you leave; the pour ends there.":
		"Marque la puerta por la que usted sale; el vertido termina allí.",
	"Somebody lives or works below this floor.": "Alguien vive o trabaja debajo de este piso.",
	"Close every gap, pour water where you doubt it and look below, and tell the people there which day it is.":
		"Cierre cada rendija, eche agua donde tenga dudas y mire abajo, y avise a los de abajo qué día será.",
	"A heated floor is switched off before and after the pour, so the room must hold its own warmth; it has {air.temperature}.":
		"Un piso con calefacción se apaga antes y después del vertido, así que la habitación debe mantener su propio calor; tiene {air.temperature}.",
	"Switch the floor heating off two days before and a week after, and warm the room another way.":
		"Apague la calefacción de piso dos días antes y una semana después, y caliente la habitación de otra manera.",
	"Never drill, screw or grind into a heated floor unless you know where the cables or pipes lie.":
		"Nunca taladre, atornille ni desbaste un piso con calefacción sin saber dónde están los cables o tubos.",
	"Coldest deck and air to pour in.": "Base y aire más fríos en que se vierte.",
	"Warmest deck and air to pour in.": "Base y aire más calientes en que se vierte.",
	"The room will have {air.temperature}; the sheet wants {coldest} at least.":
		"La habitación tendrá {air.temperature}; la ficha pide {coldest} al menos.",
	"Warm the room the day before and keep it warm; no heater that blows on the floor.":
		"Caliente la habitación el día antes y manténgala caliente; ningún calefactor que sople sobre el piso.",
	"Heaters that burn fuel need fresh air from outside: carbon monoxide has no smell.":
		"Los calefactores que queman combustible necesitan aire fresco de afuera: el monóxido de carbono no huele.",
	"The room will have {air.temperature}; the sheet allows {warmest} at most.":
		"La habitación tendrá {air.temperature}; la ficha permite {warmest} como máximo.",
	"Pour early, shade the windows, keep bags and water cool.":
		"Vierta temprano, dé sombra a las ventanas, mantenga frescos los sacos y el agua.",
	"The deck has {deck.temperature}; the sheet wants {coldest} at least.":
		"La base tiene {deck.temperature}; la ficha pide {coldest} al menos.",
	"Warm the room for a day; a deck follows slowly.":
		"Caliente la habitación durante un día; una base la sigue despacio.",
	"The air moves at {air.speed}; it dries the skin before the rest.":
		"El aire se mueve a {air.speed}; seca la piel antes que el resto.",
	"Close windows and doors, turn fans off, hang a sheet in the doorway.":
		"Cierre ventanas y puertas, apague ventiladores, cuelgue una sábana en el vano.",
	"Nothing closes this door; the pour stands {door.pour_depth} deep there.":
		"Nada cierra esta puerta; allí el vertido mide {door.pour_depth} de profundidad.",
	"Set a dam in sealant across it, at least as high as the pour.":
		"Ponga un dique sobre sellador a través de ella, al menos tan alto como el vertido.",
	'The finished floor stands {abs(door.step)} {door.step < mm(0) ? "under" : "over"} the floor beyond.':
		'El piso terminado queda {abs(door.step)} {door.step < mm(0) ? "under" : "over"} del piso del otro lado.',
	"Up to 6.4 mm (1/4 in) may stand upright, up to 13 mm (1/2 in) with a bevel of 1 in 2; more needs a ramp.":
		"Hasta 6.4 mm (1/4 in) puede quedar vertical, hasta 13 mm (1/2 in) con un bisel de 1 en 2; más necesita una rampa.",
	"The floor rises {door.rise} at this door and the leaf has {door.leaf_gap}.":
		"El piso sube {door.rise} en esta puerta y la hoja tiene {door.leaf_gap}.",
	"Cut {door.rise - door.leaf_gap + mm(3)} off the leaf, or hang it higher.":
		"Corte {door.rise - door.leaf_gap + mm(3)} de la hoja, o cuélguela más arriba.",
	'The top of this {penetration.kind} stands {abs(penetration.proud)} {penetration.proud < mm(0) ? "under" : "over"} the finished floor.':
		'La parte superior de este paso ({penetration.kind}) queda {abs(penetration.proud)} {penetration.proud < mm(0) ? "under" : "over"} del piso terminado.',
	"Fit an extension or cut it back before the pour, and put a collar round it.":
		"Ponga una extensión o córtelo antes del vertido, y póngale un collarín alrededor.",
	"Thinnest perimeter strip.": "Tira perimetral más delgada.",
	"Fixings for the strip.": "Fijaciones para la tira.",
	"Greatest distance across a floor without a movement joint.":
		"Mayor distancia a través de un piso sin junta de movimiento.",
	"The pour would touch walls, posts or pipes.": "El vertido tocaría paredes, postes o tubos.",
	"Set {strip_length} of strip before the pour, with {strip_fixings} fixings, round posts and pipes too.":
		"Ponga {strip_length} de tira antes del vertido, con {strip_fixings} fijaciones, también alrededor de postes y tubos.",
	"The strip is {strip.thickness} thick; {strip_thickness_least} is the least.":
		"La tira tiene {strip.thickness} de espesor; {strip_thickness_least} es el mínimo.",
	"Take a thicker strip.": "Use una tira más gruesa.",
	"The strip is {strip.height} high and the pour up to {pour.greatest} deep.":
		"La tira mide {strip.height} de alto y el vertido llega a {pour.greatest} de profundidad.",
	"Take a higher strip; what stands over is cut off after the finish.":
		"Use una tira más alta; lo que sobresale se corta después del acabado.",
	"The strip is fixed every {strip.spacing}; {fixing_spacing} is the most.":
		"La tira está fijada cada {strip.spacing}; {fixing_spacing} es el máximo.",
	"Set {strip_fixings} fixings in all.": "Ponga {strip_fixings} fijaciones en total.",
	"Joints at walls, pipes or sheets are still open.": "Las juntas con paredes, tubos o paneles todavía están abiertas.",
	"Seal them with sealant or foam, let it cure, and pour a cup of water where you doubt it.":
		"Séllelas con sellador o espuma, déjelo fraguar, y eche una taza de agua donde tenga dudas.",
	"Foam and solvent sealant burn while they cure: air the room and put out flames.":
		"La espuma y el sellador con solvente arden mientras fraguan: ventile la habitación y apague las llamas.",
	"The floor is {room.longest} across; {field_longest} is the farthest without a movement joint.":
		"El piso mide {room.longest} de lado a lado; {field_longest} es lo máximo sin junta de movimiento.",
	"Plan a movement joint in pour and finish, best in line with a door or where the room narrows.":
		"Prevea una junta de movimiento en vertido y acabado, mejor en línea con una puerta o donde la habitación se estrecha.",
	"The dam is {door.dam_height} high and the pour stands {door.pour_depth} deep there.":
		"El dique mide {door.dam_height} de alto y el vertido allí {door.pour_depth} de profundidad.",
	"Make it {door.pour_depth + mm(5)} high at least.": "Hágalo de {door.pour_depth + mm(5)} de alto al menos.",
	"The pour would hold this {penetration.kind} fast.": "El vertido sujetaría este paso ({penetration.kind}).",
	"Wind strip round it, higher than the pour, and tape it.":
		"Envuélvalo con tira, más alta que el vertido, y póngale cinta.",
	"The drain is open to the pour.": "El desagüe está abierto al vertido.",
	"Set a test plug, tape the grate, and put a ring round it as high as the pour.":
		"Ponga un tapón de prueba, cubra la rejilla con cinta, y ponga un anillo alrededor tan alto como el vertido.",
	"Don't forget the plug afterwards; sewer gas comes up where a trap runs dry.":
		"No olvide el tapón después; el gas de alcantarilla sube donde un sifón se seca.",
	"The flange is not screwed to the structure.": "La brida no está atornillada a la estructura.",
	"Screw it to the structure or a firm base with fasteners that don't rust, before the pour.":
		"Atorníllela a la estructura o a una base firme con fijaciones que no se oxiden, antes del vertido.",
	"Drying of the primer on this deck, all coats, at the deck's temperature.":
		"Secado de la imprimación en esta base, todas las manos, a la temperatura de la base.",
	"Latest pour after the first coat on this deck.": "Vertido a más tardar después de la primera mano en esta base.",
	"Earliest pour after priming this room: its slowest deck is dry.":
		"Vertido lo más temprano después de imprimar esta habitación: su base más lenta está seca.",
	"Latest pour after priming this room: the primer of its first deck still holds.":
		"Vertido a más tardar después de imprimar esta habitación: la imprimación de su primera base todavía sirve.",
	"The primer's tin does not name {deck.kind}.": "La lata de la imprimación no nombra {deck.kind}.",
	"Take a primer whose tin names this deck; two decks in one room may need two primers.":
		"Use una imprimación cuya lata nombre esta base; dos bases en una habitación pueden necesitar dos imprimaciones.",
	"One deck's primer needs {prime.ready} to dry and another's holds for {prime.latest} only.":
		"La imprimación de una base necesita {prime.ready} para secar y la de otra sirve solo {prime.latest}.",
	"Prime the slow deck earlier than the others.": "Aplique la imprimación en la base lenta antes que en las demás.",
	"You pour {prime.wait} after priming; the slowest deck's primer takes {prime.ready}.":
		"Usted vierte {prime.wait} después de imprimar; la imprimación de la base más lenta tarda {prime.ready}.",
	"Prime earlier, or the slow deck first; a pour on wet primer lets go.":
		"Aplique antes la imprimación, o primero en la base lenta; un vertido sobre imprimación mojada se suelta.",
	"You pour {prime.wait} after priming; the primer holds for {prime.latest}.":
		"Usted vierte {prime.wait} después de imprimar; la imprimación sirve {prime.latest}.",
	"Prime later, or prime again.": "Aplique más tarde la imprimación, o aplíquela de nuevo.",
	"How far the deck must be above the dew point.": "Cuánto debe estar la base por encima del punto de rocío.",
	"From this loss of water on, shield the pour.": "Desde esta pérdida de agua, proteja el vertido.",
	"From this loss of water on, don't pour.": "Desde esta pérdida de agua, no vierta.",
	"The draught that the pour stands before it dries too fast.":
		"La corriente de aire que aguanta el vertido antes de secarse demasiado rápido.",
	"How humid the air may be before the deck comes too near the dew point.":
		"Qué tan húmedo puede ser el aire antes de que la base se acerque demasiado al punto de rocío.",
	"Coldest mixing water that keeps the mix warm enough.":
		"Agua de amasado más fría que mantiene la mezcla lo bastante caliente.",
	"Warmest mixing water that keeps the mix cool enough.":
		"Agua de amasado más caliente que mantiene la mezcla lo bastante fría.",
	"The deck is {dew.margin} above the dew point of {dew.point}; {dew_margin_least} is the least.":
		"La base está {dew.margin} por encima del punto de rocío de {dew.point}; {dew_margin_least} es el mínimo.",
	"Warm the deck by {dew_margin_least - dew.margin}, or dry the air below {dew.humidity_most}; water on the deck or the primer lets the pour go.":
		"Caliente la base {dew_margin_least - dew.margin}, o seque el aire por debajo de {dew.humidity_most}; el agua sobre la base o la imprimación hace que el vertido se suelte.",
	"A fresh pour would lose {evaporation.rate}; from {evaporation_most} on it cracks before it sets.":
		"Un vertido fresco perdería {evaporation.rate}; desde {evaporation_most} se agrieta antes de fraguar.",
	"Close windows and doors and hang screens until the air moves at {evaporation.wind_most} at most, or pour when it is cooler and more humid.":
		"Cierre ventanas y puertas y cuelgue pantallas hasta que el aire se mueva a {evaporation.wind_most} como máximo, o vierta cuando esté más fresco y más húmedo.",
	"A fresh pour would lose {evaporation.rate}; from {evaporation_caution} on shield it.":
		"Un vertido fresco perdería {evaporation.rate}; desde {evaporation_caution} protéjalo.",
	"Screens against the draught, shade, and no dehumidifier until it is hard; {evaporation.wind_most} of draught is the most that it stands.":
		"Pantallas contra la corriente de aire, sombra, y ningún deshumidificador hasta que endurezca; {evaporation.wind_most} de corriente es lo máximo que aguanta.",
	"The deck has {deck.temperature}; the sheet allows {warmest} at most.":
		"La base tiene {deck.temperature}; la ficha permite {warmest} como máximo.",
	"Shade it, switch floor heating off, pour early.": "Déle sombra, apague la calefacción de piso, vierta temprano.",
	"Deck and air are {abs(deck.temperature - air.temperature)} apart: the pour sets from one side.":
		"Base y aire difieren en {abs(deck.temperature - air.temperature)}: el vertido fragua desde un lado.",
	"Keep the room at one temperature for a day before and after.":
		"Mantenga la habitación a una misma temperatura un día antes y un día después.",
	"The air has {air.humidity} of humidity: primer hardly dries above 80 %.":
		"El aire tiene {air.humidity} de humedad: la imprimación apenas seca por encima de 80 %.",
	"Warm and air the room before priming, or run a dehumidifier until the pour starts.":
		"Caliente y ventile la habitación antes de imprimar, o use un deshumidificador hasta que empiece el vertido.",
	"The air has {air.humidity} of humidity only: the pour's skin dries before the rest.":
		"El aire tiene solo {air.humidity} de humedad: la piel del vertido se seca antes que el resto.",
	"Switch dehumidifiers and air conditioning off, hang wet cloths, keep the room shut.":
		"Apague deshumidificadores y aire acondicionado, cuelgue paños mojados, mantenga cerrada la habitación.",
	"The sun falls on the floor: that patch sets first, curls and cracks.":
		"El sol cae sobre el piso: esa zona fragua primero, se levanta y se agrieta.",
	"Cover windows and glass doors from outside, until a day after the pour.":
		"Tape por fuera ventanas y puertas de vidrio, hasta un día después del vertido.",
	"The room is warmed by burning fuel in it.": "La habitación se calienta quemando combustible en ella.",
	"Warm it with electric or flued heat; fumes spoil the pour's skin, and harm you first.":
		"Caliéntela con calor eléctrico o con salida de humos; los gases estropean la piel del vertido, y antes le hacen daño a usted.",
	"Carbon monoxide kills and has no smell. Never run a burner without a flue in a closed room.":
		"El monóxido de carbono mata y no huele. Nunca use un quemador sin salida de humos en una habitación cerrada.",
	"The mixing water has {water.temperature}: the powder that it meets first sets at once.":
		"El agua de amasado tiene {water.temperature}: fragua de golpe el polvo que encuentra primero.",
	"Use water below 35 °C; warm the bags rather than the water.":
		"Use agua a menos de 35 °C; caliente los sacos más bien que el agua.",
	"The mixing water is not fit to drink.": "El agua de amasado no es potable.",
	"Bring mains water in clean cans.": "Traiga agua de la red en bidones limpios.",
	"Bags lifted in a minute while mixing.": "Sacos levantados por minuto al mezclar.",
	"What a stack of bags stands on.": "Sobre qué se apoya una pila de sacos.",
	"What one person may lift like this.": "Lo que una persona puede levantar de esta manera.",
	"Walked with bags and back, by all together.": "Recorrido con sacos y de vuelta, entre todos.",
	"Bags that one stack may have on this floor; where it is none, only an engineer can allow a stack.":
		"Sacos que puede tener una pila sobre este piso; donde es ninguno, solo un ingeniero puede permitir una pila.",
	"Air that the vacuum must draw at this wheel.": "Aire que debe aspirar la aspiradora con este disco.",
	"A bag of {bag_mass} is lifted where {lift.limit} is the limit.":
		"Se levanta un saco de {bag_mass} donde {lift.limit} es el límite.",
	"Lift from a table at 750 mm, close to the body, or two to a bag; a bag can also be opened and scooped.":
		"Levante desde una mesa a 750 mm, cerca del cuerpo, o entre dos; un saco también se puede abrir y vaciar con pala.",
	"Backs go without warning. Nobody should lift alone what the lifting equation does not allow.":
		"Las espaldas fallan sin avisar. Nadie levanta solo lo que la ecuación no permite.",
	"The bag is {lift.index} times what may be lifted like this; above 3 many will be hurt.":
		"El saco es {lift.index} veces lo que se puede levantar así; por encima de 3 muchos saldrán lastimados.",
	"Change how it is lifted before the first bag.": "Cambie la manera de levantarlo antes del primer saco.",
	"Stop and lift another way: two people, a table, a trolley.":
		"Pare y levante de otra manera: dos personas, una mesa, un carrito.",
	"One person carries {carry.per_trip} bags at a time, {bag_mass * carry.per_trip} in all.":
		"Una persona lleva {carry.per_trip} sacos a la vez, {bag_mass * carry.per_trip} en total.",
	"One bag of up to 25 kg at a time, or a trolley.": "Un saco de hasta 25 kg a la vez, o un carrito.",
	"More than one bag at a time is how backs and stairs meet.":
		"Más de un saco a la vez es como se encuentran espaldas y escaleras.",
	"{carry.trips} trips come to {carry.walk} on foot before the first bucket.":
		"{carry.trips} viajes suman {carry.walk} a pie antes de la primera cubeta.",
	"Take a trolley, bring the bags the day before, or mix nearer to the vehicle.":
		"Use un carrito, traiga los sacos el día antes, o mezcle más cerca del vehículo.",
	"A stack puts {stack.load} on the floor under it; {live_load}, spread evenly, is what the floor is meant for.":
		"Una pila carga {stack.load} sobre el piso; {live_load} repartidos es para lo que está hecho el piso.",
	"Spread the bags along walls and over beams, one or two high, and bring only what the next hour needs.":
		"Reparta los sacos a lo largo de paredes y sobre vigas, de uno o dos de alto, y traiga solo lo que se necesita en la próxima hora.",
	"A pallet of powder on a home's floor can go through it.": "Una tarima de polvo puede hundir el piso de una casa.",
	"The vacuum draws {dust.airflow}; a wheel of {dust.wheel} needs {dust.airflow_needed}.":
		"La aspiradora aspira {dust.airflow}; un disco de {dust.wheel} necesita {dust.airflow_needed}.",
	"Take a stronger dust collector or a smaller wheel.": "Use un colector de polvo más potente o un disco más pequeño.",
	"Silica dust scars lungs for good, and what can't be seen harms most.":
		"El polvo de sílice deja cicatrices en los pulmones para siempre, y lo que no se ve es lo que más daña.",
	"The vacuum has no HEPA filter.": "La aspiradora no tiene filtro HEPA.",
	"Use one that holds back 99.97 % at 0.3 µm (class H), and never sweep dry.":
		"Use una que retenga 99.97 % a 0.3 µm (clase H), y nunca barra en seco.",
	"Silica dust scars lungs for good.": "El polvo de sílice deja cicatrices en los pulmones para siempre.",
	"A wet grinder is used indoors; the regulation allows that outdoors only.":
		"Se usa una desbastadora húmeda en interior; la norma la permite solo en exterior.",
	"Use a shroud and a dust collector indoors.": "Use una campana y un colector de polvo en interior.",
	"Water and a grinder's cable: a residual-current device on every tool.":
		"Agua y el cable de una desbastadora: un interruptor diferencial en cada herramienta.",
	"The respirator protects by a factor of {respirator.factor}; {dust.hours} of this task needs {respirator.needed}.":
		"El respirador protege con un factor de {respirator.factor}; {dust.hours} de esta tarea necesitan {respirator.needed}.",
	"Wear one with a factor of {respirator.needed} at least, fitted to the face and clean-shaven, or share the hours out.":
		"Use uno con un factor de {respirator.needed} al menos, ajustado a la cara y sin barba, o reparta las horas.",
	"A mask that does not fit protects nobody.": "Una mascarilla que no ajusta no protege a nadie.",
	"Not everybody has gloves, sleeves, boots and goggles.": "No todos tienen guantes, mangas largas, botas y gafas.",
	"Waterproof gloves, long sleeves, boots and goggles for all, and clean water for eyes at hand.":
		"Guantes impermeables, mangas largas, botas y gafas para todos, y agua limpia para los ojos a mano.",
	"Wet cement (pH 12 to 13) burns skin and eyes, without pain at first. Rinse at once; see a doctor for eyes.":
		"El cemento fresco (pH 12 a 13) quema la piel y los ojos, al principio sin dolor. Enjuague enseguida; si es en los ojos, acuda a un médico.",
	"A mixer runs without a residual-current device.": "Un mezclador funciona sin interruptor diferencial.",
	"Put one (a ground-fault interrupter) on every lead, press its test button, and keep plugs off the wet floor.":
		"Ponga uno (GFCI) en cada extensión, pulse su botón de prueba y mantenga los enchufes lejos del piso mojado.",
	"Power and water kill.": "Electricidad y agua matan.",
	"Foam, solvent or resin is used in a closed room.": "Se usa espuma, solvente o resina en una habitación cerrada.",
	"Air the room, put out every flame and pilot light, and read the label for how long.":
		"Ventile la habitación, apague toda llama y piloto, y lea en la etiqueta por cuánto tiempo.",
	"Such vapours are heavier than air: they run along the floor to the next flame. Resins sensitise skin for good.":
		"Esos vapores pesan más que el aire: corren por el piso hasta la próxima llama. Las resinas sensibilizan la piel para siempre.",
	"How far off one reading may be (one standard deviation).":
		"Cuánto puede desviarse una lectura (una desviación estándar).",
	"How far a bag may fill more or less than its sheet says.":
		"Cuánto puede llenar un saco de más o de menos de lo que dice su ficha.",
	"How far the water measured out changes what a bag fills.": "Cuánto cambia lo que llena un saco el agua que se mide.",
	"One more reading is worth taking where it takes this many bags off the order, nine times in ten.":
		"Vale la pena tomar una lectura más donde quita esta cantidad de sacos del pedido, nueve de cada diez veces.",
	"The most that may be ground off this deck.": "Lo máximo que se puede desbastar de esta base.",
	"How far height indicators stand apart.": "Qué tan separados están los indicadores de altura.",
	"How far height indicators keep from walls, keep-outs, pipes and drains.":
		"Qué tan lejos quedan los indicadores de altura de paredes, zonas excluidas, tubos y desagües.",
	"Gap wanted between a door leaf and the finished floor.":
		"Holgura que se quiere entre la hoja de una puerta y el piso terminado.",
	"The finished floor is flat but not level: it falls {plane.drop} across the room.":
		"El piso terminado es plano pero no está a nivel: cae {plane.drop} a través de la habitación.",
	"Compare it with the level plane: cupboards, baths and doors are set level.":
		"Compárelo con el plano a nivel: muebles, bañeras y puertas se colocan a nivel.",
	"With the new floor this stair's risers differ by {stair.variation}; 3/8 in (9.5 mm) is the most.":
		"Con el piso nuevo las contrahuellas de esta escalera difieren en {stair.variation}; 3/8 in (9.5 mm) es el máximo.",
	"Build the other steps up by as much, or keep the floor down at the stair.":
		"Suba los demás escalones lo mismo, o mantenga bajo el piso junto a la escalera.",
	"One odd riser is what people fall on.": "Una contrahuella desigual es lo que hace caer a la gente.",
	"Hands that pour.": "Manos que vierten.",
	"Mixing drills that run.": "Taladros mezcladores que funcionan.",
	"Mixing buckets in use.": "Cubetas de mezclar en uso.",
	"Barrows that carry the buckets; none where they are carried by hand.":
		"Carretillas que llevan las cubetas; ninguna donde se llevan a mano.",
	"What a bucket holds to the brim.": "Lo que cabe en una cubeta hasta el borde.",
	"Share of the bucket left empty, so that the mix stays in while the paddle turns.":
		"Parte de la cubeta que se deja vacía, para que la mezcla no se salga mientras gira la paleta.",
	"Mixing of one batch.": "Mezclado de una amasada.",
	"Rest of one batch between mixing and pouring.": "Reposo de una amasada entre mezclar y verter.",
	"Measuring the water of one batch.": "Medir el agua de una amasada.",
	"Opening one bag and adding it while the mixer runs.": "Abrir un saco y agregarlo mientras gira el mezclador.",
	"Emptying one bucket over its patch.": "Vaciar una cubeta sobre su tramo.",
	"Spreading and spiking one patch while it still flows.": "Extender y pasar púas en un tramo mientras todavía fluye.",
	"Pace with a full bucket, and back with it.": "Paso con una cubeta llena, y de vuelta con ella.",
	"Way from the room's door to where it is mixed.": "Camino desde la puerta de la habitación hasta donde se mezcla.",
	"The narrowest strip that one bucket is poured as.": "La franja más angosta en que se vierte una cubeta.",
	"How long a batch flows from the first water, at 20 °C.": "Cuánto fluye una amasada desde la primera agua, a 20 °C.",
	"How long a poured edge joins the next batch, at 20 °C.":
		"Cuánto tiempo un borde vertido se une con la próxima amasada, a 20 °C.",
	"The warmest of air, deck and mix: what sets first decides how long a batch flows and an edge stays open.":
		"Lo más caliente de aire, base y mezcla: lo que fragua primero decide cuánto fluye una amasada y cuánto queda fresco un borde.",
	"The colder of air and deck: what sets last decides when it may be walked on, tiled and covered.":
		"Lo más frío de aire y base: lo que fragua al final decide cuándo se puede pisar, poner baldosa y cubrir.",
	"Coldest fresh mix to pour.": "Mezcla fresca más fría para verter.",
	"Warmest fresh mix to pour.": "Mezcla fresca más caliente para verter.",
	"Powder and water come to {mix.temperature} when mixed; the sheet wants {mix_coldest} at least.":
		"Polvo y agua llegan a {mix.temperature} al mezclarse; la ficha pide {mix_coldest} al menos.",
	"Warm the bags in the room overnight, or take warmer water; the pour's page says how warm.":
		"Caliente los sacos en la habitación durante la noche, o use agua más caliente; la página del vertido dice qué tan caliente.",
	"Powder and water come to {mix.temperature} when mixed; the sheet allows {mix_warmest} at most.":
		"Polvo y agua llegan a {mix.temperature} al mezclarse; la ficha permite {mix_warmest} como máximo.",
	"Keep the bags in the shade, or take colder water; the pour's page says how cold.":
		"Mantenga los sacos a la sombra, o use agua más fría; la página del vertido dice qué tan fría.",
	"An edge waits {pour.longest_wait} for the next batch and joins it for {pour.wet_edge} only.":
		"Un borde espera {pour.longest_wait} a la próxima amasada y se une con ella solo {pour.wet_edge}.",
	"Bring more hands or buckets (the pour's page says how many are enough), or dam the floor off into bays.":
		"Traiga más manos o cubetas (la página del vertido dice cuántas bastan), o divida el piso en paños con diques.",
	"A batch is {pour.oldest_batch} old when it is spread and flows for {pour.flow_time} only.":
		"Una amasada tiene {pour.oldest_batch} cuando se extiende y fluye solo {pour.flow_time}.",
	"Mix nearer to the door or bring more hands, so that no bucket stands about.":
		"Mezcle más cerca de la puerta o traiga más manos, para que ninguna cubeta quede esperando.",
	"The flow ring spread to {mix.spread}; the sheet wants {sheet.spread_least} to {sheet.spread_most}.":
		"El anillo de fluidez se extendió a {mix.spread}; la ficha pide de {sheet.spread_least} a {sheet.spread_most}.",
	"Too little: check the water measure, the mixing time and how old the batch is, and never pass the most water. Too much: measure the next batch's water again and don't pour this one.":
		"Muy poco: revise la medida de agua, el tiempo de mezclado y qué tan vieja es la amasada, y nunca pase del agua máxima. Demasiado: mida otra vez el agua de la próxima amasada y no vierta esta.",
	"When work may begin, from midnight.": "Cuándo puede empezar el trabajo, desde la medianoche.",
	"When work is over, from midnight.": "Cuándo termina el trabajo, desde la medianoche.",
	"Taking up the old floor and cleaning to the bare deck.": "Levantar el piso viejo y limpiar hasta la base desnuda.",
	"Tapping, drop tests, moisture, screwing down what is loose.":
		"Golpear, pruebas de gota, humedad, atornillar lo que está suelto.",
	"Closing holes, joints and gaps.": "Cerrar huecos, juntas y rendijas.",
	"Priming, one coat.": "Imprimar, una mano.",
	"Strips along the walls, dams at the doors, collars round pipes.":
		"Tiras a lo largo de las paredes, diques en las puertas, collarines alrededor de los tubos.",
	"Setting the height indicators.": "Colocar los indicadores de altura.",
	"Water, power, bags and tools put ready, and the way out agreed.":
		"Agua, electricidad, sacos y herramientas listos, y la salida acordada.",
	"When the pour may be walked on, at 20 °C.": "Cuándo se puede pisar el vertido, a 20 °C.",
	"When the pour may be tiled, at 20 °C.": "Cuándo se puede poner baldosa sobre el vertido, a 20 °C.",
	"When the pour may be covered by what lets no moisture out, at 20 °C.":
		"Cuándo se puede cubrir el vertido con lo que no deja salir la humedad, a 20 °C.",
	"How long before the pour a heated floor is switched off.":
		"Cuánto antes del vertido se apaga un piso con calefacción.",
	"How long after the pour a heated floor may be switched on again, at 20 °C.":
		"Cuánto después del vertido se puede encender de nuevo un piso con calefacción, a 20 °C.",
	"How far off a guessed mean depth is, as a share of it (one standard deviation).":
		"Cuánto se desvía una profundidad media estimada, como parte de ella (una desviación estándar).",
	"How far off the middle of least and greatest depth is from the mean, as a share of the two's difference (one standard deviation).":
		"Cuánto se desvía de la media el punto medio entre la profundidad mínima y la máxima, como parte de la diferencia de ambas (una desviación estándar).",
	"How far off the mean depth still is after one quick survey (one standard deviation).":
		"Cuánto se desvía todavía la profundidad media después de una medición rápida (una desviación estándar).",
	"A mean depth of {depth.mean} is less than the {least_depth} that this deck needs at its thinnest.":
		"Una profundidad media de {depth.mean} es menos que los {least_depth} que esta base necesita en lo más delgado.",
	"Ask where the highest spot is: the pour starts there with {least_depth}, and all the rest is deeper.":
		"Pregunte dónde está el punto más alto: el vertido empieza allí con {least_depth}, y todo lo demás es más profundo.",
	"Aggregate mixed in over this deck, by the powder's mass: none unless the pour is deeper than one lift and the sheet allows more with it.":
		"Árido mezclado sobre esta base, por la masa del polvo: ninguno a menos que el vertido sea más profundo que una capa y la ficha permita más con él.",
	"Density of the aggregate's grain.": "Densidad del grano del árido.",
	"Aggregate in one bag.": "Árido en un saco.",
	"Primer in one tin.": "Imprimación en una lata.",
	"Density of primer in the tin.": "Densidad de la imprimación en la lata.",
	"Patch for joints, holes and screw heads of this deck; none where all gaps are closed already.":
		"Masilla para juntas, huecos y cabezas de tornillo de esta base; ninguna donde todas las rendijas ya están cerradas.",
	"Patch powder in one bag.": "Polvo de reparación en un saco.",
	"What one bag of patch fills.": "Lo que llena un saco de masilla de reparación.",
	"A moisture barrier goes on: it is planned, or the slab is too wet to pour on without.":
		"Lleva barrera de humedad: está prevista, o la losa está demasiado mojada para verter sin ella.",
	"Area that a measure of the moisture barrier covers, one coat.":
		"Área que cubre una medida de la barrera de humedad, una mano.",
	"Coats of the moisture barrier.": "Manos de la barrera de humedad.",
	"Moisture barrier in one tin.": "Barrera de humedad en una lata.",
	"Density of the moisture barrier, resin and hardener together.":
		"Densidad de la barrera de humedad, resina y endurecedor juntos.",
	"The deck wants a mesh in the pour.": "La base pide una malla en el vertido.",
	"Width of a roll of mesh.": "Ancho de un rollo de malla.",
	"How far one width of mesh laps over the next.": "Cuánto traslapa un ancho de malla sobre el siguiente.",
	"Mesh on one roll.": "Malla en un rollo.",
	"Allowance for cuts and laps of strip, mesh and battens.":
		"Margen para cortes y traslapes de tira, malla y listones.",
	"Perimeter strip along every wall, post and keep-out.":
		"Tira perimetral a lo largo de cada pared, poste y zona excluida.",
	"Perimeter strip on one roll.": "Tira perimetral en un rollo.",
	"How far apart the strip is fixed at most.": "Qué tan separada se fija la tira como máximo.",
	"Staples in one box.": "Grapas en una caja.",
	"Screws for a wood deck that isn't known to be screwed to every joist.":
		"Tornillos para una base de madera de la que no se sabe si está atornillada a cada vigueta.",
	"Screws in one box.": "Tornillos en una caja.",
	"Width and depth of a bead of sealant.": "Ancho y profundidad de un cordón de sellador.",
	"Sealant that stays in cartridges and on tools.": "Sellador que se queda en cartuchos y herramientas.",
	"Sealant in one cartridge.": "Sellador en un cartucho.",
	"Length of gaps under walls and at edges to be foamed.":
		"Longitud de rendijas bajo paredes y en bordes que se rellenan con espuma.",
	"Width and depth of a gap that foam fills.": "Ancho y profundidad de una rendija que llena la espuma.",
	"What one can of foam fills.": "Lo que llena una lata de espuma.",
	"Doors of a room in which none is drawn yet.": "Puertas de una habitación en la que todavía no hay ninguna dibujada.",
	"Usual width of a door opening.": "Ancho usual de un vano de puerta.",
	"Length of one batten for dams.": "Longitud de un listón para diques.",
	"Height indicators for a room that nobody has read yet.":
		"Indicadores de altura para una habitación que nadie ha leído todavía.",
	"Height indicators in one pack.": "Indicadores de altura en un paquete.",
	"Mixing buckets, and one for washing.": "Cubetas de mezclar, y una para lavar.",
	"Mixing paddles that fit the drill.": "Paletas de mezclar que van en el taladro.",
	"Measuring jugs for water, one to each mixer.": "Jarras medidoras para el agua, una por mezclador.",
	"Pin rakes or smoothers, one to every 60 m².": "Rastrillos de pines o alisadores, uno por cada 60 m².",
	"Spiked rollers, one to every 60 m².": "Rodillos de púas, uno por cada 60 m².",
	"Rollers or brushes for primer, one to every 40 m².": "Rodillos o brochas para imprimación, uno por cada 40 m².",
	"Pairs of spiked soles: one for each person who walks in the wet pour.":
		"Pares de suelas de púas: uno por cada persona que camina en el vertido fresco.",
	"Pairs of waterproof gloves: wet cement burns skin.":
		"Pares de guantes impermeables: el cemento fresco quema la piel.",
	"Dust masks, one to each pair of hands a day, for two days.":
		"Mascarillas para polvo, una por par de manos y día, para dos días.",
	"Safety goggles: one to each pair of hands.": "Gafas de seguridad: unas por cada par de manos.",
	"Film to cover the way in and the mixing place.": "Plástico para cubrir el camino y el lugar de mezclado.",
	"Film on one roll.": "Plástico en un rollo.",
	"What one person carries at a time; never less than one bag.":
		"Lo que una persona lleva a la vez; nunca menos de un saco.",
	"What the vehicle carries at a time.": "Lo que el vehículo lleva a la vez.",
	"How long powder keeps in the closed bag, dry.": "Cuánto se conserva el polvo en el saco cerrado, en seco.",
	"How long patch keeps in the closed bag, dry.": "Cuánto se conserva la masilla en el saco cerrado, en seco.",
	"How long the moisture barrier keeps in the closed tin, free of frost.":
		"Cuánto se conserva la barrera de humedad en la lata cerrada, sin heladas.",
	"How long sealant and foam keep in the closed cartridge or can.":
		"Cuánto se conservan el sellador y la espuma en el cartucho o la lata cerrados.",
	"How long primer keeps in the closed tin, free of frost.":
		"Cuánto se conserva la imprimación en la lata cerrada, sin heladas.",
	"Hands' time for one bag from the stack to the floor, where no clock is worked out yet.":
		"Tiempo de mano de obra por saco, de la pila al piso, donde todavía no se calcula un reloj.",
	"The thinnest that a lift with aggregate may be.": "Lo más delgada que puede ser una capa con árido.",
	"Share of primer out of the tin in what goes over a set lift, one coat, before the next lift.":
		"Parte de imprimación de la lata en lo que va sobre una capa fraguada, una mano, antes de la capa siguiente.",
	"Moisture barrier, one coat.": "Barrera de humedad, una mano.",
	"How long a coat of the moisture barrier cures before what goes over it.":
		"Cuánto fragua una mano de la barrera de humedad antes de lo que va encima.",
};
