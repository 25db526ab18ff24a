package engine

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestOnlyDeepNestingIsRefused(t *testing.T) {
	require.True(t, Shallow([]byte(`{"a":[{"b":"[[[[{{{{\"[[["}]}`)))
	require.True(t, Shallow([]byte(strings.Repeat("[]", 1000))))
	require.True(t, Shallow([]byte(strings.Repeat("[", 64))))
	require.False(t, Shallow([]byte(strings.Repeat("[", 65))))
	require.True(t, Shallow([]byte(`"\`)))
}
