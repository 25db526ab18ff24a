// Spanish, as a job site in the Americas uses it and one in Spain understands: the page's own texts by folder, and what the engine says.
//
// The words of the trade, kept the same throughout:
//   deck base · leveller autonivelante · pour vertido, verter · lift capa · batch amasada · wet edge borde fresco · bay paño · dam dique
//   primer imprimación · coat mano · patch masilla de reparación · aggregate árido · barrier barrera de humedad · screed contrapiso
//   slab losa · joist vigueta · sheet (board) panel · sheet (figures) ficha · bag saco · bucket cubeta · mixer mezclador · barrow carretilla
//   reading lectura · staff mira · survey medición · finish acabado · finish plane plano de acabado · high spot punto alto · fall caída
//   straightedge regla recta · flatness planitud · perimeter strip tira perimetral · keep-out zona excluida · drain desagüe · flange brida
//   job trabajo · room habitación · rulebook reglamento · figure cifra · check comprobación · finding hallazgo · take-off lista de materiales
//   run sheet hoja de ruta · field sheet hoja de campo · quote cotización · crew cuadrilla
import { errors } from "./es/engine/errors";
import { names } from "./es/engine/names";
import { rules } from "./es/engine/rules";
import { sentences } from "./es/engine/sentences";
import { sources } from "./es/engine/sources";
import { terms } from "./es/engine/terms";
import { vocabulary } from "./es/engine/vocabulary";
import { bench } from "./es/page/bench";
import { book } from "./es/page/book";
import { counter } from "./es/page/counter";
import { help } from "./es/page/help";
import { kept } from "./es/page/kept";
import { map } from "./es/page/map";
import { papers } from "./es/page/papers";
import { pour } from "./es/page/pour";
import { sheet } from "./es/page/sheet";
import { start } from "./es/page/start";
import { steps } from "./es/page/steps";
import type { Table } from "./said";

/** By what is given to t(). */
export const page: Table = {
	...start,
	...bench,
	...steps,
	...counter,
	...map,
	...pour,
	...papers,
	...book,
	...sheet,
	...help,
	...kept,
};

/** By what the engine says; holes in braces are its values. A hole called {name} or one in quotes is what a person typed. */
export const engine: Table = { ...terms, ...names, ...rules, ...sources, ...vocabulary, ...sentences, ...errors };
