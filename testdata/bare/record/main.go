// Record writes down how the pages of a pack are drawn, step by step, for the bare
// program to draw them again.
//
//	record PACK.pdf > RECORD
package main

import (
	"bufio"
	"encoding/binary"
	"math"
	"os"
	"regexp"
	"strconv"
	"strings"

	"hangpack/testdata/readback"
)

const (
	ptPerMm = 72 / 25.4
	high    = 297 // mm, of A4
	number  = `(-?[0-9.]+)`
)

var (
	// Codes come as one path of runs; a text may have line ends in it.
	steps = regexp.MustCompile(`(?s)q [0-9. -]+ cm\n(?:[0-9]+ [0-9]+ [0-9]+ 1 re\n)+f Q\n|(?:q [0-9.]+ g )?BT [0-9. -]+ Td \((?:\\.|[^\\)])*\) Tj ET(?: Q)?\n|[^\n]*\n`)

	font  = regexp.MustCompile(`^BT /F([0-9a-f]+) ` + number + ` Tf ET\n$`)
	text  = regexp.MustCompile(`(?s)^(?:q ` + number + ` g )?BT ` + number + ` ` + number + ` Td \((.*)\) Tj ET(?: Q)?\n$`)
	line  = regexp.MustCompile(`^` + number + ` ` + number + ` m ` + number + ` ` + number + ` l S\n$`)
	rect  = regexp.MustCompile(`^` + number + ` ` + number + ` ` + number + ` ` + number + ` re ([SfB])\n$`)
	width = regexp.MustCompile(`^` + number + ` w\n$`)
	grey  = regexp.MustCompile(`^` + number + ` g\n$`)
	code  = regexp.MustCompile(`(?s)^q ` + number + ` 0 0 -[0-9.]+ ` + number + ` ` + number + ` cm\n` + readback.Runs + `\n$`)
)

func main() {
	pdf, err := os.ReadFile(os.Args[1])
	must(err)
	out := &record{Writer: bufio.NewWriter(os.Stdout), bold: "?", ink: 0}
	for _, page := range readback.Contents(pdf) {
		out.page(page)
	}
	must(out.Flush())
}

func must(err error) {
	if err != nil {
		panic(err)
	}
}

type record struct {
	*bufio.Writer
	regular string // the first face's name
	bold    string
	ink     float64 // of the last text
}

func (r *record) page(content string) {
	r.step('p')
	for _, s := range steps.FindAllString(content+"\n", -1) {
		r.draw(s)
	}
}

func (r *record) draw(s string) {
	num := func(m []string, i int) float64 { x, _ := strconv.ParseFloat(m[i], 64); return x }
	x := func(m []string, i int) float64 { return num(m, i) / ptPerMm }
	y := func(m []string, i int) float64 { return high - num(m, i)/ptPerMm }
	if m := font.FindStringSubmatch(s); m != nil {
		r.step('f')
		r.text(r.style(m[1]))
		r.numbers(num(m, 2))
	} else if m := text.FindStringSubmatch(s); m != nil {
		if ink := num(m, 1) * 255; ink != r.ink {
			r.step('i')
			r.numbers(ink)
			r.ink = ink
		}
		r.step('t')
		r.numbers(x(m, 2), y(m, 3))
		r.text(readback.Text(m[4]))
	} else if m := line.FindStringSubmatch(s); m != nil {
		r.step('l')
		r.numbers(x(m, 1), y(m, 2), x(m, 3), y(m, 4))
	} else if m := rect.FindStringSubmatch(s); m != nil {
		r.step('r')
		r.numbers(x(m, 1), y(m, 2), x(m, 3), -x(m, 4))
		r.text(map[string]string{"S": "D", "f": "F", "B": "FD"}[m[5]])
	} else if m := width.FindStringSubmatch(s); m != nil {
		r.step('w')
		r.numbers(x(m, 1))
	} else if m := grey.FindStringSubmatch(s); m != nil {
		r.step('g')
		r.numbers(math.Round(num(m, 1) * 255))
	} else if m := code.FindStringSubmatch(s); m != nil {
		r.step('c')
		r.numbers(num(m, 2), num(m, 3), num(m, 1))
		says, err := readback.Code(m[4])
		must(err)
		r.text(says)
	} else {
		r.step('x')
		r.text(strings.TrimSuffix(s, "\n"))
	}
}

// style names a face: the pack begins with the regular one.
func (r *record) style(name string) string {
	if r.regular == "" {
		r.regular = name
	}
	if name == r.regular {
		return ""
	}
	return "B"
}

func (r *record) step(kind byte) { must(r.WriteByte(kind)) }

func (r *record) numbers(all ...float64) { must(binary.Write(r, binary.LittleEndian, all)) }

func (r *record) text(s string) {
	must(binary.Write(r, binary.LittleEndian, uint32(len(s))))
	_, err := r.WriteString(s)
	must(err)
}
