// Price lists as spreadsheet programs save them.
package takeoff_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	. "lowspot/engine/takeoff"
)

var columns = []string{"item", "pack", "price", "tax class", "stock code", "cost"}

var stock = []Price{{"Leveller, fine", "25 kg", 1849, "standard", "0012", 0}, {`Strip 3/8"`, "25 m", 990, "standard", "S-8", 0}, {"Primer", "5 L", 123450, "", "", 0}}

func TestAPriceListReadsHoweverItWasSaved(t *testing.T) {
	for name, text := range map[string]string{
		"commas":                    "item,pack,price,tax class,stock code\n\"Leveller, fine\",25 kg,18.49,standard,0012\n\"Strip 3/8\"\"\",25 m,9.90,standard,S-8\nPrimer,5 L,1234.50,,\n",
		"semicolons, decimal comma": "\uFEFFItem;Pack;Price;Tax class;Stock code\r\nLeveller, fine;25 kg;18,49;standard;0012\r\nStrip 3/8\";25 m;9,90;standard;S-8\r\nPrimer;5 L;1.234,50;;\r\n",
		"tabs":                      "Leveller, fine\t25 kg\t18.49\tstandard\t0012\nStrip 3/8\"\t25 m\t9.9\tstandard\tS-8\nPrimer\t5 L\t1234.5",
		"another order":             "Stock code;Price;Item;Remark;Size;VAT\n0012;18.49;Leveller, fine;x;25 kg;standard\nS-8;9.90;\"Strip 3/8\"\"\";;25 m;standard\n;1234.50;Primer;;5 L;\n",
		"Spanish names":             "Artículo;Envase;Precio;Clase de impuesto;Código\nLeveller, fine;25 kg;18,49;standard;0012\nStrip 3/8\";25 m;9,90;standard;S-8\nPrimer;5 L;1.234,50;;\n",
		"Spanish without accents":   "codigo;articulo;envase;precio;iva\n0012;Leveller, fine;25 kg;18,49;standard\nS-8;Strip 3/8\";25 m;9,90;standard\n;Primer;5 L;1234,50;\n",
		"empty rows":                "item;pack;price;tax class;stock code\n\n;;;;\nLeveller, fine;25 kg;18.49;standard;0012\nStrip 3/8\";25 m;9.90;standard;S-8\n\nPrimer;5 L;1234.50\n",
	} {
		prices, bad := ReadPrices(text, euro)
		assert.Empty(t, bad, name)
		assert.Equal(t, stock, prices, name)
	}
}

func TestAPriceListInTheOldEncodingKeepsItsLetters(t *testing.T) {
	prices, bad := ReadPrices("item;price\r\nSp\xE4tzle \xBD \x80;12,50\r\n", euro)
	assert.Empty(t, bad)
	assert.Equal(t, []Price{{Item: "Spätzle ½ €", Price: 1250}}, prices)
}

func TestWhatTheShopPaysIsReadAndWrittenWhereTheListSaysIt(t *testing.T) {
	prices, bad := ReadPrices("item;pack;price;cost\nLeveller;25 kg;18,49;12,10\nPrimer;5 L;34,90;\n", euro)
	assert.Empty(t, bad)
	assert.Equal(t, []Price{{Item: "Leveller", Pack: "25 kg", Price: 1849, Cost: 1210}, {Item: "Primer", Pack: "5 L", Price: 3490}}, prices)
	back, bad := ReadPrices(WritePrices(prices, euro, columns, false), euro)
	assert.Empty(t, bad)
	assert.Equal(t, prices, back)
	_, bad = ReadPrices("item;price;cost\nFoam;1;-2\n", euro)
	require.Len(t, bad, 1)
	assert.Equal(t, "A cost can't be below zero.", bad[0].Message)
}

func TestARowThatCantBeReadIsNamedAndTheOthersKept(t *testing.T) {
	prices, bad := ReadPrices("item;pack;price\nLeveller;25 kg;eighteen\n;5 L;3.00\nPrimer;5 L;34.90\nStrip;25 m;-1\nFoam;1;1,250\n"+strings.Repeat("x", 201)+";1;1\n", euro)
	assert.Equal(t, []Price{{Item: "Primer", Pack: "5 L", Price: 3490}}, prices)
	require.Len(t, bad, 5)
	assert.Equal(t, BadRow{Line: 2, Given: "Leveller;25 kg;eighteen", Message: "“eighteen” isn't a number.", Remedy: "Write it like 1234.50."}, bad[0])
	assert.Equal(t, "This row names no item.", bad[1].Message)
	assert.Equal(t, "A price can't be below zero.", bad[2].Message)
	assert.Equal(t, "“1,250” can mean a thousand times as much.", bad[3].Message)
	assert.Equal(t, "The item has more than 200 bytes.", bad[4].Message)
}

func TestAPriceListBeyondTheLimitSaysSo(t *testing.T) {
	prices, bad := ReadPrices(strings.Repeat("a;b;1\n", MostPrices+5), euro)
	assert.Len(t, prices, MostPrices)
	require.Len(t, bad, 1)
	assert.Contains(t, bad[0].Message, "20 000 rows")
	_, bad = ReadPrices(strings.Repeat(" ", MostPriceBytes+1), euro)
	assert.Equal(t, "The price list has more than 8 MB.", bad[0].Message)
}

func TestWhatASpreadsheetWouldTakeForAFormulaIsGuarded(t *testing.T) {
	odd := []Price{{"=1+1", "@x", 1, "-a", "'+b", 0}, {"-5", "  spaced  ", 1, "a;b", "two\nlines", 0}}
	text := WritePrices(odd, euro, columns, false)
	assert.Equal(t, "\uFEFFitem,pack,price,tax class,stock code\r\n'=1+1,'@x,0.01,'-a,''+b\r\n-5,\"  spaced  \",0.01,\"a;b\",\"two\nlines\"\r\n", text)
	back, bad := ReadPrices(text, euro)
	assert.Empty(t, bad)
	assert.Equal(t, odd, back)
}

func TestWhereDecimalsHaveACommaSemicolonsPartTheColumns(t *testing.T) {
	names := []string{"artículo", "envase", "precio", "clase de impuesto", "código", "costo"}
	odd := []Price{{"=1+1, más", "@x", 123450, "a;b", "-5,2", 1}, {"-5", "25 kg", 3, "", "'1", 0}}
	text := WritePrices(odd, euro, names, true)
	assert.Equal(t, "\uFEFFartículo;envase;precio;clase de impuesto;código;costo\r\n'=1+1, más;'@x;1234,50;\"a;b\";-5,2;0,01\r\n-5;25 kg;0,03;;''1;0,00\r\n", text)
	back, bad := ReadPrices(text, euro)
	assert.Empty(t, bad)
	assert.Equal(t, odd, back)
}

// Whatever comes in, what was kept is written so that it reads back as it was.
func FuzzPrices(f *testing.F) {
	for _, seed := range []string{"item;pack;price\na;b;1,5", "a,b,1.5", "\"a\"\"b\";;3", "a\tb\t3\tc\t'=d", "\"a\nb\";c;1", "price,item\n1,'", "a;b;1;\"\t\";x", "sep=;\na;b;2"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		prices, _ := ReadPrices(text, euro)
		for _, comma := range []bool{false, true} {
			back, bad := ReadPrices(WritePrices(prices, euro, columns, comma), euro)
			require.Empty(t, bad)
			require.Equal(t, prices, back)
		}
	})
}
