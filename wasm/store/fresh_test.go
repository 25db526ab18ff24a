//go:build !js

package store

import "testing"

func freshStore(*testing.T) Store { return &Memory{} }
