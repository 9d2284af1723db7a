package serve

import (
	"crypto/ecdsa"
	"crypto/elliptic"
	"crypto/rand"
	"crypto/tls"
	"crypto/x509"
	"crypto/x509/pkix"
	"encoding/pem"
	"errors"
	"fmt"
	"math/big"
	"net"
	"time"

	"yokebook/sync/place"
)

// Identity is what a server shows of itself. Its key stays for good; its certificate is made anew at
// each start.
type Identity struct {
	Certificate tls.Certificate
	Pin         place.Pin
}

const keyBlock = "PRIVATE KEY"

// NewKey makes a key, as PEM.
func NewKey() ([]byte, error) {
	key, err := ecdsa.GenerateKey(elliptic.P256(), rand.Reader)
	if err != nil {
		return nil, fmt.Errorf("serve: no key could be made: %w", err)
	}
	der, err := x509.MarshalPKCS8PrivateKey(key)
	if err != nil {
		return nil, fmt.Errorf("serve: no key could be made: %w", err)
	}
	return pem.EncodeToMemory(&pem.Block{Type: keyBlock, Bytes: der}), nil
}

// errKey is returned for bytes that are no key of ours.
var errKey = errors.New("serve: the server's key is damaged; remove it to get a new one, and pair every device again")

// IdentityOf makes the certificate of a key, good for a year from now for this machine's addresses.
func IdentityOf(keyPEM []byte, now time.Time) (Identity, error) {
	block, _ := pem.Decode(keyPEM)
	if block == nil || block.Type != keyBlock {
		return Identity{}, errKey
	}
	parsed, err := x509.ParsePKCS8PrivateKey(block.Bytes)
	key, ok := parsed.(*ecdsa.PrivateKey)
	if err != nil || !ok {
		return Identity{}, errKey
	}
	template := &x509.Certificate{
		SerialNumber: big.NewInt(now.UnixNano()),
		Subject:      pkix.Name{CommonName: "yokebook"},
		NotBefore:    now.Add(-24 * time.Hour),
		NotAfter:     now.AddDate(1, 0, 0),
		KeyUsage:     x509.KeyUsageDigitalSignature,
		ExtKeyUsage:  []x509.ExtKeyUsage{x509.ExtKeyUsageServerAuth},
		DNSNames:     []string{"localhost"},
		IPAddresses:  append([]net.IP{net.IPv4(127, 0, 0, 1), net.IPv6loopback}, Addresses()...),
	}
	der, err := x509.CreateCertificate(rand.Reader, template, template, &key.PublicKey, key)
	if err != nil {
		return Identity{}, fmt.Errorf("serve: no certificate could be made: %w", err)
	}
	leaf, err := x509.ParseCertificate(der)
	if err != nil {
		return Identity{}, fmt.Errorf("serve: no certificate could be made: %w", err)
	}
	return Identity{tls.Certificate{Certificate: [][]byte{der}, PrivateKey: key, Leaf: leaf}, place.PinOf(leaf)}, nil
}

// Addresses lists this machine's addresses on its networks, without loopback and link-local ones.
func Addresses() []net.IP {
	all, err := net.InterfaceAddrs()
	if err != nil {
		return nil
	}
	var out []net.IP
	for _, a := range all {
		if n, ok := a.(*net.IPNet); ok && n.IP.IsGlobalUnicast() {
			out = append(out, n.IP)
		}
	}
	return out
}
