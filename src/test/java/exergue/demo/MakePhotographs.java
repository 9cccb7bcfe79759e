package exergue.demo;

import exergue.Exergue;
import exergue.Progress;
import exergue.files.FolderTree;
import exergue.measure.Kind;
import exergue.measure.Quantity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import java.awt.Font;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/**
 * Draws the photographs of the demonstration catalogue: no camera and no coin stood before them. Each is at a known
 * scale, 16 pixels to the millimetre. Run again after a change; the same source gives the same pictures.
 */
public final class MakePhotographs {

    private static final float QUALITY = 0.72f;
    private static final int OF_EACH_TYPE = 2;

    /** Obverse motif and legend, whether it has dots; then the reverse. */
    private record Dies(DrawnCoin.Side obverse, DrawnCoin.Side reverse) { }

    private static final Map<String, Dies> DIES = dies();

    private final Catalogue catalogue;
    private final Path folder;
    private final Font face;

    private MakePhotographs(Catalogue catalogue, Path folder, Font face) {
        this.catalogue = catalogue;
        this.folder = folder;
        this.face = face;
    }

    /** Usage: folder of the catalogue. Prints the line that each coin's file needs. */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        Catalogue catalogue = Exergue.check(new FolderTree(folder), Progress.SILENT).catalogue().orElseThrow();
        try (InputStream face = MakePhotographs.class.getResourceAsStream("/exergue/fonts/GentiumBookPlus-Bold.ttf")) {
            new MakePhotographs(catalogue, folder, Font.createFont(Font.TRUETYPE_FONT, face)).drawAll();
        }
    }

    private static Map<String, Dies> dies() {
        Map<String, Dies> dies = new LinkedHashMap<>();
        put(dies, "ark-t05", "leaf", "", false, "heron", "ΑΡΚΗΝΕΩΝ", false);
        put(dies, "ark-t07", "bearded head", "", true, "heron", "ΒΑΣΙΛΕΩΣ ΤΗΛΑΝΟΡΟΣ", false);
        put(dies, "ark-t09", "bearded head", "", true, "heron", "ΒΑΣΙΛΕΩΣ ΤΗΛΑΝΟΡΟΣ", false);
        put(dies, "ark-t10", "bearded head", "", false, "heron", "ΒΑΣΙΛΕΩΣ ΤΗΛΑΝΟΡΟΣ", false);
        put(dies, "ark-t22", "bearded head", "", false, "heron", "ΒΑΣΙΛΕΩΣ ΤΗΛΑΝΟΡΟΣ", false);
        put(dies, "pho-t02", "dolphin", "", true, "trident", "ΦΟ", false);
        put(dies, "pho-t03", "bearded head", "", false, "prow", "ΒΑΣΙΛΕΩΣ ΤΗΛΑΝΟΡΟΣ", false);
        put(dies, "pho-t05", "bearded head", "", true, "prow", "ΒΑΣΙΛΕΩΣ ΟΡΥΑΝΔΡΟΥ", false);
        put(dies, "pho-t08", "head", "ΔΟΡΥ", false, "dolphin", "ΦΙΛΟΘΑΛΗϹ", false);
        put(dies, "orm-t01", "head", "", false, "tower", "ΟΡ", false);
        put(dies, "orm-t02", "bearded head", "", true, "tower", "ΒΑΣΙΛΕΩΣ ΤΗΛΑΝΟΡΟΣ", false);
        put(dies, "orm-t05", "tower", "ΟΡΜΑ", false, "", "", false);
        return dies;
    }

    private static void put(Map<String, Dies> dies, String type, String obverse, String legend, boolean dots,
                            String reverse, String reverseLegend, boolean reverseDots) {
        dies.put(type, new Dies(new DrawnCoin.Side(obverse, legend, dots, false),
                new DrawnCoin.Side(reverse, reverseLegend, reverseDots, true)));
    }

    private void drawAll() throws IOException {
        for (Type type : catalogue.types()) {
            Dies dies = DIES.get(type.id().value());
            if (dies != null) {
                List<Coin> coins = catalogue.coins().stream().filter(coin -> coin.type().value().equals(type.id().value()))
                        .filter(coin -> diameter(coin, type) != null).limit(OF_EACH_TYPE).toList();
                for (Coin coin : coins) {
                    draw(coin, type, dies);
                }
            }
        }
    }

    private BigDecimal diameter(Coin coin, Type type) {
        return ReadingChoice.of(catalogue.style()).choose(coin, type, Kind.DIAMETER).figure()
                .flatMap(read -> read.normal().stream().map(Quantity::value).max(Comparator.naturalOrder())).orElse(null);
    }

    private void draw(Coin coin, Type type, Dies dies) throws IOException {
        String id = coin.id().value();
        DrawnCoin drawn = new DrawnCoin(diameter(coin, type).doubleValue(),
                DrawnCoin.Color.valueOf(type.metal().value().toUpperCase(java.util.Locale.ROOT).replace('-', '_')), face, seed(id));
        String paths = "obverse: " + write(drawn.draw(dies.obverse()), id + "-obv.jpg");
        if (!dies.reverse().motif().isEmpty()) {
            paths += ", reverse: " + write(drawn.draw(dies.reverse()), id + "-rev.jpg");
        }
        System.out.printf(java.util.Locale.ROOT, "%s photograph: {%s, width: %s mm, credit: Drawn by machine for this demonstration}%n", id, paths,
                BigDecimal.valueOf(drawn.width()).stripTrailingZeros().toPlainString());
    }

    private static long seed(String id) {
        long seed = 7;
        for (char letter : id.toCharArray()) {
            seed = seed * 31 + letter;
        }
        return seed;
    }

    private String write(BufferedImage picture, String name) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(QUALITY);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ImageOutputStream sink = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(sink);
            writer.write(null, new IIOImage(picture, null, null), how);
        } finally {
            writer.dispose();
        }
        Path path = folder.resolve("photographs").resolve(name);
        Files.createDirectories(path.getParent());
        Files.write(path, out.toByteArray());
        return "photographs/" + name;
    }
}
