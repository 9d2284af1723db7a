package serve

import (
	"errors"
	"io"
	"net/http"
	"net/url"
	"strings"
	gosync "sync"

	"yokebook/measure"
	"yokebook/sync/place"
)

// owned is the name that a path stands for when the device may write it: its own file of a build, or
// the temporary name of one.
func owned(path string, device measure.ID) (string, bool) {
	name, ok := strings.CutPrefix(path, "/")
	if !ok {
		return "", false
	}
	build, by, ok := place.Owner(name)
	if !ok {
		inner := strings.TrimSuffix(strings.TrimPrefix(name, "."), ".tmp")
		if build, by, ok = place.Owner(inner); !ok || place.TempName(inner) != name {
			return "", false
		}
	}
	return name, by == device && build != ""
}

// names lets one request at a time work on a file.
type names struct{ shards *[64]gosync.Mutex }

func newNames() names { return names{new([64]gosync.Mutex)} }

// hold locks names; two files may share a lock. It returns what frees them.
func (n names) hold(all ...string) func() {
	var used [64]bool
	for _, name := range all {
		sum := 0
		for _, c := range []byte(name) {
			sum = (sum*31 + int(c)) & 63
		}
		used[sum] = true
	}
	for i := range used { // in one order, so that two requests never wait for each other
		if used[i] {
			n.shards[i].Lock()
		}
	}
	return func() {
		for i := range used {
			if used[i] {
				n.shards[i].Unlock()
			}
		}
	}
}

// put takes a file whole or not at all: its bytes are here before anything in the folder is touched.
func (s *Server) put(w http.ResponseWriter, r *http.Request, device measure.ID) {
	name, ok := owned(r.URL.Path, device)
	switch {
	case !ok:
		w.WriteHeader(http.StatusForbidden)
		return
	case r.Header.Get("Content-Range") != "":
		w.WriteHeader(http.StatusBadRequest) // RFC 9110, section 14.5: a part must not pass for the whole
		return
	case r.ContentLength > place.MaxFile:
		w.WriteHeader(http.StatusRequestEntityTooLarge)
		return
	}
	data, err := io.ReadAll(io.LimitReader(r.Body, place.MaxFile+1))
	if err != nil {
		w.WriteHeader(http.StatusBadRequest) // broken off
		return
	}
	if len(data) > place.MaxFile {
		w.WriteHeader(http.StatusRequestEntityTooLarge)
		return
	}
	defer s.names.hold(name)()
	before, err := s.etags.of(s.root, name)
	if err != nil {
		w.WriteHeader(http.StatusInternalServerError)
		return
	}
	if !meets(r.Header, before) {
		w.WriteHeader(http.StatusPreconditionFailed)
		return
	}
	s.etags.drop(name)
	if err := place.Replace(r.Context(), s.folder, name, data); err != nil {
		w.WriteHeader(statusOf(err))
		return
	}
	if tag, err := s.etags.of(s.root, name); err == nil && tag != "" {
		w.Header().Set("ETag", tag)
	}
	s.changed(name)
	if before == "" {
		w.WriteHeader(http.StatusCreated)
	} else {
		w.WriteHeader(http.StatusNoContent)
	}
}

// move gives a file its name.
func (s *Server) move(w http.ResponseWriter, r *http.Request, device measure.ID) {
	from, ok := owned(r.URL.Path, device)
	u, err := url.Parse(r.Header.Get("Destination"))
	if err != nil {
		w.WriteHeader(http.StatusBadRequest)
		return
	}
	to, alsoOK := owned(u.Path, device)
	if !ok || !alsoOK {
		w.WriteHeader(http.StatusForbidden)
		return
	}
	defer s.names.hold(from, to)()
	before, err := s.etags.of(s.root, to)
	switch {
	case err != nil:
		w.WriteHeader(http.StatusInternalServerError)
		return
	case before != "" && r.Header.Get("Overwrite") == "F":
		w.WriteHeader(http.StatusPreconditionFailed)
		return
	}
	s.etags.drop(from)
	s.etags.drop(to)
	if err := s.folder.Move(r.Context(), from, to); err != nil {
		w.WriteHeader(statusOf(err))
		return
	}
	s.changed(to)
	if before == "" {
		w.WriteHeader(http.StatusCreated)
	} else {
		w.WriteHeader(http.StatusNoContent)
	}
}

// remove deletes a file.
func (s *Server) remove(w http.ResponseWriter, r *http.Request, device measure.ID) {
	name, ok := owned(r.URL.Path, device)
	if !ok {
		w.WriteHeader(http.StatusForbidden)
		return
	}
	defer s.names.hold(name)()
	s.etags.drop(name)
	if err := s.folder.Delete(r.Context(), name); err != nil {
		w.WriteHeader(statusOf(err))
		return
	}
	s.changed(name)
	w.WriteHeader(http.StatusNoContent)
}

// changed tells of a file that readers see.
func (s *Server) changed(name string) {
	if s.o.Changed != nil && place.Wanted(name, 1) {
		s.o.Changed()
	}
}

// meets compares the preconditions of a request with the tag of the file; "" when there is none.
func meets(h http.Header, tag string) bool {
	if want := h.Get("If-Match"); want != "" && !(tag != "" && (want == "*" || lists(want, tag))) {
		return false
	}
	not := h.Get("If-None-Match")
	return not == "" || !(tag != "" && (not == "*" || lists(not, tag)))
}

// lists reports a tag in a list of tags.
func lists(all, tag string) bool {
	for _, t := range strings.Split(all, ",") {
		if strings.TrimSpace(t) == tag {
			return true
		}
	}
	return false
}

func statusOf(err error) int {
	switch {
	case errors.Is(err, place.ErrFull):
		return http.StatusInsufficientStorage
	case errors.Is(err, place.ErrReadOnly):
		return http.StatusForbidden
	case errors.Is(err, place.ErrNone):
		return http.StatusNotFound
	}
	return http.StatusInternalServerError
}
