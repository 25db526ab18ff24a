// What a pasted survey comes to, and what is said of the lines that can't be read.
package readings_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/quantity"
	. "lowspot/engine/readings"
)

var site = Defaults{Sense: Below, PositionUnit: "m", HeightUnit: "mm"}

func TestASurveyReadsHoweverItsColumnsStandApart(t *testing.T) {
	want := []Row{{"0.5", "1.25", "12.5"}, {"3", "-1.2", "9"}}
	for name, text := range map[string]string{
		"semicolons":                           "0.5;1.25;12.5\n3;-1.2;9\n",
		"tabs":                                 "0.5\t1.25\t12.5\n3\t-1.2\t9",
		"commas":                               "0.5,1.25,12.5\n3,-1.2,9",
		"commas and spaces":                    "0.5, 1.25, 12.5\n3, -1.2, 9",
		"spaces":                               "0.5   1.25 12.5\n  3 -1.2 9  ",
		"semicolons with decimal commas":       "0,5;1,25;12,5\n3;-1,2;9",
		"tabs with decimal commas":             "0,5\t1,25\t12,5\n3\t-1,2\t9",
		"spaces with decimal commas":           "0,5 1,25 12,5\n3 -1,2 9",
		"quotes round decimal commas":          "\"0,5\",\"1,25\",\"12,5\"\n3,\"-1,2\",9",
		"byte-order mark and CRLF":             "\uFEFF0.5;1.25;12.5\r\n3;-1.2;9\r\n",
		"old line endings":                     "0.5;1.25;12.5\r3;-1.2;9\r",
		"UTF-16":                               "\xFF\xFE" + wide("0.5;1.25;12.5\r\n3;-1.2;9"),
		"the separator named first":            "sep=;\n0.5;1.25;12.5\n3;-1.2;9",
		"empty lines and remarks":              "# kitchen\n\n0.5;1.25;12.5\n;;\n3;-1.2;9\n",
		"a remark at the end":                  "0.5;1.25;12.5;by the door\n3;-1.2;9;\n",
		"columns named in another order":       "point;height;y;x\nA;12.5;1.25;0.5\nB;9;-1.2;3\n",
		"a title above the names, spaces":      "Kitchen, north\nx y level\n0.5 1.25 12.5\n3 -1.2 9",
		"names with units, all apart by space": "x (m) y (m) reading (mm)\n0.5 1.25 12.5\n3 -1.2 9",
		"Spanish names":                        "punto;lectura;y;x\nA;12,5;1,25;0,5\nB;9;-1,2;3\n",
	} {
		read := Read(text, site)
		assert.Equal(t, want, read.Rows, name)
		assert.Empty(t, read.Bad, name)
	}
}

// wide is plain text in UTF-16, low bytes first.
func wide(text string) (file string) {
	for _, c := range []byte(text) {
		file += string([]byte{c, 0})
	}
	return file
}

func TestTheHeaderTellsUnitsAndSense(t *testing.T) {
	for header, want := range map[string]Result{
		"x (m); y (m); reading mm":              {Sense: Below, PositionUnit: "m", HeightUnit: "mm"},
		"X [ft]; Y [ft]; Elevation [in]":        {Sense: Above, PositionUnit: "ft", HeightUnit: "in"},
		"x;y;staff reading (cm)":                {Sense: Below, PositionUnit: "m", HeightUnit: "cm"},
		"East m; North m; RL m":                 {Sense: Above, PositionUnit: "m", HeightUnit: "m"},
		"x;y;height above datum (mm)":           {Sense: Above, PositionUnit: "m", HeightUnit: "mm"},
		"x;y;reading below the laser line (in)": {Sense: Below, PositionUnit: "m", HeightUnit: "in"},
		"x (m); y (m); lectura (cm)":            {Sense: Below, PositionUnit: "m", HeightUnit: "cm"},
		"Este; Norte; Cota (m)":                 {Sense: Above, PositionUnit: "m", HeightUnit: "m"},
		"x;y;altura sobre la referencia (mm)":   {Sense: Above, PositionUnit: "m", HeightUnit: "mm"},
		"x;y;lectura de mira (mm)":              {Sense: Below, PositionUnit: "m", HeightUnit: "mm"},
	} {
		read := Read(header+"\n1;2;3\n", site)
		assert.Empty(t, read.Bad, header)
		assert.Equal(t, []Row{{"1", "2", "3"}}, read.Rows, header)
		assert.Equal(t, [3]string{want.Sense, want.PositionUnit, want.HeightUnit}, [3]string{read.Sense, read.PositionUnit, read.HeightUnit}, header)
	}
}

func TestAnAxisInAnotherUnitKeepsItsUnit(t *testing.T) {
	read := Read("x (m);y (ft);reading (mm)\n1;2;3\n1;2 m;3\n", site)
	assert.Empty(t, read.Bad)
	assert.Equal(t, []Row{{"1", "2 ft", "3"}, {"1", "2 m", "3"}}, read.Rows)
}

func TestFeetAndInchesReadAsTyped(t *testing.T) {
	read := Read("x;y;reading\n10' 6\";4 ft;1 3/8\"\n", Defaults{Sense: Below, PositionUnit: "ft", HeightUnit: "in"})
	assert.Empty(t, read.Bad)
	assert.Equal(t, []Row{{"10' 6\"", "4 ft", "1 3/8\""}}, read.Rows)
}

func TestABadLineIsNamedAndTheGoodOnesKept(t *testing.T) {
	read := Read("x;y;height\n1;2;3\n1;two;3\n4;5\n6;7;8\n9;9;3 kg\n", site)
	assert.Equal(t, []Row{{"1", "2", "3"}, {"6", "7", "8"}}, read.Rows)
	require.Len(t, read.Bad, 3)
	assert.Equal(t, Bad{Line: 4, Given: "4;5", Message: "This line has 2 of the columns x, y and height.", Remedy: "Give x, y and height on every line, for example “1.2; 3.4; 12”."}, read.Bad[1])
	assert.Equal(t, 3, read.Bad[0].Line)
	assert.Contains(t, read.Bad[0].Message, "The y can't be read: “two”")
	assert.Equal(t, 6, read.Bad[2].Line)
	assert.Contains(t, read.Bad[2].Message, "The height can't be read")
}

func TestNamesThatAreNotKnownAreToldAndTheColumnsTakenInOrder(t *testing.T) {
	read := Read("along;across;drop\n1;2;3\n", site)
	assert.Equal(t, []Row{{"1", "2", "3"}}, read.Rows)
	assert.Equal(t, []Bad{{Line: 1, Given: "along;across;drop", Message: "This line has no numbers.", Remedy: "Name the columns “x; y; height” in the first line, or leave this one out."}}, read.Bad)
}

func TestANumberThatReadsTwoWaysIsRefused(t *testing.T) {
	read := Read("1,200\t2,400\t12\n", Defaults{Sense: Below, PositionUnit: "mm", HeightUnit: "mm"})
	assert.Empty(t, read.Rows)
	require.Len(t, read.Bad, 1)
	assert.Contains(t, read.Bad[0].Message, "can mean 1.200 or 1200")

	read = Read("1,200;2,400;12,5\n", site)
	assert.Equal(t, []Row{{"1.200", "2.400", "12.5"}}, read.Rows, "12,5 shows what commas mean here")

	read = Read("1,5,2,0,12,3\n", site)
	assert.Empty(t, read.Rows)
	require.Len(t, read.Bad, 1)
	assert.Contains(t, read.Bad[0].Remedy, "semicolons")
}

func TestHugeOrForeignTextsAreRefusedInWords(t *testing.T) {
	assert.Equal(t, "The text has more than 32 MB.", Read(strings.Repeat(" ", MostBytes+1), site).Bad[0].Message)
	assert.Equal(t, "Save it again as CSV in UTF-8.", Read("PK\x03\x04\x00\x00", site).Bad[0].Remedy)
	assert.Equal(t, "This line has more than 4096 bytes.", Read(strings.Repeat("1", LongestLine+1)+"\n1;2;3", site).Bad[0].Message)

	read := Read(strings.Repeat("1;2;3\n", MostRows+5), site)
	assert.Len(t, read.Rows, MostRows)
	assert.Equal(t, MostRows+1, read.Bad[0].Line)

	read = Read(strings.Repeat("a;b;c\n", MostBad+5), site)
	assert.Len(t, read.Bad, MostBad)
	assert.Equal(t, 5, read.More)
}

// Whatever comes in, every row that comes out is three lengths, and no line is both kept and refused.
func FuzzRead(f *testing.F) {
	for _, seed := range []string{"x (m); y (m); reading mm\n1;2;3", "1,5 2,0 12,3", "\uFEFF1\t2\t3\r\n", "\"1,5\",\"2\",\"3\"", "sep=,\n1,2,3", "\"", "x y z\n1 2", "x;y (ft);z\n1;2;3"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		read := Read(text, site)
		for _, row := range read.Rows {
			for _, field := range []struct{ typed, unit string }{{row.X, read.PositionUnit}, {row.Y, read.PositionUnit}, {row.Height, read.HeightUnit}} {
				_, err := quantity.ReadIn(field.typed, quantity.Length, field.unit)
				require.NoError(t, err)
			}
		}
		assert.LessOrEqual(t, len(read.Rows)+len(read.Bad), 2+strings.Count(text, "\n")+strings.Count(text, "\r"))
	})
}
