package document

import (
	"encoding/json"
	"reflect"
	"testing"

	"yokebook/measure"
)

// Two readings that differ in any one member are not the same. The members are found by reflection, so
// that one that is added to a reading can't be forgotten: a merge would lose it.
func TestReadingsThatDifferInOneMemberAreNotTheSame(t *testing.T) {
	number, err := measure.NumberValue("2.4")
	if err != nil {
		t.Fatal(err)
	}
	other := map[reflect.Type]any{reflect.TypeFor[measure.Value](): number, reflect.TypeFor[int](): 2,
		reflect.TypeFor[measure.Fields](): measure.Fields{"later": json.RawMessage("1")}}
	for i := range reflect.TypeFor[measure.Reading]().NumField() {
		var a, b measure.Reading
		field := reflect.ValueOf(&b).Elem().Field(i)
		if v, ok := other[field.Type()]; ok {
			field.Set(reflect.ValueOf(v))
		} else {
			field.SetString("x")
		}
		name := reflect.TypeFor[measure.Reading]().Field(i).Name
		if alike(&a, &b) || Same(&a, &b) {
			t.Errorf("readings that differ in %s are called the same", name)
		}
		if c := b; !alike(&b, &c) || !Same(&b, &c) {
			t.Errorf("a reading with %s is not the same as itself", name)
		}
	}
}
