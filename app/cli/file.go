package cli

import (
	"fmt"
	"io"
	"os"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/store"
)

// readBuild reads one build file strictly. Errors begin with its path.
func readBuild(path string) (*measure.Build, document.Seal, error) {
	data, err := readFile(path)
	if err != nil {
		return nil, document.Unsealed, err
	}
	b, seal, err := document.Read(data)
	if err != nil {
		return nil, document.Unsealed, fmt.Errorf("%s: %w", path, err)
	}
	return b, seal, nil
}

// tooLarge is one byte more than any build file may have: what is longer is not read to its end.
const tooLarge = 8<<20 + 1

// readFile reads a file or a pipe, as far as a build file can reach.
func readFile(path string) ([]byte, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, readError(path, err)
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, tooLarge))
	if err != nil {
		return nil, readError(path, err)
	}
	return data, nil
}

// writeFile puts a file in place at once or not at all.
func writeFile(path string, data []byte) error {
	if err := store.WriteFile(path, data); err != nil {
		return writeError(path, err)
	}
	return nil
}
