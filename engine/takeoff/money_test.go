// Amounts and rates as they are written, and back.
package takeoff_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	. "lowspot/engine/takeoff"
)

var (
	euro = Currency{Code: "EUR", Digits: 2}
	yen  = Currency{Code: "JPY"}
)

func TestAmountsReadAsPeopleAndSpreadsheetsWriteThem(t *testing.T) {
	for text, want := range map[string]Money{
		"12.50": 1250, "12,50": 1250, "12,5": 1250, "12": 1200, "0.05": 5, ".5": 50, "0": 0, "1,234.50": 123450, "1.234,50": 123450, "1 234,50": 123450,
		"1\u00A0234,50": 123450, "1'234.50": 123450, "1,234,567.89": 123456789, "1.234.567": 123456700, "12.50 EUR": 1250, "€ 12": 1200, "$12.50": 1250,
		"12.5000": 1250, "-3.20": -320, "−3,20": -320, "1234567": 123456700,
	} {
		got, err := euro.Read(text)
		require.NoError(t, err, text)
		assert.Equal(t, want, got, text)
	}
	amount, err := yen.Read("1,234,500")
	require.NoError(t, err)
	assert.Equal(t, Money(1234500), amount)
}

func TestAmountsThatMeanTwoThingsOrNoneAreRefused(t *testing.T) {
	for text, says := range map[string]string{
		"1,234":                "price: “1,234” can mean a thousand times as much. Write it like 1234.50.",
		"1.234":                "price: “1.234” can mean a thousand times as much. Write it like 1234.50.",
		"0.125":                "price: “0.125” has more decimals than can be kept. Write it like 1234.50.",
		"":                     "price: “” isn't a number. Write it like 1234.50.",
		"12 USD":               "price: “12 USD” isn't a number. Write it like 1234.50.",
		"1e3":                  "price: “1e3” isn't a number. Write it like 1234.50.",
		"12,34,567":            "price: “12,34,567” isn't a number. Write it like 1234.50.",
		"--1":                  "price: “--1” isn't a number. Write it like 1234.50.",
		"99999999999999999999": "price: “99999999999999999999” isn't a number that can be kept. Write it like 1234.50.",
		"99999999999999":       "price: “99999999999999” is more than is ever sold here. Check the amount.",
	} {
		_, err := euro.Read(text)
		assert.EqualError(t, err, says, text)
	}
}

func TestAmountsAndRatesWriteBack(t *testing.T) {
	for m, text := range map[Money]string{0: "0.00", 5: "0.05", -5: "-0.05", 123450: "1234.50", -123450: "-1234.50"} {
		assert.Equal(t, text, euro.Write(m))
	}
	assert.Equal(t, "1234", yen.Write(1234))
	for text, want := range map[string]string{"19 %": "19 %", "8.875": "8.875 %", "7,5%": "7.5 %", "0": "0 %", "100 %": "100 %"} {
		rate, err := ReadRate(text)
		require.NoError(t, err)
		assert.Equal(t, want, rate.Write())
	}
	_, err := ReadRate("1001 %")
	assert.EqualError(t, err, "rate: “1001 %” isn't a rate. Give it between 0 % and 1000 %.")
	_, err = ReadRate("ten")
	assert.Error(t, err)
}

func FuzzMoney(f *testing.F) {
	for _, seed := range []string{"12.50", "1.234,50", "1,234", "-0", "€", "9'999'999.99", "1..2", ",", "1,.2"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		amount, err := euro.Read(text)
		if err != nil {
			return
		}
		back, err := euro.Read(euro.Write(amount))
		require.NoError(t, err)
		assert.Equal(t, amount, back)
	})
}
