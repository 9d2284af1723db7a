package place

import (
	"context"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"net/http"
	"net/url"
	"sort"
	"strconv"
	"strings"
	"time"
)

// The limits of a listing: bytes of one answer, and folders that are looked into.
const (
	maxAnswer  = 64 << 20
	maxFolders = 1000
)

const propfind = `<?xml version="1.0" encoding="utf-8"?>` +
	`<propfind xmlns="DAV:"><prop><resourcetype/><getcontentlength/><getetag/><getlastmodified/></prop></propfind>`

// errAnswer marks an answer that would be no better the next time.
var errAnswer = errors.New("it is not what a WebDAV server says")

// List lists the files that may be builds.
func (w *WebDAV) List(ctx context.Context) (Listing, error) {
	out, folders, err := w.list(ctx, "")
	if err != nil {
		return Listing{}, err
	}
	if len(folders) > maxFolders {
		return Listing{}, fmt.Errorf("%s: holds more than %d folders; choose one that holds builds only", w.Name(), maxFolders)
	}
	for _, f := range folders {
		inside, _, err := w.list(ctx, f+"/")
		if errors.Is(err, ErrNone) {
			continue // gone since
		}
		if err != nil {
			return Listing{}, err
		}
		out.Files = append(out.Files, inside.Files...)
		if len(out.Files) > MaxFiles {
			return Listing{}, fmt.Errorf("%s: %w", w.Name(), ErrMany)
		}
	}
	sort.Slice(out.Files, func(i, j int) bool { return out.Files[i].Name < out.Files[j].Name })
	return out, nil
}

// list asks for one folder: "" or a name that ends in a slash.
func (w *WebDAV) list(ctx context.Context, dir string) (out Listing, folders []string, err error) {
	q := request{method: "PROPFIND", name: dir, body: []byte(propfind),
		header: http.Header{"Depth": {"1"}, "Content-Type": {"application/xml; charset=utf-8"}}}
	err = w.do(ctx, q, func(r *http.Response) error {
		out, folders = Listing{}, nil
		if r.StatusCode != http.StatusMultiStatus {
			return fmt.Errorf("%w: status %d", errAnswer, r.StatusCode)
		}
		out.Now, _ = http.ParseTime(r.Header.Get("Date"))
		body := &io.LimitedReader{R: r.Body, N: maxAnswer}
		err := eachResponse(xml.NewDecoder(body), func(x davResponse) error {
			name, isFolder, file := w.entry(x)
			switch {
			case name == "" || dir != "" && !strings.HasPrefix(name, dir):
			case isFolder && dir == "" && !hidden(name) && !strings.Contains(name, "/"):
				folders = append(folders, name)
			case !isFolder && Wanted(name, file.Size) && strings.Count(name, "/") == strings.Count(dir, "/"):
				out.Files = append(out.Files, file)
			}
			if len(out.Files) > MaxFiles {
				return fmt.Errorf("%w: %w", errAnswer, ErrMany)
			}
			return nil
		})
		if err != nil && body.N <= 0 {
			return fmt.Errorf("%w: %w", errAnswer, ErrMany)
		}
		return err
	})
	return out, folders, err
}

// davResponse is what a server says of one file or folder. Source: RFC 4918, section 14.24.
type davResponse struct {
	Href  string `xml:"DAV: href"`
	Stats []struct {
		Status string `xml:"DAV: status"`
		Prop   struct {
			Length   string `xml:"DAV: getcontentlength"`
			ETag     string `xml:"DAV: getetag"`
			Modified string `xml:"DAV: getlastmodified"`
			Type     struct {
				Collection *struct{} `xml:"DAV: collection"`
			} `xml:"DAV: resourcetype"`
		} `xml:"DAV: prop"`
	} `xml:"DAV: propstat"`
}

// eachResponse reads a multistatus answer one response at a time.
func eachResponse(d *xml.Decoder, do func(davResponse) error) error {
	for rooted := false; ; {
		token, err := d.Token()
		if errors.Is(err, io.EOF) && rooted {
			return nil
		}
		if err != nil {
			return err // cut off, perhaps
		}
		start, ok := token.(xml.StartElement)
		switch {
		case !ok:
		case !rooted:
			if start.Name.Space != "DAV:" || start.Name.Local != "multistatus" {
				return errAnswer
			}
			rooted = true
		case start.Name.Space == "DAV:" && start.Name.Local == "response":
			var x davResponse
			if err := d.DecodeElement(&x, &start); err != nil {
				return err
			}
			if err := do(x); err != nil {
				return err
			}
		default:
			if err := d.Skip(); err != nil {
				return err
			}
		}
	}
}

// entry reads one response: the name below the place, "" for the place itself and for anything
// outside of it.
func (w *WebDAV) entry(x davResponse) (name string, isFolder bool, f File) {
	u, err := url.Parse(x.Href)
	if err != nil {
		return "", false, File{}
	}
	name, inside := strings.CutPrefix(u.Path, w.base.Path)
	name = strings.TrimSuffix(name, "/")
	if !inside || !Valid(name) {
		return "", false, File{}
	}
	f.Name = name
	for _, s := range x.Stats {
		if !strings.Contains(s.Status, " 200 ") && !strings.HasSuffix(s.Status, " 200") {
			continue
		}
		isFolder = isFolder || s.Prop.Type.Collection != nil
		if n, err := strconv.ParseInt(strings.TrimSpace(s.Prop.Length), 10, 64); err == nil && n >= 0 {
			f.Size = n
		}
		if at, err := http.ParseTime(strings.TrimSpace(s.Prop.Modified)); err == nil {
			f.Modified = at
		}
		f.Stamp += fmt.Sprintf("%.200s", s.Prop.ETag)
	}
	if f.Stamp == "" && !f.Modified.IsZero() {
		f.Stamp = f.Modified.UTC().Format(time.RFC3339)
	}
	return name, isFolder, f
}
