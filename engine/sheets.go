package engine

import "lowspot/engine/quantity"

// The kinds of product that have a sheet, in the order of the work.
var SheetKinds = []string{"primer", "patch", "leveller", "aggregate", "barrier"}

// GenericSheets are the sheets that a new job starts with: typical values of a product kind, common practice, no product's own. The bag goes first.
func GenericSheets(units quantity.System) map[string]Sheet {
	sheets := genericMetric
	if units == quantity.US {
		sheets = genericUS
	}
	copied := make(map[string]Sheet, len(sheets))
	for kind, values := range sheets {
		copied[kind] = Sheet{Name: "Typical " + kind, Generic: true, Values: copyAnswers(values)}
	}
	return copied
}

func copyAnswers(answers Answers) Answers {
	copied := make(Answers, len(answers))
	for name, typed := range answers {
		copied[name] = typed
	}
	return copied
}

var genericMetric = map[string]Answers{
	"leveller": {
		"sheet.bag_mass": "25 kg", "sheet.bag_yield": "14 L", "sheet.water_least": "4.8 L", "sheet.water_most": "5.2 L",
		"sheet.least_depth": "3 mm", "sheet.least_depth_wood": "10 mm", "sheet.greatest_lift": "30 mm", "sheet.greatest_lift_filled": "60 mm", "sheet.for_wood": "yes",
		"sheet.mix_time": "2 min", "sheet.rest_time": "2 min", "sheet.flow_time": "20 min", "sheet.wet_edge": "10 min",
		"sheet.walk_after": "4 h", "sheet.tile_after": "24 h", "sheet.cover_after": "72 h", "sheet.coldest": "10 °C", "sheet.warmest": "30 °C",
		"sheet.density": "2000 kg/m³", "sheet.spread_least": "130 mm", "sheet.spread_most": "150 mm", "sheet.keeps": "180 d", "sheet.strength": "25 MPa",
	},
	"primer": {
		"primer.dilution_porous": "1:3", "primer.dilution_normal": "1:1", "primer.neat_on_dense": "yes", "primer.neat_on_wood": "yes",
		"primer.coats_porous": "2", "primer.coats": "1", "primer.coverage": "8 m²/L", "primer.dry_least": "2 h", "primer.dry_most": "24 h", "primer.pack": "5 L", "primer.keeps": "365 d",
	},
	"patch":     {"patch.bag_mass": "10 kg", "patch.bag_yield": "6 L", "patch.powder_to_water": "2:1", "patch.cure": "2 h", "patch.keeps": "180 d"},
	"aggregate": {"aggregate.bag_mass": "25 kg", "aggregate.share_most": "50 %", "aggregate.grain_density": "2650 kg/m³"},
	"barrier":   {"barrier.limit": "95 %", "barrier.coverage": "3 m²/L", "barrier.coats": "2", "barrier.pack": "5 L", "barrier.keeps": "365 d"},
}

var genericUS = map[string]Answers{
	"leveller": {
		"sheet.bag_mass": "50 lb", "sheet.bag_yield": "0.45 cu ft", "sheet.water_least": "4.75 qt", "sheet.water_most": "5.25 qt",
		"sheet.least_depth": "1/8 in", "sheet.least_depth_wood": "3/8 in", "sheet.greatest_lift": "1 1/4 in", "sheet.greatest_lift_filled": "2 1/2 in", "sheet.for_wood": "yes",
		"sheet.mix_time": "2 min", "sheet.rest_time": "2 min", "sheet.flow_time": "20 min", "sheet.wet_edge": "10 min",
		"sheet.walk_after": "4 h", "sheet.tile_after": "24 h", "sheet.cover_after": "72 h", "sheet.coldest": "50 °F", "sheet.warmest": "85 °F",
		"sheet.density": "125 lb/ft³", "sheet.spread_least": "5 1/8 in", "sheet.spread_most": "5 7/8 in", "sheet.keeps": "180 d", "sheet.strength": "3600 psi",
	},
	"primer": {
		"primer.dilution_porous": "1:3", "primer.dilution_normal": "1:1", "primer.neat_on_dense": "yes", "primer.neat_on_wood": "yes",
		"primer.coats_porous": "2", "primer.coats": "1", "primer.coverage": "300 sq ft/gal", "primer.dry_least": "2 h", "primer.dry_most": "24 h", "primer.pack": "1 gal", "primer.keeps": "365 d",
	},
	"patch":     {"patch.bag_mass": "25 lb", "patch.bag_yield": "0.25 cu ft", "patch.powder_to_water": "2:1", "patch.cure": "2 h", "patch.keeps": "180 d"},
	"aggregate": {"aggregate.bag_mass": "50 lb", "aggregate.share_most": "50 %", "aggregate.grain_density": "165 lb/ft³"},
	"barrier":   {"barrier.limit": "95 %", "barrier.coverage": "120 sq ft/gal", "barrier.coats": "2", "barrier.pack": "1 gal", "barrier.keeps": "365 d"},
}
