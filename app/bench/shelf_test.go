package bench

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"testing"
	"time"

	"yokebook/app/logbook"
	"yokebook/measure"
	"yokebook/measure/document"
)

// manyBuilds is how many builds the list is measured with.
const manyBuilds = 10_000

// BenchmarkGlance is the wait for the list of 10,000 builds: what the list knows, with a look at each
// file's size and time and none at what is in it. The files are copies of one small build.
func BenchmarkGlance(b *testing.B) {
	shelf := shelfOfMany(b)
	var s samples
	for b.Loop() {
		start := time.Now()
		list, err := shelf.Glance()
		if err != nil || len(list) != manyBuilds || list[1].Pending {
			b.Fatalf("%d builds, %v", len(list), err)
		}
		s = append(s, time.Since(start))
	}
	s.report(b)
}

// shelfOfMany is a shelf with so many builds that the list knows.
func shelfOfMany(b *testing.B) *logbook.Shelf {
	b.Helper()
	dir := b.TempDir()
	shelf, err := logbook.OpenShelf(dir, logbook.System())
	if err != nil {
		b.Fatal(err)
	}
	one := demo(b)
	data, err := document.Write(one)
	if err != nil {
		b.Fatal(err)
	}
	if _, _, err := shelf.Import(data); err != nil {
		b.Fatal(err)
	}
	if _, err := shelf.List(); err != nil {
		b.Fatal(err)
	}
	index := filepath.Join(dir, "index.json")
	known := map[string]any{}
	if data, err = os.ReadFile(index); err == nil {
		err = json.Unmarshal(data, &known)
	}
	if err != nil {
		b.Fatal(err)
	}
	rows := known["builds"].([]any)
	for i := range manyBuilds - 1 {
		id := measure.ID(fmt.Sprintf("019d2a00-0000-7000-8000-%012x", i))
		path := filepath.Join(dir, "builds", string(id)+".db")
		if err := os.WriteFile(path, []byte(id), 0o644); err != nil {
			b.Fatal(err)
		}
		info, err := os.Stat(path)
		if err != nil {
			b.Fatal(err)
		}
		row := map[string]any{}
		for key, value := range rows[0].(map[string]any) {
			row[key] = value
		}
		row["id"], row["title"] = string(id), fmt.Sprintf("Invented build number %d", i)
		row["stamp"] = map[string]any{"bytes": info.Size(), "modified": json.Number(fmt.Sprint(info.ModTime().UnixNano()))}
		rows = append(rows, row)
	}
	known["builds"] = rows
	if data, err = json.Marshal(known); err == nil {
		err = os.WriteFile(index, data, 0o644)
	}
	if err != nil {
		b.Fatal(err)
	}
	return shelf
}
