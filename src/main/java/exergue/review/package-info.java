/** Comparing two states of a catalogue. Nothing is here yet. */
package exergue.review;
