package exergue.photo.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.Cache;
import exergue.files.FolderCache;
import exergue.files.MemoryCache;
import exergue.finding.Finding;
import exergue.photo.Fingerprint;
import exergue.photo.Limits;
import exergue.photo.PictureReader;
import exergue.photo.ReadPicture;
import exergue.photo.Workroom;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Photographs made ready for the page: how large, how often unpacked, and what is said of those that cannot be. */
class DarkroomTest {

    private static final Color CARD = new Color(235, 235, 232);
    private static final Color BLACK = new Color(12, 12, 14);

    @TempDir
    Path folder;

    private static byte[] coin(double along, double across, double degrees, Color ground) {
        return new PaintedCoin(500, 460, ground).coin(PaintedCoin.ellipse(250, 230, along, across, degrees)).jpeg();
    }

    private static PreparedPictures prepared(PicturedCatalogue source, Cache cache, int threads, AtomicInteger unpacked)
            throws IOException {
        return new Darkroom(cache, threads, new Workroom(0), bytes -> {
            unpacked.incrementAndGet();
            return PictureReader.read(bytes, Limits.USUAL);
        }).prepare(source.catalogue(), source.tree(), (done, of) -> { });
    }

    private static PreparedPictures prepared(PicturedCatalogue source) throws IOException {
        return prepared(source, new MemoryCache(), 1, new AtomicInteger());
    }

    private static PrintedCoin picture(PreparedPictures prepared, String coin) {
        return prepared.pictures().byCoin().get(coin);
    }

    private static BufferedImage image(PreparedPictures prepared, PrintedSide side) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(prepared.tree().read(side.path())));
    }

    private static byte[] small(double along, double across, double degrees, Color ground) {
        return new PaintedCoin(220, 210, ground).coin(PaintedCoin.ellipse(110, 105, along, across, degrees)).jpeg();
    }

    private static PicturedCatalogue many() {
        PicturedCatalogue source = new PicturedCatalogue();
        for (int i = 1; i <= 3; i++) {
            source.file("photographs/o" + i + ".jpg", small(150 + 5 * i, 145, 20 * i, CARD))
                    .file("photographs/r" + i + ".jpg", small(150 + 5 * i, 145, -20 * i, BLACK))
                    .coin("lk-" + i, 17 + i + " mm", "obverse: photographs/o" + i + ".jpg\nreverse: photographs/r" + i + ".jpg");
        }
        return source;
    }

    @Test
    void eachPhotographIsUnpackedOnceAndNoneTheNextTime() throws IOException {
        AtomicInteger unpacked = new AtomicInteger();
        PreparedPictures first = prepared(many(), new FolderCache(folder), 1, unpacked);
        assertEquals(6, unpacked.get());
        PreparedPictures second = prepared(many(), new FolderCache(folder), 1, unpacked);
        assertEquals(6, unpacked.get());
        assertSame(first, second);
    }

    @Test
    void onlyAPhotographThatIsNewIsUnpacked() throws IOException {
        AtomicInteger unpacked = new AtomicInteger();
        prepared(many(), new FolderCache(folder), 1, unpacked);
        unpacked.set(0);
        prepared(many().file("photographs/o3.jpg", small(122, 120, 0, CARD)), new FolderCache(folder), 1, unpacked);
        assertEquals(1, unpacked.get());
    }

    @Test
    void aDiameterThatIsCorrectedMakesItsPicturesNewAndNoOthers() throws IOException {
        AtomicInteger unpacked = new AtomicInteger();
        prepared(many(), new FolderCache(folder), 1, unpacked);
        unpacked.set(0);
        PicturedCatalogue corrected = many().coin("lk-2", "12 mm", "obverse: photographs/o2.jpg\nreverse: photographs/r2.jpg");
        prepared(corrected, new FolderCache(folder), 1, unpacked);
        assertEquals(2, unpacked.get());
    }

    @Test
    void theSameBytesComeOutWithAndWithoutCacheAndByOneOrMany() throws IOException {
        PreparedPictures alone = prepared(many());
        assertSame(alone, prepared(many(), new MemoryCache(), 4, new AtomicInteger()));
        assertSame(alone, prepared(many(), new FolderCache(folder), 4, new AtomicInteger()));
        assertSame(alone, prepared(many(), new FolderCache(folder), 1, new AtomicInteger()));
    }

    /** Even if it happens while the book is set. */
    @Test
    void theCacheCanBeDeletedAtAnyTime() throws IOException {
        PreparedPictures prepared = prepared(many(), new FolderCache(folder.resolve("cache")), 2, new AtomicInteger());
        try (Stream<Path> files = Files.walk(folder.resolve("cache"))) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
        assertSame(prepared(many()), prepared);
    }

    private static void assertSame(PreparedPictures one, PreparedPictures other) throws IOException {
        assertEquals(one.pictures(), other.pictures());
        assertEquals(one.findings().all(), other.findings().all());
        assertEquals(one.tree().files(), other.tree().files());
        for (String path : one.tree().files()) {
            assertArrayEquals(one.tree().read(path), other.tree().read(path), path);
        }
    }

    /**
     * An ellipse with axes of 400 and 300 pixels, the longer one 30° from upright: height and width by
     * 2 √(a² cos² + b² sin²) are 377.49 and 327.87; its mean width is its perimeter by π, 1107.2 / π = 352.4 (Ramanujan 1914,
     * from memory). A coin recorded as 20 mm is then printed so high:
     */
    @ParameterizedTest
    @CsvSource({"greatest, 20 mm, 18.87", "top to bottom, 20 mm, 20.00", "side to side, 20 mm, 23.03", "mean of several, 20 mm, 21.42",
        "not said, 20 mm, 18.87", "least and greatest, 15-20 mm, 18.87", "top to bottom, 20 x 15 mm, 18.87"})
    void theRecordedDiameterIsExactInItsDirection(String direction, String diameter, double height) throws IOException {
        PreparedPictures prepared = prepared(new PicturedCatalogue().measured(direction)
                .file("photographs/o.jpg", coin(400, 300, 30, CARD)).coin("lk-1", diameter, "obverse: photographs/o.jpg"));
        PrintedSide side = picture(prepared, "lk-1").obverse().orElseThrow();
        double white = 2 * 3 * side.height().doubleValue() / image(prepared, side).getHeight();
        assertEquals(height, side.height().doubleValue() - white, 0.12);
    }

    /** A square coin of 19 x 18 mm is measured along its sides, however it lies; its diagonal is no diameter. */
    @ParameterizedTest
    @CsvSource({"0, 19.0", "30, 25.5"})
    void ofASquareCoinTheLongerSideIsExact(double turned, double height) throws IOException {
        java.awt.Shape square = new java.awt.geom.AffineTransform(java.awt.geom.AffineTransform.getRotateInstance(Math.toRadians(turned), 250, 230))
                .createTransformedShape(new java.awt.geom.Rectangle2D.Double(160, 135, 180, 190));
        PreparedPictures prepared = prepared(new PicturedCatalogue().measured("top to bottom")
                .file("o.jpg", new PaintedCoin(500, 460, CARD).coin(square).jpeg()).coin("lk-1", "19 x 18 mm", "obverse: o.jpg"));
        PrintedSide side = picture(prepared, "lk-1").obverse().orElseThrow();
        double white = 2 * 3 * side.height().doubleValue() / image(prepared, side).getHeight();
        assertEquals(height, side.height().doubleValue() - white, 0.2); // turned by 30°: 19 cos 30° + 18 sin 30°, less the blunt corners
    }

    /** Taken top to bottom on the obverse; the reverse, turned by a quarter and photographed from farther away, is as large in area. */
    @Test
    void theReverseIsPrintedAsLargeAsTheObverse() throws IOException {
        PreparedPictures prepared = prepared(new PicturedCatalogue().measured("top to bottom")
                .file("photographs/o.jpg", coin(400, 300, 0, CARD)).file("photographs/r.jpg", coin(300, 225, 90, CARD))
                .coin("lk-1", "20 mm", "obverse: photographs/o.jpg\nreverse: photographs/r.jpg"));
        PrintedCoin coin = picture(prepared, "lk-1");
        assertEquals(20, coin.obverse().orElseThrow().height().doubleValue(), 0.4);
        assertEquals(20, coin.reverse().orElseThrow().width().doubleValue(), 0.6);
        assertEquals(15, coin.reverse().orElseThrow().height().doubleValue(), 0.6);
    }

    @Test
    void bothSidesInOneFileArePrintedAtOneScale() throws IOException {
        byte[] both = new PaintedCoin(900, 460, CARD).coin(PaintedCoin.ellipse(230, 230, 400, 300, 0))
                .coin(PaintedCoin.ellipse(660, 230, 390, 300, 0)).jpeg();
        PreparedPictures prepared = prepared(new PicturedCatalogue().file("both.jpg", both)
                .coin("lk-1", "20 mm", "obverse: both.jpg\nreverse: both.jpg").coin("lk-2", "20 mm", "obverse: both.jpg"));
        PrintedCoin coin = picture(prepared, "lk-1");
        assertEquals(20, coin.obverse().orElseThrow().height().doubleValue(), 0.4);
        assertEquals(19.5, coin.reverse().orElseThrow().height().doubleValue(), 0.4);
        assertEquals(coin, picture(prepared, "lk-2"));
        assertEquals(List.of("cut-outs/both-2.jpg", "cut-outs/both.jpg"),
                prepared.tree().files().stream().filter(path -> path.startsWith("cut-outs")).toList());
        assertEquals(List.of("two-sides-in-one-file coins/lk-2.yaml:5"), said(prepared));
    }

    private static List<String> said(PreparedPictures prepared) {
        return prepared.findings().all().stream().map(finding -> finding.code().id() + " " + finding.place().file() + ":"
                + finding.place().line()).toList();
    }

    /** White from the fourth pixel outside the coin on, whatever the coin lay on; inside, nothing of that colour along the edge. */
    @Test
    void theGroundIsGoneAndLeavesNoFringe() throws IOException {
        PreparedPictures prepared = prepared(new PicturedCatalogue().file("o.jpg", coin(300, 300, 0, new Color(20, 40, 160)))
                .coin("lk-1", "20 mm", "obverse: o.jpg"));
        BufferedImage image = image(prepared, picture(prepared, "lk-1").obverse().orElseThrow());
        double middle = image.getWidth() / 2.0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                double from = Math.hypot(x + 0.5 - middle, y + 0.5 - middle) - 150;
                Color colour = new Color(image.getRGB(x, y));
                if (from > 3.5) {
                    assertTrue(colour.getRed() > 248 && colour.getGreen() > 248 && colour.getBlue() > 248, colour + " at " + from);
                } else {
                    assertTrue(colour.getBlue() < colour.getRed() + 14, colour + " at " + from);
                }
            }
        }
    }

    @Test
    void aHoleIsCutOutToo() throws IOException {
        byte[] pierced = new PaintedCoin(500, 460, CARD)
                .coin(PaintedCoin.pierced(PaintedCoin.ellipse(250, 230, 300, 300, 0), 60)).jpeg();
        PreparedPictures prepared = prepared(new PicturedCatalogue().file("o.jpg", pierced).coin("lk-1", "20 mm", "obverse: o.jpg"));
        BufferedImage image = image(prepared, picture(prepared, "lk-1").obverse().orElseThrow());
        assertEquals(Color.WHITE, new Color(image.getRGB(image.getWidth() / 2, image.getHeight() / 2)));
    }

    /** The page engine knows no TIFF: also what is not cut out is made into a picture that it knows. */
    @ParameterizedTest
    @CsvSource({"cut out", "as photographed"})
    void aTiffIsPrintedToo(String ground) throws IOException {
        PreparedPictures prepared = prepared(new PicturedCatalogue().text("house-style.yaml", "pictures: {ground: " + ground + "}\n")
                .file("o.tif", new PaintedCoin(220, 210, CARD).coin(PaintedCoin.ellipse(110, 105, 150, 140, 0)).tiff())
                .coin("lk-1", "20 mm", "obverse: o.tif"));
        PrintedSide side = picture(prepared, "lk-1").obverse().orElseThrow();
        assertEquals("cut-outs/o.jpg", side.path());
        assertEquals(ground.equals("cut out") ? 156 : 220, image(prepared, side).getWidth(), 10);
    }

    /** 3,000 pixels for 20 mm would be 3,810 an inch. */
    @Test
    void moreThanAPressCanShowIsLeftOut() throws IOException {
        byte[] large = new PaintedCoin(3400, 3300, CARD).coin(PaintedCoin.ellipse(1700, 1650, 3000, 3000, 0)).jpeg();
        PreparedPictures prepared = prepared(new PicturedCatalogue().file("o.jpg", large).coin("lk-1", "20 mm", "obverse: o.jpg"));
        PrintedSide side = picture(prepared, "lk-1").obverse().orElseThrow();
        assertEquals(450, image(prepared, side).getWidth() / side.width().doubleValue() * 25.4, 0.5);
        assertEquals(20, side.width().doubleValue(), 0.4);
    }

    @Test
    void greysOnRequest() throws IOException {
        PicturedCatalogue source = new PicturedCatalogue().text("house-style.yaml", "pictures: {colours: grey}\n")
                .file("o.jpg", coin(300, 300, 0, CARD)).coin("lk-1", "20 mm", "obverse: o.jpg");
        PreparedPictures prepared = prepared(source);
        assertEquals(1, image(prepared, picture(prepared, "lk-1").obverse().orElseThrow()).getRaster().getNumBands());
    }

    @Test
    void aPhotographOfWhichNothingIsCutIsPrintedByteForByte() throws IOException {
        byte[] bytes = coin(300, 300, 0, CARD);
        PreparedPictures prepared = prepared(new PicturedCatalogue().text("house-style.yaml", "pictures: {ground: as photographed}\n")
                .file("o.jpg", bytes).coin("lk-1", "20 mm", "obverse: o.jpg"));
        PrintedSide side = picture(prepared, "lk-1").obverse().orElseThrow();
        assertEquals("o.jpg", side.path());
        assertArrayEquals(bytes, prepared.tree().read(side.path()));
        assertEquals(500 * 20 / 300.0, side.width().doubleValue(), 0.2);
    }

    @Test
    void whereNoOutlineIsFoundThePhotographStaysAndAFindingSaysWhy() throws IOException {
        byte[] cut = new PaintedCoin(500, 460, CARD).coin(PaintedCoin.ellipse(40, 230, 300, 300, 0)).jpeg();
        PreparedPictures prepared = prepared(new PicturedCatalogue().file("o.jpg", cut)
                .coin("lk-1", "20 mm", "obverse: o.jpg\nwidth: 33 mm"));
        PrintedSide side = picture(prepared, "lk-1").obverse().orElseThrow();
        assertEquals("o.jpg", side.path());
        assertEquals(33, side.width().doubleValue(), 0.001);
        assertEquals(33 * 460 / 500.0, side.height().doubleValue(), 0.001);
        Finding finding = prepared.findings().all().get(0);
        assertEquals("coin-not-cut-out", finding.code().id());
        assertEquals("The coin on “o.jpg” cannot be cut out: the coin is cut by the edge of the picture. "
                + "The photograph is printed as it is.", finding.what());
        assertEquals("coins/lk-1.yaml:5:12", finding.place().file() + ":" + finding.place().line() + ":" + finding.place().column());
    }

    @Test
    void highlightsInWhichNothingIsLeftAreTold() throws IOException {
        byte[] bright = new PaintedCoin(500, 460, BLACK).metal(Color.WHITE).coin(PaintedCoin.ellipse(250, 230, 300, 300, 0)).jpeg();
        assertEquals(List.of("highlights-clipped coins/lk-1.yaml:5"),
                said(prepared(new PicturedCatalogue().file("o.jpg", bright).coin("lk-1", "20 mm", "obverse: o.jpg"))));
    }

    @ParameterizedTest
    @CsvSource({"half", "empty", "words", "claims too much"})
    void whatCannotBeOpenedIsAFindingAndNoCrash(String fault) throws IOException {
        byte[] whole = coin(300, 300, 0, CARD);
        byte[] bytes = switch (fault) {
            case "half" -> java.util.Arrays.copyOf(whole, whole.length / 2);
            case "empty" -> new byte[0];
            case "words" -> "not a picture".getBytes(java.nio.charset.StandardCharsets.UTF_8);
            default -> claiming(whole, 60_000, 50_000);
        };
        PreparedPictures prepared = prepared(new PicturedCatalogue().file("o.jpg", bytes).coin("lk-1", "20 mm", "obverse: o.jpg"));
        assertEquals(List.of("photograph-unprintable coins/lk-1.yaml:5"), said(prepared));
        assertEquals(Optional.of("o.jpg"), picture(prepared, "lk-1").obverse().map(PrintedSide::path));
    }

    /** What the page engine would leave out in silence. */
    @ParameterizedTest
    @CsvSource({"bomb.png, it has 60000 × 60000 pixels", "cut-off.png, it is damaged", "cut-off.jpg, it is damaged", "plain.jpg, ''",
        "sixteen.png, ''"})
    void aPictureOfAChapterIsOpenedOnceToSeeThatItCanBe(String file, String words) throws IOException {
        PicturedCatalogue source = new PicturedCatalogue().file("p.png", Files.readAllBytes(Path.of("src/test/resources/photo", file)))
                .text("catalogue.yaml", "title: Coins\nlanguage: en\nparts: {front: [title, chapters/preface.md], body: [catalogue]}\n")
                .text("chapters/preface.md", "# Preface\n\n![A map](p.png)\n").coin("lk-1", "20 mm", "width: 30 mm");
        AtomicInteger unpacked = new AtomicInteger();
        PreparedPictures first = prepared(source, new FolderCache(folder), 1, unpacked);
        assertEquals(words.isEmpty() ? 0 : 1, first.findings().all().size());
        first.findings().all().forEach(finding -> assertTrue(finding.what().startsWith("The picture “p.png” cannot be opened: " + words)));
        assertEquals(first.findings().all(), prepared(source, new FolderCache(folder), 1, unpacked).findings().all());
        assertEquals(1, unpacked.get());
    }

    /** The engine would print it as it lies in the file; and the inks of a printer would break the standard of the book. */
    @ParameterizedTest
    @CsvSource({"orientation-6.jpg, 48, 32", "orientation-8.png, 48, 32", "orientation-3.jpg, 48, 32", "cmyk.jpg, 48, 32"})
    void aPictureOfAChapterIsPrintedUprightAndInRedGreenAndBlue(String file, int width, int height) throws IOException {
        byte[] bytes = Files.readAllBytes(Path.of("src/test/resources/photo", file));
        PicturedCatalogue source = new PicturedCatalogue().file("p.jpg", bytes)
                .text("catalogue.yaml", "title: Coins\nlanguage: en\nparts: {front: [title, chapters/preface.md], body: [catalogue]}\n")
                .text("chapters/preface.md", "# Preface\n\n![A map](p.jpg)\n").coin("lk-1", "20 mm", "width: 30 mm");
        AtomicInteger unpacked = new AtomicInteger();
        PreparedPictures prepared = prepared(source, new FolderCache(folder), 1, unpacked);
        ReadPicture.Picture printed = (ReadPicture.Picture) PictureReader.read(prepared.tree().read("p.jpg"), Limits.USUAL);
        assertEquals(width + " x " + height, printed.raster().width() + " x " + printed.raster().height());
        assertTrue(printed.asItIs());
        assertTrue(printed.raster().at(8, 8, 0) > 0.8 && printed.raster().at(8, 8, 2) < 0.3, "red stands at the upper left");
        assertEquals(1, prepared.tree().files().stream().filter("p.jpg"::equals).count());
        prepared(source, new FolderCache(folder), 1, unpacked);
        assertEquals(1, unpacked.get());
        org.junit.jupiter.api.Assertions.assertArrayEquals(bytes, source.tree().read("p.jpg"), "the source stays as it is");
    }

    /** The same file with another height and width in its frame header (SOF0: FF C0, length, bits, height, width). */
    private static byte[] claiming(byte[] jpeg, int height, int width) {
        byte[] other = jpeg.clone();
        for (int i = 0; i < other.length - 9; i++) {
            if (other[i] == (byte) 0xFF && other[i + 1] == (byte) 0xC0) {
                other[i + 5] = (byte) (height >> 8);
                other[i + 6] = (byte) height;
                other[i + 7] = (byte) (width >> 8);
                other[i + 8] = (byte) width;
                return other;
            }
        }
        throw new IllegalStateException("no frame header");
    }

    /**
     * If this fails because outlines or cutting have changed, raise {@link Fingerprint#METHOD} along with the figures: else
     * pictures made in the old way would be taken from the caches that people have.
     */
    @Test
    void theMethodHasANewNumberWhereverItGivesSomethingNew() throws IOException {
        PreparedPictures prepared = prepared(new PicturedCatalogue().file("o.jpg", coin(400, 300, 30, CARD))
                .coin("lk-1", "20 mm", "obverse: o.jpg"));
        PrintedSide side = picture(prepared, "lk-1").obverse().orElseThrow();
        assertEquals("4: 16.7", Fingerprint.METHOD + ": " + side.width().setScale(1, java.math.RoundingMode.HALF_EVEN));
        assertNotEquals("", side.shape());
    }
}
