package engine

// Proving the air: dew on the deck, how fast the pour dries, and what brings each back.

import (
	"lowspot/engine/climate"
	"lowspot/engine/pour"
)

// proveAir works out what the checks on air and water read.
func (w *work) proveAir() {
	w.proveDew()
	w.proveEvaporation()
	w.proveWater()
}

func (w *work) proveDew() {
	measured, known := given(w.facts, "air.temperature", "air.humidity")
	if !known {
		return
	}
	air := climate.Air{Temperature: measured[0], Humidity: measured[1]}
	point, err := climate.DewPoint(air)
	if err != nil {
		w.failAnswer("", err)
		return
	}
	worksOut(w.facts, "dew.point", number(point))
	surface, known := w.facts["deck.temperature"]
	least, set := w.set(w.facts, "dew_margin_least")
	if !known || !set {
		return
	}
	margin, err := climate.DewMargin(surface.Value.Number, air)
	if err != nil {
		w.failAnswer("", err)
		return
	}
	worksOut(w.facts, "dew.margin", number(margin))
	if most, err := climate.GreatestHumidity(surface.Value.Number, air.Temperature, least[0]); err == nil {
		worksOut(w.facts, "dew.humidity_most", number(most))
	}
}

// proveEvaporation takes the deck's temperature for the fresh surface's: a thin pour has it within minutes.
func (w *work) proveEvaporation() {
	measured, known := given(w.facts, "air.temperature", "air.humidity", "deck.temperature")
	limit, set := w.set(w.facts, "evaporation_caution")
	if !known || !set {
		return
	}
	air := climate.Air{Temperature: measured[0], Humidity: measured[1]}
	if most, err := climate.GreatestWind(measured[2], air, limit[0]); err == nil {
		worksOut(w.facts, "evaporation.wind_most", number(most))
	}
	speed, known := w.facts["air.speed"]
	if !known {
		return
	}
	rate, err := climate.Evaporation(measured[2], air, speed.Value.Number)
	if err != nil {
		w.failAnswer("", err)
		return
	}
	worksOut(w.facts, "evaporation.rate", number(rate))
}

// proveWater works out which water brings the mix into its window; where no water does, the word stays open.
func (w *work) proveWater() {
	powder, known := w.facts["powder.temperature"]
	bag, set := w.set(w.facts, "bag_mass", "bag_water", "mix_coldest", "mix_warmest")
	if !known || !set {
		return
	}
	dry, water := pour.Portion{Mass: bag[0], Temperature: powder.Value.Number}, bag[1]*waterDensity
	if coldest, err := pour.WaterTemperature(bag[2], dry, water); err == nil {
		worksOut(w.facts, "water.coldest", number(coldest))
	}
	if warmest, err := pour.WaterTemperature(bag[3], dry, water); err == nil {
		worksOut(w.facts, "water.warmest", number(warmest))
	}
}
