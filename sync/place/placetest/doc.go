// Package placetest is the one suite that every place passes, and a place that fails where a test
// says so.
package placetest
