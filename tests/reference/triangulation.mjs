// Triangulates floors with delaunator: a list of lists of [x, y] in, a list of triangles of indexes out.
import { readFileSync } from "node:fs";
import Delaunator from "delaunator";

const floors = JSON.parse(readFileSync(0, "utf8"));
const answers = floors.map((points) => Array.from(Delaunator.from(points).triangles));
process.stdout.write(JSON.stringify(answers));
