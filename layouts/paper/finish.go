package paper

import (
	"bytes"
	"compress/zlib"
	"crypto/sha256"
	"errors"
	"fmt"
	"slices"
	"strconv"
	"sync"
)

// finish makes the file that is written of what the PDF library put together:
// streams deflated on all cores, clicks as objects, a colophon, an identifier, names for
// its sheets, and the wish that a viewer prints at full size, without which a scale is not
// true. Source: ISO 32000-1, 7.4.4
// (FlateDecode), 7.5 (file structure), 12.2 (viewer preferences), 14.4 (file
// identifiers).
func finish(plain []byte, to []destination, says Colophon) ([]byte, error) {
	objects, trailer, err := apart(plain)
	if err != nil {
		return nil, fmt.Errorf("finishing the PDF: %w", err)
	}
	onAllCores(len(objects), func(i int) { objects[i] = deflated(objects[i]) })
	info := &objects[len(objects)-2]
	if *info, err = withColophon(*info, says); err != nil {
		return nil, fmt.Errorf("finishing the PDF: %w", err)
	}
	catalog := &objects[len(objects)-1]
	*catalog = bytes.Replace(*catalog, []byte("/Type /Catalog\n"), []byte("/Type /Catalog\n/ViewerPreferences <</PrintScaling /None>>\n"), 1)
	if *catalog, err = withNames(*catalog, nameTree(to, kids(objects[0]))); err != nil {
		return nil, fmt.Errorf("finishing the PDF: %w", err)
	}
	objects = annotationsApart(objects)
	return file(objects, withSize(trailer, len(objects))), nil
}

// apart takes a PDF apart along its table of objects. Each object goes on to where
// the next one in the file begins, the last one to the table.
func apart(pdf []byte) (objects [][]byte, trailer []byte, err error) {
	table := bytes.LastIndex(pdf, []byte("\nxref\n0 ")) + 1
	body, end, ok := bytes.Cut(pdf[table:], []byte("trailer\n"))
	trailer, _, last := bytes.Cut(end, []byte(">>\nstartxref\n"))
	rows := bytes.Split(bytes.TrimSuffix(body, []byte("\n")), []byte("\n"))
	if table == 0 || !ok || !last || len(rows) < 4 {
		return nil, nil, errors.New("no table of objects")
	}
	rows = rows[3:] // xref, its range, the head of the free ones
	starts := make([]int, len(rows), len(rows)+1)
	for i, row := range rows {
		if starts[i], err = strconv.Atoi(string(bytes.TrimLeft(row[:10], "0"))); err != nil {
			return nil, nil, err
		}
	}
	inOrder := append(slices.Sorted(slices.Values(starts)), table)
	for _, start := range starts {
		next, _ := slices.BinarySearch(inOrder, start)
		objects = append(objects, pdf[start:inOrder[next+1]])
	}
	return objects, trailer, nil
}

// deflaters are kept, since a new one takes more room than a page.
var deflaters = sync.Pool{New: func() any {
	z, err := zlib.NewWriterLevel(nil, zlib.BestSpeed)
	if err != nil {
		panic(err) // the level is a constant that zlib has
	}
	return z
}}

// deflated packs the stream of an object, if it has one that is not packed yet.
func deflated(object []byte) []byte {
	head, rest, stream := bytes.Cut(object, []byte("\nstream\n"))
	data, _, whole := bytes.Cut(rest, []byte("\nendstream\n"))
	name, _, long := bytes.Cut(head, []byte("<</Length "))
	if !stream || !whole || !long || bytes.Contains(head, []byte("/Filter")) {
		return object
	}
	packed := bytes.NewBuffer(make([]byte, 0, len(data)/2))
	z := deflaters.Get().(*zlib.Writer)
	defer deflaters.Put(z)
	z.Reset(packed)
	z.Write(data) // into memory, which takes all
	z.Close()
	return fmt.Appendf(nil, "%s<</Filter /FlateDecode /Length %d>>\nstream\n%s\nendstream\nendobj\n", name, packed.Len(), packed.Bytes())
}

// file puts objects, numbered from 1, together to a PDF.
func file(objects [][]byte, trailer []byte) []byte {
	out := bytes.NewBufferString("%PDF-1.7\n%\xe2\xe3\xcf\xd3\n")
	starts := make([]int, len(objects))
	for i, o := range objects {
		starts[i] = out.Len()
		out.Write(o)
	}
	id, table := sha256.Sum256(out.Bytes()), out.Len()
	fmt.Fprintf(out, "xref\n0 %d\n0000000000 65535 f \n", len(objects)+1)
	for _, start := range starts {
		fmt.Fprintf(out, "%010d 00000 n \n", start)
	}
	fmt.Fprintf(out, "trailer\n%s/ID [<%x> <%x>]\n>>\nstartxref\n%d\n%%%%EOF\n", trailer, id[:16], id[:16], table)
	return out.Bytes()
}
