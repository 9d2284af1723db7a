package words

// enCLI: what the command line says.
var enCLI = table{
	"cli.counts": "{0} out, {1} unsure, {2} waiting, {3} clear",
}
