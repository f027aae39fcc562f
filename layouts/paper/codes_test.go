package paper

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Modules of a code are never smaller than half a millimetre.
func TestCodesGrowWithTheirText(t *testing.T) {
	c := canvasFor()
	assert.Equal(t, usualCode, c.CodeSide(Code{Text: "SL REV B 3F9A1C07 PICK 22 1:0"}))
	long := Code{Text: strings.Repeat("12:WWWW ", 40)}
	side := c.CodeSide(long)
	assert.Greater(t, side, usualCode)
	modules, err := encode(long.Text)
	require.NoError(t, err)
	assert.GreaterOrEqual(t, side/float64(len(modules)+2*quiet), leastModule)
}
