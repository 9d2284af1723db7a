package place

import (
	"crypto/sha256"
	"crypto/subtle"
	"crypto/tls"
	"crypto/x509"
	"encoding/base64"
	"errors"
	"fmt"
	"net"
	"net/http"
	"time"
)

// Pin names a server by its public key: the SHA-256 of it, as certificates carry it. It outlives a
// renewed certificate.
type Pin [sha256.Size]byte

// PinOf is the pin of a certificate's public key.
func PinOf(c *x509.Certificate) Pin { return sha256.Sum256(c.RawSubjectPublicKeyInfo) }

// String is the pin in 43 letters, digits, - and _.
func (p Pin) String() string { return base64.RawURLEncoding.EncodeToString(p[:]) }

// ParsePin reads what String wrote.
func ParsePin(text string) (Pin, error) {
	var p Pin
	data, err := base64.RawURLEncoding.Strict().DecodeString(text)
	if err != nil || len(data) != len(p) {
		return p, errors.New("the server's fingerprint is not 43 letters, digits, - and _; copy it whole")
	}
	copy(p[:], data)
	return p, nil
}

// UnknownServer is the error of a server whose certificate nobody vouches for.
type UnknownServer struct {
	Place string
	Pin   Pin
	Err   error
}

// Error shows the fingerprint to compare.
func (e *UnknownServer) Error() string {
	return fmt.Sprintf("%s: nobody vouches for this server (%v); if its own screen shows the fingerprint %s, name that to trust it",
		e.Place, e.Err, e.Pin)
}

// Unwrap gives the reason.
func (e *UnknownServer) Unwrap() error { return e.Err }

// OtherServer is the error of a server whose key is not the one that was pinned.
type OtherServer struct {
	Place     string
	Want, Got Pin
}

// Error shows both fingerprints.
func (e *OtherServer) Error() string {
	return fmt.Sprintf("%s: this is not the server that was trusted: its fingerprint is %s and was %s; stop, and pair again only if you know why",
		e.Place, e.Got, e.Want)
}

// distrust picks out of an error that the server is not trusted; nil when that is not the reason.
func distrust(place string, err error) error {
	var other *OtherServer
	if errors.As(err, &other) {
		return &OtherServer{Place: place, Want: other.Want, Got: other.Got}
	}
	var bad *tls.CertificateVerificationError
	if errors.As(err, &bad) && len(bad.UnverifiedCertificates) > 0 {
		return &UnknownServer{Place: place, Pin: PinOf(bad.UnverifiedCertificates[0]), Err: bad.Err}
	}
	return nil
}

// tlsConfig trusts what the system trusts, or else exactly one key.
func tlsConfig(pin *Pin) *tls.Config {
	if pin == nil {
		return &tls.Config{MinVersion: tls.VersionTLS12}
	}
	want := *pin
	return &tls.Config{
		MinVersion:         tls.VersionTLS12,
		InsecureSkipVerify: true, // VerifyConnection compares the key instead
		VerifyConnection: func(s tls.ConnectionState) error {
			got := PinOf(s.PeerCertificates[0])
			if subtle.ConstantTimeCompare(got[:], want[:]) != 1 {
				return &OtherServer{Want: want, Got: got}
			}
			return nil
		},
	}
}

// Client makes a client that waits for nobody for ever and goes nowhere by itself: an answer that
// sends us on is shown to a person, so that a password never reaches another host.
func Client(pin *Pin) *http.Client {
	dialer := &net.Dialer{Timeout: 10 * time.Second}
	return &http.Client{
		CheckRedirect: func(*http.Request, []*http.Request) error { return http.ErrUseLastResponse },
		Transport: &http.Transport{
			Proxy:                  http.ProxyFromEnvironment,
			DialContext:            dialer.DialContext,
			TLSClientConfig:        tlsConfig(pin),
			TLSHandshakeTimeout:    10 * time.Second,
			ResponseHeaderTimeout:  time.Minute,
			IdleConnTimeout:        30 * time.Second,
			MaxResponseHeaderBytes: 64 << 10,
			MaxConnsPerHost:        4,
		},
	}
}

// loopback reports a host that is this machine.
func loopback(host string) bool {
	ip := net.ParseIP(host)
	return host == "localhost" || ip != nil && ip.IsLoopback()
}
