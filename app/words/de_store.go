package words

// deStore: what is told of how builds are kept on this device.
var deStore = table{
	"store.unfinished": "der letzte Eintrag war nicht fertig, als das Programm endete; alles davor ist da (die abgeschnittene Datei: {0})",
	"store.recovered": "die Datei war beschädigt; daraus gelesene Einträge: {0}, davon hinter der beschädigten Stelle: {1}; aus " +
		"Sicherungen zurückgeholt: {2}; die beschädigte Datei bleibt neben den Umbauten, als {3}",
	"store.restored":  "die Datei fehlte; aus Sicherungen zurückgeholte Einträge: {0}, die neueste ist {1}",
	"store.lost":      "beschädigt und sonst nirgends: {0} Einträge, in {1}; der erste ist {2}; neu messen, oder eine Datei einlesen, die sie hat",
	"store.nameless":  "bis zur Unlesbarkeit beschädigt: {0} Stellen in {1}; nachsehen, ob eine Messung fehlt",
	"store.snapshot":  "Sicherung {0} ist beschädigt und wird nicht benutzt; der Umbau selbst ist es nicht",
	"store.unknown":   "Einträge einer neueren Fassung, die diese nicht lesen kann: {0}; sie bleiben erhalten",
	"store.unsecured": "die Zweitschrift konnte nicht geschrieben werden: {0}",

	"store.state.whole":     "ganz",
	"store.state.recovered": "wiederhergestellt",
	"store.state.set aside": "beiseitegelegt",

	"cli.verified":       "zurückgelesene Umbauten: {0} ganz, {1} wiederhergestellt, {2} mit Beiseitegelegtem",
	"cli.verify":         "{0}: {1}",
	"cli.verify.damaged": "    nicht lesbar: {0}",
	"cli.verify.held":    "    ist in {0} geöffnet; gelesen, wie es jetzt steht",
	"cli.verify.note":    "    {0}",
	"cli.verify.mend":    "    Öffnen des Umbaus repariert, was zu reparieren ist; die beschädigte Datei bleibt",
	"cli.verify.past":    "    {0}: {1}",

	"cli.struck": "gestrichen {0 point} {1}, {2 state}, Aufstellung {3}, Messung {4}; sie bleibt mit Begründung in der Datei und zählt nicht mehr",

	"help.strike": "eine Messung mit Begründung streichen",
	"help.strike.long": `Nimmt eine Messung aus dem Gebrauch und druckt die geänderten Befunde. Die Messung bleibt mit Begründung in der Datei.
READING ist ihre Kennung oder deren Ende, wie Befunde sie zeigen. Ein Strich ist endgültig: um den Wert wieder zu
benutzen, ihn neu eintragen.

Wo zwei Einträge eine Kennung teilen, nennt --content den zu streichenden durch den Anfang seiner Prüfsumme; ohne das
werden beide genannt und nichts wird gestrichen.`,
	"help.flag.reason":  "warum die Messung gestrichen wird",
	"help.flag.content": "Anfang der Prüfsumme des einen von zwei Einträgen, die eine Kennung teilen",
	"help.flag.verify":  "alles zurücklesen und sagen, was ganz, wiederhergestellt oder beiseitegelegt ist",
}
