package exergue.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Exergue;
import exergue.Progress;
import exergue.files.FolderTree;
import exergue.files.Tree;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Written;
import exergue.photo.Limits;
import exergue.photo.PictureReader;
import exergue.photo.ReadPicture;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The photographs of the demonstration catalogue: drawn from its entries, and still those that the program draws. */
class DemoPhotographsTest {

    private static final int MOST_BYTES = 70_000;
    private static final int ALL_BYTES = 6_500_000;

    private static Tree demo;
    private static Catalogue catalogue;
    private static List<DemoCoin> drawn;

    @BeforeAll
    static void read() throws Exception {
        demo = new FolderTree(Path.of("catalogue-src"));
        catalogue = Exergue.check(demo, Progress.SILENT).catalogue().orElseThrow();
        drawn = MakePhotographs.chosen(catalogue, MakePhotographs.face());
    }

    private static Coin coin(String id) {
        return catalogue.coins().stream().filter(coin -> coin.id().value().equals(id)).findFirst().orElseThrow();
    }

    @Test
    void coinsWithPhotographsAreThoseThatAreDrawn() {
        List<String> shown = catalogue.coins().stream().filter(coin -> coin.photograph().isPresent()).map(coin -> coin.id().value()).sorted().toList();
        assertEquals(drawn.stream().map(DemoCoin::id).sorted().toList(), shown);
        assertTrue(shown.size() >= 90, shown.size() + " coins");
    }

    /** The bench measured from top to bottom, to a tenth of a millimetre; axes are recorded to half an hour. */
    @Test
    void flansHaveTheRecordedFigures() {
        List<String> wrong = new ArrayList<>();
        for (DemoCoin one : drawn) {
            Coin coin = coin(one.id());
            Flan flan = one.drawn.truth().obverse();
            read(coin, Kind.DIAMETER).filter(read -> read.form() == Reading.Form.SINGLE).map(read -> read.first().value().doubleValue())
                    .filter(recorded -> Math.abs(recorded - flan.vertical()) > 0.05).ifPresent(recorded -> wrong.add(one.id() + ": " + flan.vertical()));
            read(coin, Kind.AXIS).map(read -> read.first().value().doubleValue() * 30)
                    .filter(recorded -> Math.abs(Math.IEEEremainder(recorded - one.drawn.axis(), 360)) > 7.5)
                    .ifPresent(recorded -> wrong.add(one.id() + ": axis " + one.drawn.axis()));
        }
        assertEquals(List.of(), wrong);
    }

    private static Optional<Reading.Read> read(Coin coin, Kind kind) {
        return coin.measured().flatMap(measured -> measured.reading(kind)).map(Written::value)
                .filter(Reading.Read.class::isInstance).map(Reading.Read.class::cast);
    }

    /** Pixels, pixels to the inch in the file, and the width in the coin's file say the same; no file is larger than need be. */
    @Test
    void everyFileIsAsWideAsItsCoinSays() throws IOException {
        List<String> wrong = new ArrayList<>();
        long all = 0;
        for (DemoCoin one : drawn) {
            Coin.Photograph photograph = coin(one.id()).photograph().orElseThrow();
            BigDecimal width = ((Reading.Read) photograph.width().orElseThrow().value()).first().value();
            for (String path : List.of(photograph.obverse(), photograph.reverse()).stream().flatMap(Optional::stream).map(Written::value).toList()) {
                byte[] bytes = demo.read(path);
                all += bytes.length;
                ReadPicture.Picture picture = (ReadPicture.Picture) PictureReader.read(bytes, Limits.USUAL);
                double inFile = picture.raster().width() * 25.4 / picture.ppi().orElseThrow();
                boolean agrees = Math.abs(inFile - width.doubleValue()) < 0.001
                        && Math.abs(picture.raster().width() / one.drawn.pixelsPerMm() - width.doubleValue()) < 0.001;
                if (!agrees || bytes.length > (path.endsWith(".jpg") ? MOST_BYTES : 5 * MOST_BYTES)) {
                    wrong.add(path + ": " + inFile + " mm, " + bytes.length + " bytes");
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(all < ALL_BYTES, all + " bytes");
    }

    /** One small coin is drawn again, byte for byte. */
    @Test
    void theSameEntryGivesTheSamePicture() throws Exception {
        DemoCoin one = drawn.stream().filter(coin -> coin.id().equals("pho-006")).findFirst().orElseThrow();
        assertArrayEquals(demo.read("photographs/pho-006-obv.jpg"), MakePhotographs.bytes(one, "obv", one.light(true, MakePhotographs.backdrop(one))));
    }
}
