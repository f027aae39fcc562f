package job

import (
	"reflect"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestPracticeIsTheTable: each key of practice fills one field of Practice, and
// each field is filled by one key.
func TestPracticeIsTheTable(t *testing.T) {
	var p Practice
	filledBy := map[any]string{}
	for _, row := range Keys() {
		if !strings.HasPrefix(row.Path, "practice.") {
			continue
		}
		assert.NotEmpty(t, row.Short, "%s: put it in fills(), with what people call it", row.Path)
		assert.Contains(t, []Kind{Percent, Number, Angle, Length, Mass, Switch, Word}, row.Kind,
			"%s: changes and the calculation sheet have to know how to write this kind; then add it here and to PracticeValue", row.Path)
		field := row.fieldOf(&p)
		require.NotNil(t, field, "%s: put it in fills(), with its field of Practice, or it is read and never used", row.Path)
		assert.Empty(t, filledBy[field], "%s fills a field that another key fills", row.Path)
		filledBy[field] = row.Path
		kept := map[Kind]reflect.Kind{Switch: reflect.Bool, Word: reflect.String}[row.Kind]
		if kept == reflect.Invalid {
			kept = reflect.Float64
		}
		assert.Equal(t, kept, reflect.TypeOf(field).Elem().Kind(), row.Path)
	}
	fields := reflect.ValueOf(&p).Elem()
	for i := range fields.NumField() {
		assert.NotEmpty(t, filledBy[fields.Field(i).Addr().Interface()],
			"no key fills Practice.%s: add its row to practiceKeys", fields.Type().Field(i).Name)
	}
}

// TestPracticeValues: the list has what the job gives, in the order of the
// table.
func TestPracticeValues(t *testing.T) {
	j, complaints := readText(strings.Replace(least, "gear:", "practice: {one_must_hold: yes, hoist_use: 80 %, pins_set: at_the_hoist}\ngear:", 1))
	require.Empty(t, complaints)
	all := j.Practice.Values()
	assert.Len(t, all, reflect.TypeOf(j.Practice).NumField())
	assert.Equal(t, PracticeValue{"mass_tolerance", "tolerance on masses", Percent, 0.05, ""}, all[0])
	assert.Equal(t, PracticeValue{"hoist_use", "use of hoists", Percent, 0.8, ""}, all[2])
	assert.Equal(t, PracticeValue{"one_must_hold", "each hoist must hold alone", Switch, 1, ""}, all[len(all)-2])
	assert.Equal(t, PracticeValue{"pins_set", "pins set", Word, 0, "at_the_hoist"}, all[len(all)-1])
}
