package exergue.demo;

import exergue.Exergue;
import exergue.Progress;
import exergue.files.FolderTree;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Type;
import java.awt.Font;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Draws the photographs of the demonstration catalogue: no camera and no coin stood before them. Flans have the recorded
 * diameters and the recorded axes. The same source gives the same pictures; each coin's file is told of its own.
 */
public final class MakePhotographs {

    private static final float QUALITY = 0.75f;
    private static final int OF_EACH_TYPE = 3;
    private static final int OF_COPPER = 2;
    /** One coin comes without loss, one in grey of 16 bits. */
    private static final String PNG = "pho-007";
    private static final String DEEP = "orm-017";
    private static final Set<String> ALSO = Set.of("ark-006", "ark-008", "ark-019", "ark-036", "ark-048", "ark-050", "ark-051", "ark-053", "ark-082",
            "ark-088", "ark-095", "ark-101", "orm-008", "orm-015", "orm-027", "pho-005");
    private static final Set<String> NOT = Set.of("ark-015", "ark-024", "ark-041", "ark-096", "orm-005", "orm-010", "pho-015", "pho-042");

    private final Path folder;
    private final Font face;

    private MakePhotographs(Path folder, Font face) {
        this.folder = folder;
        this.face = face;
    }

    /** Silver whose rim, towards the light, is as white as paper: nobody could say where it ends. */
    private static final Set<String> ON_BLUE = Set.of("ark-004", "ark-051", "ark-052", "ark-079", "pho-002");

    /** Usage: folder of the catalogue, then ids of coins if not all are wanted. */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        Set<String> wanted = new TreeSet<>(List.of(arguments).subList(1, arguments.length));
        Catalogue catalogue = Exergue.check(new FolderTree(folder), Progress.SILENT).catalogue().orElseThrow();
        MakePhotographs make = new MakePhotographs(folder, face());
        List<DemoCoin> chosen = chosen(catalogue, make.face);
        Set<String> ids = new TreeSet<>(chosen.stream().map(DemoCoin::id).toList());
        for (Coin coin : catalogue.coins()) {
            if (coin.photograph().isPresent() && !ids.contains(coin.id().value())) {
                make.tell(coin.id().value(), "");
            }
        }
        chosen.parallelStream().filter(coin -> wanted.isEmpty() || wanted.contains(coin.id())).forEach(make::draw);
    }

    static Font face() throws Exception {
        try (InputStream face = MakePhotographs.class.getResourceAsStream("/exergue/fonts/GentiumBookPlus-Bold.ttf")) {
            return Font.createFont(Font.TRUETYPE_FONT, face);
        }
    }

    /** The coins with photographs: the first that were measured at the bench of each type, and those of which the book says more. */
    static List<DemoCoin> chosen(Catalogue catalogue, Font face) {
        return catalogue.types().stream().flatMap(type -> ofType(catalogue, type, face).stream()).toList();
    }

    private static List<DemoCoin> ofType(Catalogue catalogue, Type type, Font face) {
        List<Coin> seen = catalogue.coins().stream().filter(coin -> coin.type().value().equals(type.id().value()))
                .filter(coin -> !NOT.contains(coin.id().value()) && (atTheBench(coin) || ALSO.contains(coin.id().value()))).toList();
        Set<String> first = new TreeSet<>(seen.stream().limit(type.metal().value().equals("copper-alloy") ? OF_COPPER : OF_EACH_TYPE).map(coin -> coin.id().value()).toList());
        return seen.stream().filter(coin -> first.contains(coin.id().value()) || ALSO.contains(coin.id().value()))
                .map(coin -> new DemoCoin(coin, type, face)).toList();
    }

    private static boolean atTheBench(Coin coin) {
        return coin.measured().filter(measured -> measured.by().value().equals("bench")).isPresent();
    }

    private void draw(DemoCoin coin) {
        try {
            photograph(coin);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private void photograph(DemoCoin coin) throws IOException {
        Backdrop backdrop = backdrop(coin);
        StringBuilder block = new StringBuilder("photograph:\n");
        Field[] light = coin.light(true, backdrop);
        block.append("  obverse: ").append(write(coin, light, "obv")).append('\n');
        BigDecimal width = BigDecimal.valueOf(light[0].width / coin.drawn.pixelsPerMm()).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        if (!coin.uniface()) {
            block.append("  reverse: ").append(write(coin, coin.light(false, backdrop), "rev")).append('\n');
        }
        block.append("  width: ").append(width.toPlainString()).append(" mm\n");
        block.append("  credit: Drawn by machine for this demonstration\n  permission: not needed\n");
        tell(coin.id(), block.toString());
    }

    /** Most stand on white; some on what else photographers use. Nobody lays grey metal on grey card. */
    static Backdrop backdrop(DemoCoin coin) {
        if (ON_BLUE.contains(coin.id())) {
            return Backdrop.BLUE;
        }
        return switch (Math.floorMod(coin.id().hashCode() * 31, 17)) {
            case 3 -> coin.drawn.metal() == Metal.GOLD || coin.drawn.metal() == Metal.COPPER_ALLOY ? Backdrop.GREY : Backdrop.FELT;
            case 5, 9 -> Backdrop.PAPER;
            case 7 -> Backdrop.BLACK;
            case 11 -> Backdrop.BLUE;
            default -> Backdrop.WHITE;
        };
    }

    private String write(DemoCoin coin, Field[] light, String side) throws IOException {
        String path = "photographs/" + coin.id() + "-" + side + (coin.id().equals(PNG) || coin.id().equals(DEEP) ? ".png" : ".jpg");
        Files.createDirectories(folder.resolve("photographs"));
        Files.write(folder.resolve(path), bytes(coin, side, light));
        return path;
    }

    static byte[] bytes(DemoCoin coin, String side, Field[] light) throws IOException {
        Camera camera = new Camera(1, 0, 0.9, coin.id().hashCode() + side.hashCode());
        Camera clean = new Camera(1, 0, 0, 0);
        int perInch = (int) Math.round(25.4 * coin.drawn.pixelsPerMm());
        return switch (coin.id()) {
            case PNG -> PictureFile.png(clean.develop(light), perInch);
            case DEEP -> PictureFile.png(clean.developDeep(light), perInch);
            default -> PictureFile.jpeg(camera.develop(light), perInch, QUALITY);
        };
    }

    /** Puts the block into the coin's file, in place of the one that was there, before the note. */
    private void tell(String id, String block) throws IOException {
        Path file = folder.resolve("coins/" + id + ".yaml");
        StringBuilder text = new StringBuilder();
        boolean old = false;
        boolean told = false;
        for (String line : Files.readAllLines(file)) {
            old = line.startsWith("photograph:") || old && line.startsWith(" ");
            if (!told && line.startsWith("note:")) {
                text.append(block);
                told = true;
            }
            text.append(old ? "" : line + "\n");
        }
        Files.writeString(file, told ? text.toString() : text + block);
    }
}
