package paperwork

import (
	"bytes"
	"encoding/json"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/pdfcpu/pdfcpu/pkg/api"
	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu"
	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu/model"
	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu/types"
	"github.com/stretchr/testify/require"

	"hangpack/testdata/trials"
)

// A named is a name and the page that it leads to, counted from 1 in its file.
type named struct {
	Name string
	Page int
}

// A click is a link on a page: its corners in points, and the page that it leads to.
type click struct {
	On   int
	Rect [4]float64
	To   int
}

// An outlined is what leads to the pages of a PDF, as another program reads it.
type outlined struct {
	Names, Bookmarks []named // in the order of the file
	Clicks           []click
}

// byLibrary reads a PDF with pdfcpu, which first validates it in its strict mode, and
// the drawing instructions of every page.
func byLibrary(t *testing.T, pdf []byte) (o outlined, pages []string) {
	t.Helper()
	api.DisableConfigDir()
	conf := model.NewDefaultConfiguration()
	conf.ValidationMode = model.ValidationStrict
	require.NoError(t, api.Validate(bytes.NewReader(pdf), conf))
	ctx, err := api.ReadValidateAndOptimize(bytes.NewReader(pdf), conf)
	require.NoError(t, err)
	require.NoError(t, ctx.Names["Dests"].Process(ctx.XRefTable, func(_ *model.XRefTable, name string, to *types.Object) error {
		o.Names = append(o.Names, named{name, pageBy(t, ctx, *to)})
		return nil
	}))
	marks, err := pdfcpu.Bookmarks(ctx)
	require.NoError(t, err)
	for _, b := range marks {
		o.Bookmarks = append(o.Bookmarks, named{b.Title, b.PageFrom})
	}
	for n := 1; n <= ctx.PageCount; n++ {
		o.Clicks = append(o.Clicks, clicksBy(t, ctx, n)...)
		r, err := pdfcpu.ExtractPageContent(ctx, n)
		require.NoError(t, err)
		content, err := io.ReadAll(r)
		require.NoError(t, err)
		pages = append(pages, string(content))
	}
	return o, pages
}

// pageBy is the page that a destination leads to.
func pageBy(t *testing.T, ctx *model.Context, to types.Object) int {
	t.Helper()
	list, err := ctx.DereferenceArray(to)
	require.NoError(t, err)
	page, err := ctx.PageNumber(list[0].(types.IndirectRef).ObjectNumber.Value())
	require.NoError(t, err)
	return page
}

// clicksBy are the links of a page.
func clicksBy(t *testing.T, ctx *model.Context, n int) (all []click) {
	t.Helper()
	page, _, _, err := ctx.PageDict(n, false)
	require.NoError(t, err)
	list, err := ctx.DereferenceArray(page["Annots"])
	require.NoError(t, err)
	for _, ref := range list {
		link, err := ctx.DereferenceDict(ref)
		require.NoError(t, err)
		c := click{On: n, To: pageBy(t, ctx, link["Dest"])}
		for i, x := range link["Rect"].(types.Array) {
			c.Rect[i], err = ctx.DereferenceNumber(x)
			require.NoError(t, err)
		}
		all = append(all, c)
	}
	return all
}

// A qpdfFile is what qpdf tells of a file, version 2 of its JSON.
type qpdfFile struct {
	Pages []struct{ Object string }
	Qpdf  []map[string]json.RawMessage
}

// object reads one of its objects.
func (q qpdfFile) object(t *testing.T, ref string, into any) {
	t.Helper()
	var holds struct{ Value json.RawMessage }
	key := "obj:" + ref
	if ref == "trailer" {
		key = ref
	}
	require.NoError(t, json.Unmarshal(q.Qpdf[1][key], &holds), ref)
	require.NoError(t, json.Unmarshal(holds.Value, into), ref)
}

// page is the page that a destination leads to.
func (q qpdfFile) page(to []any) int {
	return slices.IndexFunc(q.Pages, func(p struct{ Object string }) bool { return p.Object == to[0] }) + 1
}

// A catalog is what the root of a PDF says of its names and bookmarks.
type catalog struct {
	Names struct {
		Dests struct {
			Names []any `json:"/Names"`
		} `json:"/Dests"`
	} `json:"/Names"`
	Outlines string `json:"/Outlines"`
}

// byProgram reads a PDF with qpdf.
func byProgram(t *testing.T, pdf []byte) (o outlined) {
	t.Helper()
	file := filepath.Join(t.TempDir(), "pack.pdf")
	require.NoError(t, os.WriteFile(file, pdf, 0o644))
	var q qpdfFile
	says := trials.Tool(t, "qpdf", "--json=2", "--json-key=pages", "--json-key=qpdf", "--json-stream-data=none", file)
	require.NoError(t, json.Unmarshal([]byte(says), &q))
	var trailer struct {
		Root string `json:"/Root"`
	}
	q.object(t, "trailer", &trailer)
	var root catalog
	q.object(t, trailer.Root, &root)
	for pair := range slices.Chunk(root.Names.Dests.Names, 2) {
		o.Names = append(o.Names, named{plainText(pair[0].(string)), q.page(pair[1].([]any))})
	}
	o.Bookmarks = q.bookmarks(t, root.Outlines)
	for i, p := range q.Pages {
		o.Clicks = append(o.Clicks, q.clicks(t, i+1, p.Object)...)
	}
	return o
}

// plainText is a text string of qpdf's JSON without the mark of its kind.
func plainText(s string) string { return strings.TrimPrefix(s, "u:") }

// bookmarks follows the chain of bookmarks.
func (q qpdfFile) bookmarks(t *testing.T, root string) (all []named) {
	t.Helper()
	var list struct {
		First string `json:"/First"`
	}
	q.object(t, root, &list)
	for ref := list.First; ref != ""; {
		var b struct {
			Title string `json:"/Title"`
			Next  string `json:"/Next"`
			Dest  []any  `json:"/Dest"`
		}
		q.object(t, ref, &b)
		all, ref = append(all, named{plainText(b.Title), q.page(b.Dest)}), b.Next
	}
	return all
}

// clicks are the links of a page.
func (q qpdfFile) clicks(t *testing.T, n int, ref string) (all []click) {
	t.Helper()
	var page struct {
		Annots []string `json:"/Annots"`
	}
	q.object(t, ref, &page)
	for _, a := range page.Annots {
		var link struct {
			Rect [4]float64 `json:"/Rect"`
			Dest []any      `json:"/Dest"`
		}
		q.object(t, a, &link)
		all = append(all, click{n, link.Rect, q.page(link.Dest)})
	}
	return all
}
