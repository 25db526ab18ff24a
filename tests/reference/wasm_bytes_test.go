// The same plan, study, pour and take-off, to the byte, native and in WebAssembly: the command-line program is built both ways and given the engine's corpus of jobs.
package reference

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const module = "../.."

func TestWhatIsWorkedOutIsTheSameBytesNativeAndInWebAssembly(t *testing.T) {
	folder := t.TempDir()
	native, wasm := filepath.Join(folder, "lowspot"), filepath.Join(folder, "lowspot.wasm")
	build(t, native)
	build(t, wasm, "GOOS=js", "GOARCH=wasm")
	root, err := exec.Command("go", "env", "GOROOT").Output()
	require.NoError(t, err)
	runner := filepath.Join(strings.TrimSpace(string(root)), "lib", "wasm", "wasm_exec_node.js")
	jobs, err := filepath.Glob(filepath.Join(module, "engine/testdata/jobs/*.json"))
	require.NoError(t, err)
	require.NotEmpty(t, jobs)
	for _, job := range jobs {
		for _, work := range []string{"plan", "study", "pour", "takeoff"} {
			want, err := exec.Command(native, "-json", "-work", work, job).Output()
			require.NoError(t, err, job)
			got, err := bare(exec.Command("node", runner, wasm, "-json", "-work", work, job)).Output()
			require.NoError(t, err, job)
			assert.True(t, string(want) == string(got), "%s: the two answers to %s differ", filepath.Base(job), work)
		}
	}
}

func build(t *testing.T, out string, environment ...string) {
	command := exec.Command("go", "build", "-o", out, "./engine/cmd/lowspot")
	command.Dir = module
	command.Env = append(os.Environ(), environment...)
	message, err := command.CombinedOutput()
	require.NoError(t, err, string(message))
}

// bare runs a program with little in its environment, which a Go program in WebAssembly has little room for.
func bare(command *exec.Cmd) *exec.Cmd {
	command.Env = []string{"PATH=" + os.Getenv("PATH"), "HOME=" + os.Getenv("HOME")}
	return command
}
