package engine

import (
	"strconv"
	"strings"

	"lowspot/engine/quantity"
	"lowspot/engine/takeoff"
)

// pricing is a shop with its rates read.
type pricing struct {
	*Shop
	currency takeoff.Currency
	terms    takeoff.Terms
	rows     map[string]takeoff.Price // by a line's key: the row that it is priced by
	ready    bool                     // every rate could be read
}

// price reads the shop and finds for every line the row of the price list that serves it at the least cost.
func (t *buying) price(shop *Shop) {
	t.shop = &pricing{Shop: shop, currency: shop.money(), rows: map[string]takeoff.Price{}, ready: true}
	t.readTerms()
	byName := map[string][]takeoff.Price{}
	for _, row := range shop.Prices {
		name := alike(row.Item)
		byName[name] = append(byName[name], row)
	}
	for i := range t.out.Lines {
		t.priceLine(&t.out.Lines[i], byName)
	}
}

// alike is a name as names are compared.
func alike(name string) string { return strings.ToLower(strings.Join(strings.Fields(name), " ")) }

func (t *buying) readTerms() {
	s := t.shop
	s.terms = takeoff.Terms{Inclusive: s.Inclusive, Rounding: s.Rounding}
	for i, class := range s.Classes {
		s.terms.Classes = append(s.terms.Classes, takeoff.TaxClass{Name: class.Name, Rate: t.rate("shop/classes/"+strconv.Itoa(i)+"/rate", class.Rate)})
	}
	if t.job.Offer != nil {
		s.terms.Discount = t.rate("offer/discount", t.job.Offer.Discount)
	}
}

// rate reads a share as typed; nothing typed is none.
func (t *buying) rate(field, typed string) takeoff.Rate {
	if strings.TrimSpace(typed) == "" {
		return 0
	}
	rate, err := takeoff.ReadRate(typed)
	if err != nil {
		t.refuseField(field, typed, err)
	}
	return rate
}

// amount reads money as typed; nothing typed is none.
func (t *buying) amount(field, typed string) takeoff.Money {
	if strings.TrimSpace(typed) == "" {
		return 0
	}
	amount, err := t.shop.currency.Read(typed)
	if err != nil {
		t.refuseField(field, typed, err)
	}
	return amount
}

// refuseField reports what the shop or the offer says that can't be used; the bill then waits for it.
func (t *buying) refuseField(field, typed string, err error) {
	t.shop.ready = false
	problem := Problem{Code: "price", Field: field, Given: typed, Message: err.Error()}
	if bad, ok := err.(*takeoff.Error); ok {
		problem.Message, problem.Remedy = bad.Message, bad.Remedy
	}
	t.fail(problem)
}

// priceLine takes the row whose whole packs cost least, and counts the line in that row's packs.
func (t *buying) priceLine(line *TakeOffLine, byName map[string][]takeoff.Price) {
	var best takeoff.Line
	var row takeoff.Price
	found := false
	for _, name := range line.names {
		for _, candidate := range byName[alike(name)] {
			packed, ok := packedAs(line, candidate)
			if ok && (!found || costs(packed, candidate) < costs(best, row)) {
				best, row, found = packed, candidate, true
			}
		}
	}
	if !found {
		return
	}
	t.shop.rows[line.Key] = row
	d := best.Dimension
	line.line, line.Packs = best, best.Packs
	line.Pack, line.Leftover, line.Mass = t.counting(best.Pack, d), t.counting(best.Leftover, d), t.of(best.Mass, quantity.Mass)
	if !countsOne(row.Pack) {
		line.Pack.Text = row.Pack
	}
}

// costs is what whole packs cost; beyond all measure it is as good as never.
func costs(line takeoff.Line, row takeoff.Price) takeoff.Money {
	if row.Price > takeoff.MostMoney/takeoff.Money(max(line.Packs, 1)) {
		return takeoff.MostMoney
	}
	return row.Price * takeoff.Money(line.Packs)
}

// packedAs counts a line in a row's packs: stated in the line's own measure, or by mass where the line's pack tells what that fills.
func packedAs(line *TakeOffLine, row takeoff.Price) (takeoff.Line, bool) {
	need, mass := line.line, line.line.Mass/float64(max(line.line.Packs, 1))
	if strings.TrimSpace(row.Pack) == "" {
		return need, true
	}
	holds, err := quantity.Read(row.Pack, need.Dimension)
	if err != nil {
		weighs, err := quantity.Read(row.Pack, quantity.Mass)
		if err != nil || mass <= 0 {
			return need, countsOne(row.Pack)
		}
		holds = need.Pack * weighs / mass
	}
	const same = 1e-3
	if line.fixed > 0 {
		return need, holds >= line.fixed*(1-same) && holds <= line.fixed*(1+same)
	}
	packed, err := takeoff.NewLine(need.Item, need.Need, need.Dimension, holds, mass*holds/need.Pack, need.Because...)
	return packed, err == nil
}

// countsOne tells whether a pack is only a word, such as "each" or "roll": then it is the line's own.
func countsOne(pack string) bool { return !strings.ContainsAny(pack, "0123456789") }

// worth is what so many packs of a line cost, with the currency; empty where the line has no price.
func (t *buying) worth(key string, packs int) string {
	if t.shop == nil || packs == 0 {
		return ""
	}
	row, priced := t.shop.rows[key]
	if !priced {
		return ""
	}
	return t.shop.currency.Write(costs(takeoff.Line{Packs: packs}, row)) + " " + t.shop.Currency
}
