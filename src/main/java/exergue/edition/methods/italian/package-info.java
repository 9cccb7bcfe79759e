/**
 * The methods statement in Italian: one class a paragraph, each a pure function of the tally. Words of the statement
 * stand here and nowhere else. What authors write never follows a preposition that would melt into its article: it stands
 * after a colon or in brackets.
 */
package exergue.edition.methods.italian;
