package paper

import (
	"bytes"
	"errors"
	"fmt"
	"slices"
	"strings"
)

// A destination is a place of the PDF that links from elsewhere lead to, by its name: a
// page, counted from 1.
type destination struct {
	name string
	page int
}

// nameTree is a sorted name tree of one node, for the catalog. Names are of
// letters that a PDF string holds as they are. Source: ISO 32000-1, 7.9.6 (name trees)
// and 12.3.2.3 (named destinations).
func nameTree(to []destination, pages []string) string {
	to = slices.Clone(to)
	slices.SortFunc(to, func(a, b destination) int { return strings.Compare(a.name, b.name) })
	var b strings.Builder
	b.WriteString("/Names <</Dests <</Names [")
	for _, d := range to {
		fmt.Fprintf(&b, "(%s) [%s /XYZ null null null]\n", d.name, pages[d.page-1])
	}
	b.WriteString("]>>>>\n")
	return b.String()
}

// withNames puts a name tree into the catalog, in place of the empty one that the PDF
// library writes.
func withNames(catalog []byte, tree string) ([]byte, error) {
	head, rest, ok := bytes.Cut(catalog, []byte("/Names <<"))
	if _, _, ended := bytes.Cut(rest, []byte("endobj")); !ok || !ended {
		return nil, errors.New("no names in the catalog")
	}
	return slices.Concat(head, []byte(tree), []byte(">>\nendobj\n")), nil
}

// kids are the pages of a PDF in their order, as references: '3 0 R'. root is the object
// that lists them.
func kids(root []byte) (pages []string) {
	_, after, _ := bytes.Cut(root, []byte("/Kids ["))
	list, _, _ := bytes.Cut(after, []byte("]"))
	for kid := range slices.Chunk(strings.Fields(string(list)), 3) {
		pages = append(pages, strings.Join(kid, " "))
	}
	return pages
}
