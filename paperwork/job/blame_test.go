package job

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestShiftedLineIsNamed: a line that stands one blank too deep or too shallow is
// named itself, where the YAML library names its neighbour or the end of its block.
func TestShiftedLineIsNamed(t *testing.T) {
	lines := strings.Split(base(t), "\n")
	named := 0
	for i, line := range lines {
		for _, shifted := range []string{" " + line, strings.TrimPrefix(line, " ")} {
			lines[i] = shifted
			_, complaints := readText(strings.Join(lines, "\n"))
			if len(complaints) == 1 && complaints[0].Near {
				assert.Equal(t, i+1, complaints[0].Line, "%q", shifted)
				named++
			}
		}
		lines[i] = line
	}
	assert.Greater(t, named, 100)
}
