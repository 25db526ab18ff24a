package pour

// Hand is what one person of the crew does in a pour. Whoever carries a batch pours and spreads it.
type Hand struct {
	Person  int  `json:"person"` // from 1
	Mixes   bool `json:"mixes"`
	Carries bool `json:"carries"`
}

// HandsOf tells what everybody does in a pour, by person.
func HandsOf(t Timeline) []Hand {
	hands := make([]Hand, t.Crew.People)
	for i := range hands {
		hands[i].Person = i + 1
	}
	for _, task := range t.Tasks {
		if task.Person < 1 || task.Person > len(hands) {
			continue
		}
		switch task.Kind {
		case TaskWater, TaskPowder, TaskMix:
			hands[task.Person-1].Mixes = true
		case TaskCarry, TaskPour, TaskAgitate, TaskReturn:
			hands[task.Person-1].Carries = true
		}
	}
	return hands
}
