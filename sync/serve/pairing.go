package serve

import (
	"crypto/rand"
	"crypto/sha256"
	"crypto/subtle"
	"encoding/base64"
	"encoding/hex"
	"slices"
	"strings"
	gosync "sync"
	"time"

	"yokebook/measure"
)

// Device is a device that was paired.
type Device struct {
	ID   measure.ID `json:"id"`
	Name string     `json:"name"` // as it called itself
	Key  string     `json:"key"`  // SHA-256 of its token; the token itself is kept by the device only
	At   time.Time  `json:"at"`
}

// Keeper keeps the list of paired devices. Its methods are called from one goroutine at a time.
type Keeper interface {
	Paired() ([]Device, error)
	Keep([]Device) error
}

const (
	codeLetters = 10 // of 32: 50 bits
	codeLives   = 15 * time.Minute
	codeWrongs  = 10 // wrong ones until a code dies
)

// alphabet leaves out I, L, O and U, which are misread (the letters of Crockford's base 32).
const alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"

// newCode makes a code in two groups of five.
func newCode() string {
	raw := make([]byte, codeLetters)
	_, _ = rand.Read(raw) // it never errs since Go 1.24
	for i, b := range raw {
		raw[i] = alphabet[b&31]
	}
	return string(raw[:5]) + "-" + string(raw[5:])
}

// tidyCode reads a code as people type it.
func tidyCode(code string) string {
	return strings.NewReplacer("-", "", " ", "", "O", "0", "I", "1", "L", "1").Replace(strings.ToUpper(code))
}

// desk pairs devices: one code at a time.
type desk struct {
	mu    gosync.Mutex
	keep  Keeper
	now   func() time.Time
	shown func(code string) // called with each new code
	came  func(Device)      // called with each new device; may be nil
	code  string
	until time.Time
	wrong int
}

// renew shows a new code. The lock is held.
func (d *desk) renew() {
	d.code, d.until, d.wrong = newCode(), d.now().Add(codeLives), 0
	d.shown(d.code)
}

// pair checks a code and makes the token of a device. It returns "" for a code that does not count.
func (d *desk) pair(a asking) (token string, err error) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.now().After(d.until) {
		d.renew()
		return "", nil
	}
	if subtle.ConstantTimeCompare([]byte(tidyCode(a.Code)), []byte(tidyCode(d.code))) != 1 {
		if d.wrong++; d.wrong >= codeWrongs {
			d.renew()
		}
		return "", nil
	}
	raw := make([]byte, 32)
	_, _ = rand.Read(raw)
	token = base64.RawURLEncoding.EncodeToString(raw)
	all, err := d.keep.Paired()
	if err != nil {
		return "", err
	}
	all = slices.DeleteFunc(slices.Clone(all), func(x Device) bool { return x.ID == a.Device })
	all = append(all, Device{ID: a.Device, Name: a.Name, Key: keyOf(token), At: d.now().UTC()})
	if err := d.keep.Keep(all); err != nil {
		return "", err
	}
	if d.came != nil {
		d.came(all[len(all)-1])
	}
	d.renew()
	return token, nil
}

// knows reports a device with its token.
func (d *desk) knows(device, token string) (bool, error) {
	d.mu.Lock()
	defer d.mu.Unlock()
	all, err := d.keep.Paired()
	if err != nil {
		return false, err
	}
	key, known := keyOf(token), 0
	for _, x := range all {
		known |= subtle.ConstantTimeCompare([]byte(x.Key+string(x.ID)), []byte(key+device))
	}
	return known == 1, nil
}

func keyOf(token string) string {
	sum := sha256.Sum256([]byte(token))
	return hex.EncodeToString(sum[:])
}
