/** Entries written in one layout: the order of the reference, one form for each kind of value, every comment kept. */
package exergue.source.tidy;
