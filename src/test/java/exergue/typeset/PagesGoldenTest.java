package exergue.typeset;

import exergue.Golden;
import exergue.model.HouseStyle.Rows;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Where every line of a small book stands. A change of the design shows here first; look at the pages, then approve. */
class PagesGoldenTest {

    @ParameterizedTest
    @EnumSource(Rows.class)
    void everyLineStandsWhereItWasApproved(Rows rows) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Typesetter.typeset(SampleBook.of(4, 8), SampleBook.setting(SampleBook.tree(), rows), out);
        Golden.check(Path.of("src/test/resources/golden/typeset", "small-book-" + rows.name().toLowerCase(Locale.ROOT),
                "pages.txt"), PlacedLines.of(out.toByteArray()));
    }
}
