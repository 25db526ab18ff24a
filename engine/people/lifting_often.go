package people

import "math"

// often is NIOSH 94-110 Table 5, values as recalled, document not at hand: the multiplier by lifts a minute, for work of an hour, of two hours and of eight.
// At nine a minute and more the second and third figures are for lifts that start at the knuckles or above; below they are those of lowOften.
var often = []struct{ perMinute, hour, two, eight float64 }{
	{0.2, 1.00, 0.95, 0.85}, {0.5, 0.97, 0.92, 0.81}, {1, 0.94, 0.88, 0.75}, {2, 0.91, 0.84, 0.65}, {3, 0.88, 0.79, 0.55}, {4, 0.84, 0.72, 0.45},
	{5, 0.80, 0.60, 0.35}, {6, 0.75, 0.50, 0.27}, {7, 0.70, 0.42, 0.22}, {8, 0.60, 0.35, 0.18}, {9, 0.52, 0.30, 0.15}, {10, 0.45, 0.26, 0.13},
	{11, 0.41, 0.23, 0}, {12, 0.37, 0.21, 0}, {13, 0.34, 0, 0}, {14, 0.31, 0, 0}, {15, 0.28, 0, 0},
}

// From this many lifts a minute on, one that starts below the knuckles has no allowance left, by how long the work lasts.
const (
	lowOftenHour  = 13
	lowOftenTwo   = 11
	lowOftenEight = 9
)

// frequency is the multiplier of so many lifts a minute over a time (s); between two rows of the table the line between them holds.
func frequency(perMinute, lasting float64, low bool) float64 {
	column, lowFrom := 2, float64(lowOftenEight)
	switch {
	case lasting <= 1*hour:
		column, lowFrom = 0, lowOftenHour
	case lasting <= 2*hour:
		column, lowFrom = 1, lowOftenTwo
	}
	if low && perMinute >= lowFrom {
		return 0
	}
	at := func(i int) float64 { return [3]float64{often[i].hour, often[i].two, often[i].eight}[column] }
	for i := range often {
		if perMinute > often[i].perMinute {
			continue
		}
		if i == 0 {
			return at(0)
		}
		share := (perMinute - often[i-1].perMinute) / (often[i].perMinute - often[i-1].perMinute)
		return at(i-1) + share*(at(i)-at(i-1))
	}
	return 0
}

// Carries is how bags get to the room by hand.
type Carries struct {
	Trips  int     `json:"trips"`
	Loaded float64 `json:"loaded"` // walked with a load, m, by all together
	Walked float64 `json:"walked"` // walked in all, there and back again, m
	Mass   float64 `json:"mass"`   // carried, kg
	Lifts  int     `json:"lifts"`  // every bag up and down
}

// Carry counts the trips of whole bags (mass kg each), so many a trip, over a distance (m).
func Carry(bags int, mass float64, perTrip int, distance float64) (Carries, error) {
	switch {
	case bags < 0 || bags > 1e6:
		return Carries{}, refuse("bags", whole(bags), "There are up to a million bags.", "Give the whole bags to carry.")
	case perTrip < 1 || perTrip > 1000:
		return Carries{}, refuse("carry.bags", whole(perTrip), "A trip takes a bag or more.", "One bag by hand; a trolley takes four or so.")
	case !(mass > 0 && mass <= 1000):
		return Carries{}, refuse("sheet.bag_mass", kilograms(mass), "A bag weighs more than nothing and up to 1000 kg.", "It is printed on the bag.")
	case !(distance >= 0 && distance <= 1e5):
		return Carries{}, refuse("carry.distance", metres(distance), "The way lies between 0 and 100 km.", "Pace it out from the van to the room.")
	}
	trips := int(math.Ceil(float64(bags) / float64(perTrip)))
	c := Carries{Trips: trips, Loaded: float64(trips) * distance, Mass: float64(bags) * mass, Lifts: 2 * bags}
	c.Walked = 2 * c.Loaded
	return c, nil
}
