package serve

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/http"
	"net/url"
	"strings"
	"time"

	"yokebook/measure"
	"yokebook/sync/place"
)

// Invitation is what a server shows on its screen, to be carried to another device.
type Invitation struct {
	Address string // https://host:port/
	Code    string
	Pin     place.Pin
}

// String is the invitation as text: an address with the secret part behind #, which no client sends.
func (i Invitation) String() string { return i.Address + "#" + i.Code + "." + i.Pin.String() }

// IsInvitation reports text that is meant to be one.
func IsInvitation(text string) bool {
	return strings.HasPrefix(text, "https://") && strings.Contains(text, "#")
}

// ParseInvitation reads what String wrote. Its errors hold nothing of the code.
func ParseInvitation(text string) (Invitation, error) {
	address, secret, _ := strings.Cut(text, "#")
	u, err := place.Address(address)
	if err != nil {
		return Invitation{}, err
	}
	code, fingerprint, two := strings.Cut(secret, ".")
	pin, err := place.ParsePin(fingerprint)
	if err != nil || !two || u.Scheme != "https" || len(tidyCode(code)) != codeLetters {
		return Invitation{}, fmt.Errorf("%s: the pairing text is not whole; copy all of it from the server's screen", u.Host)
	}
	return Invitation{Address: u.String(), Code: code, Pin: pin}, nil
}

// asking is what a device sends to be paired, and answering what it gets.
type asking struct {
	Code   string     `json:"code"`
	Device measure.ID `json:"device"`
	Name   string     `json:"name"`
}

type answering struct {
	Token string `json:"token"`
}

// pairPath is where devices ask to be paired. It is no name of a file.
const pairPath = "/pair"

// Accept asks the server of an invitation to be paired and returns the token: the password of this
// device at that address; its user name is its id.
func Accept(ctx context.Context, i Invitation, device measure.ID, name string) (token string, err error) {
	u, err := url.Parse(i.Address)
	if err != nil {
		return "", fmt.Errorf("the address can't be understood")
	}
	u.Path = pairPath
	body, err := json.Marshal(asking{Code: i.Code, Device: device, Name: name})
	if err != nil {
		return "", fmt.Errorf("pairing: %w", err)
	}
	ctx, cancel := context.WithTimeout(ctx, time.Minute)
	defer cancel()
	r, err := http.NewRequestWithContext(ctx, http.MethodPost, u.String(), bytes.NewReader(body))
	if err != nil {
		return "", fmt.Errorf("pairing: the address can't be understood")
	}
	r.Header.Set("Content-Type", "application/json")
	client := place.Client(&i.Pin)
	defer client.CloseIdleConnections()
	answer, err := client.Do(r)
	if err != nil {
		return "", place.Unreached(i.Address, err)
	}
	defer answer.Body.Close()
	var got answering
	switch answer.StatusCode {
	case http.StatusOK:
		err = json.NewDecoder(io.LimitReader(answer.Body, 4096)).Decode(&got)
		if err != nil || got.Token == "" {
			return "", fmt.Errorf("%s: the answer to pairing can't be understood", i.Address)
		}
		return got.Token, nil
	case http.StatusForbidden:
		return "", fmt.Errorf("%s: %w", i.Address, ErrCode)
	case http.StatusTooManyRequests:
		return "", fmt.Errorf("%s: %w", i.Address, ErrPause)
	}
	return "", fmt.Errorf("%s: the server answers %d to pairing; is it a yokebook?", i.Address, answer.StatusCode)
}

// The errors of pairing that a caller tells apart.
var (
	ErrCode  = errors.New("the code is wrong, used or too old; use the one that the server shows now")
	ErrPause = errors.New("too many wrong codes; wait a minute")
)
