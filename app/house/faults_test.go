package house

import (
	"go/ast"
	"strings"
	"testing"
)

// faults are what readings must survive, what is expected then, and the tests that hold it. `make test`
// runs each of them, in a short form where `make soak` has a long one.
var faults = []struct{ fault, expected, tests string }{
	{"killed or without power during a save", "every reading shown as saved is there; the file opens",
		`measure/store.TestKillLosesNothingAcknowledged measure/store.TestPowerIsLostAtEachCall
		app/logbook.TestReadingsOfAKilledProcessAreThereAndListed app/logbook.TestKillWhileTheSecondCopyIsWrittenLosesNothing
		app/places.TestKilledProcessesEndAlike`},
	{"torn, cut-off or empty file", "passed over with one line, tried again the next time",
		`measure/document.TestCutAtEveryByteIsRefused measure/store.TestFileCutAtEveryByte
		sync.TestDamagedFilesAreLeftAloneAndTriedAgain sync.TestFileThatIsStillArrivingIsToldApart`},
	{"any bit flipped", "refused, or the record set aside; nothing taken from it",
		`measure/document.TestEveryFlippedBitOfASealedFileIsRefused measure/document.TestDamageToABuildOfFortyReadingsIsRefused
		measure/store.TestFlippedBitIsAlwaysNoticed measure/store.TestDamagedSnapshotIsPassedOver`},
	{"one id with other content", "both kept, flagged, unused", `measure/merge.TestSituations measure/merge.TestNothingIsLostAndNothingMadeUp`},
	{"a file merged any number of times in any order", "the same bytes",
		`measure/merge.TestMergingHasNoOrder measure/merge.TestAllOrdersOfFiveFiles measure/merge.FuzzBuilds`},
	{"devices apart and together again, crashes between any two steps", "all alike after two rounds, nothing acknowledged missing",
		`sync.TestMergeUnderFire sync.TestFailureAtAnyCall sync.TestPassThatEndedEarlyIsMadeUpFor`},
	{"a clock ten years off, or set back", "a correction still wins",
		`measure/merge.TestSituations sync.TestMergeUnderFire app/logbook.TestClockRunsOnWhateverTheWallClockSays
		app/logbook.TestOurChangeWinsOverAHeadFromAWrongClock`},
	{"a newer format, unknown members, big numbers", "survive value for value",
		`measure/document.TestNothingUnknownIsLost measure/document.TestNewerFormatIsReadAsFarAsItIsKnown
		sync.TestNewerFormatIsCarriedAndOnlyInOurOwnFile app/logbook.TestImportOfANewBuildKeepsWhatThisVersionDoesNotKnow`},
	{"copies and other names", "merged and left in place", `sync.TestCopiesAreMoreInputAndLeftInPlace sync.TestOwnFileInCapitalsIsOurOwn sync/place.TestFolder`},
	{"two programs on one build", "the second says who holds it; files go on",
		`measure/store.TestSecondProcessIsToldWhoHoldsTheBuild measure/store.TestTwoProcessesOnOneStoreLoseNothing
		app/logbook.TestManyProgramsOnOneFileLoseNothing app/logbook.TestBuildOpenElsewhereGoesOutAndComesInLater`},
	{"a disk or stick that is full, read-only, pulled out", "the old file is whole, one line, tried again",
		`measure/store.TestEachCallToTheDiskFails measure/store.TestDiskThatFillsUpHalfWayThroughARecord measure/store.TestFileIsReplacedWholeOrNotAtAll
		sync/place.TestFullFolderKeepsTheOldFile sync/place.TestReadOnlyFolderCanBeReadAndSaysSo
		sync.TestFullOrReadOnlyPlaceGivesOneLineAndLosesNothing sync.TestFailureAtAnyCall`},
	{"a rewrite of the same size within one step of the clock", "the change is seen", `sync.TestRewriteOfSameSizeAndTimeIsSeen sync.TestEverythingIsReadAgainAfterADayAndOnRequest`},
	{"depth, size, floods of keys, no numbers, no UTF-8, keys twice", "refused in one line, under 100 MB",
		`measure/document.TestHostileFilesTakeLittleMemory measure/document.TestMillionBracketsAreOneLine measure/document.TestBadFilesAreRefusedInOneLine
		measure/document.TestScannerRefuses measure/document.FuzzRead sync/place.TestEndlessAnswersAreCutShort sync.FuzzPassOverHostileFiles`},
	{"names and ids that lead elsewhere, links", "refused",
		`measure/store.TestStrangeNamesNeverBecomePaths measure/document.TestNewerFormatIsNotADoorForBadIDs sync/place.TestFolder
		sync/place.TestPipesAndFoldersAreNoFiles sync/serve.TestWhatADeviceMayDo`},
	{"an upload cut off, a server that is busy, full, refuses or sends elsewhere", "the old file is whole; no password goes elsewhere",
		`sync/place.TestBusyServerIsAskedAgainWithLongerPauses sync/place.TestAnswersThatEndTheWork sync/place.TestRedirectIsNotFollowed
		sync/place.TestLostAnswerToAMove sync/serve.TestBrokenUploadLeavesTheOldFile`},
	{"a server that ignores conditions", "nothing lost", `sync/place.TestWebDAVOnABareServer sync/serve.TestRacingWritersHaveOneWinner sync.TestOnlyOurOwnFileIsWritten`},
	{"another certificate, a changed key", "stopped, both prints shown", `sync/serve.TestAnotherServerInItsPlaceIsNotTrusted`},
	{"a device lost", "its token is taken back", `sync/serve.TestOnlyPairedDevicesGetIn`},
	{"a device set back to an old backup", "merging brings it forward", `sync.TestRestoredDeviceLosesNothing sync.TestOwnFileThatWasSetBackIsWrittenAgain app/logbook.TestDeviceIsMadeOnceAndKept`},
}

// Each fault has tests, each of them is there, and none of their packages leaves tests out unless asked.
func TestEveryFaultHasItsTests(t *testing.T) {
	there := map[string]bool{}
	for _, s := range tree(t) {
		for _, d := range s.file.Decls {
			if f, ok := d.(*ast.FuncDecl); ok && f.Recv == nil && s.isTest() {
				there[s.dir()+"."+f.Name.Name] = true
			}
		}
	}
	for _, row := range faults {
		names := strings.Fields(row.tests)
		if len(names) == 0 || row.expected == "" {
			t.Errorf("%s: no test", row.fault)
		}
		for _, name := range names {
			if !there[name] {
				t.Errorf("%s: there is no %s; name the test that holds it now", row.fault, name)
			}
		}
	}
}
