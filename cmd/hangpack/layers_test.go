package main

import (
	"os/exec"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestImportsGoOneWay: cmd -> paperwork -> {calc, layouts}; one importer of
// each library; no library beyond those that are agreed.
func TestImportsGoOneWay(t *testing.T) {
	imports := map[string][]string{}
	out, err := exec.Command("go", "list", "-f", `{{.ImportPath}} {{join .Imports " "}}`, "hangpack/...").Output()
	require.NoError(t, err)
	for _, line := range strings.Split(strings.TrimSpace(string(out)), "\n") {
		words := strings.Fields(line)
		imports[words[0]] = words[1:]
	}
	own := func(names string) string {
		return "hangpack/" + strings.ReplaceAll(names, " ", " hangpack/")
	}
	below := "calc paperwork/job paperwork/say paperwork/rig paperwork/rules paperwork/worked"
	allowed := map[string]string{
		"hangpack/calc":              "",
		"hangpack/layouts/mm":        "",
		"hangpack/layouts/paper":     "hangpack/layouts/mm github.com/go-pdf/fpdf github.com/skip2/go-qrcode golang.org/x/image/font/gofont/goregular golang.org/x/image/font/gofont/gobold",
		"hangpack/layouts/tagging":   own("layouts/mm"),
		"hangpack/layouts/drawings":  own("layouts/mm layouts/paper layouts/tagging"),
		"hangpack/layouts/parts":     own("layouts/mm layouts/paper"),
		"hangpack/layouts/plan":      own("layouts/mm layouts/paper layouts/tagging layouts/drawings layouts/parts"),
		"hangpack/layouts":           own("layouts/mm layouts/paper layouts/drawings layouts/parts layouts/plan"),
		"hangpack/paperwork/job":     "hangpack/calc gopkg.in/yaml.v3",
		"hangpack/paperwork/say":     "hangpack/calc",
		"hangpack/paperwork/rig":     own("calc paperwork/job paperwork/say"),
		"hangpack/paperwork/rules":   own("calc paperwork/job paperwork/say paperwork/rig"),
		"hangpack/paperwork/worked":  own("calc paperwork/job paperwork/say paperwork/rig paperwork/rules"),
		"hangpack/paperwork/sheets":  own("layouts " + below),
		"hangpack/paperwork/report":  own("layouts " + below),
		"hangpack/paperwork/changes": own("layouts paperwork/sheets " + below),
		"hangpack/paperwork/laws":    "",
		"hangpack/paperwork":         own("layouts paperwork/job paperwork/worked paperwork/sheets"),
		"hangpack/cmd/hangpack":      own("paperwork paperwork/job paperwork/worked paperwork/sheets paperwork/report paperwork/changes"),
	}
	assert.Len(t, imports, len(allowed))
	for pkg, list := range imports {
		for _, path := range list {
			if strings.Contains(path, ".") || strings.HasPrefix(path, "hangpack") {
				assert.Contains(t, strings.Fields(allowed[pkg]), path, "%s imports it", pkg)
			}
		}
		if pkg != "hangpack/cmd/hangpack" {
			assert.NotContains(t, list, "os", "%s reads no file and asks no clock", pkg)
		}
	}
}
