package place

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"net/http"
	"net/url"
	"strings"
	"time"
)

// Access is what a WebDAV server wants to know, and what we want to know of it.
type Access struct {
	User, Password string
	// Pin is the server's public key; nil: the certificate must be one that this system trusts.
	Pin *Pin
	// Wait waits before another try; nil: for real.
	Wait func(ctx context.Context, d time.Duration) error
}

// WebDAV is a place on a server.
type WebDAV struct {
	base   url.URL // path ends in a slash; no user, query or fragment
	access Access
	client *http.Client
}

// OpenWebDAV makes a place of an address; nothing is sent yet. Addresses are https://, and plain
// http:// on this machine only: without TLS anybody on the way could read and change everything.
func OpenWebDAV(address string, access Access) (*WebDAV, error) {
	u, err := Address(address)
	if err != nil {
		return nil, err
	}
	if access.Wait == nil {
		access.Wait = wait
	}
	return &WebDAV{base: *u, access: access, client: Client(access.Pin)}, nil
}

// Address checks the address of a WebDAV folder and brings it into one form. User, password, query
// and fragment are refused: they would end up in lists and error lines.
func Address(text string) (*url.URL, error) {
	u, err := url.Parse(text)
	switch {
	case err != nil:
		return nil, fmt.Errorf("the address can't be understood; write it as https://host/folder/")
	case u.Scheme != "https" && u.Scheme != "http" || u.Host == "":
		return nil, fmt.Errorf("%.60q is no address of a server; write it as https://host/folder/", u.Redacted())
	case u.User != nil:
		return nil, fmt.Errorf("%s: the address holds a user name; give it with --user, and the password on the input", u.Host)
	case u.RawQuery != "" || u.Fragment != "":
		return nil, fmt.Errorf("%s: the address ends in ? or #; write only https://host/folder/", u.Host)
	case u.Scheme == "http" && !loopback(u.Hostname()):
		return nil, fmt.Errorf("%s: http:// is open to everybody on the way; use https://", u.Host)
	}
	return &url.URL{Scheme: u.Scheme, Host: u.Host, Path: strings.TrimRight(u.Path, "/") + "/"}, nil
}

// Name is the address.
func (w *WebDAV) Name() string { return w.base.String() }

// Close lets idle connections go.
func (w *WebDAV) Close() error {
	w.client.CloseIdleConnections()
	return nil
}

// Get reads a file.
func (w *WebDAV) Get(ctx context.Context, name string) ([]byte, error) {
	var data []byte
	err := w.do(ctx, request{method: http.MethodGet, name: name}, func(r *http.Response) (err error) {
		data, err = io.ReadAll(io.LimitReader(r.Body, MaxFile+1))
		return err
	})
	if err != nil {
		return nil, err
	}
	if len(data) > MaxFile {
		return nil, fmt.Errorf("%s: %s %w", w.Name(), name, ErrLarge)
	}
	return data, nil
}

// Put writes a file.
func (w *WebDAV) Put(ctx context.Context, name string, data []byte) error {
	return w.do(ctx, request{method: http.MethodPut, name: name, body: data,
		header: http.Header{"Content-Type": {"application/json"}}}, nil)
}

// Move gives a file another name. It is not sent again when the file has gone from its old name: the
// answer was lost then, and some servers remove the new file before they miss the old one.
func (w *WebDAV) Move(ctx context.Context, from, to string) error {
	if !Valid(to) {
		return fmt.Errorf("%s: %.60q is no name of a file in a place", w.Name(), to)
	}
	done := func(ctx context.Context) bool {
		_, _, err := w.once(ctx, request{method: http.MethodHead, name: from}, nil)
		return errors.Is(err, ErrNone)
	}
	return w.do(ctx, request{method: "MOVE", name: from, done: done,
		header: http.Header{"Destination": {w.at(to)}, "Overwrite": {"T"}}}, nil)
}

// Delete removes a file.
func (w *WebDAV) Delete(ctx context.Context, name string) error {
	return w.do(ctx, request{method: http.MethodDelete, name: name, gone: true}, nil)
}

// at is the address of a file.
func (w *WebDAV) at(name string) string {
	u := w.base
	u.Path += name
	return u.String()
}

// request is one request to a server, sent again as it is when the server is busy.
type request struct {
	method string
	name   string // below the place; "" the place itself
	body   []byte
	header http.Header
	gone   bool // that nothing has the name is no error
	// done reports, before it is sent again, that it need not be; nil: it can be sent twice without harm.
	done func(context.Context) bool
}

func (w *WebDAV) make(ctx context.Context, q request) (*http.Request, error) {
	lists := q.method == "PROPFIND" // of the place itself, or of a folder in it
	if ok := Valid(q.name) || lists && (q.name == "" || Valid(strings.TrimSuffix(q.name, "/"))); !ok {
		return nil, fmt.Errorf("%s: %.60q is no name of a file in a place", w.Name(), q.name)
	}
	var body io.Reader
	if q.body != nil {
		body = bytes.NewReader(q.body)
	}
	r, err := http.NewRequestWithContext(ctx, q.method, w.at(q.name), body)
	if err != nil {
		return nil, fmt.Errorf("%s: %s can't be asked for", w.Name(), q.name)
	}
	for key, values := range q.header {
		r.Header[key] = values
	}
	if w.access.User != "" || w.access.Password != "" {
		r.SetBasicAuth(w.access.User, w.access.Password)
	}
	return r, nil
}
