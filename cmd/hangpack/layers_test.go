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
	allowed := map[string]string{
		"hangpack/calc":             "",
		"hangpack/layouts/mm":       "",
		"hangpack/layouts/paper":    "hangpack/layouts/mm github.com/go-pdf/fpdf github.com/skip2/go-qrcode golang.org/x/image/font/gofont/goregular golang.org/x/image/font/gofont/gobold",
		"hangpack/layouts/tagging":  "hangpack/layouts/mm",
		"hangpack/layouts/drawings": "hangpack/layouts/mm hangpack/layouts/paper hangpack/layouts/tagging",
		"hangpack/layouts/parts":    "hangpack/layouts/mm hangpack/layouts/paper",
		"hangpack/layouts/plan":     "hangpack/layouts/mm hangpack/layouts/paper hangpack/layouts/tagging hangpack/layouts/drawings hangpack/layouts/parts",
		"hangpack/layouts":          "hangpack/layouts/mm hangpack/layouts/paper hangpack/layouts/drawings hangpack/layouts/parts hangpack/layouts/plan",
		"hangpack/paperwork/job":    "gopkg.in/yaml.v3",
		"hangpack/paperwork":        "hangpack/calc hangpack/layouts hangpack/paperwork/job",
		"hangpack/cmd/hangpack":     "hangpack/paperwork hangpack/paperwork/job",
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
