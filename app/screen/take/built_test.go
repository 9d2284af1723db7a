package take

import (
	"reflect"
	"testing"

	"yokebook/app/logbook"
	"yokebook/checks"
	"yokebook/measure"
)

// Once the shaft that came back was read, the list of findings shows it as it was made, on demand: the
// findings are those of the build with the made sizes in the place of the ordered ones. Elsewhere they
// are of what is ordered.
func TestFindingsOfTheShaftAsBuilt(t *testing.T) {
	m, book := open(t)
	read(t, m, "engine.rpm_max", "5200")
	read(t, m, "gear.highest", "0.8")
	at(t, m, "shaft.length", measure.RideKerb)
	press(m, "1400")
	keep(m)
	read(t, m, "tube.od", "60")
	read(t, m, "tube.wall", "3")
	if m.HasBuilt() {
		t.Fatal("nothing was built yet")
	}
	read(t, m, "as_built.tube_od", "76")
	if !m.HasBuilt() {
		t.Fatal("what was built is not known")
	}
	m.SwitchBuilt()
	if m.AsBuilt() || !reflect.DeepEqual(m.Findings(), logbook.WorstFirst(book.Findings())) {
		t.Error("on the result page the findings are of the shaft as built")
	}
	m.OpenFindings()
	made, _ := checks.AsBuilt(book.Build())
	want := checks.Run(made, nil).Findings
	if got := m.Findings(); !m.AsBuilt() || !reflect.DeepEqual(got, logbook.WorstFirst(want)) {
		t.Error("the findings are not of the shaft as built")
	}
	differ := checks.Differences(book.Findings(), want)
	if len(differ) == 0 {
		t.Fatal("the other tube changes nothing: the test has lost its point")
	}
	m.OpenFinding(*differ[0].Is)
	if got, ok := m.Opened(); !ok || !reflect.DeepEqual(got, *differ[0].Is) {
		t.Errorf("opened %+v", got)
	}
	again := killed(m, book)
	if got, _ := again.Opened(); !again.AsBuilt() || !reflect.DeepEqual(got, *differ[0].Is) {
		t.Errorf("after a kill opened %+v", got)
	}
	m.Back()
	m.SwitchBuilt()
	if !reflect.DeepEqual(m.Findings(), logbook.WorstFirst(book.Findings())) {
		t.Error("switched back, the findings are not of what is ordered")
	}
	if m.Judged() != book.Build() {
		t.Error("judged is another build")
	}
}
