// Asks psychrolib about moist air: a list of {temperature (°C), humidity, pressure (Pa)} in, a list of what it says out, SI units.
import { readFileSync } from "node:fs";
import psychrolib from "psychrolib";

psychrolib.SetUnitSystem(psychrolib.SI);
const answers = JSON.parse(readFileSync(0, "utf8")).map(({ temperature, humidity, pressure }) => ({
	saturation: psychrolib.GetSatVapPres(temperature),
	dewPoint: psychrolib.GetTDewPointFromRelHum(temperature, humidity),
	wetBulb: psychrolib.GetTWetBulbFromRelHum(temperature, humidity, pressure),
	ratio: psychrolib.GetHumRatioFromRelHum(temperature, humidity, pressure),
}));
process.stdout.write(JSON.stringify(answers));
