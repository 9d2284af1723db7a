package serve

import (
	"bytes"
	"context"
	"crypto/tls"
	"errors"
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	gosync "sync"
	"testing"
	"time"

	"yokebook/measure"
	"yokebook/sync/place"
	"yokebook/sync/place/placetest"
)

func TestServedFolderIsAPlaceLikeAnyOther(t *testing.T) {
	placetest.Run(t, func(t *testing.T) placetest.Fixture {
		h := newHall(t)
		return placetest.Fixture{Place: h.place(phone, h.pair(phone)), Dir: h.dir}
	})
}

func TestOnlyPairedDevicesGetIn(t *testing.T) {
	h := newHall(t)
	token := h.pair(phone)
	for _, row := range []struct {
		name   string
		device measure.ID
		token  string
		in     bool
	}{
		{"the paired device", phone, token, true},
		{"nobody", "", "", false},
		{"the device without its token", phone, "", false},
		{"another device with the token", tablet, token, false},
		{"the code as token", phone, h.code, false},
		{"the stored key as token", phone, h.keeper.all[0].Key, false},
	} {
		_, err := h.place(row.device, row.token).List(context.Background())
		if in := err == nil; in != row.in || !row.in && !errors.Is(err, place.ErrRefused) {
			t.Errorf("%s: %v", row.name, err)
		}
	}
	if strings.Contains(fmt.Sprint(h.keeper.all), token) {
		t.Error("the server keeps the token itself")
	}
	h.keeper.all = nil
	if _, err := h.place(phone, token).List(context.Background()); !errors.Is(err, place.ErrRefused) {
		t.Errorf("a token that was taken back: %v", err)
	}
}

func TestCodeWorksOnceAndDies(t *testing.T) {
	wrong := Invitation{Code: "00000-00000"}
	for _, row := range []struct {
		name string
		do   func(h *hall)
		want error
	}{
		{"as shown", func(*hall) {}, nil},
		{"in small letters without the dash", func(h *hall) { h.code = strings.ToLower(strings.ReplaceAll(h.code, "-", "")) }, nil},
		{"used before", func(h *hall) { code := h.code; h.pair(tablet); h.code = code }, ErrCode},
		{"fourteen minutes old", func(h *hall) { h.now = h.now.Add(14 * time.Minute) }, nil},
		{"sixteen minutes old", func(h *hall) { h.now = h.now.Add(16 * time.Minute) }, ErrCode},
		{"wrong", func(h *hall) { h.code = wrong.Code }, ErrCode},
		{"after four wrong ones", func(h *hall) { h.guess(4) }, nil},
		{"after five wrong ones", func(h *hall) { h.guess(5) }, ErrPause},
		{"after five wrong ones and a minute", func(h *hall) { h.guess(5); h.now = h.now.Add(time.Minute) }, nil},
		{"after ten wrong ones over two minutes", func(h *hall) {
			code := h.code
			h.guess(5)
			h.now = h.now.Add(time.Minute)
			h.guess(5)
			h.now = h.now.Add(time.Minute)
			h.code = code
		}, ErrCode},
	} {
		h := newHall(t)
		row.do(h)
		i := h.invitation()
		_, err := Accept(context.Background(), i, phone, "x")
		if !errors.Is(err, row.want) || row.want == nil && err != nil {
			t.Errorf("%s: %v; want %v", row.name, err, row.want)
		}
		if err != nil && strings.Contains(err.Error(), i.Code) {
			t.Errorf("%s: the error says the code: %v", row.name, err)
		}
	}
}

func TestWrongTokensAreSlowedDown(t *testing.T) {
	h := newHall(t)
	token := h.pair(phone)
	for range failures {
		if _, err := h.place(phone, "wrong").List(context.Background()); !errors.Is(err, place.ErrRefused) {
			t.Fatal(err)
		}
	}
	if _, err := h.place(phone, token).List(context.Background()); err == nil || errors.Is(err, place.ErrRefused) {
		t.Errorf("after five wrong tokens: %v; want a pause", err)
	}
	h.now = h.now.Add(pauseTime)
	if _, err := h.place(phone, token).List(context.Background()); err != nil {
		t.Errorf("a minute later: %v", err)
	}
}

func TestAnotherServerInItsPlaceIsNotTrusted(t *testing.T) {
	h, other := newHall(t), newHall(t)
	i := h.invitation()
	i.Address = other.address
	var wrong *place.OtherServer
	if _, err := Accept(context.Background(), i, phone, "x"); !errors.As(err, &wrong) || wrong.Want != h.pin || wrong.Got != other.pin {
		t.Errorf("pairing with another server: %v; want both fingerprints", err)
	}
	if other.codes != 1 || len(other.keeper.all) != 0 {
		t.Error("the other server was given the code")
	}
}

func TestInvitationMustBeWhole(t *testing.T) {
	h := newHall(t)
	good := h.invitation().String()
	if !IsInvitation(good) || IsInvitation(h.address) {
		t.Error("an invitation is not told from an address")
	}
	for _, text := range []string{
		"", h.address, h.address + "#", h.address + "#" + h.code, good[:len(good)-1], good + "x",
		strings.Replace(good, "https", "http", 1), strings.Replace(good, h.code, h.code[1:], 1), strings.Replace(good, "https://", "https://me:pw@", 1),
	} {
		if _, err := ParseInvitation(text); err == nil || strings.Contains(err.Error(), h.code) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%q: %v; want one line without the code", text, err)
		}
	}
}

func TestWhatADeviceMayDo(t *testing.T) {
	h := newHall(t)
	token := h.pair(phone)
	mine, theirs := "/"+place.FileName(build, phone), "/"+place.FileName(build, tablet)
	temp := "/" + place.TempName(place.FileName(build, phone))
	if err := os.WriteFile(filepath.Join(h.dir, theirs[1:]), []byte("theirs"), 0o644); err != nil {
		t.Fatal(err)
	}
	secret := filepath.Join(t.TempDir(), "secret.json")
	if err := os.WriteFile(secret, []byte("secret"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(secret, filepath.Join(h.dir, "link.json")); err != nil {
		t.Fatal(err)
	}
	if err := os.Mkdir(filepath.Join(h.dir, "folder"), 0o755); err != nil {
		t.Fatal(err)
	}
	for _, row := range []struct {
		name, method, path string
		header             []string
		want               int
	}{
		{"write its own file", "PUT", mine, nil, 201},
		{"write it again", "PUT", mine, nil, 204},
		{"write a temporary one", "PUT", temp, nil, 201},
		{"move it into place", "MOVE", temp, []string{"Destination", h.address + mine[1:]}, 204},
		{"move onto a file without leave", "MOVE", mine, []string{"Destination", mine, "Overwrite", "F"}, 412},
		{"read another's file", "GET", theirs, nil, 200},
		{"write another's file", "PUT", theirs, nil, 403},
		{"delete another's file", "DELETE", theirs, nil, 403},
		{"move onto another's file", "MOVE", mine, []string{"Destination", h.address + theirs[1:]}, 403},
		{"move another's file", "MOVE", theirs, []string{"Destination", h.address + mine[1:]}, 403},
		{"write another name", "PUT", "/notes.json", nil, 403},
		{"write into a folder", "PUT", "/folder" + mine, nil, 403},
		{"write outside", "PUT", "/../x.json", nil, 403},
		{"read outside", "GET", "/..%2f..%2fetc%2fpasswd", nil, 404},
		{"read through a link", "GET", "/link.json", nil, 404},
		{"patch a file", "PUT", mine, []string{"Content-Range", "bytes 1-2/9"}, 400},
		{"list", "PROPFIND", "/", []string{"Depth", "1"}, 207},
		{"list the whole tree", "PROPFIND", "/", []string{"Depth", "infinity"}, 403},
		{"list without saying how deep", "PROPFIND", "/", nil, 403},
		{"make a folder", "MKCOL", "/new", nil, 405},
		{"copy", "COPY", mine, []string{"Destination", h.address + mine[1:]}, 405},
		{"lock", "LOCK", mine, nil, 405},
		{"write under a wrong condition", "PUT", mine, []string{"If-Match", `"x"`}, 412},
		{"write only if there is none", "PUT", mine, []string{"If-None-Match", "*"}, 412},
		{"delete its own file", "DELETE", mine, nil, 204},
		{"ask what can be done", "OPTIONS", "/", nil, 200},
	} {
		body := []byte("mine")
		if row.method == "PROPFIND" {
			body = nil
		}
		if got, text := h.request(token, row.method, row.path, body, row.header...); got != row.want || strings.Contains(text, "secret") {
			t.Errorf("%s: %d, want %d (%.200s)", row.name, got, row.want, text)
		}
	}
	if data, err := os.ReadFile(filepath.Join(h.dir, theirs[1:])); err != nil || string(data) != "theirs" {
		t.Errorf("another's file: %q, %v", data, err)
	}
	if _, text := h.request(token, "PROPFIND", "/", nil, "Depth", "1"); strings.Contains(text, "link.json") || !strings.Contains(text, "folder") {
		t.Errorf("listed %s", text)
	}
	if h.changes != 4 { // three writes of the file, one removal; the temporary one is nobody's news
		t.Errorf("%d changes were told, want 4", h.changes)
	}
}

// An upload that breaks off, or is too large, leaves the old file.
func TestBrokenUploadLeavesTheOldFile(t *testing.T) {
	h := newHall(t)
	token := h.pair(phone)
	name := place.FileName(build, phone)
	h.request(token, "PUT", "/"+name, []byte("old"))
	conn, err := tls.Dial("tcp", strings.TrimSuffix(strings.TrimPrefix(h.address, "https://"), "/"), &tls.Config{InsecureSkipVerify: true})
	if err != nil {
		t.Fatal(err)
	}
	r, err := http.NewRequest("PUT", h.address+name, nil)
	if err != nil {
		t.Fatal(err)
	}
	r.SetBasicAuth(string(phone), token)
	fmt.Fprintf(conn, "PUT /%s HTTP/1.1\r\nHost: x\r\nAuthorization: %s\r\nContent-Length: 1000\r\n\r\nhalf", name, r.Header.Get("Authorization"))
	if err := conn.CloseWrite(); err != nil {
		t.Fatal(err)
	}
	_, _ = io.ReadAll(conn) // until the server has given up on it
	_ = conn.Close()
	if status, _ := h.request(token, "PUT", "/"+name, bytes.Repeat([]byte("x"), place.MaxFile+1)); status != http.StatusRequestEntityTooLarge {
		t.Errorf("too large: %d", status)
	}
	if _, text := h.request(token, "GET", "/"+name, nil); text != "old" {
		t.Errorf("the file holds %.20q", text)
	}
}

// Of many that create a file at once, or change the same version of it, exactly one wins.
func TestRacingWritersHaveOneWinner(t *testing.T) {
	h := newHall(t)
	token := h.pair(phone)
	path := "/" + place.FileName(build, phone)
	race := func(first rune, header ...string) int {
		var wg gosync.WaitGroup
		wins := make(chan int, 24)
		for n := range 24 {
			wg.Go(func() {
				w := httptest.NewRecorder()
				r := httptest.NewRequest("PUT", path, strings.NewReader(strings.Repeat(string(first+rune(n)), 1000)))
				r.SetBasicAuth(string(phone), token)
				r.Header.Set(header[0], header[1])
				h.server.ServeHTTP(w, r)
				wins <- w.Code
			})
		}
		wg.Wait()
		close(wins)
		won := 0
		for code := range wins {
			if code/100 == 2 {
				won++
			} else if code != 412 {
				t.Errorf("a loser got %d", code)
			}
		}
		return won
	}
	if won := race('a', "If-None-Match", "*"); won != 1 {
		t.Errorf("%d of 24 created the file", won)
	}
	tag, err := h.server.etags.of(h.server.root, path[1:])
	if err != nil {
		t.Fatal(err)
	}
	if won := race('A', "If-Match", tag); won != 1 {
		t.Errorf("%d of 24 changed the same version", won)
	}
	data, err := os.ReadFile(filepath.Join(h.dir, path[1:]))
	if err != nil || len(data) != 1000 || strings.Trim(string(data), string(data[:1])) != "" {
		t.Errorf("the file is a mixture: %.40q, %v", data, err)
	}
}

func TestKeyThatIsDamagedIsSaid(t *testing.T) {
	key, err := NewKey()
	if err != nil {
		t.Fatal(err)
	}
	a, err := IdentityOf(key, time.Now())
	if err != nil {
		t.Fatal(err)
	}
	b, err := IdentityOf(key, time.Now().AddDate(2, 0, 0))
	if err != nil || a.Pin != b.Pin {
		t.Errorf("a certificate made later has another fingerprint: %v", err)
	}
	for _, bad := range [][]byte{nil, []byte("x"), key[:len(key)/2], bytes.Replace(key, []byte("PRIVATE"), []byte("PUBLIC"), 2)} {
		if _, err := IdentityOf(bad, time.Now()); !errors.Is(err, errKey) {
			t.Errorf("%q: %v", bad, err)
		}
	}
}
