package layouts

import "sync"

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
