package words

// dePhrases: what takes the place of those phrases.
var dePhrases = table{
	"fault.no_folder":        "diesen Ordner gibt es nicht; einstecken oder anlegen",
	"fault.not_opened":       "lässt sich nicht als Ordner öffnen",
	"fault.full":             "ist voll; dort Platz schaffen, nichts wurde geändert",
	"fault.read_only":        "lässt sich nicht beschreiben; dort wurde nichts geändert",
	"fault.refused":          "hat Benutzername oder Kennwort abgelehnt",
	"fault.unlike":           "las sich anders zurück, als es geschrieben wurde",
	"fault.large":            "ist größer als 8 MiB, also keine Umbaudatei",
	"fault.many":             "enthält mehr als 100.000 Dateien; einen Ordner wählen, in dem nur Umbauten liegen",
	"fault.unreached":        "der Server ist nicht zu erreichen",
	"fault.slow":             "der Server antwortet nicht rechtzeitig; später nochmals versuchen",
	"fault.no_server_folder": "der Server hat diesen Ordner nicht; dort anlegen oder die Adresse prüfen",
	"fault.no_reading":       "der Server lässt diesen Benutzer hier nicht lesen",
	"fault.http":             "http:// kann unterwegs jeder mitlesen; https:// benutzen",
	"fault.address":          "die Adresse ist nicht zu verstehen; so schreiben: https://host/ordner/",

	"source.practice":   "allgemein üblich, keine Quelle",
	"source.judged":     "unser Urteil, keine Quelle",
	"source.apart":      "unabhängig von diesem Programm nachgerechnet",
	"source.person":     "jemand am Fahrzeug hat nachgesehen und geantwortet",
	"source.strength":   "Lehrbücher der Festigkeit (aus dem Gedächtnis)",
	"source.design":     "Lehrbücher der Maschinenelemente (aus dem Gedächtnis)",
	"source.tools":      "übliche Werkzeuge (aus dem Gedächtnis)",
	"source.memory":     "(aus dem Gedächtnis)",
	"source.definition": "nach Definition:",
	"source.rounded":    "gerundet wie allgemein üblich",
}
