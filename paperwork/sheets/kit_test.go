package sheets

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
	"hangpack/testdata/proof"
	"hangpack/testdata/trials"
)

// kitWeighsTheStacks: what the lists of bars, cabinets and things tied on weigh
// is what hangs from all hooks, and the sets of the truck's lines with bars and what
// is tied to those weigh as much; each piece is counted once.
func kitWeighsTheStacks(t *testing.T) (cases int, worst float64) {
	var seen proof.OffBy
	for seed := range int64(100) {
		seen.Cases++
		j := trials.OpenJob(t, trials.Gamble(23_000+seed).Job())
		hangs, bars, cabinets, pins := 0.0, 0.0, 0, 0
		for i, h := range j.Stacks {
			hangs += j.Figures.Stacks[i].Mass
			bars += h.Bar.Mass
			for _, e := range h.Extras {
				if e.Cabinet == 0 {
					bars += e.Mass
				}
			}
			for _, c := range j.Figures.Stacks[i].Cabinets {
				cabinets++
				pins += h.Cabinets[c.Number-1].HingePins + h.Cabinets[c.Number-1].LinkPins
			}
			for k := range h.Sets {
				kg, _ := rig.SetMass(h.Hung, k)
				bars += kg
			}
		}
		seen.InDelta(t, hangs, bars, 1e-6, "seed %d", seed)
		listed, found, hoists, dollies := 0.0, map[string]int{}, 0, 0
		for _, l := range kitOf(j) {
			for _, k := range l.items {
				found[l.of] += k.count
				switch l.of {
				case "Bars", "Cabinets", "Tied on, and secondaries":
					listed += float64(k.count) * k.each
				case "Pins, in their cabinets and bars":
					share := j.Spares * float64(k.count)
					assert.GreaterOrEqual(t, float64(k.spare), share-1e-9)
					assert.Less(t, float64(k.spare), share+1)
				}
			}
		}
		for _, h := range j.Stacks {
			hoists += 2 * len(h.Picks) // and their chains
			if h.Dolly != nil {
				dollies += len(h.Sets)
			}
		}
		seen.InDelta(t, hangs, listed, 1e-6, "seed %d", seed)
		assert.Equal(t, []int{len(j.Stacks), cabinets, pins, hoists, dollies},
			[]int{found["Bars"], found["Cabinets"], found["Pins, in their cabinets and bars"], found["Hoists (motors)"], found["Dollies"]}, "seed %d", seed)
	}
	return seen.Cases, seen.Worst
}

// TestSpares: a share of the pins, up to whole ones, and none of nothing.
func TestSpares(t *testing.T) {
	for _, tt := range []struct {
		n     int
		share float64
		want  int
	}{{16, 0.05, 1}, {20, 0.05, 1}, {21, 0.05, 2}, {8, 0, 0}, {8, 1, 8}, {7, 0.1, 1}, {10, 0.3, 3}} {
		assert.Equal(t, tt.want, spares(tt.n, tt.share), "%d at %g", tt.n, tt.share)
	}
}

// kitLines are the printed lines of a job's list.
func kitLines(t *testing.T, j *worked.Job) (lines []string) {
	t.Helper()
	_, pages := paperOf(t, j)
	for _, page := range pages {
		words := trials.WordsOn(page)
		if strings.HasPrefix(trials.SheetOf(words), "KIT") {
			for _, row := range trials.RowsOf(words) {
				lines = append(lines, " "+strings.Join(row, " ")+" ")
			}
		}
	}
	require.NotEmpty(t, lines)
	return lines
}

// TestKitItemsReadBack finds every bar, cabinet, pin, hoist and dolly of the examples
// on the printed list, counted.
func TestKitItemsReadBack(t *testing.T) {
	for _, name := range trials.Examples {
		j := trials.ReadJobs(t)[name]
		counted := map[string]int{}
		for _, h := range j.Stacks {
			counted[h.Bar.Key]++
			for _, c := range h.Cabinets {
				counted[c.Name]++
				counted["hinge pins of "+c.Name] += c.HingePins
				counted["link pins of "+c.Name] += c.LinkPins
			}
			for _, p := range h.Picks {
				counted[p.Hoist.Key+", without chain"]++
			}
			if h.Dolly != nil {
				counted[h.Dolly.Key] += len(h.Sets)
			}
		}
		lines := kitLines(t, j)
		for what, n := range counted {
			found := slices.ContainsFunc(lines, func(l string) bool {
				return strings.HasPrefix(l, " "+what+" ") && trials.InOrder(l, []string{what, fmt.Sprint(n)})
			})
			assert.True(t, found, "%s: %d %s: %s", name, n, what, strings.Join(lines, "\n"))
		}
	}
}

// TestKitReadsBack finds every dolly of the job on the printed list with what it
// weighs, and what all of it weighs together.
func TestKitReadsBack(t *testing.T) {
	for name, j := range trials.ReadJobs(t) {
		lines := kitLines(t, j)
		all := strings.Join(lines, "\n")
		kg := 0.0
		for _, h := range j.Stacks {
			u := h.Unit()
			kg += h.Bar.Mass
			for _, p := range h.Picks {
				kg += p.Hoist.Mass + p.Hoist.ChainMass*p.Hoist.ChainLength + p.Below.Mass + p.Above.Mass
			}
			for k, n := range h.Sets {
				set := 0.0
				for i := range n {
					set += h.Cabinets[h.Sets.First(k)+i].Mass
				}
				kg += set
				for _, e := range h.Extras {
					if e.Cabinet > h.Sets.First(k) && e.Cabinet <= h.Sets.First(k)+n {
						set += e.Mass
					}
				}
				if h.Dolly != nil {
					kg += h.Dolly.Mass
					assert.True(t, hasLine(lines, h.ID, "dolly "+say.Dolly(k), u.Load(set), u.Load(set+h.Dolly.Mass)), "%s: %s, dolly %d: %s", name, h.ID, k, all)
				}
			}
			for _, e := range h.Extras {
				kg += e.Mass
			}
		}
		assert.Contains(t, all, "All of it together: "+j.Unit().Load(kg), name)
	}
}

func hasLine(lines []string, parts ...string) bool {
	for _, l := range lines {
		if trials.InOrder(l, parts) {
			return true
		}
	}
	return false
}
