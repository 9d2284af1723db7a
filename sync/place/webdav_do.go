package place

import (
	"context"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"net/url"
	"strconv"
	"time"
)

// The patience with a server: five tries, half a second before the second, then twice as long each
// time; a server that says when to come back is heard up to half a minute.
const (
	tries       = 5
	firstPause  = 500 * time.Millisecond
	longestWait = 30 * time.Second
	// oneRequest is how long one request may take; the largest file at 100 kB/s takes 84 s.
	oneRequest = 2 * time.Minute
)

// do sends a request until it is answered, at most five times, and hands a good answer to read.
func (w *WebDAV) do(ctx context.Context, q request, read func(*http.Response) error) error {
	pause := firstPause
	for try := 1; ; try++ {
		again, after, err := w.once(ctx, q, read)
		if err == nil || !again || try == tries || ctx.Err() != nil {
			return err
		}
		if after <= 0 {
			after = pause
		}
		if waitErr := w.access.Wait(ctx, min(after, longestWait)); waitErr != nil {
			return err
		}
		if q.done != nil && q.done(ctx) {
			return nil
		}
		pause *= 2
	}
}

// once sends a request once. again says that another try may help, after when the server said how long.
func (w *WebDAV) once(ctx context.Context, q request, read func(*http.Response) error) (again bool, after time.Duration, err error) {
	ctx, cancel := context.WithTimeout(ctx, oneRequest)
	defer cancel()
	r, err := w.make(ctx, q)
	if err != nil {
		return false, 0, err
	}
	answer, err := w.client.Do(r)
	if err != nil {
		line := Unreached(w.Name(), err)
		return !final(line), 0, line
	}
	defer answer.Body.Close()
	if answer.StatusCode/100 != 2 {
		_, _ = io.Copy(io.Discard, io.LimitReader(answer.Body, 64<<10)) // lets the connection be used again
		seconds, _ := strconv.Atoi(answer.Header.Get("Retry-After"))
		return busy(answer.StatusCode), time.Duration(max(0, min(seconds, 3600))) * time.Second, w.refusal(q, answer)
	}
	if read == nil {
		_, _ = io.Copy(io.Discard, io.LimitReader(answer.Body, 64<<10))
		return false, 0, nil
	}
	if err := read(answer); err != nil {
		return !errors.Is(err, errAnswer), 0, fmt.Errorf("%s: the answer broke off or can't be understood: %w", w.Name(), plain(err))
	}
	return false, 0, nil
}

// busy answers may be others a little later. A failed precondition that we never set is one of them.
func busy(status int) bool {
	switch status {
	case http.StatusPreconditionFailed, http.StatusLocked, http.StatusTooManyRequests, http.StatusInternalServerError,
		http.StatusBadGateway, http.StatusServiceUnavailable, http.StatusGatewayTimeout:
		return true
	}
	return false
}

// refusal says an answer in a line.
func (w *WebDAV) refusal(q request, r *http.Response) error {
	switch s := r.StatusCode; {
	case s == http.StatusNotFound || s == http.StatusGone || s == http.StatusConflict:
		if q.gone && s != http.StatusConflict {
			return nil
		}
		if q.name == "" {
			return fmt.Errorf("%s: the server has no such folder; make it there, or look at the address", w.Name())
		}
		return fmt.Errorf("%s: %s %w", w.Name(), q.name, ErrNone)
	case s == http.StatusUnauthorized:
		return fmt.Errorf("%s: %w", w.Name(), ErrRefused)
	case s == http.StatusForbidden && writes(q.method):
		return fmt.Errorf("%s: %w", w.Name(), ErrReadOnly)
	case s == http.StatusForbidden:
		return fmt.Errorf("%s: the server does not let this user read here", w.Name())
	case s == http.StatusInsufficientStorage:
		return fmt.Errorf("%s: %w", w.Name(), ErrFull)
	case s == http.StatusMethodNotAllowed || s == http.StatusNotImplemented:
		return fmt.Errorf("%s: the server can't do %s; is this the address of a WebDAV folder?", w.Name(), q.method)
	case s/100 == 3:
		return fmt.Errorf("%s: the server sends us on to %s; use that address if you trust it", w.Name(), elsewhere(r))
	}
	return fmt.Errorf("%s: the server answers %d to %s; try again later", w.Name(), r.StatusCode, q.method)
}

func writes(method string) bool { return method != http.MethodGet && method != "PROPFIND" }

// elsewhere is where an answer points, without what may be secret in it.
func elsewhere(r *http.Response) string {
	u, err := url.Parse(r.Header.Get("Location"))
	if err != nil || u.String() == "" {
		return "another address"
	}
	u = r.Request.URL.ResolveReference(u)
	return fmt.Sprintf("%.200q", (&url.URL{Scheme: u.Scheme, Host: u.Host, Path: u.Path}).String())
}

// Unreached says in a line why no answer came from an address: context.Canceled, *UnknownServer and
// *OtherServer are told apart, all else may be better later.
func Unreached(address string, err error) error {
	if doubt := distrust(address, err); doubt != nil {
		return doubt
	}
	var timeout net.Error
	switch {
	case errors.Is(err, context.Canceled):
		return fmt.Errorf("%s: %w", address, context.Canceled)
	case errors.As(err, &timeout) && timeout.Timeout():
		return fmt.Errorf("%s: the server does not answer in time; try again later", address)
	}
	return fmt.Errorf("%s: the server can't be reached: %w", address, plain(err))
}

// final reports an error after which a server is not asked again.
func final(err error) bool {
	var unknown *UnknownServer
	var other *OtherServer
	return errors.Is(err, context.Canceled) || errors.As(err, &unknown) || errors.As(err, &other)
}

// plain takes method and address off an error of the client.
func plain(err error) error {
	var of *url.Error
	if errors.As(err, &of) {
		return of.Err
	}
	return err
}

func wait(ctx context.Context, d time.Duration) error {
	t := time.NewTimer(d)
	defer t.Stop()
	select {
	case <-t.C:
		return nil
	case <-ctx.Done():
		return ctx.Err()
	}
}
