/**
 * Statistics over the catalogue: figures far off their group ({@link exergue.study.Plausibility}), summaries of weights
 * ({@link exergue.study.Summary}), and how far two hands differ ({@link exergue.study.Agreement}). Results are data;
 * {@link exergue.study.AgreementPlot} draws one of them. The only stage besides photo where doubles are allowed:
 * nothing computed here is ever printed as a reading. Logarithms come from {@code StrictMath}, so that every machine
 * gives the same figures.
 */
package exergue.study;
