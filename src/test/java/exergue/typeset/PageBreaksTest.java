package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.edition.Alone;
import exergue.edition.Book;
import exergue.edition.EntryBlock;
import exergue.edition.EntryBlock.Entry;
import exergue.edition.PageMap;
import exergue.edition.Part;
import exergue.edition.Specimen;
import exergue.model.Inline;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Where pages may not break: between an entry's first line and its coins, unless these take several lines; so that one row of
 * one line stands alone; and between two coins whose rows are short.
 */
class PageBreaksTest {

    /** At whatever line of the page they come. */
    @Test
    void twoCoinsOfTwoLinesStayWithEachOtherAndWithTheirType() throws Exception {
        String twoLines = "Thornbury 1931.10.4, from the eastern quarter of the lower town, bought with nine others";
        for (int above = 0; above < 14; above++) {
            List<EntryBlock> blocks = new ArrayList<>(List.of(entry("long", Collections.nCopies(38 + above, "Thornbury"))));
            blocks.add(entry("pair", List.of(twoLines, twoLines)));
            Book book = new Book("en", SampleBook.title(), List.of(),
                    List.of(new Part.Entries("catalogue", SampleBook.words("Catalogue"), blocks)), List.of());
            PageMap pages = Typesetter.typeset(book, SampleBook.setting(), OutputStream.nullOutputStream()).pages();
            assertEquals(pages.folio("type.pair"), pages.folio("pair-0"), above + " more");
            assertEquals(pages.folio("pair-0"), pages.folio("pair-1"), above + " more");
        }
    }

    private static Entry entry(String id, List<String> whereabouts) {
        List<Specimen> coins = new ArrayList<>();
        for (String words : whereabouts) {
            coins.add(new Specimen(id + "-" + coins.size(), String.valueOf(coins.size() + 1), List.of(), "", "O1/R1", words,
                    List.of(), List.of(), Optional.empty(), "", Alone.NOTHING));
        }
        return new Entry("type." + id, "1", List.of("Drachm"), List.of(), List.of(), coins, List.of(), "Lykaia", "");
    }

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
        if (!page.equals(first) && isOneLine(coins.get(0)) && isOneLine(coins.get(Math.min(1, coins.size() - 1)))) {
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
