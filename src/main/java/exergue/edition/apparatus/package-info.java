/**
 * What is compiled from the entries: concordances, indexes, find tables, picture credits.
 *
 * <p>{@link exergue.edition.apparatus.Locators} prints sets of coins as numbers or pages, runs merged, each a link.
 * {@link exergue.edition.apparatus.Concordances} and {@link exergue.edition.apparatus.Indexes} make
 * {@link exergue.edition.Listing}s, which are set in columns; {@link exergue.edition.apparatus.FindTables} and
 * {@link exergue.edition.apparatus.PictureCredits} make prose with tables. {@link exergue.edition.apparatus.IndexOrder}
 * is the only place that uses ICU.
 */
package exergue.edition.apparatus;
