package engine

import (
	"math"

	"lowspot/engine/pour"
	"lowspot/engine/quantity"
)

// total adds the rooms up and turns volume into bags, water and mass by the rulebook's figures.
func (w *work) total() {
	area, volume, ready := 0.0, 0.0, len(w.rooms) > 0
	for _, room := range w.rooms {
		area += room.plan.Area.SI
		volume += room.volume
		ready = ready && (room.hasPour || room.rough != nil)
	}
	waste, wasteKnown := w.resting("waste_share", w.facts)
	mass, massKnown := w.resting("bag_mass", w.facts)
	yield, yieldKnown := w.resting("bag_yield", w.facts)
	water, _ := w.book.quantity("bag_water", w.facts)
	least, _ := w.book.quantity("water_least", w.facts)
	most, _ := w.book.quantity("water_most", w.facts)
	ready = ready && wasteKnown && massKnown && yieldKnown
	exact := bagsFor(volume*(1+waste), yield)
	bags := w.wholeBags(exact)
	for _, room := range w.rooms {
		if room.plan.Pour != nil {
			room.plan.Pour.Bags = bagsFor(room.volume, yield)
		}
		if room.plan.Rough != nil {
			room.plan.Rough.Bags = bagsFor(room.volume, yield)
		}
	}
	count := float64(bags)
	w.totals = Totals{
		Area: w.of(area, quantity.Area), Volume: w.of(volume, quantity.Volume), Waste: w.of(volume*waste, quantity.Volume),
		Bags: bags, BagsExact: exact, BagMass: w.of(mass, quantity.Mass), BagYield: w.of(yield, quantity.Volume), BagWater: w.of(water, quantity.Volume),
		WaterLeast: w.of(least, quantity.Volume), WaterMost: w.of(most, quantity.Volume),
		Powder: w.of(count*mass, quantity.Mass), Water: w.of(count*water, quantity.Volume), Load: w.of(count*(mass+water*waterDensity), quantity.Mass), Ready: ready,
	}
	w.factTotals(area, volume, ready)
	w.factMix(mass, water)
	w.provePeople()
}

// factMix works out how warm the mix comes out, where both temperatures are known.
func (w *work) factMix(mass, water float64) {
	powder, known := w.facts["powder.temperature"]
	tap, given := w.facts["water.temperature"]
	if !known || !given {
		return
	}
	mixed, err := pour.MixTemperature(pour.Portion{Mass: water * waterDensity, Temperature: tap.Value.Number}, pour.Portion{Mass: mass, Temperature: powder.Value.Number})
	if err == nil {
		worksOut(w.facts, "mix.temperature", number(mixed))
	}
}

// waterDensity of mixing water, kg/m³: 998.2 at 20 °C (IAPWS-97), and within half a part in a hundred of that between 0 and 30 °C.
const waterDensity = 998.2

func bagsFor(volume, yield float64) float64 {
	if yield <= 0 {
		return 0
	}
	return volume / yield
}

// wholeBags rounds up to the step in which bags are bought. A hair over a whole bag is the arithmetic's, not the floor's.
func (w *work) wholeBags(exact float64) int {
	step, _ := w.book.quantity("bag_step", w.facts)
	if step < 1 {
		step = 1
	}
	const hair = 1e-9
	bags := math.Ceil(exact/step-hair) * step
	if bags > 1e9 {
		return 1e9
	}
	return int(bags)
}

// factTotals gives the totals to the checks, once every room has a pour: half a job's bags would pass for the whole.
func (w *work) factTotals(area, volume float64, ready bool) {
	worksOut(w.facts, "job.area", number(area))
	if !ready {
		return
	}
	worksOut(w.facts, "job.volume", number(volume))
	worksOut(w.facts, "job.bags", number(float64(w.totals.Bags)))
	worksOut(w.facts, "job.powder", number(w.totals.Powder.SI))
	worksOut(w.facts, "job.water", number(w.totals.Water.SI))
}
