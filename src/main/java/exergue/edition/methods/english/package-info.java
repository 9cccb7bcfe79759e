/**
 * The methods statement in English: one class a paragraph, each a pure function of the tally, and two for the grammar
 * they share. Words of the statement stand here and nowhere else.
 */
package exergue.edition.methods.english;
