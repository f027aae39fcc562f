package calc

// Centre returns the sum of loads and the place of their centre of gravity.
func Centre(loads []Load) Load {
	var all moments
	for _, l := range loads {
		all.add(l.Mass, l.At)
	}
	return all.centre()
}

// Centre returns the mass of all that hangs from the hooks and its centre of gravity
// in the world, with the bar tilted by tilt radians: every mass where it is then. It
// does not go by way of the bar's axes, which CentreInBar is held to.
func (s Stack) Centre(tilt float64) Load {
	loads := []Load{{s.Bar.Mass, s.Bar.CentreOfGravity.Turned(tilt)}}
	for _, e := range s.Bar.Extras {
		loads = append(loads, Load{e.Mass, e.At.Turned(tilt)})
	}
	return Centre(append(loads, hanging(s, s.Poses(tilt), 0)...))
}
