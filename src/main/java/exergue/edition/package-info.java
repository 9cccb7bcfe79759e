/**
 * The book as data: a {@link exergue.model.Catalogue} goes in, a {@link exergue.edition.Book} comes out, with every
 * word that will be printed in its place. Templates lay it out and decide nothing.
 *
 * <p>In the order of the work:
 * <ol>
 * <li>{@link exergue.edition.BookOrder} brings types and coins into the order of the book,
 * {@link exergue.edition.Numbering} gives the catalogue numbers;</li>
 * <li>{@link exergue.edition.MeasurementLine} prints the figures of a coin, {@link exergue.edition.SpecimenMaker} the
 * rest of its row, {@link exergue.edition.EntryMaker} its type, {@link exergue.edition.EntriesMaker} the headings;</li>
 * <li>{@link exergue.edition.MethodsChapter} has the methods statement written from a
 * {@link exergue.edition.methods.Tally} of what was measured, {@link exergue.edition.AuthorsMethods} holds the author's
 * own sentences against it;</li>
 * <li>{@link exergue.edition.CrossReferences} turns references to entries into their numbers;</li>
 * <li>{@link exergue.edition.Editor} puts the parts together, in the order of the author's plan.</li>
 * </ol>
 *
 * <p>Once the book is set and pages are known, {@link exergue.edition.DataRows} gives the rows of the data files.
 * {@link exergue.edition.PrintedTexts} says where in the source each printed text was written, for whoever finds that
 * it cannot be printed.
 *
 * <p>Words of the book stand in {@link exergue.model.BookWord}, in every language, and those of the methods statement in
 * the packages beside {@code edition.methods}; nowhere else.
 */
package exergue.edition;
