// The price list: what a shop sells, in which pack, at which price; opened from and saved to CSV.
package takeoff

import (
	"strconv"
	"strings"

	"lowspot/engine/table"
)

// Price is one row of a price list. Pack is as typed ("25 kg", "5 L"); an item may have several rows, one a pack.
type Price struct {
	Item  string `json:"item"`
	Pack  string `json:"pack"`
	Price Money  `json:"price"`
	Class string `json:"class"`
	Code  string `json:"code"`
	Cost  Money  `json:"cost"` // what the shop pays; zero where the list doesn't say
}

// The limits of a price list.
const (
	MostPriceBytes = 8 << 20
	MostPrices     = 20_000
	LongestField   = 200 // bytes
	MostBad        = 200 // bad rows beyond are left unnamed
)

// BadRow is a row that couldn't be read. Line counts from 1; zero is the text as a whole.
type BadRow struct {
	Line    int    `json:"line"`
	Given   string `json:"given"`
	Message string `json:"message"`
	Remedy  string `json:"remedy"`
}

// ReadPrices reads a price list from CSV, the bytes as spreadsheet programs write them: columns apart by comma, semicolon or tab, named in the first row in any order
// or, without names, item, pack, price, tax class, stock code, cost. Rows that can't be read are named, the others kept.
func ReadPrices(text string, c Currency) (prices []Price, bad []BadRow) {
	if len(text) > MostPriceBytes {
		return nil, []BadRow{{Message: "The price list has more than 8 MB.", Remedy: "Save only the rows that this shop sells."}}
	}
	clean, separator := table.Clean(table.Decode(text))
	if separator == 0 {
		separator = priceSeparator(clean)
	}
	r := priceReader{currency: c, columns: plainPrices}
	table.Each(clean, separator, func(row table.Row) bool {
		r.read(row)
		return len(r.prices) <= MostPrices
	})
	if len(r.prices) > MostPrices {
		r.prices = r.prices[:MostPrices]
		r.bad = append(r.bad, BadRow{Message: "The price list has more than 20 000 rows; those beyond are left out.", Remedy: "Save only the rows that this shop sells."})
	}
	return r.prices, r.bad
}

// priceSeparator finds what parts the columns: what parts their names, where the first row names them, or else what parts most rows.
func priceSeparator(clean string) byte {
	for _, separator := range []byte{'\t', ';', ','} {
		named := false
		table.Each(clean, separator, func(row table.Row) bool {
			_, named = namedColumns(row.Fields)
			return blank(row)
		})
		if named {
			return separator
		}
	}
	if separator := table.Separator(clean); separator != 0 {
		return separator
	}
	return ',' // a list of one column has none; every row of it lacks a price
}

func blank(row table.Row) bool { return strings.TrimSpace(strings.Join(row.Fields, "")) == "" }

type priceReader struct {
	currency Currency
	columns  [columnCount]int // -1 where the list has no such column
	begun    bool
	prices   []Price
	bad      []BadRow
}

// The columns of a price list.
const (
	columnItem = iota
	columnPack
	columnPrice
	columnClass
	columnCode
	columnCost
	columnCount
)

var plainPrices = [columnCount]int{0, 1, 2, 3, 4, 5}

// columnNames are the ways to name each column, in every language that the page speaks.
var columnNames = [columnCount][]string{
	{"item", "article", "description", "name", "product", "artículo", "articulo", "descripción", "descripcion", "nombre", "producto"},
	{"pack", "pack size", "size", "unit", "envase", "tamaño", "unidad"},
	{"price", "unit price", "net price", "gross price", "precio", "precio unitario", "precio neto", "precio bruto"},
	{"tax class", "tax", "vat", "class", "clase de impuesto", "impuesto", "iva", "clase"},
	{"stock code", "code", "sku", "item number", "article number", "código", "codigo", "referencia"},
	{"cost", "cost price", "purchase price", "costo", "coste", "precio de costo", "precio de coste", "precio de compra"},
}

func (r *priceReader) read(row table.Row) {
	if blank(row) {
		return
	}
	if !r.begun {
		r.begun = true
		if columns, named := namedColumns(row.Fields); named {
			r.columns = columns
			return
		}
	}
	p, err := r.price(row.Fields)
	if err == nil {
		r.prices = append(r.prices, p)
		return
	}
	if len(r.bad) < MostBad {
		r.bad = append(r.bad, BadRow{Line: row.Line, Given: shown(row.Text), Message: err.Message, Remedy: err.Remedy})
	}
}

// namedColumns tells where each column stands if the row names at least the item's and the price's.
func namedColumns(fields []string) ([columnCount]int, bool) {
	columns := [columnCount]int{-1, -1, -1, -1, -1, -1}
	for at, field := range fields {
		for column, names := range columnNames {
			for _, name := range names {
				if columns[column] < 0 && strings.EqualFold(field, name) {
					columns[column] = at
				}
			}
		}
	}
	return columns, columns[columnItem] >= 0 && columns[columnPrice] >= 0
}

func (r *priceReader) price(fields []string) (Price, *Error) {
	var given [columnCount]string
	for column, at := range r.columns {
		if at >= 0 && at < len(fields) {
			given[column] = unguarded(fields[at])
		}
		if len(given[column]) > LongestField {
			return Price{}, refuse(columnNames[column][0], "", "The "+columnNames[column][0]+" has more than "+strconv.Itoa(LongestField)+" bytes.", "Shorten it.")
		}
	}
	if strings.TrimSpace(given[columnItem]) == "" {
		return Price{}, refuse("item", "", "This row names no item.", "Give item, pack, price, tax class and stock code.")
	}
	amount, err := r.currency.Read(given[columnPrice])
	if err != nil {
		return Price{}, err.(*Error)
	}
	if amount < 0 {
		return Price{}, refuse("price", given[columnPrice], "A price can't be below zero.", "Give a reduction as the customer's discount.")
	}
	cost, err := r.cost(given[columnCost])
	if err != nil {
		return Price{}, err.(*Error)
	}
	return Price{Item: given[columnItem], Pack: given[columnPack], Price: amount, Class: given[columnClass], Code: given[columnCode], Cost: cost}, nil
}

func (r *priceReader) cost(text string) (Money, error) {
	if strings.TrimSpace(text) == "" {
		return 0, nil
	}
	cost, err := r.currency.Read(text)
	if err == nil && cost < 0 {
		return 0, refuse("cost", text, "A cost can't be below zero.", "Leave it empty where it isn't known.")
	}
	return cost, err
}

// WritePrices writes a price list as CSV that reads back as it was, here and in a spreadsheet program. names are what its columns are called, in the
// order in which they are read without names.
func WritePrices(prices []Price, c Currency, names []string, comma bool) string {
	money := func(m Money) string {
		if comma {
			return strings.Replace(c.Write(m), ".", ",", 1)
		}
		return c.Write(m)
	}
	rows, costs := [][]string{names}, false
	for _, p := range prices {
		rows = append(rows, []string{p.Item, p.Pack, money(p.Price), p.Class, p.Code, money(p.Cost)})
		costs = costs || p.Cost != 0
	}
	if !costs {
		for i, row := range rows {
			rows[i] = row[:min(len(row), columnCost)]
		}
	}
	return WriteCSV(rows, comma)
}
