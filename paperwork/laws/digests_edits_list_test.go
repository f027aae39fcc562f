package laws

import (
	"strings"

	"hangpack/paperwork/job"
)

// edits are what a job is held against itself with.
var edits = []edit{
	{name: "a pick hole", do: oneHole},
	{name: "a splay", do: oneSplay},
	{name: "mass of a cabinet", do: gearTimes("cabinets", "mass", 1.04)},
	{name: "mass of a cabinet by a ten millionth", do: gearTimes("cabinets", "mass", 1+1e-7)},
	{name: "mass of a bar", do: gearTimes("bars", "mass", 1.1)},
	{name: "mass of a dolly", do: gearTimes("dollies", "mass", 1.1)},
	{name: "deck of a dolly", do: gearTimes("dollies", "deck_height", 1.05)},
	{name: "cabinets on a dolly", do: gearPuts("dollies", "takes", "1", "2", "3", "5", "9")},
	{name: "which hoist", do: otherHoist},
	{name: "class of a hoist", do: gearPuts("hoists", "class", "over people", "not over people")},
	{name: "speed of a hoist", do: gearPuts("hoists", "speed", "4 m/min", "8 m/min")},
	{name: "trim", do: trim(0.1)},
	{name: "trim by a millimetre", do: trim(0.001)},
	{name: "trim by nothing to speak of", do: trim(1e-9)},
	{name: "note of the job", do: puts("job", "note", "Doors at seven", "Doors at eight")},
	{name: "note of a stack", do: stackPuts("note", "Mind the lamp", "Mind the beam")},
	{name: "title", do: puts("job", "title", "A show", "A shop")},
	{name: "venue", do: puts("job", "venue", "A hall", "B hall")},
	{name: "date", do: puts("job", "date", "2027-03-11", "2027-03-12")},
	{name: "who prepared it", do: puts("job", "prepared_by", "Ann", "Bob")},
	{name: "datum", do: puts("job", "datum", "edge of the stage", "the back wall")},
	{name: "what heights are above", do: puts("job", "heights_from", "arena floor", "the deck")},
	{name: "spares", do: puts("job", "spares", "0 %", "7 %", "60 %")},
	{name: "units", do: puts("paper", "units", "metric", "imperial")},
	{name: "size of paper", do: puts("paper", "size", "A4", "Letter")},
	{name: "url", do: puts("job", "url", "https://a.example/p.pdf", "https://b.example/p.pdf")},
	{name: "url with a page", do: puts("job", "url", "https://a.example/p.pdf#page={page}", "https://a.example/p.pdf")},
	{name: "url with a page or two", do: puts("job", "url", "https://a.example/{page}", "https://a.example/{page}/{page}")},
	{name: "url with a stack", do: puts("job", "url", "https://a.example/{stack}.pdf", "https://a.example/p.pdf")},
	{name: "url with both", do: puts("job", "url", "https://a.example/{stack}/{page}", "https://a.example/{page}/{stack}")},
	{name: "no url", do: func(e *editor) bool { had := e.was.URL != ""; e.at("job").drop("url"); return had }},
	{name: "source of figures", do: gearPuts("cabinets", "source", "weighed", "label", "estimate")},
	{name: "date of figures", do: gearPuts("bars", "as_of", "2026-01-20", "2026-02-20")},
	{name: "a stack more", do: addStack},
	{name: "a stack less", do: dropStack},
	{name: "a stack has another id", do: renameStack},
	{name: "stacks in another order", do: func(e *editor) bool {
		list := e.at("stacks").Content
		list[0], list[len(list)-1] = list[len(list)-1], list[0]
		return len(list) > 1
	}},
	{name: "sets", do: otherSets},
	{name: "no dolly", do: noDolly},
	{name: "when pins are set", do: stackPuts("pins_set", "on_dolly", "at_the_hoist", "in_the_air")},
	{name: "when pins are set, of all", do: puts("practice", "pins_set", "on_dolly", "at_the_hoist", "in_the_air")},
	{name: "label of a hole", do: otherLabel},
	{name: "name of a stack", do: stackPuts("name", "Main left", "Main right")},
	{name: "name of a cabinet", do: gearPuts("cabinets", "name", "Box", "Fox")},
	{name: "side mark", do: stackPuts("shape", "square", "circle", "triangle", "diamond")},
	{name: "aim", do: stackPuts("aim", "1 deg down", "2 deg down")},
	{name: "where it hangs", do: stackPuts("place", "{stage_left: 3 m, downstage: 1 m}", "{stage_right: 3 m, downstage: 1 m, pan: 10 deg stage_left}")},
	{name: "secondary", do: stackPuts("secondary", "{what: steel bond, rating: 20 kN}")},
	{name: "another point", do: func(e *editor) bool {
		e.add("other_points", "{id: XX, place: {stage_left: 1 m, upstage: 2 m}, height: 9 m, mass: 40 kg, what: lamp}")
		return true
	}},
	{name: "least of a reading", do: puts("practice", "reading_floor", "10 kg", "30 kg")},
	{name: "tolerance of an aim", do: puts("practice", "aim_tolerance", "0.5 deg", "1.5 deg")},
	{name: "revision", do: func(e *editor) bool {
		e.at("job").put("revision", `"`+strings.Repeat(e.among(e.was.Revision[:1], "7", "C", "D"), len(e.was.Revision))+`"`)
		return true
	}},
	{name: "longer revision", do: longerRevision},
	{name: "order of keys", same: true, do: func(e *editor) bool {
		e.restyle(&trial{Rand: e.Rand})
		return true
	}},
	{name: "the same in metres and kilograms", do: inUnits(0)},
	{name: "the same in inches and pounds", do: inUnits(1)},
	{name: "any value", do: anyValue(1.05)},
	{name: "any value by a little", do: anyValue(1.0003)},
	{name: "any value by a hair", do: anyValue(1 + 1e-9)},
}

// inUnits writes every quantity in units of one system.
func inUnits(system int) func(e *editor) bool {
	return func(e *editor) bool {
		for kind, units := range otherUnit {
			e.eachOf(func(_ string, v tree) {
				x := v.si()
				if kind == job.Load && v.unitSI() == "kg" {
					x *= newton
				}
				v.set(x, units[system])
			}, kind)
		}
		return true
	}
}
