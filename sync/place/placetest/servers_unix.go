//go:build unix

package placetest

import (
	"bytes"
	"errors"
	"fmt"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"
)

// Server is a WebDAV server that other people wrote, to be started on loopback for a test.
type Server struct {
	Name    string
	program string
	// command makes its configuration in dir and returns its arguments: it serves files on port.
	command func(dir, files string, port int) ([]string, error)
}

// Servers are those that the suite is run against, where they are installed.
var Servers = []Server{
	{"Apache mod_dav", "apache2", apache},
	{"nginx dav-ext", "nginx", nginx},
	{"rclone serve webdav", "rclone", rclone},
}

const apacheModules, nginxModules = "/usr/lib/apache2/modules", "/usr/lib/nginx/modules"

func apache(dir, files string, port int) ([]string, error) {
	var conf strings.Builder
	fmt.Fprintf(&conf, "ServerRoot %q\nServerName 127.0.0.1\nListen 127.0.0.1:%d\nPidFile pid\nErrorLog error.log\n", dir, port)
	for _, m := range []string{"mpm_event", "authz_core", "dav", "dav_fs"} {
		fmt.Fprintf(&conf, "LoadModule %s_module %s/mod_%s.so\n", m, apacheModules, m)
	}
	fmt.Fprintf(&conf, "DocumentRoot %q\nDavLockDB lock\n<Directory %q>\nDav On\nRequire all granted\n</Directory>\n", files, files)
	path := filepath.Join(dir, "apache.conf")
	return []string{"-f", path, "-DFOREGROUND"}, os.WriteFile(path, []byte(conf.String()), 0o644)
}

func nginx(dir, files string, port int) ([]string, error) {
	conf := fmt.Sprintf(`load_module %s/ngx_http_dav_ext_module.so;
daemon off; pid %[2]s/pid; error_log %[2]s/error.log;
events {}
http {
 access_log off; client_max_body_size 16m;
 client_body_temp_path %[2]s/body; proxy_temp_path %[2]s/proxy; fastcgi_temp_path %[2]s/f; uwsgi_temp_path %[2]s/u; scgi_temp_path %[2]s/s;
 server { listen 127.0.0.1:%[4]d; root %[3]s;
  location / { dav_methods PUT DELETE MKCOL COPY MOVE; dav_ext_methods PROPFIND OPTIONS; }
 }
}
`, nginxModules, dir, files, port)
	path := filepath.Join(dir, "nginx.conf")
	return []string{"-c", path, "-e", filepath.Join(dir, "error.log")}, os.WriteFile(path, []byte(conf), 0o644)
}

func rclone(dir, files string, port int) ([]string, error) {
	// Its memory of folders is switched off: the tests put files there behind its back.
	return []string{"serve", "webdav", files, "--addr", fmt.Sprintf("127.0.0.1:%d", port), "--dir-cache-time", "0s",
		"--config", filepath.Join(dir, "rclone.conf")}, nil
}

// MustHaveServers is set where a server that is missing is a failure and no reason to skip.
const MustHaveServers = "YOKEBOOK_SERVERS"

// Start starts the server until the test ends, and returns a function that makes an empty folder on it:
// its address and where it lies. It skips the test where the server is not installed, or fails it when
// YOKEBOOK_SERVERS is set.
func (s Server) Start(t *testing.T) (folder func(t *testing.T) (address, dir string)) {
	t.Helper()
	program, err := exec.LookPath(s.program)
	if err != nil {
		program, err = exec.LookPath("/usr/sbin/" + s.program)
	}
	if err != nil && os.Getenv(MustHaveServers) != "" {
		t.Fatalf("%s is not installed", s.program)
	}
	if err != nil {
		t.Skipf("%s is not installed", s.program)
	}
	dir := openDir(t, "")
	files := openDir(t, dir)
	port := freePort(t)
	args, err := s.command(dir, files, port)
	if err != nil {
		t.Fatal(err)
	}
	run(t, dir, program, args, port)
	return func(t *testing.T) (string, string) {
		t.Helper()
		inside := openDir(t, files)
		return fmt.Sprintf("http://127.0.0.1:%d/%s/", port, filepath.Base(inside)), inside
	}
}

// openDir makes a folder that the server may write to, whoever it runs as.
func openDir(t *testing.T, in string) string {
	t.Helper()
	dir, err := os.MkdirTemp(in, "yokebook-")
	if err == nil {
		err = os.Chmod(dir, 0o777)
	}
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = os.RemoveAll(dir) })
	return dir
}

func freePort(t *testing.T) int {
	t.Helper()
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer l.Close()
	return l.Addr().(*net.TCPAddr).Port
}

// nobody is the user that servers run as when the tests run as root.
const nobody = 65534

// run runs a server in a group of processes of its own, waits until it answers, and ends them all with
// the test.
func run(t *testing.T, dir, program string, args []string, port int) {
	t.Helper()
	var said bytes.Buffer
	cmd := exec.Command(program, args...)
	cmd.Dir, cmd.Stdout, cmd.Stderr = dir, &said, &said
	cmd.Env = append(os.Environ(), "HOME="+dir)
	cmd.SysProcAttr = &syscall.SysProcAttr{Setpgid: true}
	if os.Getuid() == 0 {
		cmd.SysProcAttr.Credential = &syscall.Credential{Uid: nobody, Gid: nobody}
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	ended := make(chan error, 1)
	go func() { ended <- cmd.Wait() }()
	t.Cleanup(func() {
		_ = syscall.Kill(-cmd.Process.Pid, syscall.SIGTERM)
		select {
		case <-ended:
		case <-time.After(5 * time.Second):
		}
		_ = syscall.Kill(-cmd.Process.Pid, syscall.SIGKILL)
	})
	if err := answers(port, ended); err != nil {
		t.Fatalf("%s did not start: %v\n%s", program, err, said.String())
	}
}

// answers waits until something listens on a port.
func answers(port int, ended chan error) error {
	tick := time.NewTicker(20 * time.Millisecond)
	defer tick.Stop()
	late := time.After(20 * time.Second)
	for {
		select {
		case err := <-ended:
			ended <- err
			return fmt.Errorf("it ended: %w", err)
		case <-late:
			return errors.New("it does not answer")
		case <-tick.C:
			c, err := net.Dial("tcp", fmt.Sprintf("127.0.0.1:%d", port))
			if err == nil {
				return c.Close()
			}
		}
	}
}
