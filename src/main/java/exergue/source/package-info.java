/**
 * From the folder to the records of the trade. {@link exergue.source.SourceReader} reads every file of a tree once
 * and gives a {@link exergue.model.Catalogue} with all that is wrong, in one run.
 *
 * <p>The way of one file, package by package:
 * <ol>
 * <li>{@code text}: bytes to {@code SourceText}. Encodings, line ends, invisible characters.</li>
 * <li>{@code yaml}: text to {@code Value} (text, list, block), each with its place. Nothing is typed by YAML: 0042,
 *     no and 1931 stay what was written. Faults in the writing are told in words that need no knowledge of YAML.</li>
 * <li>{@code markdown}: prose to blocks and runs, with real dashes and quotation marks.</li>
 * <li>{@code shape}: what can be wanted as a value ({@code Wanted}) and how keys are declared ({@code Keys}).</li>
 * <li>{@code keys}: the keys themselves. A key is written once, with its sentence for the reference and an example;
 *     {@code Fields.get(KEY)} binds it.</li>
 * <li>{@code reference}: the reference page and the JSON Schemas, from the same keys.</li>
 * </ol>
 *
 * <p>To add a key: declare it in the block it belongs to, ask for it where the record is made, and run the tests
 * with {@code -Dgolden.update} so that docs/reference and docs/schema are written anew.
 *
 * <p>A fault never stops the run. A value that cannot be used is left out, a text that must be there and is not is
 * the empty text, a file that cannot be read at all is an entry with nothing but its id, so that whatever points to
 * it is not reported as well.
 */
package exergue.source;
