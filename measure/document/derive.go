package document

import (
	"bytes"
	"fmt"
	"sort"

	"yokebook/measure"
)

// Derive sets the plain keys (title, note, layout, instruments, limits) to what the heads say. A
// plain key of which no head speaks stays. It errs, and changes nothing, when the value of a head
// does not suit its field; in a build of a newer format such a head is passed over.
func Derive(b *measure.Build) error {
	byField, err := claimsOf(b)
	if err != nil {
		return err
	}
	for _, field := range sortedKeys(byField) {
		live := Live(byField[field])
		n, err := parse(live[len(live)-1].Value)
		if err != nil {
			return err
		}
		if err := apply(b, field, n); err != nil {
			return err
		}
	}
	return nil
}

// claimsOf gathers what the heads of a build say of each field.
func claimsOf(b *measure.Build) (map[string][]Claim, error) {
	byField := map[string][]Claim{}
	for i, h := range b.Heads {
		claims, err := Claims(h)
		if b.Newer > 0 && err != nil {
			continue
		}
		if b.Newer == 0 && err == nil {
			err = strict(claims)
		}
		if err != nil {
			return nil, fmt.Errorf("heads[%d].%w", i, err)
		}
		for _, c := range claims {
			byField[c.Field] = append(byField[c.Field], c)
		}
	}
	return byField, nil
}

// strict errs when a claim is one that only a newer format may make.
func strict(claims []Claim) error {
	for _, c := range claims {
		n, err := parse(c.Value)
		if err == nil {
			err = limitFault(c.Field, n)
		}
		if err != nil {
			return fmt.Errorf("value: %w", err)
		}
	}
	return nil
}

// agree errs when a plain key of the file says something else than its heads.
func agree(plain []Claim, derived *measure.Build) error {
	now := map[string][]byte{}
	for _, c := range Plain(derived) {
		now[c.Field] = c.Value
	}
	for _, c := range plain {
		if !bytes.Equal(now[c.Field], c.Value) {
			return fmt.Errorf("%s: says %.60s, but its newest head says %.60s; leave the plain key out, or add a head that replaces that one",
				c.Field, c.Value, orNothing(now[c.Field]))
		}
	}
	return nil
}

func orNothing(raw []byte) []byte {
	if raw == nil {
		return []byte("nothing")
	}
	return raw
}

func sortedKeys[V any](m map[string]V) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	return keys
}
