/**
 * Data out of the catalogue for other programs, one row for each coin, as JSON and as CSV; and tables in: sheets of fresh
 * measurements here, lists of others in {@code list}.
 */
package exergue.exchange;
