package document

import (
	"crypto/sha256"
	"encoding/hex"

	"yokebook/measure"
)

// hashOf writes the SHA-256 of bytes as "sha256:<hex>".
func hashOf(data []byte) string {
	sum := sha256.Sum256(data)
	return "sha256:" + hex.EncodeToString(sum[:])
}

// Hash returns "sha256:<hex>" of a reading's canonical bytes. Id and hash together are a record's identity.
func Hash(r measure.Reading) string { return hashOf(EncodeReading(r)) }

// HashStrike is Hash for a strike.
func HashStrike(s measure.Strike) string { return hashOf(EncodeStrike(s)) }

// HashSkip is Hash for a skipped stop.
func HashSkip(s measure.Skip) string { return hashOf(EncodeSkip(s)) }

// HashHead is Hash for a head.
func HashHead(h measure.Head) string { return hashOf(EncodeHead(h)) }
