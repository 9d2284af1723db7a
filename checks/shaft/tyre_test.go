package shaft

import (
	"math"
	"strings"
	"testing"
)

func TestTyreSizes(t *testing.T) {
	for _, row := range []struct {
		code                  string
		outer, rolled, radius float64
	}{
		{"205/55 R16", 631.90, 1927.30, 306.74},
		{"235/85 R16", 805.90, 2458.00, 391.20},
		{"195/65 R15", 634.50, 1935.23, 308.00},
		{"265/70 R17", 802.80, 2448.54, 389.70},
	} {
		tyre, err := ParseTyre(row.code)
		if err != nil {
			t.Fatal(err)
		}
		for _, c := range []struct {
			name      string
			got, want float64
		}{{"outside", tyre.OuterMM(), row.outer}, {"rolled", tyre.RolledMM(), row.rolled}, {"radius", tyre.RadiusMM(), row.radius}} {
			if math.Abs(c.got-c.want) > 0.0061 {
				t.Errorf("%s %s: got %.3f, want %.2f (%s)", row.code, c.name, c.got, c.want, etrto)
			}
		}
	}
	// A diagonal tyre of 808 mm: width and aspect chosen to give that diameter.
	diagonal := Tyre{WidthMM: 200, RimMM: 408, Aspect: 1}
	if got := diagonal.RolledMM(); math.Abs(got-2415.92) > 0.006 {
		t.Errorf("808 mm diagonal: rolled %.3f, want 2415.92 (%s)", got, etrto)
	}
	if got := diagonal.RadiusMM(); math.Abs(got-384.51) > 0.006 {
		t.Errorf("808 mm diagonal: radius %.3f, want 384.51 (%s)", got, etrto)
	}
}

func TestCodesAsTheyStandOnSidewalls(t *testing.T) {
	for _, row := range []struct {
		code   string
		outer  float64
		radial bool
		doubt  float64
	}{
		{"205/55R16", 631.9, true, 0}, {"205/55-R16", 631.9, true, 0}, {"p205/55 zr16 91w xl", 631.9, true, 0}, {"LT235/85R16 120/116Q", 805.9, true, 0},
		{"205/55-16", 631.9, false, 0}, {"205/55D16", 631.9, false, 0},
		{"31x10.5R15", 787.4, true, 0}, {"31×10,50 R15 LT", 787.4, true, 0}, {"33X12.5-15", 838.2, false, 0},
		{"165 R15", 381 + 2*165*0.81, true, 0.02}, {"165SR15", 381 + 2*165*0.81, true, 0.02}, {"175-14", 355.6 + 2*175*0.81, false, 0.02},
		{"7.50-16", 406.4 + 2*190.5*0.98, false, 0.10}, {"7,50R16C", 406.4 + 2*190.5*0.98, true, 0.10}, {"11R22.5", 571.5 + 2*279.4*0.98, true, 0.10},
	} {
		tyre, err := ParseTyre(row.code)
		if err != nil {
			t.Errorf("%s: %v", row.code, err)
			continue
		}
		if math.Abs(tyre.OuterMM()-row.outer) > 1e-9 || tyre.Radial != row.radial || tyre.AspectDoubt != row.doubt {
			t.Errorf("%s: outside %.2f radial %v ±%g, want %.2f %v ±%g (rim + 2·width·aspect, by hand)",
				row.code, tyre.OuterMM(), tyre.Radial, tyre.AspectDoubt, row.outer, row.radial, row.doubt)
		}
	}
}

func TestAssumedAspectsHoldPublishedSizes(t *testing.T) {
	// A metric code without aspect has 80 to 82 %, and 7.50-16 is 808 mm across (both from memory).
	for _, row := range []struct {
		code  string
		outer float64
	}{{"165 R15", 381 + 2*165*0.80}, {"165 R15", 381 + 2*165*0.82}, {"7.50-16", 808}} {
		tyre, _ := ParseTyre(row.code)
		low, high := tyre.RadiusRangeMM()
		if r := tyre.rolled(row.outer) / (2 * math.Pi); r < low || r > high {
			t.Errorf("%s: radius %.1f is outside %.1f … %.1f", row.code, r, low, high)
		}
	}
	tyre, _ := ParseTyre("205/55 R16")
	if low, high := tyre.RadiusRangeMM(); !(low < tyre.RadiusMM() && tyre.RadiusMM() < high) {
		t.Errorf("radius %.1f is outside its own range %.1f … %.1f", tyre.RadiusMM(), low, high)
	}
}

func TestCodesThatAreRefused(t *testing.T) {
	for _, row := range []struct{ code, says string }{
		{"", "not understood"}, {"205", "not understood"}, {"205/55", "not understood"}, {"205/55R", "not understood"},
		{"205/55R165", "not understood"}, {"205/55 R16.55", "not understood"}, {"big", "not understood"}, {"31x0R15", "not understood"},
		{strings.Repeat("205/55R16 ", 9), "not understood"},
		{"205/55R45", "rim 45 is outside"}, {"990/55R16", "width 990 is outside"}, {"205/10R16", "height 10 is outside"},
		{"15x10R15", "height 0 is outside"}, {"14x10R15", "height -5 is outside"},
	} {
		_, err := ParseTyre(row.code)
		if err == nil || !strings.Contains(err.Error(), row.says) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%.30q: %v, want %q", row.code, err, row.says)
		}
	}
}

func FuzzParseTyre(f *testing.F) {
	for _, code := range []string{"205/55 R16", "31x10.5R15", "165 R15", "7.50-16", "205/55ZR16 91W", "\x00", "9999999999"} {
		f.Add(code)
	}
	f.Fuzz(func(t *testing.T, code string) {
		tyre, err := ParseTyre(code)
		if err != nil {
			if strings.ContainsAny(err.Error(), "\n\r") {
				t.Errorf("error of more than one line: %q", err)
			}
			return
		}
		low, high := tyre.RadiusRangeMM()
		if r := tyre.RadiusMM(); !(low > 0 && low < r && r < high && high < 5000) {
			t.Errorf("%q: radius %g in %g … %g", code, r, low, high)
		}
	})
}
