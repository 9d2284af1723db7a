package screen

import (
	"slices"
	"testing"

	"yokebook/checks/remedy"
)

// The list of stops turns to what settles most, with its reason in words; a tap on its first row goes there,
// and what is kept there leads on to the next by use. Turned back, the route goes by its own order.
func TestTheRouteGoesByWhatSettlesMost(t *testing.T) {
	d := openInvented(t, phone, false, "demo.json")
	d.tap("more", "more.route").sees("in the order of the route", "Tap: what settles most first")
	for _, turn := range []string{"up", "down"} { // wherever the one list was turned to, the other begins at its top
		if d.has(turn) {
			d.tap(turn)
		}
	}
	d.tap("route.order").sees("What settles most comes first", "of what is open")
	if first := d.nth("useful.", 0); first != "useful.0" {
		t.Errorf("the list of what settles most begins at %s", first)
	}
	list := d.s.take.Useful()
	if len(list) == 0 || list[0].Kind == remedy.ReadTurned {
		t.Fatalf("%d readings, the first %+v", len(list), list)
	}
	d.tap("useful.0")
	for d.has("bring.done") || d.has("caution.ok") {
		if d.has("bring.done") {
			d.tap("bring.done")
		} else {
			d.tap("caution.ok")
		}
	}
	if stop := d.s.take.Stop(); stop.Point.Key != list[0].Point || stop.State != list[0].State {
		t.Errorf("at %s, %s, want %s, %s", stop.Point.Key, stop.State, list[0].Point, list[0].State)
	}
	d.tap("more", "more.route", "route.order").sees("in the order of the route")
	if d.s.take.ByUse() {
		t.Error("the order was not turned back")
	}
}

// While it is reckoned the list says so, and can be left or turned back.
func TestReckoningWhatSettlesMostCanBeLeft(t *testing.T) {
	d := openInvented(t, phone, false, "demo.json")
	d.tap("more", "more.route")
	stopped := false
	d.s.job = &job{owner: d.s.owner(), cancel: func() { stopped = true }} // as if it had begun, and went on
	d.tap("route.order").sees("Reckoning what settles most").tap("back")
	if !stopped || d.s.working() {
		t.Error("it goes on behind the next page")
	}
}

// After a keep the key to the next stop says what that settles.
func TestTheNextStopSaysWhatItSettles(t *testing.T) {
	d := openDesk(t, phone, false)
	d.s.inline = true
	d.newBuild("Invented estate")
	d.goTo("gearbox.slope.ride/kerb")
	for d.has("bring.done") || d.has("caution.ok") {
		if d.has("bring.done") {
			d.tap("bring.done")
		} else {
			d.tap("caution.ok")
		}
	}
	d.s.take.TurnUse()
	d.read("3", "yes").on().read("5.4", "yes").sees("What settles most:")
	next, ok := d.s.take.Wanted(d.s.take.Kept().Change)
	list := d.s.take.Useful()
	first := list[slices.IndexFunc(list, func(r remedy.Reading) bool { return r.Kind != remedy.ReadBetter })]
	if !ok || next.Point.Key != first.Point {
		t.Errorf("next is %s, the first of the ranking %s", next.Point.Key, first.Point)
	}
}
