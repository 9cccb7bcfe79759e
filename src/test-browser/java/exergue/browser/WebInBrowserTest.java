package exergue.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import exergue.Exergue;
import exergue.Exergue.Checked;
import exergue.Exergue.Publication;
import exergue.Prints;
import exergue.Progress;
import exergue.exchange.BookData;
import exergue.exchange.CoinLinkedData;
import exergue.files.FolderTree;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo book's pages as a real browser shows them. */
class WebInBrowserTest {

    private static final double LEAST_CONTRAST = 4.5; // WCAG 2.1, 1.4.3

    private static final String CONTRAST = """
            (() => {
              const parts = colour => colour.match(/[\\d.]+/g).map(Number);
              const light = ([r, g, b]) => [r, g, b].map(v => v / 255).map(v => v <= 0.03928 ? v / 12.92
                  : Math.pow((v + 0.055) / 1.055, 2.4)).reduce((sum, v, i) => sum + v * [0.2126, 0.7152, 0.0722][i], 0);
              const paper = light(parts(getComputedStyle(document.documentElement).backgroundColor));
              return Math.min(...[...document.querySelectorAll('body, body *')].map(e => {
                const ink = light(parts(getComputedStyle(e).color));
                return (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05);
              }));
            })()""";

    @TempDir
    private static Path web;
    private static List<String> pages;
    private static Chromium browser;

    @BeforeAll
    static void make() throws Exception {
        Checked checked = Exergue.check(new FolderTree(Path.of("catalogue-src")), Progress.SILENT);
        Publication publication = Exergue.typeset(checked, BookData.enclosed(Optional.empty()),
                Prints.only(OutputStream.nullOutputStream()), Progress.SILENT).publication().orElseThrow();
        Exergue.web(checked, publication, CoinLinkedData::of, (path, bytes) -> {
            Files.createDirectories(web.resolve(path).getParent());
            Files.write(web.resolve(path), bytes);
        }, Progress.SILENT);
        try (Stream<Path> files = Files.walk(web)) {
            pages = files.filter(file -> file.toString().endsWith(".html")).map(file -> web.relativize(file).toString())
                    .sorted().toList();
        }
        browser = new Chromium();
    }

    @AfterAll
    static void close() throws Exception {
        if (browser != null) {
            browser.close();
        }
    }

    private static String address(String page) {
        return web.resolve(page).toUri().toString();
    }

    @ParameterizedTest
    @CsvSource({"1280, light", "360, dark"})
    void noPageComplainsOrScrollsSideways(int width, String scheme) throws Exception {
        browser.screen(width, 800, scheme);
        List<String> wrong = new ArrayList<>();
        for (String page : pages) {
            browser.open(address(page));
            browser.complaints().forEach(said -> wrong.add(page + ": " + said));
            int wide = browser.evaluate("document.documentElement.scrollWidth").asInt();
            if (wide > width) {
                wrong.add(page + " is " + wide + " wide");
            }
            if (browser.evaluate("[...document.images].some(i => !i.complete || i.naturalWidth === 0)").asBoolean()) {
                wrong.add(page + " has a picture that is not shown");
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(pages.size() > 150, pages.size() + " pages");
    }

    @ParameterizedTest
    @CsvSource({"light", "dark"})
    void everyWordStandsOutFromThePaper(String scheme) throws Exception {
        browser.screen(1280, 800, scheme);
        double paper = -1;
        for (String page : List.of("index.html", "catalogue.html", "methods.html", "works.html", pages.get(pages.size() - 1))) {
            browser.open(address(page));
            double contrast = browser.evaluate(CONTRAST).asDouble();
            assertTrue(contrast >= LEAST_CONTRAST, page + ": " + contrast);
            paper = browser.evaluate("Number(getComputedStyle(document.documentElement).backgroundColor.match(/\\d+/)[0])")
                    .asDouble();
        }
        assertEquals(scheme.equals("dark"), paper < 100, "paper " + paper);
    }

    @Test
    void everyLinkAsTheBrowserUnderstandsItLeadsToAPageAndAPlaceOnIt() throws Exception {
        browser.screen(1280, 800, "light");
        Map<String, Set<String>> ids = new TreeMap<>();
        Map<String, Set<String>> links = new TreeMap<>();
        for (String page : pages) {
            browser.open(address(page));
            ids.put(address(page), words("[...document.querySelectorAll('[id]')].map(e => e.id)"));
            links.put(page, words("[...document.links].map(a => a.href)"));
        }
        List<String> broken = new ArrayList<>();
        links.forEach((page, all) -> all.stream().filter(link -> link.startsWith("file:")).forEach(link -> {
            java.net.URI target = java.net.URI.create(link);
            String file = link.replaceFirst("#.*", "");
            boolean there = target.getFragment() == null ? Files.exists(Path.of(target.getPath()))
                    : ids.getOrDefault(file, Set.of()).contains(target.getFragment());
            if (!there) {
                broken.add(page + " → " + link);
            }
        }));
        assertEquals(List.of(), broken);
    }

    private static Set<String> words(String expression) throws Exception {
        Set<String> words = new TreeSet<>();
        for (JsonNode word : browser.evaluate(expression)) {
            words.add(word.asText());
        }
        return words;
    }

    @Test
    void thePagesAreSetInTheBooksFace() throws Exception {
        browser.open(address("index.html"));
        assertTrue(browser.evaluate("document.fonts.check('16px \"Gentium Book Plus\"')").asBoolean());
        assertTrue(browser.evaluate("[...document.fonts].some(f => f.status === 'loaded')").asBoolean());
    }
}
