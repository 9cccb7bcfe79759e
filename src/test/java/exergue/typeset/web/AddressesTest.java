package exergue.typeset.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.URI;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How one page of the folder names another. */
class AddressesTest {

    @ParameterizedTest
    @CsvSource({"style.css, index.html, style.css", "style.css, coins/lk-1.html, ../style.css",
        "coins/lk-2.html, coins/lk-1.html, lk-2.html", "mints/lakeia.html, coins/lk-1.html, ../mints/lakeia.html",
        "pictures/a/obv 3.jpg, coins/lk-1.html, ../pictures/a/obv%203.jpg", "a/b/c.html, a/d/e.html, ../b/c.html",
        "coins/é.html, index.html, coins/%C3%A9.html", "coinsx/a.html, coins/a.html, ../coinsx/a.html"})
    void fromPageToPage(String file, String from, String expected) {
        assertEquals(expected, Addresses.relative(file, from));
    }

    @Test
    void anchorsLeadToPagesAndElements() {
        Addresses addresses = new Addresses();
        addresses.addPage("lk-1", "coins/lk-1.html");
        addresses.addElement("type.t1", "mints/lakeia.html");
        addresses.addElement("lk-1", "mints/lakeia.html");
        assertEquals(Optional.of("coins/lk-1.html"), addresses.ofAnchor("lk-1", "index.html"));
        assertEquals(Optional.of("#type.t1"), addresses.ofAnchor("type.t1", "mints/lakeia.html"));
        assertEquals(Optional.of("../mints/lakeia.html#type.t1"), addresses.ofAnchor("type.t1", "coins/lk-1.html"));
        assertEquals(Optional.empty(), addresses.ofAnchor("nowhere", "index.html"));
    }

    /** RFC 3986: a relative address, resolved against that of the page it stands on, is the file's. */
    @Property(tries = 300)
    void itResolvesToTheFile(
            @ForAll @Size(min = 1, max = 4) List<@Chars({'a', 'b', ' ', 'é', '%'}) @StringLength(min = 1, max = 2) String> file,
            @ForAll @Size(min = 1, max = 4) List<@Chars({'a', 'b'}) @StringLength(min = 1, max = 2) String> page) {
        URI base = URI.create("file:///web/" + String.join("/", page));
        String target = String.join("/", file);
        assertEquals("/web/" + target, base.resolve(Addresses.relative(target, String.join("/", page))).getPath());
    }
}
