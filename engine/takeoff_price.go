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
	ready    bool // every rate could be read
}

// price reads the shop and finds for every line the rows of the price list that serve it at the least cost.
func (t *buying) price(shop *Shop) {
	t.shop = &pricing{Shop: shop, currency: shop.money(), ready: true}
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

// priceLine takes the rows whose whole packs cost least together, and counts the line in their packs.
func (t *buying) priceLine(line *TakeOffLine, byName map[string][]takeoff.Price) {
	var parts []LinePack
	var sizes []takeoff.Size
	for _, name := range line.names {
		for _, row := range byName[alike(name)] {
			holds, ok := packHolds(line, row)
			if !ok {
				continue
			}
			part := t.partOf(line, holds)
			if !countsOne(row.Pack) {
				part.Pack.Text = row.Pack
			}
			part.row = &row
			parts, sizes = append(parts, part), append(sizes, takeoff.Size{Holds: holds, Price: row.Price})
		}
	}
	if len(parts) == 0 {
		return
	}
	need := line.line.Need
	if line.fixed > 0 {
		need = float64(line.Packs) * line.fixed // so many packs of this very kind, for whatever reason
		for i := range sizes {
			sizes[i].Holds = line.fixed
		}
	}
	for i, packs := range takeoff.Mix(need, sizes) {
		parts[i].Packs = packs
	}
	t.pack(line, parts)
}

// packHolds is what a row's pack holds in a line's own measure: stated in it, or by mass where the line's pack tells what that fills.
func packHolds(line *TakeOffLine, row takeoff.Price) (float64, bool) {
	own, mass := line.line.Pack, line.line.Mass/float64(max(line.line.Packs, 1))
	if countsOne(row.Pack) {
		return own, true
	}
	holds, err := quantity.Read(row.Pack, line.line.Dimension)
	if err != nil {
		weighs, err := quantity.Read(row.Pack, quantity.Mass)
		if err != nil || mass <= 0 {
			return 0, false
		}
		holds = own * weighs / mass
	}
	const same = 1e-3
	if line.fixed > 0 && !(holds >= line.fixed*(1-same) && holds <= line.fixed*(1+same)) {
		return 0, false
	}
	_, err = takeoff.NewLine(line.Item, line.line.Need, line.line.Dimension, holds, 0)
	return holds, err == nil
}

// countsOne tells whether a pack is only a word, such as "each" or "roll": then it is the line's own.
func countsOne(pack string) bool { return !strings.ContainsAny(pack, "0123456789") }

// worth is what so many packs of a line cost, with the currency; empty where the line has no price.
func (t *buying) worth(key string, packs int) string {
	for i := range t.out.Lines {
		if line := &t.out.Lines[i]; line.Key == key && packs > 0 && line.Parts[0].row != nil {
			return t.shop.currency.Write(takeoff.CostOf(line.Parts[0].row.Price, packs)) + " " + t.shop.Currency
		}
	}
	return ""
}
