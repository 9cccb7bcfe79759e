/**
 * Exergue turns a folder of coin entries into a printed catalogue. {@link exergue.Exergue} holds the whole pipeline
 * on one screen. The packages, in the order in which a book comes about:
 *
 * <ol>
 * <li>{@code files}: what can be read, and how files are delivered; the only place that touches the disk
 * <li>{@code finding}: what is said about the source, as data with places
 * <li>{@code measure}: readings, units and conventions, exact
 * <li>{@code model}: the records of the trade: catalogue, type, coin, measurement
 * <li>{@code source}: YAML and Markdown become the model, every value with its place
 * <li>{@code check}: the rules, one file each
 * <li>{@code study}: what only many coins together can show
 * <li>{@code photo}: photographs read and measured: outlines, diameters, scale, the axis from two outlines
 * <li>{@code edition}: the book as data: order, numbers, the words that are printed
 * <li>{@code typeset}: the book as pages
 * <li>{@code exchange}: the data beside the book, as JSON and CSV
 * <li>{@code review}, {@code proof}: comparing and the live proof; nothing is there yet
 * <li>{@code cli}: the command line
 * </ol>
 *
 * <p>Who may use whom is written down in DEVELOPERS.md and held by tests.
 */
package exergue;
