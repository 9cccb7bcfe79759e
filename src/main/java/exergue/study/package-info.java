/** Statistics over the catalogue. The only stage besides photo where doubles are allowed. */
package exergue.study;
