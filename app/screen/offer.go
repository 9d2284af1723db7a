package screen

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/screen/arrange"
	"yokebook/app/screen/part"
	"yokebook/app/screen/share"
	"yokebook/checks"
	"yokebook/measure"
	"yokebook/sync/serve"
)

// offerVisit is the offer of this device's builds to other devices.
type offerVisit struct {
	devices bool       // the paired devices are shown
	asks    measure.ID // the device that may be let in no more; empty: none is asked about
}

func (v *offerVisit) mark() string { return markOf("offer", offerMark{v.devices, v.asks}) }

// offerMark is what the page of the offer shows.
type offerMark struct {
	Devices bool       `json:"devices"`
	Asks    measure.ID `json:"asks"`
}

func (v *offerVisit) live() bool { return v.asks == "" }

func (v *offerVisit) back(*Screen) bool {
	switch {
	case v.asks != "":
		v.asks = ""
	case v.devices:
		v.devices = false
	default:
		return false
	}
	return true
}

func (v *offerVisit) page(s *Screen) page {
	if s.sharing == nil { // it is opened again, and the places are not there yet
		return s.ask(question{title: s.lang.Say("offer.begins"), foot: s.back()})
	}
	o := s.sharing.Offering()
	switch {
	case v.devices:
		return v.devicesPage(s)
	case o != nil && o.Ready:
		return v.shown(s, o)
	case o != nil && o.Err == nil:
		return s.ask(question{title: s.lang.Say("offer.begins"), foot: s.back()})
	}
	return v.ask(s, o)
}

// ask asks who may reach the builds; the smaller circle stands first.
func (v *offerVisit) ask(s *Screen, o *share.Offer) page {
	if o != nil {
		s.err = o.Err
	}
	return s.ask(question{title: s.lang.Say("offer.ask"), note: s.lang.Say("offer.note"), answers: []answer{
		{name: "offer.here", words: s.lang.Say("offer.here"), tap: s.does(func() { s.sharing.Begin(false) })},
		{name: "offer.network", words: s.lang.Say("offer.network"), tap: s.does(func() { s.sharing.Begin(true) })},
		{name: "offer.devices", words: s.lang.Say("offer.paired", len(s.paired())), tap: s.does(func() { v.devices = true })},
	}, foot: s.back()})
}

func (s *Screen) paired() []serve.Device {
	list, err := s.sharing.Places.Paired()
	if err != nil {
		s.err = err
	}
	return list
}

// shown is the invitation, to be scanned or typed.
func (v *offerVisit) shown(s *Screen, o *share.Offer) page {
	i := o.Invitation
	lines := []string{s.lang.Say("offer.text", i.Address, i.Code, fingerprint(i.Pin))}
	if o.Newest != nil {
		lines = append(lines, s.lang.Say("offer.newest", s.nameOf(*o.Newest)))
	}
	if o.Came+o.Went > 0 {
		lines = append(lines, s.lang.Say("offer.moved", o.Came, o.Went))
	}
	if o.Fault != "" {
		lines = append(lines, breakable(s.lang.Say("offer.fault", s.lang.Fault(o.Fault))))
	}
	lay := &arrange.Offer{
		Title: part.NewText(s.lang.Say("offer.title"), part.Held, 22, part.Plain).Bold(),
		Code:  part.NewCode(i.String()),
		Words: part.NewText(strings.Join(lines, "\n"), 13, 22, part.Plain).AtTop(),
		Keys: []fyne.CanvasObject{
			s.backKey(),
			part.NewWordKey("offer.devices", part.Ordinary, s.lang.Say("offer.paired", len(s.paired())), s.does(func() { v.devices = true })),
			part.NewWordKey("offer.stop", part.Risky, s.lang.Say("offer.stop"), s.does(s.sharing.EndOffer)),
		},
	}
	return page{object: container.New(lay, append([]fyne.CanvasObject{lay.Title, lay.Code, lay.Words}, lay.Keys...)...)}
}

func (s *Screen) nameOf(d serve.Device) string {
	if d.Name == "" {
		return s.lang.Say("offer.nameless")
	}
	return d.Name
}

// devicesPage lists the devices that may come in; a tap asks whether one may no more.
func (v *offerVisit) devicesPage(s *Screen) page {
	list := s.paired()
	for _, d := range list {
		if d.ID == v.asks {
			return v.askUnpair(s, d)
		}
	}
	title := s.lang.Say("offer.devices")
	if len(list) == 0 {
		title = s.lang.Say("offer.nobody")
	}
	lines := make([]func() fyne.CanvasObject, len(list))
	for i, d := range list {
		lines[i] = func() fyne.CanvasObject {
			face := part.NewRowFace(part.NewMark(checks.Clear), part.NewText(s.nameOf(d), part.Held, 20, part.Plain).Bold(),
				part.NewText(s.lang.Say("offer.since", clock(d.At)), part.Held, 17, part.Quiet))
			return part.NewKey("paired."+string(d.ID), part.Row, face, s.does(func() { v.asks = d.ID }))
		}
	}
	return s.linesPage(title, lines)
}

func (v *offerVisit) askUnpair(s *Screen, d serve.Device) page {
	return s.ask(question{title: s.lang.Say("unpair.ask", s.nameOf(d)), note: s.lang.Say("unpair.note"), answers: []answer{
		{name: "unpair.yes", words: s.lang.Say("unpair.yes"), kind: part.Risky, tap: s.does(func() {
			v.asks = ""
			s.err = s.sharing.Places.Unpair(d.ID)
		})},
		{name: "back", words: s.lang.Say("place.no"), tap: func() { s.goBack() }},
	}})
}
