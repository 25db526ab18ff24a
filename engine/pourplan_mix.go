package engine

import (
	"errors"

	"lowspot/engine/pour"
	"lowspot/engine/quantity"
)

// mixPlan works out the water that brings the mix into the sheet's window, and holds the flow ring against the sheet.
func (p *pourWork) mixPlan() MixPlan {
	coldest, warmest := p.figure("mix_coldest"), p.figure("mix_warmest")
	plan := MixPlan{Coldest: p.of(coldest, quantity.Temperature), Warmest: p.of(warmest, quantity.Temperature)}
	if mixed, known := p.facts["mix.temperature"]; known {
		plan.Temperature = p.pointer(mixed.Value.Number, quantity.Temperature)
	}
	p.planWater(&plan, coldest, warmest)
	p.planSpread(&plan)
	return plan
}

// planWater gives the range of water temperatures; a refusal says what else to warm or cool.
func (p *pourWork) planWater(plan *MixPlan, coldest, warmest float64) {
	powder, known := p.facts["powder.temperature"]
	if !known {
		plan.Says = "Give the bags' temperature, and the water that suits it is worked out."
		return
	}
	dry := pour.Portion{Mass: p.demand.Mix.BagMass, Temperature: powder.Value.Number}
	water := p.demand.Mix.Water * p.demand.Mix.BagMass * waterDensity
	from, tooCold := pour.WaterTemperature(coldest, dry, water)
	to, tooWarm := pour.WaterTemperature(warmest, dry, water)
	switch {
	case tooWarm != nil && tooCold != nil:
		plan.Says = refusalSays(tooWarm)
	case tooCold != nil:
		plan.WaterTo = p.pointer(to, quantity.Temperature)
		plan.Says = "With bags at " + p.of(powder.Value.Number, quantity.Temperature).Text + ", water up to " + plan.WaterTo.Text + " keeps the mix within the sheet's window."
	case tooWarm != nil:
		plan.WaterFrom = p.pointer(from, quantity.Temperature)
		plan.Says = "With bags at " + p.of(powder.Value.Number, quantity.Temperature).Text + ", water must have " + plan.WaterFrom.Text + " at least. Never take hot water to hurry a mix."
	default:
		plan.WaterFrom, plan.WaterTo = p.pointer(from, quantity.Temperature), p.pointer(to, quantity.Temperature)
		plan.Says = "With bags at " + p.of(powder.Value.Number, quantity.Temperature).Text + ", water at " + plan.WaterFrom.Text + " to " + plan.WaterTo.Text + " brings the mix into the sheet's window."
	}
}

func refusalSays(err error) string {
	var bad *pour.Refusal
	if !errors.As(err, &bad) {
		return err.Error()
	}
	return sentence(bad.Given) + " " + sentence(bad.Works)
}

func (p *pourWork) planSpread(plan *MixPlan) {
	low, known := p.facts["sheet.spread_least"]
	high, stated := p.facts["sheet.spread_most"]
	if !known || !stated {
		return
	}
	plan.SpreadFrom, plan.SpreadTo = p.pointer(low.Value.Number, quantity.Length), p.pointer(high.Value.Number, quantity.Length)
	measured, given := p.facts["mix.spread"]
	if !given {
		return
	}
	result, err := pour.CheckSpread(measured.Value.Number, low.Value.Number, high.Value.Number)
	if err != nil {
		p.fail(p.refusal(err))
		return
	}
	plan.Spread = &result
}
