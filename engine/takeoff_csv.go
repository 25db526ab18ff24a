package engine

import (
	"strconv"

	"lowspot/engine/takeoff"
)

// WriteTakeOff writes a take-off as CSV for a spreadsheet program: one line a thing and size of pack, what it is for in words at its end.
func WriteTakeOff(t *TakeOff) string {
	rows := [][]string{{"group", "item", "need", "packs", "pack", "pack holds", "left over", "mass", "quoted", "stock code", "price of one", "amount", "because"}}
	for _, line := range t.Lines {
		because := ""
		for _, reason := range line.Because {
			because += reason.Says + " "
		}
		quoted := "no"
		if line.Quoted {
			quoted = "yes"
		}
		for i, part := range line.Parts {
			price := LinePrice{}
			if part.Price != nil {
				price = *part.Price
			}
			need, over, mass, why := "", "", "", ""
			if i == 0 { // what counts for the whole line stands once, so that columns add up
				need, over, mass, why = line.Need.Text, line.Leftover.Text, line.Mass.Text, because
			}
			rows = append(rows, []string{line.Group, line.Item, need, strconv.Itoa(part.Packs), line.PackName, part.Pack.Text, over, mass, quoted, price.Code, price.Each, price.Amount, why})
		}
	}
	return takeoff.WriteCSV(rows)
}

// ReadPriceList reads a price list in a shop's currency.
func ReadPriceList(text string, shop *Shop) ([]takeoff.Price, []takeoff.BadRow) {
	prices, bad := takeoff.ReadPrices(text, shop.money())
	return some(prices), some(bad)
}

// WritePriceList writes a shop's price list.
func WritePriceList(shop *Shop) string { return takeoff.WritePrices(shop.Prices, shop.money()) }

// SetPrice gives the shop a price for an item in a pack, as typed, in place of the one it had; nothing typed takes it off the list.
func SetPrice(shop Shop, item, pack, typed string) (Shop, error) {
	prices := []takeoff.Price{}
	changed := takeoff.Price{Item: item, Pack: pack}
	for _, row := range shop.Prices {
		if alike(row.Item) != alike(item) || alike(row.Pack) != alike(pack) {
			prices = append(prices, row)
		} else {
			changed = row
		}
	}
	if typed != "" {
		amount, err := shop.money().Read(typed)
		if err == nil && amount < 0 {
			err = &takeoff.Error{Field: "price", Given: typed, Message: "A price can't be below zero.", Remedy: "Give a reduction as the customer's discount."}
		}
		if bad, ok := err.(*takeoff.Error); ok {
			return shop, Problem{Code: "price", Field: "price", Given: typed, Message: bad.Message, Remedy: bad.Remedy}
		}
		changed.Price = amount
		prices = append(prices, changed)
	}
	shop.Prices = prices
	return shop, nil
}

func (s *Shop) money() takeoff.Currency { return takeoff.Currency{Code: s.Currency, Digits: s.Digits} }
