package pour

// powderHeat is the heat that a kilogram of cement or aggregate takes per degree, over that of water: 0.22, TM 5-852-4 / AFM 88-19 ch. 4
// (UFC 3-130-04) Eq. 16, seen in a reproduction.
const powderHeat = 0.22

// Portion is an ingredient of the mix at its own temperature.
type Portion struct {
	Mass        float64 `json:"mass"`        // kg
	Temperature float64 `json:"temperature"` // K
}

// MixTemperature is what the ingredients come to when mixed, K: the mean of their temperatures weighted by mass, the dry ones counting 0.22
// (the equation above; heat from stirring, the bucket and the air are left out).
func MixTemperature(water Portion, dry ...Portion) (float64, error) {
	heat, perDegree := 0.0, 0.0
	add := func(p Portion, ratio float64) {
		perDegree += ratio * p.Mass
		heat += ratio * p.Mass * p.Temperature
	}
	add(water, 1)
	for _, p := range dry {
		add(p, powderHeat)
	}
	for _, p := range append([]Portion{water}, dry...) {
		if !(p.Mass >= 0) || !positive(p.Temperature) {
			return 0, refuse("mix", number(p.Mass, 3)+" kg at "+celsius(p.Temperature), "give each mass, not below zero, and its temperature")
		}
	}
	if !positive(perDegree) {
		return 0, refuse("mix", "nothing in the bucket", "give the masses of powder and water")
	}
	return heat / perDegree, nil
}

// WaterTemperature is how warm the water must be, K, for powder and water (kg) to come to the wanted mix temperature. Below 0 °C or above 100 °C
// it is refused in words, with what water at that limit would reach.
func WaterTemperature(wanted float64, powder Portion, water float64) (float64, error) {
	if !positive(wanted) || !(powder.Mass >= 0) || !positive(powder.Temperature) || !positive(water) {
		return 0, refuse("mix", "powder "+number(powder.Mass, 3)+" kg at "+celsius(powder.Temperature)+", water "+number(water, 3)+" kg, wanted "+celsius(wanted),
			"give both masses, the powder's temperature and the one wanted")
	}
	needed := wanted + powderHeat*powder.Mass*(wanted-powder.Temperature)/water
	if needed < ZeroCelsius {
		return 0, waterRefusal(wanted, needed, ZeroCelsius, powder, water, "cool the powder or the room first")
	}
	if needed > ZeroCelsius+100 {
		return 0, waterRefusal(wanted, needed, ZeroCelsius+100, powder, water, "warm the powder and the room first")
	}
	return needed, nil
}

func waterRefusal(wanted, needed, limit float64, powder Portion, water float64, works string) error {
	reach, err := MixTemperature(Portion{water, limit}, powder)
	if err != nil {
		return err
	}
	return refuse("water temperature", "a mix at "+celsius(wanted)+" would need water at "+celsius(needed),
		works+": even water at "+celsius(limit)+" brings the mix to "+celsius(reach))
}
