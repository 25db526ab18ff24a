package engine

import q "lowspot/engine/quantity"

// The words that a product's bag or tin states.

var sheetWords = []Word{
	stated("leveller", "sheet.bag_mass", of(q.Mass), masses, "Powder in one bag.", "25 kg"),
	stated("leveller", "sheet.bag_yield", of(q.Volume), liquids, "What one bag, mixed, fills.", "14 L"),
	stated("leveller", "sheet.water_least", of(q.Volume), liquids, "Least water for one bag.", "4.8 L"),
	stated("leveller", "sheet.water_most", of(q.Volume), liquids, "Most water for one bag.", "5.2 L"),
	stated("leveller", "sheet.least_depth", of(q.Length), depths, "Least depth on concrete and screed.", "3 mm"),
	stated("leveller", "sheet.least_depth_wood", of(q.Length), depths, "Least depth on wood.", "10 mm"),
	stated("leveller", "sheet.greatest_lift", of(q.Length), depths, "Greatest depth of one lift.", "30 mm"),
	stated("leveller", "sheet.greatest_lift_filled", of(q.Length), depths, "Greatest depth of one lift with aggregate.", "60 mm"),
	stated("leveller", "sheet.for_wood", yesNo, counts, "The bag allows wood decks.", "yes"),
	stated("leveller", "sheet.mix_time", of(q.Time), minutes, "How long to mix.", "2 min"),
	stated("leveller", "sheet.rest_time", of(q.Time), minutes, "Rest after mixing, before it is poured.", "2 min"),
	stated("leveller", "sheet.flow_time", of(q.Time), minutes, "How long it flows from the first water, at 20 °C.", "20 min"),
	stated("leveller", "sheet.wet_edge", of(q.Time), minutes, "How long a poured edge still joins the next batch, at 20 °C.", "10 min"),
	stated("leveller", "sheet.walk_after", of(q.Time), hours, "When it may be walked on.", "4 h"),
	stated("leveller", "sheet.tile_after", of(q.Time), hours, "When it may be tiled.", "24 h"),
	stated("leveller", "sheet.cover_after", of(q.Time), hours, "When it may be covered by what lets no moisture out.", "72 h"),
	stated("leveller", "sheet.coldest", of(q.Temperature), degrees, "Coldest deck and air it may be poured in.", "10 °C"),
	stated("leveller", "sheet.warmest", of(q.Temperature), degrees, "Warmest deck and air it may be poured in.", "30 °C"),
	stated("leveller", "sheet.mix_coldest", of(q.Temperature), degrees, "Coldest fresh mix.", "10 °C"),
	stated("leveller", "sheet.mix_warmest", of(q.Temperature), degrees, "Warmest fresh mix.", "25 °C"),
	stated("leveller", "sheet.density", of(q.Density), densities, "Density when set.", "2000 kg/m³"),
	stated("leveller", "sheet.spread_least", of(q.Length), depths, "Least spread of the flow ring.", "130 mm"),
	stated("leveller", "sheet.spread_most", of(q.Length), depths, "Most spread of the flow ring.", "150 mm"),
	stated("leveller", "sheet.keeps", of(q.Time), days, "How long a closed bag keeps, dry.", "180 d"),
	stated("leveller", "sheet.strength", of(q.Pressure), stresses, "Compressive strength at 28 days.", "25 MPa"),
}

var primerWords = []Word{
	stated("primer", "primer.dilution_porous", of(q.Number), counts, "Primer to water on porous decks, by volume.", "1:3"),
	stated("primer", "primer.dilution_normal", of(q.Number), counts, "Primer to water on normal decks, by volume.", "1:1"),
	stated("primer", "primer.dilution_dense", of(q.Number), counts, "Parts primer to one part water on dense decks; leave empty for undiluted.", "3:1"),
	stated("primer", "primer.neat_on_dense", yesNo, counts, "Undiluted on dense decks.", "yes"),
	stated("primer", "primer.neat_on_wood", yesNo, counts, "Undiluted on wood.", "yes"),
	stated("primer", "primer.coats_porous", of(q.Number), counts, "Coats on porous decks.", "2"),
	stated("primer", "primer.coats", of(q.Number), counts, "Coats on other decks.", "1"),
	stated("primer", "primer.coverage", of(q.Coverage), coverages, "Area that one measure of the mix covers, one coat.", "8 m²/L"),
	stated("primer", "primer.dry_least", of(q.Time), hours, "Least drying before the pour.", "2 h"),
	stated("primer", "primer.dry_most", of(q.Time), hours, "Latest pour after priming.", "24 h"),
	stated("primer", "primer.pack", of(q.Volume), liquids, "What one tin holds.", "5 L"),
	stated("primer", "primer.pack_small", of(q.Volume), liquids, "What a smaller tin holds, where there is one.", "1 L"),
	stated("primer", "primer.keeps", of(q.Time), days, "How long a closed tin keeps, free of frost.", "365 d"),
}

var patchWords = []Word{
	stated("patch", "patch.bag_mass", of(q.Mass), masses, "Patch powder in one bag.", "10 kg"),
	stated("patch", "patch.bag_yield", of(q.Volume), liquids, "What one bag of patch fills.", "6 L"),
	stated("patch", "patch.powder_to_water", of(q.Number), counts, "Powder to water by volume.", "2:1"),
	stated("patch", "patch.cure", of(q.Time), hours, "Cure before primer.", "2 h"),
	stated("patch", "patch.keeps", of(q.Time), days, "How long a closed bag of patch keeps, dry.", "180 d"),
	stated("aggregate", "aggregate.bag_mass", of(q.Mass), masses, "Aggregate in one bag.", "25 kg"),
	stated("aggregate", "aggregate.share_most", of(q.Number), percents, "Most aggregate, by the powder's mass.", "50 %"),
	stated("aggregate", "aggregate.grain_density", of(q.Density), densities, "Density of the grain itself.", "2650 kg/m³"),
	stated("barrier", "barrier.limit", of(q.Number), percents, "Greatest humidity in the slab that the barrier holds back.", "95 %"),
	stated("barrier", "barrier.coverage", of(q.Coverage), coverages, "Area that one measure covers, one coat.", "3 m²/L"),
	stated("barrier", "barrier.coats", of(q.Number), counts, "Coats of the barrier.", "2"),
	stated("barrier", "barrier.dry", of(q.Time), hours, "How long a coat cures before what goes over it.", "12 h"),
	stated("barrier", "barrier.pack", of(q.Volume), liquids, "What one tin holds.", "5 L"),
	stated("barrier", "barrier.pack_small", of(q.Volume), liquids, "What a smaller tin holds, where there is one.", "1 L"),
	stated("barrier", "barrier.keeps", of(q.Time), days, "How long a closed tin keeps, free of frost.", "365 d"),
}
