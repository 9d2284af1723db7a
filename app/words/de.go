package words

// German is the second language. Trade terms are those of German workshop practice, from memory.
var German = german()

func german() *Language {
	l := newLanguage("de", "Deutsch", dePoints(), deCodes(),
		deNames,
		deParts,
		deDimensions,
		deStates,
		deCautions,
		deDoubts,
		deChecks,
		deAdvice,
		deTravel,
		deClutch,
		deShaft,
		deRemedy,
		deDraw,
		deDrawing,
		deStore,
		deSync,
		deCLI,
		deHelp,
		deDiff,
		deFitting,
		deScreen,
		deFormulas,
		dePhone,
		dePhrases,
		deSheet,
		dePlaces,
		deTake,
		deSettle,
		deCure,
	)
	l.Comma = true
	return l
}
