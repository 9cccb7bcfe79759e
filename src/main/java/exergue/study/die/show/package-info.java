/** The die study as tables, a link diagram and figures for running text. */
package exergue.study.die.show;
