package exergue;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import exergue.Exergue.Checked;
import exergue.Exergue.Publication;
import exergue.edition.DataRow;
import exergue.exchange.BookData;
import exergue.exchange.CoinLinkedData;
import exergue.files.FolderTree;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The demo book as a folder of pages, each looked at as text. */
class WebTest {

    private static final Pattern ADDRESS = Pattern.compile(" (?:href|src)=\"([^\"]*)\"");
    private static final Pattern ID = Pattern.compile(" id=\"([^\"]*)\"");
    private static final Pattern HEADING = Pattern.compile("<h([1-6])\\b");
    private static final Pattern LINKED_DATA = Pattern.compile("<script type=\"application/ld\\+json\">(.*?)</script>",
            Pattern.DOTALL);

    private static Checked checked;
    private static Publication publication;
    private static Map<String, byte[]> files;
    private static final Map<String, String> PAGES = new TreeMap<>();

    @BeforeAll
    static void make() throws IOException {
        checked = TestDarkroom.checked(new FolderTree(Path.of("catalogue-src")));
        publication = Exergue.typeset(checked, BookData.enclosed(Optional.empty()),
                Prints.only(OutputStream.nullOutputStream()), Progress.SILENT).publication().orElseThrow();
        files = web();
        files.forEach((path, bytes) -> {
            if (path.endsWith(".html")) {
                PAGES.put(path, new String(bytes, StandardCharsets.UTF_8));
            }
        });
    }

    private static Map<String, byte[]> web() throws IOException {
        Map<String, byte[]> written = new TreeMap<>();
        assertEquals(List.of(), Exergue.web(checked, publication, CoinLinkedData::of, (path, bytes) ->
                assertEquals(null, written.put(path, bytes), "twice: " + path), Progress.SILENT).all());
        return written;
    }

    @Test
    void everyCoinHasItsOwnAddress() {
        for (DataRow row : publication.rows()) {
            String page = PAGES.get("coins/" + row.id() + ".html");
            assertTrue(page != null && page.contains(">" + row.number() + "</span>"), row.id());
        }
        assertEquals(publication.rows().size(), PAGES.keySet().stream().filter(p -> p.startsWith("coins/")).count());
    }

    @Test
    void everyLinkLeadsSomewhereInTheFolder() {
        Map<String, Set<String>> ids = new TreeMap<>();
        PAGES.forEach((path, page) -> ids.put(path, new HashSet<>(all(ID, page))));
        List<String> broken = new ArrayList<>();
        int seen = 0;
        for (Map.Entry<String, String> page : PAGES.entrySet()) {
            for (String address : all(ADDRESS, page.getValue())) {
                URI target = URI.create("file:///" + page.getKey().replace(" ", "%20")).resolve(address);
                String file = target.getPath().substring(1);
                boolean there = files.containsKey(file)
                        && (target.getFragment() == null || ids.get(file).contains(target.getFragment()));
                if ("file".equals(target.getScheme()) && !there) {
                    broken.add(page.getKey() + " → " + address);
                }
                seen++;
            }
        }
        assertEquals(List.of(), broken);
        assertTrue(seen > 1000, seen + " links");
    }

    @Test
    void nothingIsFetchedFromElsewhereAndNothingRuns() {
        PAGES.forEach((path, page) -> {
            assertFalse(page.matches("(?s).*<(img|link|script|iframe)[^>]* (src|href)=\"(https?:|//).*"), path);
            assertEquals(0, page.split("<script(?! type=\"application/ld\\+json\")", -1).length - 1, path);
            assertFalse(page.matches("(?s).* on[a-z]+=\".*"), path);
        });
        String style = new String(files.get("style.css"), StandardCharsets.UTF_8);
        assertFalse(style.contains("http") || style.contains("@import"), "style sheet");
    }

    @Test
    void everyPageCanBeReadWithoutSeeingIt() {
        Set<String> titles = new HashSet<>();
        PAGES.forEach((path, page) -> {
            assertTrue(page.startsWith("<!DOCTYPE html>\n<html lang=\"en\">"), path);
            String title = page.replaceAll("(?s).*<title>(.*?)</title>.*", "$1");
            assertTrue(titles.add(title), "two pages are called " + title);
            List<String> headings = all(HEADING, page);
            assertEquals(1, headings.stream().filter("1"::equals).count(), path + " has one main heading");
            int level = 0;
            for (String heading : headings) {
                assertTrue(Integer.parseInt(heading) <= level + 1, path + " skips a level of headings: " + headings);
                level = Integer.parseInt(heading);
            }
            assertFalse(page.matches("(?s).*<img(?![^>]* alt=\"[^\"]+\")[^>]*>.*"), path + ": a picture without words");
            List<String> ids = all(ID, page);
            assertEquals(Set.copyOf(ids).size(), ids.size(), path + " has an id twice");
            assertTrue(page.contains("<main>"), path);
            assertFalse(page.contains("\u00AD"), path + " has a soft hyphen");
        });
    }

    @Test
    void theFiguresOfACoinStandInItsPageForOtherPrograms() throws IOException {
        ObjectMapper reader = new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);
        for (DataRow row : publication.rows()) {
            Matcher found = LINKED_DATA.matcher(PAGES.get("coins/" + row.id() + ".html"));
            assertTrue(found.find(), row.id());
            JsonNode data = reader.readTree(found.group(1));
            assertEquals(row.id(), data.get("identifier").asText());
            assertEquals("https://schema.org", data.get("@context").asText());
            row.figures().stream().filter(figure -> figure.values().size() == 1).forEach(figure -> {
                List<JsonNode> same = new ArrayList<>();
                data.get("additionalProperty").forEach(property -> {
                    if (property.get("name").asText().equals(figure.kind().word())) {
                        same.add(property);
                    }
                });
                assertEquals(1, same.size(), row.id() + " " + figure.kind());
                assertEquals(0, figure.values().get(0).compareTo(same.get(0).get("value").decimalValue()), row.id());
            });
        }
    }

    @Test
    void noExactFindSpotIsAnywhereInIt() {
        List<String> secrets = Secrets.of(checked.catalogue().orElseThrow());
        assertFalse(secrets.isEmpty());
        files.forEach((path, bytes) -> {
            if (path.matches(".*\\.(html|css|json|csv|txt)")) {
                assertEquals(List.of(), Secrets.in(bytes, secrets), path);
            }
        });
    }

    @Test
    void theSameBookGivesTheSameBytes() throws IOException {
        Map<String, byte[]> again = web();
        assertEquals(files.keySet(), again.keySet());
        files.forEach((path, bytes) -> assertArrayEquals(bytes, again.get(path), path));
    }

    private static List<String> all(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(result -> result.group(1)).toList();
    }
}
