package look

import (
	"image/color"
	"math"
	"testing"
)

// What eyes see that lack one of the three kinds of cones, as matrices on linear red, green, blue.
//
// Source: Machado, Oliveira, Fernandes, "A physiologically-based model for simulation of color vision
// deficiency", IEEE Transactions on Visualization and Computer Graphics 15 (2009) 1291–1298, the
// matrices of severity 1.0, as several open-source programs print them alike.
var eyes = []struct {
	name   string
	matrix [3][3]float64
}{
	{"all cones", [3][3]float64{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}},
	{"no red cones", [3][3]float64{{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}},
	{"no green cones", [3][3]float64{{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}},
	{"no blue cones", [3][3]float64{{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}},
}

// lab is a colour of linear red, green, blue in CIELAB, white point D65 (IEC 61966-2-1; CIE 15).
func lab(c [3]float64) [3]float64 {
	x := (0.4124*c[0] + 0.3576*c[1] + 0.1805*c[2]) / 0.9505
	y := 0.2126*c[0] + 0.7152*c[1] + 0.0722*c[2]
	z := (0.0193*c[0] + 0.1192*c[1] + 0.9505*c[2]) / 1.089
	f := func(t float64) float64 {
		if t > 216.0/24389 {
			return math.Cbrt(t)
		}
		return 841.0/108*t + 4.0/29
	}
	return [3]float64{116*f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))}
}

// seen is a colour as eyes of a kind see it, in CIELAB.
func seen(c color.NRGBA, m [3][3]float64) [3]float64 {
	in := [3]float64{linear(c.R), linear(c.G), linear(c.B)}
	var out [3]float64
	for i := range out {
		out[i] = min(1, max(0, m[i][0]*in[0]+m[i][1]*in[1]+m[i][2]*in[2]))
	}
	return lab(out)
}

// linear takes the transfer curve of IEC 61966-2-1 off a channel.
func linear(v uint8) float64 {
	s := float64(v) / 255
	if s <= 0.04045 {
		return s / 12.92
	}
	return math.Pow((s+0.055)/1.055, 2.4)
}

func distance(a, b [3]float64) float64 {
	return math.Sqrt((a[0]-b[0])*(a[0]-b[0]) + (a[1]-b[1])*(a[1]-b[1]) + (a[2]-b[2])*(a[2]-b[2]))
}

// The formula itself: red, green and white of sRGB in CIELAB (CIE 15, as colour tables print them:
// L* a* b* of red 53.24 80.09 67.20, of green 87.73 −86.18 83.18; from memory).
func TestLabOfKnownColours(t *testing.T) {
	for _, row := range []struct {
		rgb  uint32
		want [3]float64
	}{{0xFFFFFF, [3]float64{100, 0, 0}}, {0xFF0000, [3]float64{53.24, 80.09, 67.20}}, {0x00FF00, [3]float64{87.73, -86.18, 83.18}}} {
		if got := seen(hex(row.rgb), eyes[0].matrix); distance(got, row.want) > 0.1 {
			t.Errorf("%06x is %.2f in CIELAB, want %.2f", row.rgb, got, row.want)
		}
	}
}

// Any two verdicts differ by 20 or more in CIELAB whatever cones an eye lacks. Two colours side by
// side are told apart from about 2.3 (Mahy and others, Color Research and Application 19, 1994; from
// memory); 20 for small marks that don't stand side by side is our judgement. The word and the shape
// say the same without colour.
func TestVerdictsDifferForEyesThatLackCones(t *testing.T) {
	for _, p := range palettes {
		verdicts := []struct {
			name string
			c    color.NRGBA
		}{{"clear", p.Clear}, {"out", p.Out}, {"unsure", p.Unsure}, {"waiting", p.Waiting}}
		for _, eye := range eyes {
			for i, a := range verdicts {
				for _, b := range verdicts[:i] {
					if d := distance(seen(a.c, eye.matrix), seen(b.c, eye.matrix)); d < 20 {
						t.Errorf("%s, %s: %s and %s differ by %.1f, want 20", p.name, eye.name, b.name, a.name, d)
					}
				}
			}
		}
	}
}

// The control: a common red and green are one colour to an eye without green cones.
func TestEyesWithoutGreenConesConfuseRedAndGreen(t *testing.T) {
	red, green := hex(0x9A5B00), hex(0x6E6E00)
	all, none := distance(seen(red, eyes[0].matrix), seen(green, eyes[0].matrix)), distance(seen(red, eyes[2].matrix), seen(green, eyes[2].matrix))
	if all < 25 || none > all/2 {
		t.Errorf("brown and olive differ by %.1f, and by %.1f without green cones", all, none)
	}
}
