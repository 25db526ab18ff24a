package rules
import "testing"
func TestZZ(t *testing.T){ s:=""; for _,f:=range Functions(){ s+=f.Name+" " }; t.Log(s) }
