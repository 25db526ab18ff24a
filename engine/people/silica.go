package people

import (
	"strconv"

	"lowspot/engine/quantity"
)

// Respirator is the assigned protection factor a task needs for a shift of up to four hours of it and for a longer one; zero is none.
type Respirator struct {
	Short int `json:"short"`
	Long  int `json:"long"`
}

// DustTask is a task with the control that goes with it in OSHA 29 CFR 1926.1153 Table 1. Whoever keeps to a row fully need not measure the air. Mixing
// powder from bags isn't in the table.
type DustTask struct {
	ID       string     `json:"id"`
	Name     string     `json:"name"`
	Control  string     `json:"control"`
	PerWheel bool       `json:"perWheel"` // the collector's airflow goes by the wheel's diameter
	OutOnly  bool       `json:"outOnly"`  // the row is for work outdoors only
	Outdoors Respirator `json:"outdoors"`
	Indoors  Respirator `json:"indoors"`
	Source   string     `json:"source"`
}

const (
	table1    = "OSHA 29 CFR 1926.1153 Table 1 "
	secondary = ", secondary transcription"
	recalled  = ", value as recalled, document not at hand"
)

// DustTasks are the table's rows that floors meet.
var DustTasks = []DustTask{
	{"grinder-water", "Handheld grinder on a floor, wet", "Water fed to the wheel all the time.", false, true,
		Respirator{}, Respirator{}, table1 + "(xii)" + secondary + "; up to four hours, and outdoors only, as recalled"},
	{"grinder-shroud", "Handheld grinder on a floor, dry", "Shroud and dust collector made for the tool.", true, false,
		Respirator{}, Respirator{Long: 10}, table1 + "(xii)" + secondary},
	{"mortar", "Handheld grinder taking out joints", "Shroud and dust collector made for the tool.", true, false,
		Respirator{10, 25}, Respirator{10, 25}, table1 + "(xi)" + secondary},
	{"floor-grinder", "Walk-behind grinder or milling machine", "Dust collector made for the machine; indoors the loose dust is taken up with a HEPA vacuum between passes.", false, false,
		Respirator{}, Respirator{}, table1 + "(xiii), trade-magazine reproduction, 2017"},
	{"drill", "Handheld drill, impact and rotary too", "Shroud or cowling with dust collector; holes cleaned with a HEPA vacuum.", false, false,
		Respirator{}, Respirator{}, table1 + "(vii)" + recalled},
	{"chipping", "Handheld chipping hammer", "Water at the point of impact all the time, or shroud and dust collector.", false, false,
		Respirator{0, 10}, Respirator{10, 10}, table1 + "(x)" + recalled},
	{"saw-water", "Handheld power saw, wet", "Water fed to the blade all the time.", false, false,
		Respirator{0, 10}, Respirator{10, 10}, table1 + "(ii)" + recalled},
}

// DustTaskNamed finds a task by its ID.
func DustTaskNamed(id string) (DustTask, bool) {
	for _, task := range DustTasks {
		if task.ID == id {
			return task, true
		}
	}
	return DustTask{}, false
}

// shortShift is how long the table's first column reaches, s.
const shortShift = 4 * 3600

// Factor is the protection factor that the task needs for so long a time of it in a shift, s; zero is no respirator.
func (t DustTask) Factor(duration float64, indoors bool) (int, error) {
	if !(duration >= 0 && duration <= 24*3600) {
		return 0, refuse("dust.hours", quantity.Write(duration, quantity.Time, quantity.Metric), "A shift has up to 24 hours.", "Give how long this task takes in one shift.")
	}
	if indoors && t.OutOnly {
		return 0, refuse("dust.task", t.Name, "The table has this for work outdoors only.", "Use a shroud and a dust collector indoors.")
	}
	needed := t.Outdoors
	if indoors {
		needed = t.Indoors
	}
	if duration <= shortShift {
		return needed.Short, nil
	}
	return needed.Long, nil
}

// Airflow is what a dust collector must draw at a wheel of a diameter (m), m³/s: 25 cubic feet a minute for each inch. OSHA 29 CFR 1926.1153 Table 1
// (trade-magazine reproduction, 2017).
func Airflow(wheel float64) (float64, error) {
	if !(wheel >= 0.02 && wheel <= 1) {
		return 0, refuse("dust.wheel", strconv.FormatFloat(wheel*1000, 'g', 4, 64)+" mm", "A wheel is between 20 mm and 1 m across.", "Grinders have 4 1/2, 5 or 7 in (115, 125 or 180 mm).")
	}
	return wheel / inch * 25 * cubicFoot / 60, nil
}

const (
	inch      = 0.0254
	cubicFoot = 0.3048 * 0.3048 * 0.3048
)

// What air may hold of respirable crystalline silica over a shift of eight hours, kg/m³.
const (
	SilicaLimitUS  = 50e-9  // 29 CFR 1926.1153 (reproduction)
	SilicaActionUS = 25e-9  // 29 CFR 1926.1153 (reproduction)
	SilicaLimitEU  = 0.1e-6 // Directive 2004/37/EC as amended by (EU) 2017/2398
	SilicaLimitUK  = 0.1e-6 // HSE EH40/2005, 4th edition 2020, value as recalled, document not at hand; the older 0.3 still circulates
)

// What filters must hold back, as a share of 1.
const (
	HEPAEfficiency      = 0.9997 // of particles of 0.3 µm: 29 CFR 1926.1153(b) (reproduction)
	CollectorEfficiency = 0.99   // with a cyclone before it or a way to clean the filter: Table 1 (trade-magazine reproduction, 2017)
)
