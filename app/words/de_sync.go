package words

// deSync: what sync and serve say.
var deSync = table{
	"cli.sync.build":     "abgeglichen: {0} ({1}): Messungen hier {2}, dort {3}",
	"cli.sync.not":       "NICHT ABGEGLICHEN: {0} ({1}): Messungen hier {2}, dort {3}",
	"cli.sync.moved":     "    Einträge (davon Messungen) hereingekommen: {0}, hinausgegangen: {1}",
	"cli.sync.last":      "    letzter Eintrag: {0}, von {1}",
	"cli.sync.self":      "diesem Gerät",
	"cli.sync.conflicts": "    im Umbau anzusehen: {0}",
	"cli.sync.arriving":  "noch nicht ganz, bis zum nächsten Mal in Ruhe gelassen: {0}",
	"cli.sync.refused":   "abgelehnt, bleibt wie es ist: {0}",
	"cli.sync.here":      "nicht auf diesem Gerät: {0}",
	"cli.sync.there":     "dort nicht geschrieben: {0}",
	"cli.sync.copy":      "eine Kopie unter anderem Namen, ihre Einträge sind übernommen; sie darf weg: {0}",
	"cli.synced":         "{0} von {1} Umbauten mit {2} abgeglichen; gelesene Dateien: {3}, unverändert und nicht gelesen: {4}, geschrieben: {5}",
	"cli.forgotten":      "{0} ist kein Ort dieses Geräts mehr; was dort liegt, ist wie es war",

	"places.kept.store": "das Kennwort liegt im Schlüsselspeicher des Systems",
	"places.kept.file":  "kein Schlüsselspeicher des Systems nahm das Kennwort: es liegt in secrets.json neben den Umbauten, einer Datei, die sonst niemand lesen kann",

	"cli.sync.accepted": "gekoppelt; ab jetzt `yokebook sync {0}` benutzen",

	"cli.serve.at":       "bietet die Umbauten dieses Geräts unter {0} an, bis Strg-C gedrückt wird",
	"cli.serve.pair":     "um ein Gerät zu koppeln, dort innerhalb von 15 Minuten und einmal eingeben:\n    yokebook sync '{0}'",
	"cli.serve.paired":   "gekoppelt: {0} ({1})",
	"cli.serve.moved":    "{0} ({1}): Einträge (davon Messungen) hereingekommen: {2}, hinausgegeben: {3}",
	"cli.serve.failed":   "nicht auf dem Stand, wird wieder versucht: {0}",
	"cli.serve.none":     "kein Gerät ist mit diesem gekoppelt",
	"cli.serve.unpaired": "{0} kommt nicht mehr herein; was es schrieb, bleibt",

	"cli.column.paired.device": "GERÄT",
	"cli.column.paired.name":   "NAME",
	"cli.column.paired.since":  "SEIT",

	"help.serve": "die Umbauten dieses Geräts den eigenen anderen Geräten anbieten",
	"help.serve.long": `Bietet die Umbauten dieses Geräts per WebDAV über TLS Geräten an, die mit ihm gekoppelt sind, und gleicht mit dem ab,
was sie schreiben. Es zeigt einen Kopplungstext; auf einem anderen Gerät eingegeben oder gescannt lässt er dieses herein
und merkt sich dort den Schlüssel. Von sich aus hört es nur auf diesem Rechner; --network öffnet es zum lokalen Netz.
Jedes Gerät schreibt nur seine eigenen Dateien. Es läuft, bis Strg-C gedrückt wird.`,

	"help.sync": "die Umbauten dieses Geräts und einen Ort auf denselben Stand bringen",
	"help.sync.long": `Bringt die Umbauten dieses Geräts und einen Ort auf denselben Stand. PLACE ist ein Ordner (Stick, Freigabe, Ordner eines
beliebigen Abgleichprogramms) oder die https://-Adresse eines WebDAV-Ordners. Dateien von Umbauten werden am Inhalt
erkannt, wie sie auch heißen; geschrieben wird nur die eigene Datei dieses Geräts je Umbau, und sie wird zurückgelesen,
bevor ein Umbau als abgeglichen zählt. Nichts geht verloren oder wird überschrieben, in welcher Reihenfolge Dateien auch
reisen. Benutzername, Kennwort und Fingerabdruck bleiben nach einmaliger Angabe gemerkt, das Kennwort im
Schlüsselspeicher des Systems, wo einer antwortet, sonst in einer Datei, die sonst niemand lesen kann.
Rückgabe 1: ein Ort versagte, oder eine Datei ist anzusehen.`,

	"help.flag.network":  "auf jedem Netz dieses Rechners hören",
	"help.flag.listen":   "auf dieser Adresse hören, etwa 192.168.1.20:8417",
	"help.flag.paired":   "die Geräte auflisten, die hereindürfen",
	"help.flag.unpair":   "ein Gerät nicht mehr hereinlassen",
	"help.flag.all":      "jede Datei neu lesen, auch scheinbar unveränderte",
	"help.flag.user":     "Benutzername auf dem Server",
	"help.flag.password": "das Kennwort aus der ersten Zeile der Eingabe lesen",
	"help.flag.pin":      "Fingerabdruck des Serverschlüssels, wenn sonst niemand für ihn bürgt",
	"help.flag.forget":   "den Ort mit seinem Kennwort aus der Liste nehmen; dort wird nichts angerührt",
}
