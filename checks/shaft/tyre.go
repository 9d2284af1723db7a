package shaft

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
)

// Tyre is a tyre size as its code gives it.
type Tyre struct {
	WidthMM float64 // nominal section width
	RimMM   float64 // nominal rim diameter
	Aspect  float64 // ratio of section height to section width
	// AspectDoubt is ± on that ratio where the code is silent and it was assumed; 0 where the code says it.
	AspectDoubt float64
	Radial      bool // else diagonal (cross-ply)
}

// OuterMM returns the outside diameter: rim + 2·width·aspect.
// Source: ETRTO Standards Manual, meaning of the size code (from memory).
func (t Tyre) OuterMM() float64 { return t.RimMM + float64(2*float64(t.WidthMM*t.Aspect)) }

// RolledMM returns the way rolled in one turn: F·diameter, F = 3.05 radial, 2.99 diagonal, less than
// π because a loaded tyre flattens. Source: ETRTO Standards Manual, at 60 km/h (from memory).
func (t Tyre) RolledMM() float64 { return t.rolled(t.OuterMM()) }

// RadiusMM returns RolledMM/2π, the radius that speed is reckoned with.
func (t Tyre) RadiusMM() float64 { return t.RolledMM() / (2 * math.Pi) }

// RadiusRangeMM returns the least and the greatest radius that a tyre of this code may have: the
// section height may be 0.97 to 1.04 of its nominal size, and an assumed aspect adds its doubt.
// Source of the two factors: UNECE Regulation 30 (from memory).
func (t Tyre) RadiusRangeMM() (low, high float64) {
	least := float64(2 * t.WidthMM * (t.Aspect - t.AspectDoubt) * 0.97)
	most := float64(2 * t.WidthMM * (t.Aspect + t.AspectDoubt) * 1.04)
	return t.rolled(t.RimMM+least) / (2 * math.Pi), t.rolled(t.RimMM+most) / (2 * math.Pi)
}

func (t Tyre) rolled(outerMM float64) float64 {
	if t.Radial {
		return float64(3.05 * outerMM)
	}
	return float64(2.99 * outerMM)
}

// The forms of a code in upper case. What follows the rim (load index, speed letter, LT, XL) must
// not start with a digit or a dot and is not read.
const (
	mark  = `^(?:P|LT|ST|T|C)? ?`
	build = ` ?[A-Z]{0,2}? ?(-?R|-|D|B) ?` // speed letters of old codes, then R radial, else diagonal
	rim   = `(\d{2}(?:\.\d)?)(?:[^0-9.].*)?$`
)

var (
	metricCode    = regexp.MustCompile(mark + `(\d{3}) ?/ ?(\d{2,3})` + build + rim)
	flotationCode = regexp.MustCompile(mark + `(\d{2}(?:\.\d{1,2})?) ?X ?(\d{1,2}(?:\.\d{1,2})?)` + build + rim)
	bareCode      = regexp.MustCompile(mark + `(\d{3})` + build + rim)
	inchCode      = regexp.MustCompile(mark + `(\d{1,2}(?:\.\d{1,2})?)` + build + rim)
)

// spelling puts one sign for those that mean the same.
var spelling = strings.NewReplacer(",", ".", "×", "X", "–", "-")

// Assumed aspects of codes that are silent about it (from memory: metric radials of that time have
// 80 to 82 %, inch sizes about 90 to 107 %).
const (
	bareAspect, bareDoubt = 0.81, 0.02
	inchAspect, inchDoubt = 0.98, 0.10
)

const inch = 25.4

// ParseTyre reads a size code in one of four forms:
//
//	205/55 R16     width mm / aspect % R rim in; "-", D or B in place of R is a diagonal tyre
//	31x10.5 R15    outside diameter in x width in R rim in
//	165 R15        width mm, aspect assumed 0.81 ± 0.02
//	7.50-16        width in, aspect assumed 0.98 ± 0.10
//
// A decimal comma, blanks, lower case, × for x and what stands behind the rim are fine. It errs in
// one line when the code fits no form or a size that no tyre has.
func ParseTyre(code string) (Tyre, error) {
	plain := strings.Join(strings.Fields(strings.ToUpper(code)), " ")
	plain = spelling.Replace(plain)
	t, ok := parseForms(plain)
	if len(code) > 60 || !ok {
		return Tyre{}, fmt.Errorf("tyre code %.40q is not understood; write it as 205/55 R16, 31x10.5 R15, 165 R15 or 7.50-16", code)
	}
	for _, c := range []struct {
		name           string
		have, low, top float64
		unit           string
	}{
		{"rim", t.RimMM / inch, 8, 30, "in"},
		{"width", t.WidthMM, 80, 600, "mm"},
		{"height", 100 * t.Aspect, 20, 120, "% of the width"},
	} {
		if !(c.have >= c.low && c.have <= c.top) {
			return Tyre{}, fmt.Errorf("tyre code %.40q: %s %.4g is outside %g … %g %s; read the sidewall again", code, c.name, c.have, c.low, c.top, c.unit)
		}
	}
	return t, nil
}

func parseForms(code string) (Tyre, bool) {
	if m := metricCode.FindStringSubmatch(code); m != nil {
		return Tyre{WidthMM: number(m[1]), Aspect: number(m[2]) / 100, Radial: strings.HasSuffix(m[3], "R"), RimMM: number(m[4]) * inch}, true
	}
	if m := flotationCode.FindStringSubmatch(code); m != nil {
		outer, width, rim := number(m[1])*inch, number(m[2])*inch, number(m[4])*inch
		if width == 0 {
			return Tyre{}, false
		}
		return Tyre{WidthMM: width, Aspect: (outer - rim) / 2 / width, Radial: strings.HasSuffix(m[3], "R"), RimMM: rim}, true
	}
	if m := bareCode.FindStringSubmatch(code); m != nil {
		return Tyre{WidthMM: number(m[1]), Aspect: bareAspect, AspectDoubt: bareDoubt, Radial: strings.HasSuffix(m[2], "R"), RimMM: number(m[3]) * inch}, true
	}
	if m := inchCode.FindStringSubmatch(code); m != nil {
		return Tyre{WidthMM: number(m[1]) * inch, Aspect: inchAspect, AspectDoubt: inchDoubt, Radial: strings.HasSuffix(m[2], "R"), RimMM: number(m[3]) * inch}, true
	}
	return Tyre{}, false
}

// number reads digits that a form has already checked.
func number(digits string) float64 {
	f, _ := strconv.ParseFloat(digits, 64)
	return f
}
