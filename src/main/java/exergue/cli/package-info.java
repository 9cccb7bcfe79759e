/**
 * The command line, one class for each command. {@link exergue.cli.CommandRun} turns whatever happens into an exit
 * code and a sentence; {@link exergue.cli.report} gives findings out. Results go to the output, everything about the
 * run itself to the error stream.
 */
package exergue.cli;
