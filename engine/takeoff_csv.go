package engine

import "lowspot/engine/takeoff"

// ReadPriceList reads a price list in a shop's currency.
func ReadPriceList(text string, shop *Shop) ([]takeoff.Price, []takeoff.BadRow) {
	prices, bad := takeoff.ReadPrices(text, shop.money())
	return some(prices), some(bad)
}

// WritePriceList writes a shop's price list, its columns called as named.
func WritePriceList(shop *Shop, names []string, comma bool) string {
	return takeoff.WritePrices(shop.Prices, shop.money(), names, comma)
}

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
