package sheets

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"hangpack/calc"
	"hangpack/layouts"
	"hangpack/paperwork/say"
)

// A rowsSum is the sum of some rows of the table of masses, and the place of their
// centre of gravity behind and below a hinge with the bar level.
type rowsSum struct {
	of         string // in words, with what the symbols of its sums are
	sum, place string // what tells the symbols of its sums and of its place from others
	parts      []part
	hinge      *calc.Offset // of a joint, k in symbols; nil for the bar's
	mass       float64
	at         calc.Offset
}

// sumRows sums some parts, at least one.
func sumRows(of, sum, place string, parts []part, hinge *calc.Offset) rowsSum {
	r := rowsSum{of: of, sum: sum, place: place, parts: parts, hinge: hinge}
	mass, behind, below := moments(parts)
	r.mass, r.at = mass, calc.Offset{Behind: behind / mass, Below: below / mass}
	if hinge != nil {
		r.at = calc.Offset{Behind: r.at.Behind - hinge.Behind, Below: r.at.Below - hinge.Below}
	}
	return r
}

// symbol of its mass.
func (r rowsSum) massName() string { return "M" + say.After("_", r.sum) }

// placeName is the symbol of its place, b or d.
func (r rowsSum) placeName(way string) string { return way + say.After("_", r.place) }

// ofRows say of which rows the symbols of sums are, told apart by a mark.
func ofRows(rows, sum string) string {
	return fmt.Sprintf("%s: M%s, S_b%s, S_d%s are sums of their rows", rows, say.After("_", sum), sum, sum)
}

// placeSteps go from the sums of the rows to the place.
func (r rowsSum) placeSteps(u say.Units) []layouts.Formula {
	_, behind, below := moments(r.parts)
	m := symbol{r.massName(), u.FineMass(r.mass)}
	place := func(of, way string, moment, is, hinge float64) layouts.Formula {
		sum := "S_" + way + r.sum
		formula, symbols := r.placeName(way)+" = "+sum+" · "+u.PerMoment()+" / "+m.name, []symbol{{sum, u.BareMoment(moment) + " " + u.MomentUnit()}, m}
		if r.hinge != nil {
			formula, symbols = formula+" - "+way+"_k", append(symbols, symbol{way + "_k", u.GearLength(hinge)})
		}
		return step(of, formula, u.GearLength(is), "", symbols...)
	}
	from := calc.Offset{}
	if r.hinge != nil {
		from = *r.hinge
	}
	moved, of := r.movedSteps(u), r.of
	if moved != nil {
		of = "their centre of gravity, behind the hinge"
	}
	return append(moved,
		place(of, "b", behind, r.at.Behind, from.Behind),
		place("the same, below the hinge", "d", below, r.at.Below, from.Below))
}

// levelStep turns the place to a tilt: how far it lies level behind the hinge.
func (r rowsSum) levelStep(w hanging, of, name string) layouts.Formula {
	u, t := w.of.Unit(), w.tiltSymbol()
	b, d := r.placeName("b"), r.placeName("d")
	return step(of, fmt.Sprintf("%s = %s · cos(%s) + %s · sin(%s)", name, b, t.name, d, t.name), u.GearLength(r.level(w)), "",
		symbol{b, u.GearLength(r.at.Behind)}, symbol{d, u.GearLength(r.at.Below)}, t)
}

// level is how far behind the hinge the place lies as the stack hangs, in m.
func (r rowsSum) level(w hanging) float64 { return -r.at.Turned(w.tilt()).X }

// A movedType is a type of cabinet whose centre of gravity is taken elsewhere than the
// table has it: by how much in its own axes, and of its rows the sums of cosine and sine
// of what they are turned.
type movedType struct {
	key          string
	mass         float64
	moved        calc.Offset
	cosine, sine float64
}

// movedTypes are those among some parts, from the top.
func movedTypes(parts []part) (all []movedType) {
	for _, p := range parts {
		if p.moved == (calc.Offset{}) {
			continue
		}
		_, key, _ := strings.Cut(p.name, " ")
		i := slices.IndexFunc(all, func(t movedType) bool { return t.key == key })
		if i < 0 {
			i, all = len(all), append(all, movedType{key: key, mass: p.mass, moved: p.moved})
		}
		sin, cos := math.Sincos(p.turned)
		all[i].cosine, all[i].sine = all[i].cosine+cos, all[i].sine+sin
	}
	return all
}

// movedSteps are the sums of the rows with unknown centres of gravity taken elsewhere
// than the table has them; none where they are not.
func (r rowsSum) movedSteps(u say.Units) []layouts.Formula {
	types := movedTypes(r.parts)
	if len(types) == 0 {
		return nil
	}
	first, second := "S_b"+r.sum+" = T_b", "S_d"+r.sum+" = T_d"
	var symbols []symbol
	var words []string
	for i, t := range types {
		first += fmt.Sprintf(" + m_%d · (b_%d · C_%d + d_%d · S_%d) / %s", i+1, i+1, i+1, i+1, i+1, u.PerMoment())
		second += fmt.Sprintf(" + m_%d · (d_%d · C_%d - b_%d · S_%d) / %s", i+1, i+1, i+1, i+1, i+1, u.PerMoment())
		n := fmt.Sprint(i + 1)
		symbols = append(symbols, symbol{"m_" + n, u.FineMass(t.mass)}, symbol{"b_" + n, u.GearLength(t.moved.Behind)}, symbol{"d_" + n, u.GearLength(t.moved.Below)},
			symbol{"C_" + n, say.Fixed(t.cosine, 5)}, symbol{"S_" + n, say.Fixed(t.sine, 5)})
		words = append(words, n+" is "+t.key)
	}
	moment := func(kgm float64) string { return u.BareMoment(kgm) + " " + u.MomentUnit() }
	_, behind, below := moments(r.parts)
	tableBehind, tableBelow := r.tableMoments(types)
	return []layouts.Formula{
		step(r.of+"; "+strings.Join(words, ", "), first, moment(behind), "", append(symbols, symbol{"T_b", moment(tableBehind)})...),
		step("the same, below the hinge", second, moment(below), "", append(symbols, symbol{"T_d", moment(tableBelow)})...),
	}
}

// tableMoments are the sums of the rows as the table has them, in kg m: without what some
// types of cabinet are moved.
func (r rowsSum) tableMoments(types []movedType) (behind, below float64) {
	_, behind, below = moments(r.parts)
	for _, t := range types {
		behind -= t.mass * (t.moved.Behind*t.cosine + t.moved.Below*t.sine)
		below -= t.mass * (t.moved.Below*t.cosine - t.moved.Behind*t.sine)
	}
	return behind, below
}

// namedMost is how many extras are named one by one.
const namedMost = 4

// namesOf names some parts of a stack: 'cabinets 13 to 16, cable loom'. where says which
// they are, for extras that are too many to be named.
func namesOf(parts []part, where string) string {
	var words, extras []string
	last, is := 0, map[int]bool{}
	for _, p := range parts {
		switch {
		case p.extra:
			extras = append(extras, p.name+say.After(" on ", onCabinet(p.cabinet)))
		case p.cabinet == 0:
			words = append(words, "the bar")
		default:
			last, is[p.cabinet] = p.cabinet, true
		}
	}
	for _, r := range say.Runs(say.Span{From: 1, To: last}, func(n int) bool { return is[n] == is[n-1] }) {
		if is[r.From] {
			words = append(words, r.Cabinets())
		}
	}
	if len(extras) > namedMost {
		extras = []string{fmt.Sprintf("those %d extras that lie %s", len(extras), where)}
	}
	return strings.Join(append(words, extras...), ", ")
}

// onCabinet names what an extra is tied to, and nothing for the bar.
func onCabinet(n int) string {
	if n == 0 {
		return ""
	}
	return fmt.Sprintf("cabinet %d", n)
}
