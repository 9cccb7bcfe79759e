package exergue.exchange;

import exergue.Enclosed;
import exergue.edition.DataRow;
import exergue.typeset.Attachment;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The data files of a book: the same bytes inside its PDF and beside it. */
public final class BookData {

    public static final String JSON = "catalogue.json";
    public static final String CSV = "catalogue.csv";

    private BookData() { }

    /** @param commit that the source was at, as its author or its repository names it */
    public static Enclosed enclosed(Optional<String> commit) {
        return new Enclosed(rows -> of(rows, commit), commit.map(name -> "Commit " + name));
    }

    public static List<Attachment> of(List<DataRow> rows, Optional<String> commit) {
        return List.of(
                new Attachment(JSON, "application/json", "The figures of this book, one record a coin",
                        utf8(CatalogueJson.of(rows, commit))),
                new Attachment(CSV, "text/csv", "The figures of this book as a table, one line a coin",
                        utf8(CatalogueCsv.of(rows))));
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
