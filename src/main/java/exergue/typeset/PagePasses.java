package exergue.typeset;

import exergue.edition.Book;
import exergue.edition.PageMap;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import java.io.IOException;
import java.util.List;
import java.util.function.Function;

/**
 * Sets a book that prints page numbers in its text. They are known when the book is set; printed, they may move what
 * they speak of. So it is set again until every page is where the text says, but not for ever.
 */
public final class PagePasses {

    private static final int MOST = 3;

    private PagePasses() { }

    /** @param withPages the same book with these page numbers in it */
    public static SetBook set(Book book, Function<PageMap, Book> withPages, Setting setting) throws IOException {
        SetBook set = Typesetter.set(book, setting);
        for (int pass = 2; pass <= MOST && !set.findings().hasErrors(); pass++) {
            PageMap said = set.pages();
            set.close();
            set = Typesetter.set(withPages.apply(said), setting);
            if (set.findings().hasErrors() || set.pages().equals(said)) {
                return set;
            }
        }
        return set.findings().hasErrors() ? set : set.with(Findings.of(List.of(Finding.of(
                TypesetCodes.PAGES_UNSETTLED, Place.ofFile("house-style.yaml"), "indexes",
                "After " + MOST + " passes some page numbers in the text were still not those of the pages.",
                "Change a word near the foot of a page and set the book again, or print numbers in place of pages."))));
    }
}
