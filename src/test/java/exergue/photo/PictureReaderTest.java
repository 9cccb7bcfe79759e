package exergue.photo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.photo.ReadPicture.Colours;
import exergue.photo.ReadPicture.Format;
import exergue.photo.ReadPicture.Kind;
import exergue.photo.ReadPicture.Picture;
import exergue.photo.ReadPicture.Reason;
import exergue.photo.ReadPicture.Unreadable;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The pictures that {@code src/test/resources/photo/make.py} made with Pillow 9.4.0: red, green, blue, white. */
class PictureReaderTest {

    private static final double[][] FIELDS = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {1, 1, 1}};

    @ParameterizedTest
    @CsvSource({"plain.jpg, JPEG, RGB, 8, true", "progressive.jpg, JPEG, RGB, 8, true", "plain.png, PNG, RGB, 8, false",
        "palette.png, PNG, RGB, 8, false", "sixteen.png, PNG, RGB, 16, false", "plain.tif, TIFF, RGB, 8, false",
        "lzw.tif, TIFF, RGB, 8, false"})
    void coloursArriveAsTheyWere(String file, Format format, Colours colours, int bits, boolean asItIs) throws IOException {
        Picture picture = picture(file);
        assertFields(picture.raster(), 0.04);
        assertEquals(new Kind(format, colours, bits), picture.kind());
        assertEquals(asItIs, picture.asItIs());
        assertEquals(bits, picture.raster().bits());
    }

    /** Inks come back as some red and some green; how pure is for the printer’s profile, which these files do not have. */
    @ParameterizedTest
    @ValueSource(strings = {"cmyk.jpg", "ycck.jpg", "cmyk.tif"})
    void inksBecomeLight(String file) throws IOException {
        Picture picture = picture(file);
        assertEquals(Colours.CMYK, picture.kind().colours());
        assertEquals(3, picture.raster().channels());
        assertFields(picture.raster(), 0.42);
        assertEquals(false, picture.asItIs());
    }

    @ParameterizedTest
    @ValueSource(strings = {"grey.jpg", "grey.png"})
    void greyIsOneChannel(String file) throws IOException {
        Picture picture = picture(file);
        assertEquals(Colours.GREY, picture.kind().colours());
        assertEquals(1, picture.raster().channels());
        assertEquals(76 / 255.0, picture.raster().at(8, 8, 0), 0.02); // luma of red, ITU-R BT.601: 0.299
        assertEquals(150 / 255.0, picture.raster().at(40, 8, 2), 0.02); // of green: 0.587
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void cameraHeldAnyWayIsTurnedUpright(int orientation) throws IOException {
        for (String ending : new String[] {".jpg", ".tif", ".png"}) {
            Picture picture = picture("orientation-" + orientation + ending);
            assertEquals(48, picture.raster().width(), ending);
            assertFields(picture.raster(), 0.04);
            assertEquals(ending.equals(".jpg") && orientation == 1, picture.asItIs(), ending);
            assertEquals(orientation != 1, picture.turned(), ending);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"plain.jpg", "plain.png", "plain.tif"})
    void pixelsToTheInchAreReadWhereTheFileSays(String file) throws IOException {
        assertEquals(600, picture(file).ppi().orElseThrow(), 0.5);
    }

    @ParameterizedTest
    @ValueSource(strings = {"palette.png", "lzw.tif", "progressive.jpg"})
    void pixelsToTheInchAreNotMadeUp(String file) throws IOException {
        assertTrue(picture(file).ppi().isEmpty());
    }

    @Test
    void whatIsTransparentLiesOnWhite() throws IOException {
        Raster raster = picture("transparent.png").raster();
        assertEquals(1, raster.at(8, 8, 1), 0.01);
        assertEquals(0, raster.at(40, 8, 0), 0.01);
    }

    @ParameterizedTest
    @CsvSource({"bomb.png, TOO_LARGE, it has 60000 × 60000 pixels", "bomb.jpg, TOO_LARGE, it has 65000 × 65000 pixels",
        "cut-off.png, DAMAGED, it is damaged", "cut-off.jpg, DAMAGED, it is damaged", "cut-off.tif, DAMAGED, it is damaged",
        "head-only.jpg, DAMAGED, it is damaged", "make.py, NOT_A_PICTURE, it is no JPEG"})
    void whatCannotBeReadIsSaid(String file, Reason reason, String words) throws IOException {
        Unreadable unreadable = assertInstanceOf(Unreadable.class, PictureReader.read(bytes(file), Limits.USUAL));
        assertEquals(reason, unreadable.reason());
        assertTrue(unreadable.words().startsWith(words), unreadable.words());
    }

    @Test
    void emptyAndTooLongFilesAreNotBegun() throws IOException {
        assertEquals(new Unreadable(Reason.NOT_A_PICTURE, "it is empty"), PictureReader.read(new byte[0], Limits.USUAL));
        assertEquals(Reason.TOO_LARGE, ((Unreadable) PictureReader.read(bytes("plain.jpg"), new Limits(1000, 100))).reason());
        assertEquals(Reason.TOO_LARGE, ((Unreadable) PictureReader.read(bytes("plain.jpg"), new Limits(1000, 10000))).reason());
    }

    /** Each of these would take from 10 to 4,000,000 GB if its claim were believed. */
    @ParameterizedTest
    @ValueSource(strings = {"two thousand million strips", "a hundred million strips", "a strip of four thousand million bytes",
        "rows without end in a strip", "sixty thousand samples", "a tile larger than the world", "a tile of ten thousand million pixels"})
    void absurdClaimsOfATiffAreAnswered(String claim) {
        ReadPicture read = PictureReader.read(Bombs.tiff(claim), Limits.USUAL);
        assertEquals(claim.contains("samples") ? Reason.TOO_LARGE : Reason.DAMAGED, assertInstanceOf(Unreadable.class, read).reason());
        assertEquals(0, PictureReader.memory(Bombs.tiff(claim), new Limits(1, 1)));
    }

    @Test
    void whatComesBesideThePixelsIsNotUnpackedWithoutEnd() throws IOException {
        assertEquals(Reason.DAMAGED, assertInstanceOf(Unreadable.class, PictureReader.read(Bombs.endlessTiff(), Limits.USUAL)).reason());
        byte[] withText = Bombs.withText(bytes("plain.png"), 1500);
        assertArrayEquals(bytes("plain.png"), PngChunks.withoutTexts(withText));
        assertFields(assertInstanceOf(Picture.class, PictureReader.read(withText, Limits.USUAL)).raster(), 0.04);
        ReadPicture rotations = PictureReader.read(Bombs.withRotations(bytes("plain.jpg"), Integer.MAX_VALUE), Limits.USUAL);
        assertTrue(rotations instanceof Picture || rotations instanceof Unreadable);
    }

    /** 48 × 32 pixels; of sixteen bits and of inks each takes more bytes, so that fewer of them are read. */
    @ParameterizedTest
    @CsvSource({"plain.jpg, 1536, true", "plain.jpg, 1535, false", "sixteen.png, 3072, true", "sixteen.png, 3071, false",
        "cmyk.tif, 3584, true", "cmyk.tif, 3583, false"})
    void bytesOfThePixelsCount(String file, long pixels, boolean read) throws IOException {
        ReadPicture picture = PictureReader.read(bytes(file), new Limits(pixels, 1 << 20));
        assertEquals(read, picture instanceof Picture);
        assertEquals(read, PictureReader.memory(bytes(file), new Limits(pixels, 1 << 20)) > 0);
        if (picture instanceof Unreadable unreadable) {
            assertEquals(Reason.TOO_LARGE, unreadable.reason());
        }
    }

    /** Whatever is done to a file, there is an answer and no exception. */
    @Property(tries = 300)
    void damagedFilesAreAnswered(@ForAll @IntRange(min = 0, max = 5) int which, @ForAll @IntRange(min = 0, max = 2000) int at,
                                 @ForAll byte other, @ForAll @IntRange(min = 1, max = 2000) int length) throws IOException {
        byte[] bytes = bytes(new String[] {"plain.jpg", "cmyk.jpg", "plain.png", "lzw.tif", "orientation-6.tif", "sixteen.png"}[which]);
        bytes[at % bytes.length] = other;
        byte[] part = Arrays.copyOf(bytes, Math.max(1, Math.min(bytes.length, length * bytes.length / 1500)));
        ReadPicture read = PictureReader.read(part, new Limits(1_000_000, 1 << 20));
        assertTrue(read instanceof Picture || read instanceof Unreadable);
    }

    @Test
    void partsAndTurnsShareWhatTheyShow() throws IOException {
        Raster raster = picture("plain.png").raster();
        assertEquals(1, raster.part(24, 0, 24, 16).at(3, 3, 1), 0.01); // green
        assertEquals(1, raster.turned().at(3, 3, 2), 0.01); // blue comes up
        assertEquals(32, raster.turned().width());
        assertEquals(1, raster.mirrored().at(3, 3, 1), 0.01);
        Raster smaller = raster.reduced(4);
        assertEquals(12, smaller.width());
        assertFields(smaller, 0.01);
    }

    private static void assertFields(Raster raster, double within) {
        for (int field = 0; field < 4; field++) {
            for (int c = 0; c < 3; c++) {
                int x = raster.width() * (field % 2 == 0 ? 1 : 3) / 4;
                int y = raster.height() * (field / 2 == 0 ? 1 : 3) / 4;
                assertEquals(FIELDS[field][c], raster.at(x, y, c), within, "field " + field + " channel " + c);
            }
        }
    }

    private static Picture picture(String file) throws IOException {
        return assertInstanceOf(Picture.class, PictureReader.read(bytes(file), Limits.USUAL));
    }

    private static byte[] bytes(String file) throws IOException {
        try (InputStream in = PictureReaderTest.class.getResourceAsStream("/photo/" + file)) {
            return in.readAllBytes();
        }
    }
}
