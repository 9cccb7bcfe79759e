/**
 * Tables, charts and single figures in the author's chapters that are reckoned from the coins, at every typesetting anew.
 */
package exergue.edition.figures;
