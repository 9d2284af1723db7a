package cli

import (
	"bytes"
	"encoding/json"
	"fmt"
)

// member is one member of a JSON object that keeps its place.
type member struct {
	name  string
	value any
}

// printJSON prints an object: its members on the first line, then the rows of its last member, a
// list, one row a line. The same values give the same bytes.
func (p Program) printJSON(head []member, list string, rows []any) error {
	var out bytes.Buffer
	out.WriteByte('{')
	for _, m := range head {
		text, err := compact(m.value)
		if err != nil {
			return err
		}
		fmt.Fprintf(&out, "%q:%s,", m.name, text)
	}
	fmt.Fprintf(&out, "%q:[", list)
	for i, row := range rows {
		text, err := compact(row)
		if err != nil {
			return err
		}
		if i > 0 {
			out.WriteByte(',')
		}
		out.WriteString("\n" + text)
	}
	if len(rows) > 0 {
		out.WriteByte('\n')
	}
	out.WriteString("]}\n")
	_, err := p.Out.Write(out.Bytes())
	return err
}

// compact writes a value as JSON without spaces and without escapes for HTML.
func compact(v any) (string, error) {
	var out bytes.Buffer
	enc := json.NewEncoder(&out)
	enc.SetEscapeHTML(false)
	if err := enc.Encode(v); err != nil {
		return "", err
	}
	return string(bytes.TrimRight(out.Bytes(), "\n")), nil
}
