package serve

import (
	gosync "sync"
	"time"
)

const (
	failures  = 5 // from one address until it has to pause
	pauseTime = time.Minute
	maxHosts  = 1024
)

// pauses slows down who fails too often.
type pauses struct {
	mu    gosync.Mutex
	now   func() time.Time
	hosts map[string]*strikes
}

type strikes struct {
	count int
	last  time.Time
}

// left says how long a host still has to pause; 0 when it need not.
func (p *pauses) left(host string) time.Duration {
	p.mu.Lock()
	defer p.mu.Unlock()
	s := p.hosts[host]
	if s == nil || s.count < failures {
		return 0
	}
	left := s.last.Add(pauseTime).Sub(p.now())
	if left <= 0 || left > pauseTime { // over, or the clock was set back
		delete(p.hosts, host)
		return 0
	}
	return left
}

// failed counts a failure of a host. Where too many hosts fail at once, the older half is forgotten:
// what protects the code then is that it dies after a few wrong ones from anywhere.
func (p *pauses) failed(host string) {
	p.mu.Lock()
	defer p.mu.Unlock()
	now := p.now()
	if p.hosts[host] == nil {
		if len(p.hosts) >= maxHosts {
			for other, s := range p.hosts {
				if now.Sub(s.last) > pauseTime || len(p.hosts) > maxHosts/2 {
					delete(p.hosts, other)
				}
			}
		}
		p.hosts[host] = &strikes{}
	}
	s := p.hosts[host]
	if now.Sub(s.last) > pauseTime {
		s.count = 0
	}
	s.count++
	s.last = now
}

// forgiven forgets the failures of a host.
func (p *pauses) forgiven(host string) {
	p.mu.Lock()
	defer p.mu.Unlock()
	delete(p.hosts, host)
}
