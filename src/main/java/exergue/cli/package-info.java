/** The command line. */
package exergue.cli;
