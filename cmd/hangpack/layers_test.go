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
		"hangpack/layouts":          "github.com/go-pdf/fpdf github.com/skip2/go-qrcode golang.org/x/image/font/gofont/goregular golang.org/x/image/font/gofont/gobold",
		"hangpack/paperwork/job":    "hangpack/calc gopkg.in/yaml.v3",
		"hangpack/paperwork/say":    "hangpack/calc",
		"hangpack/paperwork/rig":    "hangpack/calc hangpack/paperwork/job hangpack/paperwork/say",
		"hangpack/paperwork/worked": "hangpack/calc hangpack/paperwork/job hangpack/paperwork/rig hangpack/paperwork/rules hangpack/paperwork/say",
		"hangpack/paperwork/rules":  "hangpack/calc hangpack/paperwork/job hangpack/paperwork/rig hangpack/paperwork/say",
		"hangpack/paperwork":        "hangpack/calc hangpack/layouts hangpack/paperwork/job hangpack/paperwork/say hangpack/paperwork/rig hangpack/paperwork/rules hangpack/paperwork/worked",
		"hangpack/cmd/hangpack":     "hangpack/paperwork hangpack/paperwork/job hangpack/paperwork/worked",
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
