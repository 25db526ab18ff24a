// The sources of the shipped rules.
import type { Table } from "../../said";

export const sources: Table = {
	"common practice; the sheet on the bag goes first": "práctica común; la ficha del saco va primero",
	"common practice; only where the sheet allows aggregate": "práctica común; solo donde la ficha permite árido",
	"common practice; thin pours over wood crack as the deck moves":
		"práctica común; los vertidos delgados sobre madera se agrietan cuando la base se mueve",
	"common practice": "práctica común",
	"common practice; read your bag": "práctica común; lea su saco",
	"common practice: mortar of about 1.8 kg of powder a litre; read your bag":
		"práctica común: mortero de unos 1.8 kg de polvo por litro; lea su saco",
	"common practice; read the tin": "práctica común; lea la lata",
	"area times coats over coverage": "área por manos entre cobertura",
	"the share of primer in the mix": "la parte de imprimación en la mezcla",
	"the rest of the mix": "el resto de la mezcla",
	"common practice: 2 to 1 by volume; read your bag": "práctica común: 2 a 1 en volumen; lea su saco",
	"common practice: a pour runs wherever water would": "práctica común: un vertido corre por donde correría el agua",
	"common practice: 18 mm (23/32 in) over joists up to 406 mm (16 in) apart; local code goes first":
		"práctica común: 18 mm (23/32 in) sobre viguetas separadas hasta 406 mm (16 in); el código local va primero",
	"common practice; local code and an engineer go first": "práctica común; el código local y un ingeniero van primero",
	"common practice; the finish's and the barrier's sheets go first":
		"práctica común; las fichas del acabado y de la barrera van primero",
	"IRC Table R502.3.1(2), 2012: 40 psf in living rooms; local code and an engineer go first":
		"IRC Table R502.3.1(2), 2012: 40 psf en habitaciones de estar; el código local y un ingeniero van primero",
	"IRC Table R502.3.1(2), 2012: 10 psf": "IRC Table R502.3.1(2), 2012: 10 psf",
	"L/360 by IRC Table R301.7; L/480 under large tile is common practice; L/720 under stone, read in a secondary text; local code goes first":
		"L/360 según IRC Table R301.7; L/480 bajo baldosa grande es práctica común; L/720 bajo piedra, leído en un texto secundario; el código local va primero",
	"IBC Table 1604.3": "IBC Table 1604.3",
	"common practice: 18 mm (23/32 in) to 16 in, 22 mm (7/8 in) to 19.2 in, 28 mm (1 1/8 in) to 24 in; local code goes first":
		"práctica común: 18 mm (23/32 in) hasta 16 in, 22 mm (7/8 in) hasta 19.2 in, 28 mm (1 1/8 in) hasta 24 in; el código local va primero",
	"common practice: 6 in (150 mm) along edges": "práctica común: 6 in (150 mm) a lo largo de los bordes",
	"common practice: 12 in (300 mm) in the field": "práctica común: 12 in (300 mm) en el campo",
	"sheets laid in rows from one corner, every other row shifted by half a sheet":
		"paneles colocados en hileras desde una esquina, cada segunda hilera corrida medio panel",
	"counted along edges and joists at the spacings given; 6 in and 12 in where nobody says":
		"contado a lo largo de bordes y viguetas con las separaciones dadas; 6 in y 12 in donde nadie lo dice",
	"joints × gap × thickness, by absolute volumes with loose cement at 94 lb/ft³ (PCA wording, secondary); read your bag":
		"juntas × holgura × espesor, por volúmenes absolutos con cemento suelto a 94 lb/ft³ (redacción de PCA, secundaria); lea su saco",
	"common practice: 2 parts of powder to 1 of water by volume; read your bag":
		"práctica común: 2 partes de polvo por 1 de agua en volumen; lea su saco",
	"mean depth × density × gravity": "profundidad media × densidad × gravedad",
	"5 w L⁴ / (384 E I) under live load, and bending by the NDS where the grade's stress is known":
		"5 w L⁴ / (384 E I) bajo carga viva, y flexión según NDS donde se conoce el esfuerzo de la clase",
	"IRC Table R301.7 and, for the stiffer limits, common practice; deflection 5 w L⁴ / (384 E I); local code and an engineer go first":
		"IRC Table R301.7 y, para los límites más rígidos, práctica común; flecha 5 w L⁴ / (384 E I); el código local y un ingeniero van primero",
	"IBC Table 1604.3; creep is not reckoned in; local code and an engineer go first":
		"IBC Table 1604.3; no se cuenta la fluencia; el código local y un ingeniero van primero",
	"NDS reference values, as recalled, with C_F and C_r of the NELMA grading rules §8; local code and an engineer go first":
		"valores de referencia NDS, según se recuerdan, con C_F y C_r de las reglas de clasificación NELMA §8; el código local y un ingeniero van primero",
	"IRC Table R502.3.1(2), 2012, which has 10 and 20 psf of dead load":
		"IRC Table R502.3.1(2), 2012, que tiene 10 y 20 psf de carga muerta",
	"common practice; an engineer goes first": "práctica común; un ingeniero va primero",
	"common practice; local code goes first": "práctica común; el código local va primero",
	"common practice: 1/8 in (3 mm) between sheets": "práctica común: 1/8 in (3 mm) entre paneles",
	"200 psi (1.38 MPa) in ICRI and ACI practice, value as recalled; test by ASTM C1583; the sheet on the bag goes first":
		"200 psi (1.38 MPa) en la práctica de ICRI y ACI, valor según se recuerda; ensayo por ASTM C1583; la ficha del saco va primero",
	"BS 8204-1, values as recalled, document not at hand; local code goes first":
		"BS 8204-1, valores según se recuerdan, documento no a mano; el código local va primero",
	"ASTM C1583, ICRI and ACI practice, values as recalled":
		"ASTM C1583, práctica de ICRI y ACI, valores según se recuerdan",
	"common practice; ASTM F710 asks that such things are removed, clause as recalled":
		"práctica común; ASTM F710 pide que se retiren esas cosas, cláusula según se recuerda",
	"ASTM F710, limit as recalled, document not at hand": "ASTM F710, límite según se recuerda, documento no a mano",
	"BS 8204-1, values as recalled, document not at hand": "BS 8204-1, valores según se recuerdan, documento no a mano",
	"common practice; cement and wet gypsum make ettringite, which swells":
		"práctica común; cemento y yeso mojado forman etringita, que se hincha",
	"common practice by carbide bottle": "práctica común con botella de carburo",
	"3 lb/(1000 ft² 24 h), common practice with ASTM F1869; the finish's sheet goes first":
		"3 lb/(1000 ft² 24 h), práctica común con ASTM F1869; la ficha del acabado va primero",
	"ASTM F2170 §10.1 and F1869: 3 for the first 1000 ft², one more for each further 1000 ft²; D4263: one for each 500 ft²; as recalled, documents not at hand":
		"ASTM F2170 §10.1 y F1869: 3 por los primeros 1000 ft², uno más por cada 1000 ft² adicionales; D4263: uno por cada 500 ft²; según se recuerdan, documentos no a mano",
	"ASTM F2170 §10.2: 40 % of the slab drying from one side, 20 % from two; as recalled, document not at hand":
		"ASTM F2170 §10.2: 40 % de la losa que seca por un lado, 20 % por dos; según se recuerda, documento no a mano",
	"ASTM F2170 since its revision of 2018, 72 h before; as recalled, document not at hand":
		"ASTM F2170 desde su revisión de 2018, 72 h antes; según se recuerda, documento no a mano",
	"ASTM F2170 and F1869, as recalled, documents not at hand":
		"ASTM F2170 y F1869, según se recuerdan, documentos no a mano",
	"area times coats over coverage; read the tin": "área por manos entre cobertura; lea la lata",
	"ASTM F2170": "ASTM F2170",
	"ASTM F2170 §10.1, as recalled, document not at hand": "ASTM F2170 §10.1, según se recuerda, documento no a mano",
	"ASTM F2170 §10.2, as recalled; a tenth either way is common practice":
		"ASTM F2170 §10.2, según se recuerda; una décima de más o de menos es práctica común",
	"ASTM F2170, as recalled, document not at hand": "ASTM F2170, según se recuerda, documento no a mano",
	"common practice with ASTM F1869; the finish's sheet goes first":
		"práctica común con ASTM F1869; la ficha del acabado va primero",
	"ASTM F1869, as recalled, document not at hand": "ASTM F1869, según se recuerda, documento no a mano",
	"ASTM D4263": "ASTM D4263",
	"ASTM D4263, as recalled, document not at hand": "ASTM D4263, según se recuerda, documento no a mano",
	"common practice; ASTM D4263 measures nothing": "práctica común; ASTM D4263 no mide nada",
	"common practice; the heating's and the bag's sheets go first":
		"práctica común; las fichas de la calefacción y del saco van primero",
	"common practice; licensed work in many places": "práctica común; trabajo con licencia en muchos lugares",
	"common practice: most countries had banned it in floors by then; local law goes first":
		"práctica común: la mayoría de los países ya lo había prohibido en pisos para entonces; la ley local va primero",
	"common practice; law in most countries": "práctica común; ley en la mayoría de los países",
	"common practice: one reading to the square metre, four at least":
		"práctica común: una lectura por metro cuadrado, cuatro al menos",
	"ADA/ABA §303": "ADA/ABA §303",
	"common practice; codes ask that a flange is secured, not for one height":
		"práctica común; los códigos piden que una brida esté asegurada, no una altura",
	"common practice: 1/8 in at least": "práctica común: 1/8 in al menos",
	"perimeter over their spacing": "perímetro entre su separación",
	"20 ft to 25 ft indoors, TCNA Handbook EJ171, as recalled, document not at hand; less over heating is common practice":
		"de 20 ft a 25 ft en interior, TCNA Handbook EJ171, según se recuerda, documento no a mano; menos sobre calefacción es práctica común",
	"common practice: 16 in": "práctica común: 16 in",
	"TCNA Handbook EJ171, as recalled, document not at hand; the finish's sheet goes first":
		"TCNA Handbook EJ171, según se recuerda, documento no a mano; la ficha del acabado va primero",
	"UPC 2021 402.6.3; Chicago Code 18-29-405.4.1; local code goes first":
		"UPC 2021 402.6.3; Chicago Code 18-29-405.4.1; el código local va primero",
	"common practice: a dense deck takes twice as long, below 15 °C half as long again; read the tin":
		"práctica común: una base densa tarda el doble, por debajo de 15 °C la mitad más; lea la lata",
	"the tin counts from the last coat; common practice": "la lata cuenta desde la última mano; práctica común",
	"the longest drying of its decks": "el secado más largo de sus bases",
	"the shortest limit of its decks": "el límite más corto de sus bases",
	"common practice; the tin goes first": "práctica común; la lata va primero",
	"ISO 8502-4:2017, 3 °C as recalled, document not at hand; 5 °F (2.8 °C) is also in use":
		"ISO 8502-4:2017, 3 °C según se recuerda, documento no a mano; también se usan 5 °F (2.8 °C)",
	"FHWA-HRT-05-038 ch. 5": "FHWA-HRT-05-038 cap. 5",
	"FHWA-HRT-05-038 ch. 5; ACI 305R has 0.20 lb/ft²/h (0.976 kg/m²/h), widely quoted":
		"FHWA-HRT-05-038 cap. 5; ACI 305R tiene 0.20 lb/ft²/h (0.976 kg/m²/h), muy citado",
	"Uno 1998 (ACI Materials Journal 95-M34) turned round; the method is good to 40 %":
		"Uno 1998 (ACI Materials Journal 95-M34) despejado; el método acierta dentro de 40 %",
	"Hyland and Wexler, ASHRAE Fundamentals 2017 ch. 1, turned round":
		"Hyland y Wexler, ASHRAE Fundamentals 2017 cap. 1, despejado",
	"heat balance of TM 5-852-4 / UFC 3-130-04 Eq. 16, powder counting 0.22":
		"balance de calor de TM 5-852-4 / UFC 3-130-04 Eq. 16, contando el polvo como 0.22",
	"ISO 8502-4:2017, margin as recalled; dew point by Hyland and Wexler":
		"ISO 8502-4:2017, margen según se recuerda; punto de rocío según Hyland y Wexler",
	"FHWA-HRT-05-038 ch. 5; rate by Uno 1998, good to 40 % (Hover 2020)":
		"FHWA-HRT-05-038 cap. 5; tasa según Uno 1998, acierta dentro de 40 % (Hover 2020)",
	"common practice: a bag every two minutes": "práctica común: un saco cada dos minutos",
	"common practice: a bag of 0.6 m by 0.4 m": "práctica común: un saco de 0.6 m por 0.4 m",
	"NIOSH lifting equation, 94-110 rev. 2021; an hour of lifting, bags held from below, no twist":
		"ecuación de levantamiento NIOSH, 94-110 rev. 2021; una hora levantando, sacos sostenidos por debajo, sin giro",
	"trips there and back": "viajes de ida y vuelta",
	"live load over a bag's weight on its own footprint; a stack beside a wall bends a floor less":
		"carga viva entre el peso de un saco sobre su propia huella; una pila junto a una pared flecta menos el piso",
	"OSHA 29 CFR 1926.1153 Table 1: 25 cu ft/min for each inch of wheel (trade-magazine reproduction, 2017)":
		"OSHA 29 CFR 1926.1153 Table 1: 25 cu ft/min por cada pulgada de disco (reproducción en revista del ramo, 2017)",
	"NIOSH lifting equation, 94-110 rev. 2021; HM, VM, DM, FM and CM multiplied":
		"ecuación de levantamiento NIOSH, 94-110 rev. 2021; HM, VM, DM, FM y CM multiplicados",
	"NIOSH: an index above 3 puts many workers at risk, as recalled, document not at hand":
		"NIOSH: un índice superior a 3 pone en riesgo a muchos trabajadores, según se recuerda, documento no a mano",
	"common practice: twice the even load on so small a spot, beside a wall; an engineer goes first":
		"práctica común: el doble de la carga repartida sobre un punto tan pequeño, junto a una pared; un ingeniero va primero",
	"OSHA 29 CFR 1926.1153 Table 1 (trade-magazine reproduction, 2017)":
		"OSHA 29 CFR 1926.1153 Table 1 (reproducción en revista del ramo, 2017)",
	"29 CFR 1926.1153(b), (f)": "29 CFR 1926.1153(b), (f)",
	"OSHA 29 CFR 1926.1153 Table 1 (xii), as recalled": "OSHA 29 CFR 1926.1153 Table 1 (xii), según se recuerda",
	"OSHA 29 CFR 1926.1153 Table 1 (secondary transcriptions); local rules go first":
		"OSHA 29 CFR 1926.1153 Table 1 (transcripciones secundarias); las normas locales van primero",
	"OSHA and HSE guidance, as recalled, documents not at hand; the bag's safety sheet goes first":
		"guías de OSHA y HSE, según se recuerdan, documentos no a mano; la hoja de seguridad del saco va primero",
	"common practice; the label goes first": "práctica común; la etiqueta va primero",
	"common practice for a staff under a line laser": "práctica común para una mira bajo un láser de línea",
	"common practice: timber is planed or sanded a hair at most, concrete and screed down to well above the steel, tile and sheet not at all":
		"práctica común: la madera se cepilla o lija un pelo como máximo, hormigón y contrapiso hasta quedar bien por encima del acero, baldosa y panel nada",
	"common practice: within a spreader's reach, about 1.2 m (4 ft)":
		"práctica común: al alcance de quien extiende, unos 1.2 m (4 ft)",
	"IBC 1009.3.1 and IRC R311.7.5.1; the local code goes first":
		"IBC 1009.3.1 e IRC R311.7.5.1; el código local va primero",
	"common practice: one mixes, one pours": "práctica común: uno mezcla, uno vierte",
	"common practice: two or more, so that one is mixed while the other is poured":
		"práctica común: dos o más, para que una se mezcle mientras la otra se vierte",
	"common practice: about two minutes; read your bag": "práctica común: unos dos minutos; lea su saco",
	"common practice: about the width that a bucket is emptied over in one go":
		"práctica común: más o menos el ancho en que se vacía una cubeta de una vez",
	"common practice; 20 °C where nobody says": "práctica común; 20 °C donde nadie lo dice",
	"common practice: of guesses by eye one in three is off by more than a quarter":
		"práctica común: de las estimaciones a ojo, una de cada tres se desvía más de un cuarto",
	"common practice: the mean lies in the middle third of the range two times in three":
		"práctica común: la media está en el tercio central del rango dos de cada tres veces",
	"common practice: a reading to the square metre under a line laser":
		"práctica común: una lectura por metro cuadrado bajo un láser de línea",
	"quartz; common practice; read your bag": "cuarzo; práctica común; lea su saco",
	"common practice: dispersions are a little heavier than water":
		"práctica común: las dispersiones pesan un poco más que el agua",
	"the sheet joints with 0.05 L to the square metre for screw heads where the joints are known; else common practice, 0.2 L to the square metre":
		"las juntas de panel con 0.05 L por metro cuadrado para cabezas de tornillo donde se conocen las juntas; si no, práctica común, 0.2 L por metro cuadrado",
	"common practice: epoxy resins without filler": "práctica común: resinas epoxi sin carga",
	"common practice: boards and chipboard move more than plywood; the sheet on the bag goes first":
		"práctica común: tablas y aglomerado se mueven más que el contrachapado; la ficha del saco va primero",
	"common practice: the pour must not touch what moves against it":
		"práctica común: el vertido no debe tocar lo que se mueve contra él",
	"common practice: 16 in; none for strip that sticks by itself":
		"práctica común: 16 in; ninguna para tira autoadhesiva",
	"counted along edges and joists where the sheets are known; else common practice, joists 400 mm apart and a screw every 125 mm":
		"contado a lo largo de bordes y viguetas donde se conocen los paneles; si no, práctica común, viguetas cada 400 mm y un tornillo cada 125 mm",
	"common practice: a quarter of the walls": "práctica común: un cuarto de las paredes",
	"common practice; read the can": "práctica común; lea la lata de espuma",
	"common practice: one to the square of their spacing": "práctica común: uno por cada cuadrado de su separación",
	"common practice; local rules on silica dust go first":
		"práctica común; las normas locales sobre polvo de sílice van primero",
	"common practice: one bag; local rules on lifting go first":
		"práctica común: un saco; las normas locales sobre levantamiento van primero",
	"common practice: a small van; its papers say": "práctica común: una camioneta pequeña; lo dicen sus papeles",
	"common practice: six months; the date is on the bag": "práctica común: seis meses; la fecha está en el saco",
	"common practice: a year; the date is on it": "práctica común: un año; la fecha está en el envase",
	"common practice: a year; the date is on the tin": "práctica común: un año; la fecha está en la lata",
	"common practice: two people, a bag every five minutes": "práctica común: dos personas, un saco cada cinco minutos",
	"common practice: about three times the largest grain; the sheet on the bag goes first":
		"práctica común: unas tres veces el grano más grande; la ficha del saco va primero",
	"common practice: a set lift drinks like a normal deck; read the tin":
		"práctica común: una capa fraguada absorbe como una base normal; lea la lata",
};
