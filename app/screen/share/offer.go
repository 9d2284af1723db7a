package share

import (
	"context"

	"yokebook/app/places"
	"yokebook/measure"
	buildsync "yokebook/sync"
	"yokebook/sync/serve"
)

// Where builds are offered: to this machine alone, or on every network that it is on.
const here, onNetworks = "127.0.0.1:8417", ":8417"

// Offer is the offer of this device's builds to paired devices.
type Offer struct {
	Network    bool // other machines reach it
	Invitation serve.Invitation
	Ready      bool          // the invitation stands
	Newest     *serve.Device // the device that was paired last since the offer began
	Came, Went int           // records, since the offer began
	Fault      string        // what the last pass said, if anything
	Err        error         // why it ended by itself
	cancel     context.CancelFunc
}

// Offering is the offer that stands, or that ended with an error; nil where there is none.
func (s *Sharing) Offering() *Offer { return s.offer }

// Begin offers this device's builds until EndOffer.
func (s *Sharing) Begin(network bool) {
	s.EndOffer()
	listen := s.Here
	if network {
		listen = s.OnNetworks
	}
	ctx, cancel := context.WithCancel(context.Background())
	o := &Offer{Network: network, cancel: cancel}
	s.offer = o
	show := func(f func()) {
		s.run.Post(func() {
			if s.offer == o {
				f()
				s.changed(nil)
			}
		})
	}
	host := places.Host{
		Listen:  listen,
		Through: s.run.Through,
		Invited: func(i serve.Invitation) { show(func() { o.Invitation, o.Ready = i, true }) },
		Paired:  func(d serve.Device) { show(func() { o.Newest = &d }) },
		Passed: func(r buildsync.Report, err error) {
			s.run.Post(func() {
				if s.offer == o {
					s.passed(o, r, err)
				}
			})
		},
	}
	s.run.Apart(func() {
		err := s.Places.Serve(ctx, s.shelf, host)
		cancel()
		show(func() { o.Ready, o.Err = false, err })
	})
}

// passed notes what a pass over the offered folder did.
func (s *Sharing) passed(o *Offer, r buildsync.Report, err error) {
	o.Fault = ""
	switch {
	case err != nil:
		o.Fault = err.Error()
	case !r.OK():
		o.Fault = r.Faults[0].Line
	}
	var came []measure.ID
	for _, b := range r.Builds {
		o.Came += b.Came.Total()
		o.Went += b.Went.Total()
		if b.Came.Total() > 0 {
			came = append(came, b.ID)
		}
	}
	s.changed(came)
}

// EndOffer ends the offer. Devices stay paired.
func (s *Sharing) EndOffer() {
	if s.offer != nil {
		s.offer.cancel()
		s.offer = nil
	}
}
