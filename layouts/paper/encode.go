package paper

import (
	"sync"

	qrcode "github.com/skip2/go-qrcode"
)

// A bitmap is the modules of a code, true for black, without its quiet zone.
type bitmap [][]bool

// Sizes of codes in mm. Modules of half a millimetre outlive two copies on a
// poor machine; the quiet zone of four modules is that of ISO/IEC 18004.
const (
	leastModule = 0.5
	quiet       = 4
	usualCode   = 30.0
)

// encode makes the modules of a text, at level M.
func encode(s string) (bitmap, error) {
	q, err := qrcode.New(s, qrcode.Medium)
	if err != nil {
		return nil, err
	}
	q.DisableBorder = true
	return q.Bitmap(), nil
}

// modulesOf returns how many modules a code has in a row. Source: ISO/IEC 18004, a
// version has four more than the one before it, and version 1 has 21.
func modulesOf(q *qrcode.QRCode) int { return 17 + 4*q.VersionNumber }

// codes are the modules of texts. Each text is encoded once, whoever asks first.
type codes map[string]func() (bitmap, error)

// codesFor prepares to encode texts.
func codesFor(texts []string) codes {
	all := codes{}
	for _, s := range texts {
		if all[s] == nil {
			all[s] = sync.OnceValues(func() (bitmap, error) { return encode(s) })
		}
	}
	return all
}

// modules returns those of a text.
func (all codes) modules(s string) (bitmap, error) {
	if known, ok := all[s]; ok {
		return known()
	}
	return encode(s)
}

// ahead encodes texts in their order while the pages before them are drawn. What goes
// wrong with one is left to who draws it, and is told again then.
func (all codes) ahead(texts []string) {
	defer func() { recover() }()
	for _, s := range texts {
		all.modules(s)
	}
}
