package words

// English is the default language. Its questions and places stand in the table of points.
var English = english()

func english() *Language {
	l := newLanguage("en", "English",
		enNames,
		enParts,
		enDimensions,
		enAdvice,
		enChecks,
		enTravel,
		enShaft,
		enClutch,
		enStates,
		enCautions,
		enDoubts,
		enHelp,
		enCLI,
		enStore,
		enSync,
		enPlaces,
		enScreen,
		enPhone,
		enPhrases,
		enSettle,
		enTake,
		enDraw,
		enDrawing,
		enRemedy,
		enFormulas,
		enCure,
		enSheet,
		enDiff,
		enFitting,
	)
	l.native = true
	return l
}
