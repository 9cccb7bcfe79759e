package exergue.typeset;

import exergue.Golden;
import exergue.edition.Book;
import exergue.model.TemplateSet;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Where every line of a small book stands in each set of templates, plates at its end. */
class SetPagesGoldenTest {

    @ParameterizedTest
    @EnumSource(TemplateSet.class)
    void everyLineStandsWhereItWasApproved(TemplateSet set) throws Exception {
        Book sample = SampleBook.of(4, 8);
        Book book = new Book("en", SampleBook.title(), sample.front(), sample.body(), SamplePlates.BACK);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Typesetter.typeset(book, SampleBook.setting(set), out);
        Golden.check(Path.of("src/test/resources/golden/typeset", "set-" + set.word(), "pages.txt"),
                PlacedLines.of(out.toByteArray()));
    }
}
