// What a list of things comes to: discount, tax by class, delivery.
package takeoff

import "strconv"

// Where tax is rounded to whole coins.
const (
	RoundByLine = "line" // on every line, then added up
	RoundBySum  = "sum"  // once on the sum of each tax class
)

// Thousandths counts what is bought: 3000 is three packs, 2500 is two and a half hours.
type Thousandths int64

// MostThousandths is how much of one thing a bill may have: a million.
const MostThousandths Thousandths = 1e9

// Priced is one line to be billed.
type Priced struct {
	Item       string
	Count      Thousandths
	Price      Money  // of one
	Class      string // its tax class
	NoDiscount bool   // delivery, labour
}

// TaxClass is a class of tax and its rate.
type TaxClass struct {
	Name string `json:"name"`
	Rate Rate   `json:"rate"`
}

// Terms are how a bill is worked out.
type Terms struct {
	Classes   []TaxClass `json:"classes"`
	Inclusive bool       `json:"inclusive"` // the prices hold the tax already
	Rounding  string     `json:"rounding"`
	Discount  Rate       `json:"discount"`
}

// Billed is one line worked out. Amount is count × price, After is what stays of it after the discount; both hold the tax where prices do.
// Tax is the line's own, rounded; where tax is rounded by sum the classes' taxes count and these only inform.
type Billed struct {
	Item     string `json:"item"`
	Class    string `json:"class"`
	Amount   Money  `json:"amount"`
	Discount Money  `json:"discount"`
	After    Money  `json:"after"`
	Tax      Money  `json:"tax"`
}

// ClassSum is what all lines of one tax class come to.
type ClassSum struct {
	Name string `json:"name"`
	Rate Rate   `json:"rate"`
	Net  Money  `json:"net"`
	Tax  Money  `json:"tax"`
}

// Bill is the whole: Total = Net + Tax to the coin.
type Bill struct {
	Lines    []Billed   `json:"lines"`
	Classes  []ClassSum `json:"classes"` // those in use, in the order of the terms
	Discount Money      `json:"discount"`
	Net      Money      `json:"net"`
	Tax      Money      `json:"tax"`
	Total    Money      `json:"total"`
}

// NewBill works out a bill. The discount is rounded on every line, because every line shows it; the tax as the terms say.
func NewBill(lines []Priced, terms Terms) (Bill, error) {
	if err := terms.check(); err != nil {
		return Bill{}, err
	}
	bill := Bill{Lines: make([]Billed, 0, len(lines))}
	after := make([]Money, len(terms.Classes)) // of each class
	taxes := make([]Money, len(terms.Classes)) // of each class, rounded by line
	for i, line := range lines {
		class, err := terms.checkLine(i, line)
		if err != nil {
			return Bill{}, err
		}
		billed := terms.line(line, class)
		bill.Lines = append(bill.Lines, billed)
		bill.Discount += billed.Discount
		after[class] += billed.After
		taxes[class] += billed.Tax
		if after[class] > MostMoney {
			return Bill{}, refuse(line.Item, "", "The bill comes to more than is ever sold here.", "Check the counts and prices.")
		}
	}
	bill.sum(terms, lines, after, taxes)
	return bill, nil
}

func (t Terms) line(p Priced, class int) Billed {
	b := Billed{Item: p.Item, Class: p.Class, Amount: share(p.Price, int64(p.Count), 1000)}
	if !p.NoDiscount {
		b.Discount = t.Discount.Of(b.Amount)
	}
	b.After = b.Amount - b.Discount
	b.Tax = t.tax(b.After, class)
	return b
}

func (t Terms) tax(after Money, class int) Money {
	if t.Inclusive {
		return t.Classes[class].Rate.Within(after)
	}
	return t.Classes[class].Rate.Of(after)
}

func (b *Bill) sum(t Terms, lines []Priced, after, taxes []Money) {
	used := map[string]bool{}
	for _, line := range lines {
		used[line.Class] = true
	}
	for i, class := range t.Classes {
		if !used[class.Name] {
			continue
		}
		tax, net := taxes[i], after[i]
		if t.Rounding == RoundBySum {
			tax = t.tax(after[i], i)
		}
		if t.Inclusive {
			net -= tax
		}
		b.Classes = append(b.Classes, ClassSum{Name: class.Name, Rate: class.Rate, Net: net, Tax: tax})
		b.Net += net
		b.Tax += tax
	}
	b.Total = b.Net + b.Tax
}

func (t Terms) check() error {
	if t.Rounding != RoundByLine && t.Rounding != RoundBySum {
		return refuse("rounding", t.Rounding, "Tax is rounded by line or by sum.", "Choose one of them.")
	}
	if t.Discount < 0 || t.Discount > whole {
		return refuse("discount", t.Discount.Write(), "A discount lies between 0 % and 100 %.", "Give it so.")
	}
	seen := map[string]bool{}
	for _, class := range t.Classes {
		if class.Rate < 0 || class.Rate > MostRate {
			return refuse("tax class "+class.Name, class.Rate.Write(), "This isn't a tax rate.", "Give it between 0 % and 1000 %.")
		}
		if seen[class.Name] {
			return refuse("tax class "+class.Name, class.Name, "Two tax classes have this name.", "Give each its own.")
		}
		seen[class.Name] = true
	}
	return nil
}

func (t Terms) checkLine(i int, p Priced) (class int, err error) {
	field := "line " + strconv.Itoa(i+1) + ", " + shown(p.Item)
	if p.Price < 0 || p.Price > MostMoney {
		return 0, refuse(field, strconv.FormatInt(int64(p.Price), 10), "A price can't be below zero or beyond all measure.", "Check the price list.")
	}
	if p.Count < 0 || p.Count > MostThousandths || p.Price > 0 && int64(p.Count) > int64(MostMoney)*1000/int64(p.Price) {
		return 0, refuse(field, strconv.FormatInt(int64(p.Count/1000), 10), "So many can't be billed.", "Check how many are needed.")
	}
	for class := range t.Classes {
		if t.Classes[class].Name == p.Class {
			return class, nil
		}
	}
	return 0, refuse(field, p.Class, "No tax class is called “"+shown(p.Class)+"”.", "Add the class with its rate, or give this item one of the others.")
}
