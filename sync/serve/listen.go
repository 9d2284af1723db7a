package serve

import (
	"context"
	"crypto/tls"
	"errors"
	"fmt"
	"io"
	"log"
	"net"
	"net/http"
	"time"

	"golang.org/x/net/netutil"
)

// maxConnections bounds what a network of strangers can hold open.
const maxConnections = 64

// Listen opens an address such as 127.0.0.1:8417.
func Listen(address string) (net.Listener, error) {
	l, err := net.Listen("tcp", address)
	if err != nil {
		var op *net.OpError
		if errors.As(err, &op) {
			err = op.Err
		}
		return nil, fmt.Errorf("can't listen on %s: %w; another program may have it, or the network is off", address, err)
	}
	return l, nil
}

// Run answers requests on a listener until the context ends.
func Run(ctx context.Context, l net.Listener, h http.Handler, id Identity) error {
	server := &http.Server{
		Handler:           h,
		ReadHeaderTimeout: 10 * time.Second,
		ReadTimeout:       3 * time.Minute,
		WriteTimeout:      3 * time.Minute,
		IdleTimeout:       time.Minute,
		MaxHeaderBytes:    64 << 10,
		ErrorLog:          log.New(io.Discard, "", 0), // strangers' broken handshakes are no news
	}
	config := &tls.Config{MinVersion: tls.VersionTLS12, Certificates: []tls.Certificate{id.Certificate}, NextProtos: []string{"http/1.1"}}
	stopped := make(chan struct{})
	defer context.AfterFunc(ctx, func() {
		defer close(stopped)
		grace, cancel := context.WithTimeout(context.WithoutCancel(ctx), 3*time.Second)
		defer cancel()
		if server.Shutdown(grace) != nil {
			_ = server.Close()
		}
	})()
	err := server.Serve(tls.NewListener(netutil.LimitListener(l, maxConnections), config))
	if errors.Is(err, http.ErrServerClosed) {
		<-stopped
		return nil
	}
	return fmt.Errorf("serve: %w", err)
}
