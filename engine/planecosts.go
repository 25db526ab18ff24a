package engine

// PlaneCosts is what the whole list comes to with each of a job's planes, in the order of the study's.
type PlaneCosts struct {
	Rooms []RoomPlaneCosts `json:"rooms"`
	Why   string           `json:"why"` // why there are none; empty where there are
}

// RoomPlaneCosts is one room's planes priced, the rest of the job as it is.
type RoomPlaneCosts struct {
	ID     string      `json:"id"`
	Planes []PlaneCost `json:"planes"`
}

// PlaneCost is what a job comes to with a plane.
type PlaneCost struct {
	Choice PlaneChoice `json:"choice"`
	Buy    int         `json:"buy"`   // bags of leveller, at the confidence chosen
	Total  string      `json:"total"` // of all that is quoted and priced, with the currency
	Amount int64       `json:"amount"`
}

// MakePlaneCosts prices every way to place the finish plane: the take-off's total with each, everything else as it is. Pure, and slower than a take-off.
func MakePlaneCosts(job *Job, book *Rulebook, shop *Shop) PlaneCosts {
	none := func(why string) PlaneCosts { return PlaneCosts{Rooms: []RoomPlaneCosts{}, Why: why} }
	if shop == nil || len(shop.Prices) == 0 {
		return none("A price list gives what each plane costs: bring one at the counter.")
	}
	now := workOut(job, book)
	costs := none("")
	for i, r := range now.rooms {
		if !r.hasPour {
			continue
		}
		room := RoomPlaneCosts{ID: r.plan.ID, Planes: []PlaneCost{}}
		for _, choice := range r.planeChoices() {
			tried := *job
			tried.Rooms = append([]Room{}, job.Rooms...)
			tried.Rooms[i].Plane = choice
			list := takeOffOf(workFrom(now, &tried), shop)
			if list.Bill == nil || list.Bags == nil || list.lacksPrice("leveller") {
				return none("The price list has no leveller, or a rate of the shop can't be read: what a plane costs can't be told.")
			}
			room.Planes = append(room.Planes, PlaneCost{Choice: choice, Buy: list.Bags.Buy, Total: list.Bill.Total + " " + list.Bill.Currency, Amount: list.Bill.Amount})
		}
		costs.Rooms = append(costs.Rooms, room)
	}
	return costs
}

// lacksPrice tells whether the list asks for what it calls by a key, and has no price for it.
func (t *TakeOff) lacksPrice(key string) bool {
	for _, line := range t.Lines {
		if line.Key == key {
			return line.Parts[0].Price == nil
		}
	}
	return false
}
