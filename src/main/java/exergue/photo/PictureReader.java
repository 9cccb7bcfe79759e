package exergue.photo;

import com.twelvemonkeys.imageio.plugins.jpeg.JPEGImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.tiff.TIFFImageReaderSpi;
import com.twelvemonkeys.imageio.stream.ByteArrayImageInputStream;
import exergue.photo.ReadPicture.Colours;
import exergue.photo.ReadPicture.Format;
import exergue.photo.ReadPicture.Kind;
import exergue.photo.ReadPicture.Picture;
import exergue.photo.ReadPicture.Reason;
import exergue.photo.ReadPicture.Unreadable;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;
import javax.imageio.stream.ImageInputStream;

/**
 * Reads photographs: JPEG (also CMYK and YCCK), PNG and TIFF, 8 or 16 bits. Reading never throws for what is in a file,
 * and what a file claims to be is held against the limits before it is unpacked.
 */
public final class PictureReader {

    private static final JPEGImageReaderSpi JPEG = registered(new JPEGImageReaderSpi());
    private static final TIFFImageReaderSpi TIFF = registered(new TIFFImageReaderSpi());

    private PictureReader() { }

    /** What the bytes of one file hold. */
    public static ReadPicture read(byte[] bytes, Limits limits) {
        Optional<Format> format = format(bytes);
        if (format.isEmpty()) {
            return new Unreadable(Reason.NOT_A_PICTURE, bytes.length == 0 ? "it is empty" : "it is no JPEG, PNG or TIFF");
        }
        if (bytes.length > limits.bytes()) {
            return tooLong(bytes.length, limits);
        }
        try {
            return with(bytes, format.get(), reader -> read(reader, format.get(), limits, bytes));
        } catch (IOException | RuntimeException e) {
            // the readers throw whatever comes to hand over a file that is not as it should be
            return new Unreadable(Reason.DAMAGED, "it is damaged or not complete");
        }
    }

    /** Of a file that need not be read to know that it is too long. */
    public static Unreadable tooLong(long bytes, Limits limits) {
        return new Unreadable(Reason.TOO_LARGE, "it has " + (bytes >> 20) + " MB, and no more than " + (limits.bytes() >> 20)
                + " are read");
    }

    /**
     * How many bytes of memory reading and measuring a picture will take, by what its first part claims; 0 for one that cannot be
     * read.
     */
    public static long memory(byte[] bytes, Limits limits) {
        Optional<Format> format = format(bytes);
        if (format.isEmpty() || bytes.length > limits.bytes()) {
            return 0;
        }
        try {
            return with(bytes, format.get(), reader -> refusal(reader, format.get(), limits).isPresent() ? 0
                    : facts(reader, format.get()).bytes((long) reader.getWidth(0) * reader.getHeight(0))
                            + Scene.memory(reader.getWidth(0), reader.getHeight(0)));
        } catch (IOException | RuntimeException e) {
            return 0;
        }
    }

    @FunctionalInterface
    private interface Use<T> {
        T of(ImageReader reader) throws IOException;
    }

    private static <T> T with(byte[] bytes, Format format, Use<T> use) throws IOException {
        ImageReader reader = reader(format);
        byte[] harmless = format == Format.PNG ? PngChunks.withoutTexts(bytes) : bytes;
        try (ImageInputStream in = new ByteArrayImageInputStream(harmless)) {
            reader.setInput(in);
            return use.of(reader);
        } finally {
            reader.dispose();
        }
    }

    /** How many pixels the file says it has, as it lies there; empty where it is no picture. Nothing is unpacked. */
    public static Optional<PictureSize> size(byte[] bytes) {
        Optional<Format> format = format(bytes);
        if (format.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(with(bytes, format.get(), reader -> new PictureSize(reader.getWidth(0), reader.getHeight(0))));
        } catch (IOException | RuntimeException e) {
            return Optional.empty(); // as in read: a file that is not as it should be
        }
    }

    /** By its first bytes; names of files say nothing. */
    public static Optional<Format> format(byte[] bytes) {
        if (startsWith(bytes, 0xFF, 0xD8, 0xFF)) {
            return Optional.of(Format.JPEG);
        }
        if (startsWith(bytes, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n')) {
            return Optional.of(Format.PNG);
        }
        return startsWith(bytes, 'I', 'I', 42, 0) || startsWith(bytes, 'M', 'M', 0, 42)
                ? Optional.of(Format.TIFF) : Optional.empty();
    }

    private static boolean startsWith(byte[] bytes, int... sign) {
        for (int i = 0; i < sign.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != sign[i]) {
                return false;
            }
        }
        return true;
    }

    private static ImageReader reader(Format format) {
        try {
            return switch (format) {
                case JPEG -> JPEG.createReaderInstance();
                case TIFF -> TIFF.createReaderInstance();
                case PNG -> ImageIO.getImageReadersByFormatName("png").next();
            };
        } catch (IOException e) {
            throw new UncheckedIOException("the reader of " + format + " cannot be begun", e);
        }
    }

    /**
     * A reader that has been entered in Java’s register: there it finds what it builds upon. It is not looked up there again,
     * since every group of threads has a register of its own.
     */
    private static <R extends ImageReaderSpi> R registered(R reader) {
        IIORegistry.getDefaultInstance().registerServiceProvider(reader);
        return reader;
    }

    /** What the file claims is looked at before anything is unpacked: a few bytes can claim any size. */
    private static Optional<Unreadable> refusal(ImageReader reader, Format format, Limits limits) throws IOException {
        long width = reader.getWidth(0);
        long height = reader.getHeight(0);
        if (width * height > limits.pixels()) {
            return Optional.of(new Unreadable(Reason.TOO_LARGE, "it has " + width + " × " + height + " pixels, and no more than "
                    + limits.pixels() / 1_000_000 + " million are read"));
        }
        long bytes = facts(reader, format).bytes(width * height);
        if (bytes > limits.unpacked()) {
            return Optional.of(new Unreadable(Reason.TOO_LARGE, "it has " + width + " × " + height + " pixels that take "
                    + (bytes >> 20) + " MB of memory, and no more than " + (limits.unpacked() >> 20) + " are given to one picture"));
        }
        boolean tooLargeParts = format == Format.TIFF && (long) reader.getTileWidth(0) * reader.getTileHeight(0) > limits.pixels();
        return tooLargeParts ? Optional.of(new Unreadable(Reason.DAMAGED, "it is damaged: it claims parts larger than itself"))
                : Optional.empty();
    }

    private static FileFacts facts(ImageReader reader, Format format) throws IOException {
        return FileFacts.of(reader.getImageMetadata(0), format);
    }

    private static ReadPicture read(ImageReader reader, Format format, Limits limits, byte[] bytes) throws IOException {
        Optional<Unreadable> refused = refusal(reader, format, limits);
        if (refused.isPresent()) {
            return refused.get();
        }
        FileFacts facts = format == Format.PNG ? facts(reader, format).held(PngChunks.orientation(bytes)) : facts(reader, format);
        List<String> warnings = new ArrayList<>();
        reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
        BufferedImage image = reader.read(0);
        if (warnings.stream().anyMatch(PictureReader::meansDamage)) {
            return new Unreadable(Reason.DAMAGED, "it is damaged or not complete");
        }
        Raster raster = facts.upright(Raster.over(image));
        Colours colours = facts.channels() == 4 && !image.getColorModel().hasAlpha() ? Colours.CMYK
                : raster.channels() == 1 ? Colours.GREY : Colours.RGB;
        return new Picture(raster, new Kind(format, colours, raster.bits()), facts.ppi(),
                format == Format.JPEG && raster.bits() == 8 && colours != Colours.CMYK && facts.isUpright(), !facts.isUpright());
    }

    /** Of the warnings of the readers, those over a colour profile or a comment leave the pixels whole. */
    private static boolean meansDamage(String warning) {
        return warning.matches("(?i).*(premature|truncated|corrupt|unexpected end|eof).*");
    }
}
