/** Full references to works from reference managers, set in a citation style. The only room that knows citeproc. */
package exergue.cite;
