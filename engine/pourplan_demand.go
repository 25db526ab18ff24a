package engine

import (
	"math"

	"lowspot/engine/pour"
	"lowspot/engine/quantity"
	"lowspot/rules"
)

// times are the sheet's times at the temperatures of the job, s.
type times struct {
	fastest, slowest          float64 // K
	flow, wetEdge             float64
	walk, tile, cover, heated float64
	known                     bool
}

// figure gives a figure of the rulebook. One that can't be worked out is a problem of its own, and the pour then waits for it.
func (p *pourWork) figure(name string) float64 {
	value, result := p.book.quantity(name, p.facts)
	if result.State == rules.Known {
		return value
	}
	p.ready = false
	problem := Problem{Code: "figure", Field: "book/" + name, Message: "The rulebook's figure " + name + " can't be worked out.", Remedy: "Look at it in the rulebook."}
	if result.Fault != nil {
		problem.Message += " " + result.Fault.Message
	}
	p.fail(problem)
	return 0
}

// whole gives a figure that counts people or things.
func (p *pourWork) whole(name string) int {
	return int(math.Max(-1, math.Min(1000, math.Round(p.figure(name)))))
}

// readDemand takes from the rulebook what the pour goes by.
func (p *pourWork) readDemand() {
	p.ready = true
	d := &p.demand
	d.Mix, d.Bucket = p.mixAndBucket()
	d.Step = pour.LitreMark
	if p.units == quantity.US {
		d.Step = pour.QuartMark
	}
	d.Strip = p.figure("patch_width")
	d.Most = pour.Crew{People: p.whole("pour_people"), Mixers: p.whole("pour_mixers"), Buckets: p.whole("pour_buckets"), Barrows: p.whole("pour_barrows")}
	d.Pace = pour.Pace{
		Water: p.figure("measure_time"), Powder: p.figure("powder_time"), Mix: p.figure("mix_time"), Rest: p.figure("rest_time"),
		Pour: p.figure("pour_time"), Agitate: p.figure("spread_time"), Speed: p.figure("carry_speed"), Station: p.figure("station_way"),
	}
	p.readTimes()
	d.Pace.Flow, d.Pace.WetEdge = p.setting.flow, p.setting.wetEdge
}

// mixAndBucket counts what stays in buckets and on tools against each bag, so that batches and the bag count agree; the bucket's limit is stated in
// the same measure.
func (p *pourWork) mixAndBucket() (pour.Mix, pour.Bucket) {
	mass, waste := p.figure("bag_mass"), 1+p.figure("waste_share")
	mix := pour.Mix{BagMass: mass, Yield: p.figure("bag_yield") / mass / waste, WaterLow: p.figure("water_least") / mass, WaterHigh: p.figure("water_most") / mass, Water: p.figure("bag_water") / mass}
	return mix, pour.Bucket{Volume: p.figure("bucket_volume"), HeadRoom: 1 - (1-p.figure("head_room"))/waste}
}

// readTimes brings the sheet's times to the job's temperatures: what must not come too late goes by the warmest of air, deck and mix, what must not
// come too early by the coldest.
func (p *pourWork) readTimes() {
	t := &p.setting
	t.fastest, t.slowest = p.figure("fastest_setting"), p.figure("slowest_setting")
	for _, one := range []struct {
		into        *float64
		figure      string
		temperature float64
	}{
		{&t.flow, "flow_time", t.fastest}, {&t.wetEdge, "wet_edge", t.fastest}, {&t.walk, "walk_after", t.slowest}, {&t.tile, "tile_after", t.slowest},
		{&t.cover, "cover_after", t.slowest}, {&t.heated, "heating_on", t.slowest},
	} {
		seconds, err := pour.CommonSetting.TimeAt(p.figure(one.figure), one.temperature)
		if err != nil {
			p.fail(p.refusal(err))
			p.ready = false
			return
		}
		*one.into = seconds
	}
	t.known = true
}

func (p *pourWork) settingPlan() SettingPlan {
	t := p.setting
	plan := SettingPlan{Says: pour.CommonSetting.States(), Fastest: p.of(t.fastest, quantity.Temperature), Slowest: p.of(t.slowest, quantity.Temperature)}
	if !t.known {
		return plan
	}
	plan.Flow, plan.WetEdge, plan.Walk = p.of(t.flow, quantity.Time), p.of(t.wetEdge, quantity.Time), p.of(t.walk, quantity.Time)
	plan.Tile, plan.Cover = p.of(t.tile, quantity.Time), p.of(t.cover, quantity.Time)
	return plan
}
