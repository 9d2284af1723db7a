package store

import (
	"bytes"
	"errors"
	"fmt"
	"strings"
	"testing"

	"yokebook/measure"
	"yokebook/measure/document"
)

// Files that are no store, or whose lengths would keep the library busy for ever, make it panic or
// make it cut the file off. What the library does with each was measured with version 1.3.0.
var strangers = []struct{ name, content string }{
	{"empty", ""},
	{"text without a line break, which the library cuts to nothing", "not a store"},
	{"text", "not a store\n"},
	{"another command", "*1\r\n$4\r\nquit\r\n"},
	{"a command that empties the library", "*1\r\n$7\r\nflushdb\r\n"},
	{"a length of twenty digits, an endless loop in the library", "*3\r\n$3\r\nset\r\n$99999999999999999999\r\nk\r\n"},
	{"the largest length, a panic in the library", "*3\r\n$3\r\nset\r\n$9223372036854775807\r\nk\r\n"},
	{"a length that wraps round to less than nothing", "*3\r\n$3\r\nset\r\n$9223372036854775808\r\nk\r\n"},
	{"a command of one letter, a panic in the library", "*3\r\n$1\r\ns\r\n$1\r\nk\r\n$1\r\nv\r\n"},
	{"a count of twenty digits", "*99999999999999999999\r\n"},
	{"zeros", strings.Repeat("\x00", 4096)},
	{"a record that runs out", "*3\r\n$3\r\nset\r\n$1\r\nk\r\n$9\r\nv 0\r\n"},
	{"a record without a checksum", "*3\r\n$3\r\nset\r\n$1\r\nk\r\n$1\r\nv\r\n"},
}

func TestStrangeFileIsRefusedAndLeftAlone(t *testing.T) {
	for _, row := range strangers {
		t.Run(row.name, func(t *testing.T) {
			p := newPatient(t, sample(1), false)
			p.damage([]byte(row.content))
			_, _, _, err := p.st.OpenBuild(buildID)
			if !errors.Is(err, ErrDamaged) || strings.Contains(fmt.Sprint(err), "\n") {
				t.Errorf("open: %v; want ErrDamaged in one line", err)
			}
			if _, _, err := p.st.Peek(buildID); !errors.Is(err, ErrDamaged) {
				t.Errorf("peek: %v; want ErrDamaged", err)
			}
			if now := readFile(t, p.st.path(buildID)); string(now) != row.content {
				t.Errorf("the file was changed to %q", now)
			}
			l, err := p.st.takeLock(buildID)
			if err != nil {
				t.Fatalf("the lock was not freed: %v", err)
			}
			if err := l.release(); err != nil {
				t.Error(err)
			}
		})
	}
}

func TestStrangeFileIsSetAsideWhereThereIsASnapshot(t *testing.T) {
	for _, row := range strangers {
		t.Run(row.name, func(t *testing.T) {
			p := newPatient(t, sample(2), true)
			p.damage([]byte(row.content))
			b, report := p.opened(row.name, []byte(row.content))
			p.judge(row.name, b, report, 0)
			if report.Restored != 2 || report.InFile != 0 || report.State() != Recovered {
				t.Errorf("%s; want both readings from the snapshot", report)
			}
		})
	}
}

// A file that holds another build under this one's name: copied over, say. None of its records may
// get into this build.
func TestFileOfAnotherBuildIsNeverServed(t *testing.T) {
	for _, secured := range []bool{true, false} {
		p := newPatient(t, sample(1), secured)
		theirs := readFile(t, p.st.path(otherID))
		p.damage(theirs)
		if !secured {
			if _, _, _, err := p.st.OpenBuild(buildID); !errors.Is(err, ErrDamaged) || !strings.Contains(err.Error(), "another build") {
				t.Errorf("open: %v; want ErrDamaged that says why", err)
			}
			continue
		}
		nameless := bytes.ReplaceAll(theirs, []byte(`"axle":"leaf"`), []byte(`"axle":"le4f"`)) // its first record alone says whose it is
		p.damage(nameless)
		if b, report, err := p.st.Peek(buildID); err != nil || !report.Has(Other) || len(b.Readings) != 1 {
			t.Errorf("without its plain members: %s, %v", report, err)
		}
		p.damage(theirs)
		b, report := p.opened("another build's file", theirs)
		p.judge("another build's file", b, report, 0)
		if !report.Has(Other) {
			t.Errorf("%s; want it said that the file is another build's", report)
		}
	}
}

// One record is damaged in a known way. The report says what was done, and where each came from.
func TestReportSaysWhatCameFromWhere(t *testing.T) {
	plain, err := OfPlain(sample(3))
	if err != nil {
		t.Fatal(err)
	}
	value := func(r Record) string { return r.sealed() }
	one := OfReading(reading(1))
	swap := func(old, new string) func(string) string {
		return func(file string) string { return strings.Replace(file, old, new, 1) }
	}
	for _, row := range []struct {
		name                              string
		damage                            func(string) string
		secured                           bool
		state                             State
		inFile, behind, restored, missing int
		lost                              string
	}{
		{"nothing", func(f string) string { return f }, false, IsWhole, 3, 0, 0, 0, ""},
		{"a value", swap("gearbox.slope\",\"ride\":\"droop\",\"setup\":1,\"unit\":\"deg\",\"value\":1.1", "gearbox.slope\",\"ride\":\"droop\",\"setup\":1,\"unit\":\"deg\",\"value\":7.1"),
			false, IsSetAside, 2, 1, 0, 1, one.Key},
		{"a value, with a snapshot", swap("\"value\":1.1", "\"value\":7.1"), true, Recovered, 2, 1, 1, 0, ""},
		{"a checksum: the key vouches for the value", swap(value(one)[:9], "000000000"), false, Recovered, 3, 2, 0, 0, ""},
		{"a key: the checksum vouches for it", swap(one.Key, strings.Replace(one.Key, "0001/", "0009/", 1)), false, Recovered, 3, 2, 0, 0, ""},
		{"a length", swap(fmt.Sprintf("$%d\r\n%s", len(value(one)), value(one)[:64]), "$9\r\n"+value(one)[:64]), false, Recovered, 3, 2, 0, 0, ""},
		{"a length of twenty digits", swap(fmt.Sprintf("$%d\r\n%s", len(value(one)), value(one)[:64]), "$99999999999999999999\r\n"+value(one)[:64]),
			false, Recovered, 3, 2, 0, 0, ""},
		{"a length that reaches over the rest of the file", swap(fmt.Sprintf("$%d\r\n%s", len(value(one)), value(one)[:64]), "$9999999\r\n"+value(one)[:64]),
			false, Recovered, 3, 2, 0, 0, ""},
		{"a zero between two records", swap("}\r\n"+mark, "}\r\n\x00"+mark), false, Recovered, 3, 3, 0, 0, ""},
		{"zeros at the end", func(f string) string { return f + strings.Repeat("\x00", 4096) }, false, Recovered, 3, 0, 0, 0, ""},
		{"the magic", swap("yokebook-store/1", "yokebook-stone/1"), false, Recovered, 3, 3, 0, 0, ""},
		{"the plain members", swap(value(plain)[:9], "000000000"), false, Recovered, 3, 3, 0, 0, ""},
		{"the last record, cut", func(f string) string { return f[:len(f)-30] }, false, Recovered, 2, 0, 0, 1, ""},
		{"the last record, cut, with a snapshot", func(f string) string { return f[:len(f)-30] }, true, Recovered, 2, 0, 1, 0, ""},
		{"the last record, gone", func(f string) string { return f[:strings.LastIndex(f, mark)] }, true, Recovered, 2, 0, 1, 0, ""},
		{"the last record's length and value: this is not how a record is cut off", func(f string) string {
			last := value(OfReading(reading(2)))
			f = strings.Replace(f, fmt.Sprintf("$%d\r\n%s", len(last), last[:64]), "$9999\r\n"+last[:64], 1)
			return strings.Replace(f, `"value":2.2`, `"value":2.9`, 1)
		}, false, IsSetAside, 2, 0, 0, 1, OfReading(reading(2)).Key},
		{"a record under another's key", func(f string) string {
			return strings.Replace(f, value(one), value(OfReading(reading(0))), 1)
		}, false, IsSetAside, 2, 1, 0, 1, one.Key},
	} {
		t.Run(row.name, func(t *testing.T) {
			p := newPatient(t, sample(3), row.secured)
			damaged := []byte(row.damage(string(p.whole)))
			if row.state != IsWhole && bytes.Equal(damaged, p.whole) {
				t.Fatal("nothing was damaged")
			}
			p.damage(damaged)
			b, r := p.opened(row.name, damaged)
			p.judge(row.name, b, r, row.missing)
			if r.State() != row.state || r.InFile != row.inFile || r.Behind != row.behind || r.Restored != row.restored ||
				strings.Join(r.Lost, " ") != row.lost || len(b.Readings) != 3-row.missing {
				t.Errorf("%s; want %s, %d from the file (%d behind), %d restored, lost %q", r, row.state, row.inFile, row.behind, row.restored, row.lost)
			}
		})
	}
}

// Without both copies of the plain members nothing says the layout, unless heads or a snapshot do; a
// guessed layout could make a finding clear that is not.
func TestLayoutIsNeverGuessed(t *testing.T) {
	layout := func(member, value string) measure.Head {
		return measure.Head{ID: measure.NameID(buildID, member), Field: "layout." + member, Value: []byte(value), Clock: measure.Clock{MS: 1}}
	}
	inHeads := sample(1)
	inHeads.Heads = []measure.Head{layout("axle", `"leaf"`), layout("front_joint", `"single"`), layout("rear_joint", `"single"`),
		layout("shafts", "1"), layout("slip", `"shaft"`)}
	document.Arrange(inHeads)
	for _, row := range []struct {
		name    string
		build   *measure.Build
		secured bool
		lost    []string
		want    error
	}{
		{"the first copy", sample(1), false, []string{"plain"}, nil},
		{"the second copy", sample(1), false, []string{plainCopy}, nil},
		{"both", sample(1), false, []string{"plain", plainCopy}, ErrDamaged},
		{"both, but heads say the layout", inHeads, false, []string{"plain", plainCopy}, nil},
		{"both, but a snapshot says the layout", sample(1), true, []string{"plain", plainCopy}, nil},
	} {
		t.Run(row.name, func(t *testing.T) {
			p := newPatient(t, row.build, row.secured)
			plain, err := OfPlain(row.build)
			if err != nil {
				t.Fatal(err)
			}
			data := p.whole
			for _, key := range row.lost {
				value := Record{Key: key, body: plain.body}.sealed()
				data = bytes.Replace(data, []byte(value), []byte(strings.Replace(value, "leaf", "le4f", 1)), 1)
			}
			p.damage(data)
			b, report, err := p.st.Peek(buildID)
			if !errors.Is(err, row.want) {
				t.Fatalf("%v; want %v", err, row.want)
			}
			if err == nil && (report.State() == IsWhole || b.Layout.Axle != "leaf" || len(b.Readings) != 1) {
				t.Errorf("%s, axle %q, %d readings", report, b.Layout.Axle, len(b.Readings))
			}
		})
	}
}

// Records with a good checksum that this version does not know were written by a newer one. They are
// not served, and a repair carries them on.
func TestRecordsOfANewerVersionAreCarriedOn(t *testing.T) {
	p := newPatient(t, sample(1), false)
	newer := Record{Key: "photo/1", body: []byte(`{"of":"the flange"}`)}
	damaged := append(appendFrame(bytes.Clone(p.whole), newer.Key, newer.sealed()), 0, 0)
	p.damage(damaged)
	_, report := p.opened("a newer version's", damaged)
	if len(report.Unknown) != 1 || report.Unknown[0] != newer.Key || len(report.Lost) > 0 {
		t.Errorf("%+v; want %s unknown and nothing lost", report, newer.Key)
	}
	if !bytes.Contains(readFile(t, p.st.path(buildID)), []byte(newer.sealed())) {
		t.Error("the repair dropped it")
	}
}

// A last record that is cut off may be one that another process is writing: a mere look says nothing
// of it. Verify takes the lock first, so there it is a fault.
func TestCutLastRecordIsNoFaultToAMereLook(t *testing.T) {
	p := newPatient(t, sample(2), false)
	p.damage(p.whole[:len(p.whole)-30])
	if b, report, err := p.st.Peek(buildID); err != nil || report.State() != IsWhole || len(b.Readings) != 1 {
		t.Errorf("peek: %s, %v", report, err)
	}
	if v, err := p.st.Verify(buildID); err != nil || v.State() != Recovered || !v.Now.Has(Unfinished) {
		t.Errorf("verify: %s, %v", v.Now, err)
	}
}
