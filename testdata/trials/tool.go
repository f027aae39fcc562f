package trials

import (
	"os"
	"os/exec"
	"testing"

	"github.com/stretchr/testify/require"
)

// Tool runs another program that looks at a pack, or skips where it is not installed.
// .ci/run installs them and sets HANGPACK_TOOLS: then a missing one is a failure and not
// a skip.
func Tool(t *testing.T, name string, args ...string) string {
	t.Helper()
	if _, err := exec.LookPath(name); err != nil {
		if os.Getenv("HANGPACK_TOOLS") != "" {
			t.Fatalf("%s is not installed", name)
		}
		t.Skipf("%s is not installed", name)
	}
	out, err := exec.Command(name, args...).CombinedOutput()
	require.NoError(t, err, "%s %v: %s", name, args, out)
	return string(out)
}
