package cli

import (
	"fmt"
	"os"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/store"
)

// readBuild reads one build file strictly. Errors begin with its path.
func readBuild(path string) (*measure.Build, document.Seal, error) {
	data, err := os.ReadFile(path)
	if err != nil {
		return nil, document.Unsealed, readError(path, err)
	}
	b, seal, err := document.Read(data)
	if err != nil {
		return nil, document.Unsealed, fmt.Errorf("%s: %w", path, err)
	}
	return b, seal, nil
}

// writeFile puts a file in place at once or not at all.
func writeFile(path string, data []byte) error {
	if err := store.WriteFile(path, data); err != nil {
		return writeError(path, err)
	}
	return nil
}
