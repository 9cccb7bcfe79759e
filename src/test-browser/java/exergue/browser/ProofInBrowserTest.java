package exergue.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.FolderCache;
import exergue.photo.Workroom;
import exergue.photo.print.Darkroom;
import exergue.proof.ProofDesk;
import exergue.proof.ProofServer;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The live proof of the demo as a real browser shows it. Pictures of it are left in target/proof-pictures. */
class ProofInBrowserTest {

    private static final Path DEMO = Path.of("catalogue-src");
    private static final Path PICTURES = Path.of("target", "proof-pictures");
    private static final String COIN = "coins/pho-034.yaml";
    private static final double LEAST_CONTRAST = 4.5; // WCAG 2.1, 1.4.3

    /** Words against the ground they stand on, outside the pages, which are as printed. */
    private static final String CONTRAST = """
            (() => {
              const parts = colour => colour.match(/[\\d.]+/g).map(Number);
              const light = ([r, g, b]) => [r, g, b].map(v => v / 255).map(v => v <= 0.03928 ? v / 12.92
                  : Math.pow((v + 0.055) / 1.055, 2.4)).reduce((sum, v, i) => sum + v * [0.2126, 0.7152, 0.0722][i], 0);
              const ground = e => { for (; e; e = e.parentElement) { const p = parts(getComputedStyle(e).backgroundColor);
                if (p.length < 4 || p[3] > 0) return light(p); } return 1; };
              return Math.min(...[...document.querySelectorAll('body *:not(.sheet):not(.sheet *)')].filter(e => e.checkVisibility()
                  && [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim())).map(e => {
                const ink = light(parts(getComputedStyle(e).color)), paper = ground(e);
                return (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05);
              }));
            })()""";

    @TempDir
    private static Path source;
    private static ProofDesk desk;
    private static ProofServer server;
    private static Chromium browser;

    @BeforeAll
    static void open() throws Exception {
        restore();
        desk = desk();
        server = ProofServer.open(desk, 0);
        desk.open();
        browser = new Chromium();
    }

    private static ProofDesk desk() throws IOException {
        return new ProofDesk(source, Instant::now, tree -> tree, Darkroom.with(new FolderCache(Path.of("target", "test-pictures")), 2, new Workroom(200 << 20)));
    }

    private static void restore() throws IOException {
        try (Stream<Path> files = Files.walk(DEMO)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path to = source.resolve(DEMO.relativize(file).toString());
                if (Files.notExists(to) || Files.mismatch(file, to) >= 0) {
                    Files.createDirectories(to.getParent());
                    Files.copy(file, to, StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
    }

    @AfterAll
    static void close() throws Exception {
        if (browser != null) {
            browser.close();
        }
        server.close();
        desk.close();
    }

    @BeforeEach
    void look() throws Exception {
        screen(1400, 900, "light");
        browser.complaints();
    }

    private static void screen(int width, int height, String scheme) throws Exception {
        browser.screen(width, height, scheme);
        browser.open(server.address());
        browser.await("now.state === 'as-saved' && now.leaves.length > 60 && now.errors === 0");
        settle();
    }

    /** Every page in the window is drawn. */
    private static void settle() throws Exception {
        browser.await("[...pages.children].filter(leaf => leaf.near).every(leaf => leaf.drawn === leaf.name + '@' + dpi())");
    }

    @AfterEach
    void mend() throws Exception {
        restore();
        assertEquals(List.of(), browser.complaints());
    }

    private static void save(String file, String old, String now) throws IOException {
        String text = Files.readString(source.resolve(file));
        assertTrue(text.contains(old), file + " has no longer " + old);
        Files.writeString(source.resolve(file), text.replace(old, now));
    }

    private static String text(String expression) throws Exception {
        return browser.evaluate(expression).asText();
    }

    /** As printed on the page of the coin that is written at. */
    private static String folio() throws Exception {
        return text("now.leaves[entries.get('pho-034').leaf].folio");
    }

    @Test
    void nothingIsLoadedFromElsewhere() throws Exception {
        assertEquals("", text("performance.getEntriesByType('resource').map(r => r.name).filter(n => !n.startsWith(location.origin)).join()"));
        assertTrue(browser.evaluate("document.fonts.check('16px \"Gentium Book Plus\"')").asBoolean());
        assertTrue(text("document.title").startsWith("Proof · The Coinage"));
    }

    @Test
    void aSavedFileIsOnThePageAndTheWindowStaysWhereItIs() throws Exception {
        browser.evaluate("choose('pho-034', true)");
        settle();
        int before = browser.evaluate("Math.round(pages.scrollTop)").asInt();
        save(COIN, "type:", "note: Seen by the browser.\ntype:");
        browser.await("now.changed === 'pho-034' && [...document.querySelectorAll('.leaf.fresh .line')].some(l => l.textContent.includes('Seen by the browser.'))");
        browser.picture(PICTURES.resolve("just-saved.png"));
        browser.await("now.state === 'as-saved' && [...document.querySelectorAll('.line')].some(l => l.textContent.includes('Seen by the browser.'))");
        assertEquals(before, browser.evaluate("Math.round(pages.scrollTop)").asInt());
    }

    @Test
    void theEntryThatWasSavedIsGoneToOnlyIfItIsWanted() throws Exception {
        save(COIN, "type:", "note: Out of sight.\ntype:");
        browser.await("now.changed === 'pho-034' && chosen === 'pho-034' && isInView(entries.get('pho-034').leaf, [0, 0, 0, 0]) || pages.scrollTop > 1000");
        browser.evaluate("by('follow').checked = false; pages.scrollTop = 0; 0");
        save(COIN, "Out of sight.", "Out of mind.");
        browser.await("now.findings && now.state === 'as-saved' && now.change > followed - 1 && pages.scrollTop === 0");
        assertEquals(0, browser.evaluate("pages.scrollTop").asInt());
    }

    @Test
    void aClickOnACoinTellsItsFileAndLine() throws Exception {
        browser.evaluate("goTo(entries.get('pho-034').leaf)");
        browser.await("document.querySelector('.area[data-anchor=\"pho-034\"]') !== null");
        browser.evaluate("document.querySelector('.area[data-anchor=\"pho-034\"]').click()");
        assertEquals("coins/pho-034.yaml:1", text("by('place').textContent"));
        assertTrue(text("by('entry').textContent").contains("No. 135 · pho-034"));
        browser.evaluate("document.querySelector('.area[data-anchor=\"pho-034\"]').scrollIntoView({block: 'center'})");
        browser.picture(PICTURES.resolve("coin-chosen.png"));
    }

    @Test
    void aFindingIsListedWithItsEntryAndLeadsToIt() throws Exception {
        save(COIN, "type: pho-t10", "type: pho-t1o");
        browser.await("now.errors === 1 && now.state === 'of-before'");
        assertTrue(text("by('list').textContent").contains("coins/pho-034.yaml"));
        assertTrue(text("by('notice').textContent").startsWith("These are the last pages that could be set: 1 error"));
        assertTrue(text("by('state').textContent").contains("1 error, "));
        browser.evaluate("document.querySelector('#list button').focus(); 0");
        browser.evaluate("document.activeElement.click()");
        assertEquals("list", text("document.activeElement.closest('ol')?.id"), "the focus stays where it was");
        browser.await("chosen === 'pho-034' && document.querySelector('.area.error.chosen') !== null");
        settle();
        browser.picture(PICTURES.resolve("finding.png"));
        restore();
        browser.await("now.errors === 0 && now.state === 'as-saved' && by('notice').hidden");
    }

    @Test
    void numbersIdsAndWordsAreFound() throws Exception {
        browser.press("/");
        assertEquals("words", text("document.activeElement.id"));
        browser.evaluate("by('words').value = 'ploughman with yoke'; by('words').oninput()");
        browser.await("document.querySelectorAll('#hits li button').length === 1");
        browser.evaluate("document.querySelector('#hits button').click()");
        browser.await("document.querySelector('.hit') !== null");
        settle();
        assertEquals("p. " + folio(), text("document.querySelector('#hits button').textContent"));
        browser.picture(PICTURES.resolve("found.png"));
        browser.evaluate("find('135')");
        browser.await("document.querySelector('#hits .what').textContent === '135 pho-034'");
    }

    @Test
    void oneEntryAloneAndTheNext() throws Exception {
        browser.evaluate("choose('pho-034', true)");
        browser.press("e");
        browser.await("document.querySelectorAll('#one .crop').length >= 1 && pages.hidden"); // an entry may lie on two pages
        browser.picture(PICTURES.resolve("one-entry.png"));
        assertEquals(folio(), text("by('folio').value"));
        browser.press("n");
        browser.await("entries.get(chosen).entry !== 'type.pho-t10'");
        browser.press("p");
        browser.await("entries.get(chosen).entry === 'type.pho-t10'");
        save(COIN, "type:", "note: Alone.\ntype:");
        browser.await("[...document.querySelectorAll('#one .line')].some(l => l.textContent.includes('Alone.'))");
        browser.press("e");
        browser.await("!pages.hidden && one.hidden");
    }

    @Test
    void keysTurnChooseAndCanBeSwitchedOff() throws Exception {
        browser.press("Escape");
        assertEquals("pages", text("document.activeElement.id"));
        browser.press("n");
        browser.await("chosen === 'part-chapters-preface-md' || chosen !== ''");
        String first = text("chosen");
        browser.press("n");
        browser.await("chosen !== '" + first + "'");
        browser.press("p");
        browser.await("chosen === '" + first + "'");
        int small = browser.evaluate("size().width").asInt();
        browser.press("-");
        assertTrue(browser.evaluate("size().width").asInt() < small);
        browser.press("f");
        assertEquals("findings", text("document.activeElement.id"));
        browser.evaluate("by('single-keys').checked = false; 0");
        browser.press("n");
        assertEquals(first, text("chosen"));
        browser.evaluate("by('folio').value = '" + folio() + "'; by('turn').requestSubmit(); 0");
        browser.await("leafInView() === entries.get('pho-034').leaf");
    }

    @Test
    void everythingThatCanBeDoneHasANameAndTheFocusIsSeen() throws Exception {
        assertEquals("", text("[...document.querySelectorAll('button, input')].filter(e => !(e.textContent.trim() || e.getAttribute('aria-label')"
                + " || e.labels && e.labels.length)).map(e => e.outerHTML).join()"));
        assertEquals("status", text("by('state').getAttribute('role')"));
        assertEquals("", text("[...document.querySelectorAll('input')].filter(e => getComputedStyle(e).borderTopColor !== 'rgb(133, 124, 104)'"
                + " && e.type !== 'checkbox').map(e => e.id).join()"), "an edge of 4 to 1 against the paper; WCAG 2.2, 1.4.11, asks for 3");
        assertEquals("1 1 1", text("['main', 'header', 'aside'].map(t => document.querySelectorAll(t).length).join(' ')"));
        for (int i = 0; i < 4; i++) {
            browser.press("Tab");
            assertTrue(browser.evaluate("getComputedStyle(document.activeElement).outlineStyle !== 'none'").asBoolean(), text("document.activeElement.outerHTML"));
        }
    }

    /** As after Alt-Tab: the browser sees Alt go down, and never up. */
    @Test
    void entriesCanBeClickedAfterAltHasTakenTheAuthorElsewhere() throws Exception {
        browser.evaluate("dispatchEvent(new KeyboardEvent('keydown', {key: 'Alt'})); 0");
        assertEquals("auto", text("getComputedStyle(document.querySelector('.line')).pointerEvents"));
        browser.evaluate("dispatchEvent(new Event('blur')); 0");
        assertEquals("none", text("getComputedStyle(document.querySelector('.line')).pointerEvents"));
    }

    /** WCAG 2.2, 2.4.3 and 4.1.3: who presses a button stays at it, and hears what it has done. */
    @Test
    void theFocusStaysAndWhatHappensIsSaid() throws Exception {
        browser.evaluate("[...document.querySelectorAll('#entry-says button')].find(b => b.textContent === 'Next').focus(); 0");
        for (int i = 0; i < 2; i++) {
            String before = text("chosen");
            browser.evaluate("document.activeElement.click()");
            browser.await("chosen !== '" + before + "'");
            assertEquals("Next", text("document.activeElement.textContent"));
        }
        assertTrue(text("by('said').textContent").contains(text("nameOf(entries.get(chosen))")));
        browser.evaluate("find('ploughman with yoke')");
        browser.await("by('said').textContent === '1 place found'");
        browser.evaluate("by('folio').value = '9999'; by('turn').requestSubmit(); 0");
        assertEquals("No page has the number “9999”.", text("by('wrong').textContent"));
    }

    @Test
    void whatWasFoundIsLookedForAgainOnNewPages() throws Exception {
        browser.evaluate("find('Found once more')");
        browser.await("by('hits').textContent === 'Nothing in this book.'");
        save(COIN, "type:", "note: Found once more.\ntype:");
        browser.await("document.querySelectorAll('#hits li button').length === 1");
    }

    /** A proof that is started again numbers its pages as the one before did. */
    @Test
    void afterTheProofWasStartedAgainNoPageIsThatOfBefore() throws Exception {
        server.close();
        desk.close();
        browser.await("by('state').textContent.startsWith('The proof has been stopped.')");
        save(COIN, "type:", "note: Written meanwhile.\ntype:");
        int port = URI.create(server.address()).getPort();
        desk = desk();
        server = ProofServer.open(desk, port);
        desk.open();
        browser.await("now.state === 'as-saved' && now.number > 0");
        browser.evaluate("choose('pho-034', true)");
        settle();
        browser.await("[...document.querySelectorAll('.line')].some(l => l.textContent.includes('Written meanwhile.'))");
        browser.complaints(); // that there was no server for a while
    }

    @Test
    void theWordsLieOverTheirPicture() throws Exception {
        browser.evaluate("goTo(entries.get('pho-034').leaf)");
        browser.await("document.querySelector('.area[data-anchor=\"pho-034\"]') !== null");
        assertEquals("", text("[...pages.children[entries.get('pho-034').leaf].querySelectorAll('.line')].filter(l => { const box = l.getBoundingClientRect(),"
                + " sheet = l.closest('.sheet').getBoundingClientRect(); return Math.abs(box.width - (l.at[2] - l.at[0]) / 10000 * sheet.width) > 2"
                + " || box.left < sheet.left || box.right > sheet.right + 1; }).map(l => l.textContent).join()"));
    }

    @ParameterizedTest
    @CsvSource({"1400, 900, light", "1400, 900, dark", "390, 800, light", "390, 800, dark"})
    void lightDarkWideAndNarrow(int width, int height, String scheme) throws Exception {
        screen(width, height, scheme);
        browser.evaluate("choose('pho-034', true)");
        settle();
        assertTrue(browser.evaluate("document.documentElement.scrollWidth").asInt() <= width);
        double contrast = browser.evaluate(CONTRAST).asDouble();
        assertTrue(contrast >= LEAST_CONTRAST, "contrast " + contrast);
        browser.picture(PICTURES.resolve(width + "-" + scheme + ".png"));
    }
}
