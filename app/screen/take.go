package screen

import (
	"yokebook/app/screen/take"
)

// takePage builds the page that the model is at.
func (s *Screen) takePage() page {
	switch s.take.Page() {
	case take.Keypad, take.Height:
		return s.keypad()
	case take.Codes:
		return s.codes()
	case take.Write:
		return s.write()
	case take.Laying:
		return s.laying()
	case take.Rests:
		return s.rests()
	case take.Records:
		return s.records()
	case take.OneRecord:
		return s.record()
	case take.Reasons:
		return s.reasons()
	case take.Reason:
		return s.reason()
	case take.Reverse:
		return s.reverse()
	case take.Turn:
		return s.turn()
	case take.Zero:
		return s.zero()
	case take.Sides:
		return s.sides()
	case take.Doubts:
		return s.doubts()
	case take.Refused:
		return s.refused()
	case take.Result:
		return s.result()
	case take.Done:
		return s.done()
	case take.Bring:
		return s.bring()
	case take.Caution:
		return s.caution()
	case take.Stances:
		return s.stances()
	case take.Setup:
		return s.setup()
	case take.Skips:
		return s.skips()
	case take.Tools:
		return s.tools()
	case take.Route:
		return s.route()
	case take.Findings:
		return s.findings()
	case take.Groups:
		return s.groups()
	case take.OneGroup:
		return s.group()
	case take.Obstacles:
		return s.obstacles()
	case take.SkipNote:
		return s.skipNote()
	case take.Run:
		return s.run()
	case take.Finding:
		return s.finding()
	}
	return s.more()
}
