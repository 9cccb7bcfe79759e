/**
 * Readings: from the text an author typed to an exact figure, and from the figure to print.
 *
 * <p>{@link exergue.measure.ReadingParser} turns one text into a {@link exergue.measure.Reading} or into the
 * {@link exergue.measure.Remark} that says why it cannot; {@link exergue.measure.Printer} rounds once and prints;
 * {@link exergue.measure.Working} shows every step between. What a text means where it could mean several things, the
 * {@link exergue.measure.Convention} of its source says; where that is silent the text is refused, never guessed.
 *
 * <p>{@link exergue.measure.Units} is the one table of units, {@link exergue.measure.SizeScale} the printed scales of
 * numbered sizes, {@link exergue.measure.Axis} the arithmetic of the clock face, {@link exergue.measure.Density} and
 * {@link exergue.measure.Alloy} that of weighing in water. {@link exergue.measure.ReadingFault} lists everything that can be wrong with a text.
 *
 * <p>To add a unit: one line in {@code Units}, and a published figure for it in the table of check values.
 *
 * <p>All figures are {@link java.math.BigDecimal}. Nothing here knows of files, findings or coins.
 */
package exergue.measure;
