/**
 * Findings given out: in full with the source line, one line each, as JSON, as SARIF. All four say the same; none
 * lets anything from the source act on the reader's terminal.
 */
package exergue.cli.report;
