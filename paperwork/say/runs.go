package say

import (
	"fmt"
	"strings"
)

// A Span is a run of cabinets, or of the joints above them: the first and the last,
// counted from 1.
type Span struct{ From, To int }

// Dashed writes a span as a name of a sheet has it: '5', '1-8'.
func (s Span) Dashed() string {
	if s.From == s.To {
		return fmt.Sprint(s.From)
	}
	return fmt.Sprintf("%d-%d", s.From, s.To)
}

// Cabinets writes a span of cabinets: 'cabinet 5', 'cabinets 1 to 8'.
func (s Span) Cabinets() string {
	if s.From == s.To {
		return fmt.Sprintf("cabinet %d", s.From)
	}
	return fmt.Sprintf("cabinets %d to %d", s.From, s.To)
}

// String writes a span among others: '3', '3, 4', '3 to 5'.
func (s Span) String() string {
	switch s.To - s.From {
	case 0:
		return fmt.Sprint(s.From)
	case 1:
		return fmt.Sprintf("%d, %d", s.From, s.To)
	}
	return fmt.Sprintf("%d to %d", s.From, s.To)
}

// Runs cuts a span into runs of neighbours that are alike, where alike reports
// whether n is like n-1; it is not asked about the first of the span.
func Runs(s Span, alike func(n int) bool) (runs []Span) {
	for n := s.From; n <= s.To; n++ {
		if last := len(runs) - 1; last >= 0 && alike(n) {
			runs[last].To = n
		} else {
			runs = append(runs, Span{n, n})
		}
	}
	return runs
}

// Those lists the numbers from 1 to most for which so holds: '3, 5 to 7', and "" where
// it holds for none.
func Those(most int, so func(n int) bool) string {
	var words []string
	for _, r := range Runs(Span{1, most}, func(n int) bool { return so(n) == so(n-1) }) {
		if so(r.From) {
			words = append(words, r.String())
		}
	}
	return strings.Join(words, ", ")
}

// Joints names the joints of a list that Those made: 'joint 3', 'joints 3, 5 to 7'.
func Joints(list string) string {
	if strings.ContainsAny(list, ", ") {
		return "joints " + list
	}
	return "joint " + list
}

// Joint names joint k, counted from 0, as people count.
func Joint(k int) string { return fmt.Sprintf("joint %d", k+1) }

// Dolly names the dolly of set k, counted from 0: A for the top of the stack, AA after
// Z.
func Dolly(k int) string {
	if k < 26 {
		return string(rune('A' + k))
	}
	return "A" + string(rune('A'+k-26))
}

// Numbered lists numbers that rise, after the word for one of them: 'joint 3', 'joints 2
// to 5, 7 and 9'.
func Numbered(one string, numbers []int) string {
	return numbered(one, one+"s", numbers, func(n int) string { return fmt.Sprint(n) })
}

// Dollies names the dollies of sets that are counted from 1 and rise: 'dollies A to C'.
func Dollies(sets []int) string {
	return numbered("dolly", "dollies", sets, func(n int) string { return Dolly(n - 1) })
}

func numbered(one, many string, numbers []int, write func(int) string) string {
	words := runsOf(numbers, write)
	if len(numbers) == 1 {
		return one + " " + words[0]
	}
	if n := len(words) - 1; n > 0 {
		words = []string{strings.Join(words[:n], ", ") + " and " + words[n]}
	}
	return many + " " + words[0]
}

// runsOf writes numbers that rise, from three neighbours on as one run: '2', '3', '5 to 7'.
func runsOf(numbers []int, write func(int) string) (words []string) {
	for i := 0; i < len(numbers); {
		last := i
		for last+1 < len(numbers) && numbers[last+1] == numbers[last]+1 {
			last++
		}
		if last-i < 2 {
			last = i
			words = append(words, write(numbers[i]))
		} else {
			words = append(words, write(numbers[i])+" to "+write(numbers[last]))
		}
		i = last + 1
	}
	return words
}
