// Solves the plane of least volume with HiGHS: a list of {x, y, target, limit, sides} in (metres from the centroid, millimetres, millimetres a metre), a
// list of the least heights at the centroid out, millimetres. The round slope limit stands as a polygon of tangents.
import { readFileSync } from "node:fs";
import load from "highs";

const term = (factor, name) => `${factor < 0 ? "-" : "+"} ${Math.abs(factor)} ${name}`;

function programme({ x, y, target, limit, sides }) {
	const rows = x.map((_, i) => `${term(x[i], "a")} ${term(y[i], "b")} + c >= ${target[i]}`);
	for (let k = 0; k < sides; k++) {
		const angle = (2 * Math.PI * k) / sides;
		rows.push(`${term(Math.cos(angle).toFixed(15), "a")} ${term(Math.sin(angle).toFixed(15), "b")} <= ${limit}`);
	}
	return `Minimize\n obj: c\nSubject To\n${rows.map((row, i) => ` r${i}: ${row}`).join("\n")}\nBounds\n a free\n b free\n c free\nEnd\n`;
}

const highs = await load();
const answers = JSON.parse(readFileSync(0, "utf8")).map((floor) => {
	const solved = highs.solve(programme(floor));
	if (solved.Status !== "Optimal") throw new Error(`HiGHS: ${solved.Status}`);
	return solved.Columns.c.Primal;
});
process.stdout.write(JSON.stringify(answers));
