package words

// enSync: what sync and serve say. A build is called synced only after it was read back.
var enSync = table{
	"cli.sync.build":     "synced: {0} ({1}): readings here {2}, there {3}",
	"cli.sync.not":       "NOT SYNCED: {0} ({1}): readings here {2}, there {3}",
	"cli.sync.moved":     "    records (of them readings) that came in: {0}, that went out: {1}",
	"cli.sync.last":      "    last record: {0}, by {1}",
	"cli.sync.self":      "this device",
	"cli.sync.conflicts": "    to look at in the build: {0}",
	"cli.sync.arriving":  "not whole yet, left alone until the next time: {0}",
	"cli.sync.refused":   "refused, left as it is: {0}",
	"cli.sync.here":      "not on this device: {0}",
	"cli.sync.there":     "not written there: {0}",
	"cli.sync.copy":      "a copy under another name, its records are taken in; you may remove it: {0}",
	"cli.synced":         "{0} of {1} builds synced with {2}; files read: {3}, unchanged and not read: {4}, written: {5}",
	"cli.forgotten":      "{0} is no longer one of this device's places; what lies there is as it was",

	"places.kept.store": "the password is kept in this system's key store",
	"places.kept.file":  "no key store of the system took the password: it is kept in secrets.json beside the builds, which only you can read",

	"cli.sync.accepted": "paired; from now on use `yokebook sync {0}`",

	"cli.serve.at":       "serving this device's builds at {0} until you press Ctrl-C",
	"cli.serve.pair":     "to pair another device, within 15 minutes and once, type there:\n    yokebook sync '{0}'",
	"cli.serve.paired":   "paired: {0} ({1})",
	"cli.serve.moved":    "{0} ({1}): records (of them readings) that came in: {2}, that were put out: {3}",
	"cli.serve.failed":   "not up to date, will be tried again: {0}",
	"cli.serve.none":     "no device is paired with this one",
	"cli.serve.unpaired": "{0} can't come in any more; what it wrote stays",

	"cli.column.paired.device": "DEVICE",
	"cli.column.paired.name":   "NAME",
	"cli.column.paired.since":  "SINCE",

	"help.serve": "offer this device's builds to your other devices",
	"help.serve.long": `Offers this device's builds by WebDAV over TLS to devices that you paired with it, and syncs with what they write.
It shows a pairing text; typed or scanned on another device it lets that device in and pins this one's key there. By
itself it listens on this machine only; --network opens it to the local network. Each device may write only its own
files. It runs until you press Ctrl-C.`,

	"help.sync": "bring this device's builds and a place to the same state",
	"help.sync.long": `Brings this device's builds and a place to the same state. PLACE is a folder (a stick, a share, the folder of
any file-sync program) or the https:// address of a WebDAV folder. Files of builds are found by content, whatever they
are called; only this device's own file of each build is written, and it is read back before a build counts as synced.
Nothing is ever lost or overwritten, in whatever order files travel. A user name, password and fingerprint that are
given once are kept, the password in the system's key store where one answers, else in a file that only you can read.
Exit code 1: a place failed, or a file needs a look.`,

	"help.flag.network":  "listen on every network that this machine is on",
	"help.flag.listen":   "listen on this address, such as 192.168.1.20:8417",
	"help.flag.paired":   "list the devices that may come in",
	"help.flag.unpair":   "let a device in no more",
	"help.flag.all":      "read every file again, also those that seem unchanged",
	"help.flag.user":     "user name on the server",
	"help.flag.password": "read the password from the first line of the input",
	"help.flag.pin":      "fingerprint of the server's key, for one that nobody vouches for",
	"help.flag.forget":   "take the place off this device's list, with its password; nothing there is touched",
}
