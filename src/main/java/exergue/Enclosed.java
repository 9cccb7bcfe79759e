package exergue;

import exergue.edition.DataRow;
import exergue.typeset.Attachment;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What the book's file carries besides its pages.
 *
 * @param data   made of the rows once the pages are known
 * @param origin what the source was at: "Git commit 1a2b…"; empty if that is not known
 */
public record Enclosed(Function<List<DataRow>, List<Attachment>> data, Optional<String> origin) {

    public static final Enclosed NOTHING = new Enclosed(rows -> List.of(), Optional.empty());
}
