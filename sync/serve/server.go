package serve

import (
	"encoding/json"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"strconv"
	"strings"
	"time"
	"unicode"

	"golang.org/x/net/webdav"

	"yokebook/measure"
	"yokebook/sync/place"
)

// Options are what a server stands on.
type Options struct {
	Dir    string // the folder that is offered; it must be there
	Keeper Keeper
	Now    func() time.Time
	// Shown is called with each new code, Paired with each new device, Changed after each change of a
	// file. They return soon and don't call the server; Paired and Changed may be nil.
	Shown   func(code string)
	Paired  func(Device)
	Changed func()
	// Listing is called before the folder is listed and may bring it up to date first; may be nil.
	Listing func()
}

// Server is the handler of one folder.
type Server struct {
	o      Options
	folder *place.Folder
	root   *os.Root
	desk   *desk
	pauses *pauses
	etags  *etags
	names  names
	dav    *webdav.Handler
}

// New makes a server and shows its first code.
func New(o Options) (*Server, error) {
	folder, err := place.OpenFolder(o.Dir)
	if err != nil {
		return nil, err
	}
	root, err := os.OpenRoot(o.Dir)
	if err != nil {
		_ = folder.Close()
		return nil, fmt.Errorf("serve: %w", err)
	}
	s := &Server{o: o, folder: folder, root: root, etags: &etags{now: o.Now, tags: map[string]etag{}}, names: newNames(),
		desk:   &desk{keep: o.Keeper, now: o.Now, shown: o.Shown, came: o.Paired},
		pauses: &pauses{now: o.Now, hosts: map[string]*strikes{}}}
	s.dav = &webdav.Handler{FileSystem: files{root, s.etags}, LockSystem: webdav.NewMemLS()}
	s.desk.mu.Lock()
	defer s.desk.mu.Unlock()
	s.desk.renew()
	return s, nil
}

// Close lets the folder go.
func (s *Server) Close() error {
	err := s.folder.Close()
	if rootErr := s.root.Close(); err == nil {
		err = rootErr
	}
	return err
}

// ServeHTTP answers one request.
func (s *Server) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	host, _, err := net.SplitHostPort(r.RemoteAddr)
	if err != nil {
		host = r.RemoteAddr
	}
	if left := s.pauses.left(host); left > 0 {
		w.Header().Set("Retry-After", strconv.Itoa(int(left/time.Second)+1))
		w.WriteHeader(http.StatusTooManyRequests)
		return
	}
	if r.URL.Path == pairPath {
		s.pair(w, r, host)
		return
	}
	user, token, _ := r.BasicAuth()
	known, err := s.desk.knows(user, token)
	switch {
	case err != nil:
		w.WriteHeader(http.StatusInternalServerError)
	case !known:
		if token != "" {
			s.pauses.failed(host)
		}
		w.Header().Set("WWW-Authenticate", `Basic realm="yokebook", charset="UTF-8"`)
		w.WriteHeader(http.StatusUnauthorized)
	default:
		s.answer(w, r, measure.ID(user))
	}
}

// pair answers a device that asks to be paired.
func (s *Server) pair(w http.ResponseWriter, r *http.Request, host string) {
	if r.Method != http.MethodPost {
		w.WriteHeader(http.StatusMethodNotAllowed)
		return
	}
	var a asking
	data, err := io.ReadAll(io.LimitReader(r.Body, 4096))
	if err == nil {
		err = json.Unmarshal(data, &a)
	}
	if _, idErr := measure.ParseID(string(a.Device)); err != nil || idErr != nil {
		s.pauses.failed(host)
		w.WriteHeader(http.StatusBadRequest)
		return
	}
	a.Name = printable(a.Name)
	token, err := s.desk.pair(a)
	switch {
	case err != nil:
		w.WriteHeader(http.StatusInternalServerError)
	case token == "":
		s.pauses.failed(host)
		w.WriteHeader(http.StatusForbidden)
	default:
		s.pauses.forgiven(host)
		w.Header().Set("Content-Type", "application/json")
		_ = json.NewEncoder(w).Encode(answering{token}) // a device that did not get it asks again
	}
}

// printable keeps a name to one short line.
func printable(name string) string {
	name = strings.Map(func(r rune) rune {
		if !unicode.IsPrint(r) {
			return -1
		}
		return r
	}, name)
	if runes := []rune(name); len(runes) > 40 {
		name = string(runes[:40])
	}
	return name
}

// answer answers a device that is known.
func (s *Server) answer(w http.ResponseWriter, r *http.Request, device measure.ID) {
	switch r.Method {
	case http.MethodOptions:
		w.Header().Set("DAV", "1")
		w.Header().Set("Allow", "OPTIONS, GET, HEAD, PROPFIND, PUT, MOVE, DELETE")
	case http.MethodGet, http.MethodHead:
		s.dav.ServeHTTP(w, r)
	case "PROPFIND":
		if d := r.Header.Get("Depth"); d != "0" && d != "1" {
			w.WriteHeader(http.StatusForbidden) // the whole tree at once is asked for by nobody good
			return
		}
		if s.o.Listing != nil && inside(r.URL.Path) == "." {
			s.o.Listing()
		}
		r.Body = http.MaxBytesReader(w, r.Body, 64<<10)
		s.dav.ServeHTTP(w, r)
	case http.MethodPut:
		s.put(w, r, device)
	case "MOVE":
		s.move(w, r, device)
	case http.MethodDelete:
		s.remove(w, r, device)
	default:
		w.WriteHeader(http.StatusMethodNotAllowed)
	}
}
