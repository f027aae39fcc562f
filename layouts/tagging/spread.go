package tagging

// Spread moves places along a line apart until each two are at least gap
// apart, keeping their order and staying between lo and hi where there is room
// for them; places that are far enough apart stay. want must ascend.
func Spread(want []float64, gap, lo, hi float64) []float64 {
	at := append([]float64{}, want...)
	for i := range at {
		at[i] = max(at[i], lo)
		if i > 0 {
			at[i] = max(at[i], at[i-1]+gap)
		}
	}
	for i := len(at) - 1; i >= 0; i-- {
		limit := hi
		if i < len(at)-1 {
			limit = at[i+1] - gap
		}
		at[i] = min(at[i], limit)
	}
	return at
}
