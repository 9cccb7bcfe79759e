package exergue.bench;

import exergue.photo.print.PaintedCoin;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Times a book of photographs of 12 megapixels: a first run, in which every coin is cut out, and one after it, in which
 * nothing has changed. Forty photographs are painted, with the grain of a sensor; of more than that the others have the
 * pixels of one of them and a comment of their own, so that to the program they are as many different files.
 */
public final class PictureBench {

    private static final int WIDTH = 4000;
    private static final int HEIGHT = 3000;
    private static final int PAINTED = 40;
    private static final double GRAIN = 2.5;
    /** A photograph that was changed a moment ago is read once more. */
    private static final FileTime LONG_AGO = FileTime.from(Instant.parse("2020-05-01T12:00:00Z"));
    private static final byte[] COMMENT = {(byte) 0xFF, (byte) 0xFE};

    private PictureBench() { }

    /** Usage: numbers of photographs; {@code -Dbench.heap=1g} and {@code -Dbench.flags} as for {@link Bench}. */
    public static void main(String[] sizes) throws IOException, InterruptedException {
        for (String size : sizes) {
            Path source = Path.of("target", "bench", "pictures-" + size).resolve("source");
            if (Files.notExists(source)) {
                write(Integer.parseInt(size), source);
            }
            System.out.printf(Locale.ROOT, "%n%s photographs of %d x %d pixels, %d processors%n", size, WIDTH, HEIGHT,
                    Runtime.getRuntime().availableProcessors());
            Bench.run("exergue.bench.Stages", source.toString(), "1");
            Bench.run("exergue.bench.Stages", source.toString(), "1");
            System.out.printf(Locale.ROOT, "  PDF %d kB%n", Files.size(source.resolveSibling("book.pdf")) / 1000);
        }
    }

    private static void write(int photographs, Path source) throws IOException {
        List<byte[]> painted = IntStream.range(0, Math.min(PAINTED, photographs)).parallel().mapToObj(PictureBench::painted).toList();
        text(source, "catalogue.yaml", "title: Coins\nlanguage: en\nparts: {front: [title], body: [catalogue], back: [plates]}\n");
        text(source, "mints.yaml", "lykaia: {name: Lykaia}\n");
        text(source, "conventions.yaml", "bench: {title: measurements at the bench, by: A. Orr, diameter: {direction: greatest}}\n");
        text(source, "types/drachm.yaml", "id: drachm\nmint: lykaia\ndenomination: drachm\nmetal: silver\n");
        for (int i = 0; i < photographs; i++) {
            Path file = source.resolve("photographs/p" + i + ".jpg");
            Files.createDirectories(file.getParent());
            Files.setLastModifiedTime(Files.write(file, commented(painted.get(i % PAINTED), "photograph " + i)), LONG_AGO);
        }
        for (int i = 0; i + 1 < photographs; i += 2) {
            text(source, "coins/lk-" + i + ".yaml", "id: lk-" + i + "\ntype: drachm\nmeasured: {by: bench, weight: 3.87 g, diameter: "
                    + (17 + i % 4) + " mm, axis: 6 h}\nphotograph: {obverse: photographs/p" + i + ".jpg, reverse: photographs/p"
                    + (i + 1) + ".jpg}\n");
        }
    }

    private static byte[] painted(int number) {
        int part = number % 20;
        return new PaintedCoin(WIDTH, HEIGHT, new Color(232, 232, 230)).metal(new Color(100 + 4 * part, 96 + 3 * part, 80 + 3 * part))
                .coin(PaintedCoin.ellipse(WIDTH / 2.0, HEIGHT / 2.0, 2500 - 8 * number, 2400 - 14 * number, 23 * number))
                .grain(GRAIN).jpeg();
    }

    /** A comment segment (COM, ITU-T T.81 B.2.4.5) after the start of the image. */
    private static byte[] commented(byte[] jpeg, String words) throws IOException {
        byte[] said = words.getBytes(StandardCharsets.US_ASCII);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.write(COMMENT);
        out.write(0);
        out.write(said.length + 2);
        out.write(said);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static void text(Path source, String path, String text) throws IOException {
        Path file = source.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
