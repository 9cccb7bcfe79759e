/**
 * The methods statement in German: one class a paragraph, each a pure function of the tally. Words of the statement stand
 * here and nowhere else. What authors write is never declined: it stands after a colon or in brackets.
 */
package exergue.edition.methods.german;
