/** Data out of the catalogue for other programs: one row for each coin, as JSON and as CSV. */
package exergue.exchange;
