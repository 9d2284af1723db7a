// Package disktest holds file systems that fail, for tests: Failing refuses calls as a worn or full
// disk does, Volatile loses what was not synced as a loss of power does. Both stand on real files, so
// that programs which open files by path see the same.
package disktest
