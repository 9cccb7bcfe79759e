package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.edition.Book;
import exergue.edition.EntryBlock.Entry;
import exergue.edition.PageMap;
import exergue.edition.Part;
import exergue.edition.Specimen;
import exergue.model.Inline;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where pages may not break: between an entry's first line and its coins, and so that one row of one line stands alone. */
class PageBreaksTest {

    @Test
    void noEntryIsLeftWithoutItsFirstRowsAndNoRowStandsAlone() throws Exception {
        Book book = SampleBook.of(160, 900);
        PageMap pages = Typesetter.typeset(book, SampleBook.setting(), OutputStream.nullOutputStream()).pages();
        List<String> bad = new ArrayList<>();
        for (Part part : book.body()) {
            if (part instanceof Part.Entries entries) {
                entries.blocks().stream().filter(Entry.class::isInstance).map(Entry.class::cast)
                        .forEach(entry -> check(entry, pages, bad));
            }
        }
        assertEquals(List.of(), bad);
    }

    private static void check(Entry entry, PageMap pages, List<String> bad) {
        List<Specimen> coins = entry.specimens();
        String page = pages.folio(entry.id()).orElseThrow();
        String first = pages.folio(coins.get(0).id()).orElseThrow();
        if (!page.equals(first)) {
            bad.add(entry.numbers() + " is on page " + page + ", its first coin on " + first);
        }
        if (coins.size() > 1) {
            String second = pages.folio(coins.get(1).id()).orElseThrow();
            String last = pages.folio(coins.get(coins.size() - 1).id()).orElseThrow();
            String beforeLast = pages.folio(coins.get(coins.size() - 2).id()).orElseThrow();
            if (!first.equals(second) && isOneLine(coins.get(0))) {
                bad.add(entry.numbers() + ": first row alone on page " + first);
            }
            if (!last.equals(beforeLast) && isOneLine(coins.get(coins.size() - 1)) && entry.notes().isEmpty()) {
                bad.add(entry.numbers() + ": last row alone on page " + last);
            }
        }
    }

    /** A row has some fifty letters to the line beside its figures. */
    private static boolean isOneLine(Specimen coin) {
        return Inline.plain(coin.text()).length() < 60;
    }
}
