package serve

import (
	"bytes"
	"context"
	"errors"
	"io"
	"net/http"
	"strings"
	gosync "sync"
	"testing"
	"time"

	"yokebook/measure"
	"yokebook/sync/place"
)

const (
	phone  measure.ID = "019ab3ee-0000-7000-8000-00000000000a"
	tablet measure.ID = "019ab3ee-0000-7000-8000-00000000000b"
	build  measure.ID = "019ab3f0-0000-7000-8000-000000000001"
)

// kept keeps paired devices in memory.
type kept struct{ all []Device }

func (k *kept) Paired() ([]Device, error) { return k.all, nil }
func (k *kept) Keep(all []Device) error   { k.all = all; return nil }

// hall is a server on loopback.
type hall struct {
	t       *testing.T
	server  *Server
	keeper  *kept
	dir     string
	address string
	pin     place.Pin
	now     time.Time
	code    string // as shown last
	codes   int    // how many were shown
	changes int
}

func newHall(t *testing.T) *hall {
	h := &hall{t: t, keeper: &kept{}, dir: t.TempDir(), now: time.Date(2026, 3, 2, 10, 0, 0, 0, time.UTC)}
	var mu gosync.Mutex
	s, err := New(Options{Dir: h.dir, Keeper: h.keeper, Now: func() time.Time { return h.now },
		Shown:   func(code string) { h.code = code; h.codes++ },
		Changed: func() { mu.Lock(); h.changes++; mu.Unlock() }})
	if err != nil {
		t.Fatal(err)
	}
	h.server = s
	key, err := NewKey()
	if err != nil {
		t.Fatal(err)
	}
	id, err := IdentityOf(key, time.Now())
	if err != nil {
		t.Fatal(err)
	}
	l, err := Listen("127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	ctx, stop := context.WithCancel(context.Background())
	done := make(chan error, 1)
	go func() { done <- Run(ctx, l, s, id) }()
	t.Cleanup(func() {
		stop()
		if err := <-done; err != nil {
			t.Errorf("the server ended with %v", err)
		}
		_ = s.Close()
	})
	h.address, h.pin = "https://"+l.Addr().String()+"/", id.Pin
	return h
}

func (h *hall) invitation() Invitation {
	return Invitation{Address: h.address, Code: h.code, Pin: h.pin}
}

// pair pairs a device and returns its token.
func (h *hall) pair(device measure.ID) string {
	h.t.Helper()
	i, err := ParseInvitation(h.invitation().String())
	if err != nil {
		h.t.Fatal(err)
	}
	token, err := Accept(context.Background(), i, device, "the phone")
	if err != nil {
		h.t.Fatal(err)
	}
	return token
}

func (h *hall) place(device measure.ID, token string) *place.WebDAV {
	h.t.Helper()
	w, err := place.OpenWebDAV(h.address, place.Access{User: string(device), Password: token, Pin: &h.pin,
		Wait: func(ctx context.Context, _ time.Duration) error { return ctx.Err() }})
	if err != nil {
		h.t.Fatal(err)
	}
	h.t.Cleanup(func() { _ = w.Close() })
	return w
}

// guess tries wrong codes.
func (h *hall) guess(times int) {
	h.t.Helper()
	for range times {
		i := h.invitation()
		i.Code = "ZZZZZ-ZZZZZ"
		if _, err := Accept(context.Background(), i, phone, "x"); !errors.Is(err, ErrCode) {
			h.t.Fatalf("a wrong code: %v", err)
		}
	}
}

// request sends one request as the phone and returns status and body.
func (h *hall) request(token, method, path string, body []byte, header ...string) (int, string) {
	h.t.Helper()
	r, err := http.NewRequest(method, strings.TrimSuffix(h.address, "/")+path, bytes.NewReader(body))
	if err != nil {
		h.t.Fatal(err)
	}
	r.SetBasicAuth(string(phone), token)
	for i := 0; i < len(header); i += 2 {
		r.Header.Set(header[i], header[i+1])
	}
	answer, err := place.Client(&h.pin).Do(r)
	if err != nil {
		h.t.Fatal(err)
	}
	defer answer.Body.Close()
	text, err := io.ReadAll(answer.Body)
	if err != nil {
		h.t.Fatal(err)
	}
	return answer.StatusCode, string(text)
}
