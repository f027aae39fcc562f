package job

import (
	"fmt"
	"net/url"
	"regexp"
	"slices"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"
)

// wordingWrong holds a text against what its key may say.
func wordingWrong(row *Key, s string) string {
	switch row.Kind {
	case Date:
		return dateWrong(s)
	case Revision:
		return patternWrong(s, revisions, "a revision is 1 to 6 of A-Z a-z 0-9 . -")
	case ID:
		return idWrong(s)
	case Label:
		return patternWrong(s, labels, "a hole's label is 1 to 4 of A-Z 0-9 . - /")
	case URL:
		return urlWrong(s)
	case Word:
		return wordWrong(s, row.Choices)
	case Switch:
		return wordWrong(s, []string{"yes", "no"})
	}
	return ""
}

// textWrong holds a text against its length and the characters of the paper.
func (r *reader) textWrong(s string, most int) string {
	if strings.TrimSpace(s) == "" {
		return "the text is empty; write some"
	}
	if n := utf8.RuneCountInString(s); n > most {
		return fmt.Sprintf("%d characters are too many; write at most %d", n, most)
	}
	if strings.Trim(s, " ") != s {
		return fmt.Sprintf("%q begins or ends with a blank; take it out", clipped(s))
	}
	for _, c := range s {
		switch {
		case unicode.In(c, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp):
			return fmt.Sprintf("a control character (%U) stands in the text; write it as one plain line", c)
		case !r.prints(c):
			return fmt.Sprintf("the paper's font has no %q (%U); write it in other letters", c, c)
		}
	}
	return ""
}

// hardBlank names the first space in s that only looks like a blank.
func hardBlank(s string) string {
	special := func(c rune) bool { return c != ' ' && unicode.Is(unicode.Zs, c) }
	i := strings.IndexFunc(s, special)
	if i < 0 {
		return ""
	}
	c, _ := utf8.DecodeRuneInString(s[i:])
	name := spaceName(c)
	plain := strings.Join(strings.FieldsFunc(s, special), " ")
	return fmt.Sprintf("%q has %s (%U) where an ordinary blank is wanted; type the blank anew", plain, name, c)
}

// spaceName names a space that only looks like a blank.
func spaceName(c rune) string {
	if strings.ContainsRune("\u00a0\u2007\u202f", c) {
		return "a no-break space"
	}
	return "a special space"
}

var (
	revisions = regexp.MustCompile(`^[A-Za-z0-9.-]{1,6}$`)
	ids       = regexp.MustCompile(`^[A-Z0-9][A-Z0-9-]{0,5}$`)
	devices   = regexp.MustCompile(`^(CON|PRN|AUX|NUL|COM[0-9]|LPT[0-9])$`)
	labels    = regexp.MustCompile(`^[A-Z0-9./-]{1,4}$`)
)

// idWrong checks an id, which may become the name of a file. Source for names
// that some systems keep for devices: Microsoft, Naming Files, Paths, and
// Namespaces, from memory.
func idWrong(s string) string {
	if devices.MatchString(s) {
		return fmt.Sprintf("%q cannot be the name of a file everywhere; choose another id", s)
	}
	return patternWrong(s, ids, "an id is 1 to 6 of A-Z 0-9 and -, a letter or a digit first")
}

func patternWrong(s string, pattern *regexp.Regexp, right string) string {
	if pattern.MatchString(s) {
		return ""
	}
	return fmt.Sprintf("%q does not fit; %s", s, right)
}

func dateWrong(s string) string {
	day, err := time.Parse(time.DateOnly, s)
	if err == nil && (day.Year() < 1950 || day.Year() > 2199) {
		return fmt.Sprintf("%q is in no year of this trade; write it like 2027-06-12", s)
	}
	if err != nil {
		return fmt.Sprintf("%q is no day of the calendar; write it like 2027-06-12", s)
	}
	return ""
}

func wordWrong(s string, choices []string) string {
	if slices.Contains(choices, s) {
		return ""
	}
	if meant := Near(s, choices); meant != "" {
		return fmt.Sprintf("%q is not known here; did you mean %q?", s, meant)
	}
	return fmt.Sprintf("%q is not known here; write %s", s, orList(choices))
}

// placeholders are what is filled into an address.
var placeholders = strings.NewReplacer("{page}", "1", "{stack}", "A")

// pageFragment is the one fragment that an address may end with. Source: RFC 8118,
// section 3 (page=).
const pageFragment = "#page={page}"

// urlWrong checks an address, its placeholders taken as text. Source for the
// characters that must be percent-encoded: RFC 3986, section 2.
func urlWrong(s string) string {
	plain := placeholders.Replace(s)
	if strings.ContainsAny(plain, "{}") {
		return "an address has no other braces than {page} and {stack}; take them out or percent-encode them"
	}
	for _, c := range plain {
		if c <= ' ' || c > '~' || strings.ContainsRune("\"<>\\^`|", c) {
			return fmt.Sprintf("an address has no %q; percent-encode it", c)
		}
	}
	if _, fragment, has := strings.Cut(strings.TrimSuffix(s, pageFragment), "#"); has {
		return fmt.Sprintf("an address has no fragment, %s at its end apart; take out \"#%s\"", pageFragment, clipped(fragment))
	}
	u, err := url.Parse(plain)
	if err != nil || u.Scheme != "http" && u.Scheme != "https" || u.Hostname() == "" {
		return fmt.Sprintf("%q is no web address; write it like https://paper.example/pack.pdf", s)
	}
	return ""
}
