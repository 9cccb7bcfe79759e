/**
 * The methods statement in French: one class a paragraph, each a pure function of the tally. Words of the statement stand
 * here and nowhere else. A coin is "monnaie" and feminine; a die-axis is "axe". The narrow space before ; and : that
 * never breaks is in {@link exergue.edition.methods.french.Grammar}.
 */
package exergue.edition.methods.french;
