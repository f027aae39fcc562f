package paper

import (
	"bytes"
	"fmt"
)

// annotationsApart makes an object of each click. The PDF library writes them into their
// pages, where a file may only refer to them. Source: ISO 32000-1, 7.7.3.3 (Annots: an
// array of indirect references).
func annotationsApart(objects [][]byte) [][]byte {
	pages := len(objects)
	for i := range pages {
		head, rest, has := bytes.Cut(objects[i], []byte("\n/Annots [<<"))
		list, tail, whole := bytes.Cut(rest, []byte(">>]\n"))
		if !has || !whole || !bytes.Contains(head, []byte("<</Type /Page\n")) {
			continue
		}
		var refs []byte
		for _, a := range bytes.Split(list, []byte(">><<")) {
			n := len(objects) + 1
			objects = append(objects, fmt.Appendf(nil, "%d 0 obj\n<<%s>>\nendobj\n", n, a))
			refs = fmt.Appendf(refs, "%d 0 R ", n)
		}
		objects[i] = fmt.Appendf(nil, "%s\n/Annots [%s]\n%s", head, bytes.TrimSpace(refs), tail)
	}
	return objects
}

// withSize tells a trailer how many objects there are, the head of the free ones
// counted in.
func withSize(trailer []byte, objects int) []byte {
	head, rest, _ := bytes.Cut(trailer, []byte("/Size "))
	_, tail, _ := bytes.Cut(rest, []byte("\n"))
	return fmt.Appendf(nil, "%s/Size %d\n%s", head, objects+1, tail)
}
