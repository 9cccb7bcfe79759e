package exergue.bench;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** Makes an invented catalogue of as many coins as wanted; the same number always gives the same files. */
public final class MakeCatalogue {

    private static final int COINS_OF_A_TYPE = 5;
    private static final int TYPES_OF_A_RULER = 8;
    private static final int RULERS_OF_A_MINT = 5;
    private static final String[] DENOMINATIONS = {"stater", "drachm", "obol"};
    private static final int[] CENTIGRAMS = {1050, 420, 68};
    private static final int[] TENTHS_OF_A_MILLIMETRE = {214, 167, 92};
    private static final String[] DEVICES = {"Wheel of four spokes", "Bull standing r., head facing",
        "Head of river-god l., horned", "Dolphin r. above waves", "Ear of barley with two leaves", "Tripod on a base"};

    private final Map<String, String> files = new TreeMap<>();
    private final int coins;

    private MakeCatalogue(int coins) {
        this.coins = coins;
    }

    /** Usage: number of coins, folder. */
    public static void main(String[] arguments) throws IOException {
        write(Integer.parseInt(arguments[0]), Path.of(arguments[1]));
    }

    static void write(int coins, Path folder) throws IOException {
        for (Map.Entry<String, String> file : files(coins).entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue());
        }
    }

    /** Text of every file by its path. */
    public static Map<String, String> files(int coins) {
        MakeCatalogue made = new MakeCatalogue(coins);
        made.frame();
        int types = made.types();
        made.mints(types);
        for (int coin = 0; coin < coins; coin++) {
            made.coin(coin);
        }
        return made.files;
    }

    private void frame() {
        files.put("catalogue.yaml", """
                title: A Catalogue for Timing
                notice: Everything in it is invented.
                language: en
                parts: {front: [title, contents], body: [methods, catalogue], back: [works]}
                """);
        files.put("house-style.yaml", "metals: {silver: {sign: AR, name: silver}}\n");
        files.put("works.yaml", "made-up: {sign: Made Up, year: '1900', title: A List That Is Not}\n");
        files.put("collections.yaml", "cabinet: {name: The Cabinet, sign: Cab.}\n");
        files.put("conventions.yaml", """
                bench:
                  title: measurements at the bench
                  by: Nobody
                  weight: {instrument: a balance, unit: g, resolution: 0.01 g}
                  diameter: {instrument: callipers, unit: mm, direction: greatest, resolution: 0.1 mm}
                  axis: {notation: hours, resolution: 1 h}
                old:
                  title: the old list
                  work: made-up
                  weight: {unit: grain, gr: grains}
                  diameter: {unit: in}
                  axis: {notation: degrees}
                """);
    }

    private int types() {
        int types = (coins + COINS_OF_A_TYPE - 1) / COINS_OF_A_TYPE;
        for (int type = 0; type < types; type++) {
            files.put("types/" + typeId(type) + ".yaml", """
                    id: %s
                    mint: m%d
                    ruler: r%d
                    order: %d
                    denomination: %s
                    metal: silver
                    date: -0%d~/-0%d~
                    obverse: {legend: ΟΡΟΥΑΝΩΝ, description: '%s; border of dots.'}
                    reverse: {legend: ΚΑΛΛΩΡ, description: '%s; letter in each quarter.'}
                    references: [{work: made-up, number: '%d'}]
                    """.formatted(typeId(type), ruler(type) / RULERS_OF_A_MINT, ruler(type), type,
                    DENOMINATIONS[type % 3], 329 - ruler(type) % 200, 319 - ruler(type) % 200,
                    DEVICES[type % 6], DEVICES[type * 5 % 6 == type % 6 ? (type + 1) % 6 : type * 5 % 6], type + 1));
        }
        return types;
    }

    private void mints(int types) {
        StringBuilder mints = new StringBuilder();
        StringBuilder rulers = new StringBuilder();
        for (int ruler = 0; ruler <= ruler(types - 1); ruler++) {
            rulers.append("r%d: {name: Magistrate %d}\n".formatted(ruler, ruler + 1));
            if (ruler % RULERS_OF_A_MINT == 0) {
                int mint = ruler / RULERS_OF_A_MINT;
                mints.append("m%d: {name: Mint %d}\n".formatted(mint, mint + 1));
            }
        }
        files.put("mints.yaml", mints.toString());
        files.put("rulers.yaml", rulers.toString());
    }

    private void coin(int coin) {
        int type = coin / COINS_OF_A_TYPE;
        int centigrams = CENTIGRAMS[type % 3];
        BigDecimal grams = BigDecimal.valueOf(centigrams + coin * 7L % (centigrams / 20) - centigrams / 40, 2);
        BigDecimal millimetres = BigDecimal.valueOf(TENTHS_OF_A_MILLIMETRE[type % 3] + coin * 3L % 9 - 4, 1);
        int hour = 1 + coin * 5 % 12;
        boolean old = coin % 4 == 3;
        String also = !old ? "" : "also-measured: [{by: old, weight: %s gr, axis: %d°}]\n".formatted(
                grams.multiply(new BigDecimal("15.4324")).setScale(1, java.math.RoundingMode.HALF_EVEN), hour * 30);
        files.put("coins/" + typeId(type) + "/c%05d.yaml".formatted(coin), """
                id: c%05d
                type: %s
                measured: {by: bench, weight: %s g, diameter: %s mm, axis: %d h}
                %sdies: {obverse: O%d, reverse: R%d}
                collection: {id: cabinet, number: '%d'}
                """.formatted(coin, typeId(type), grams, millimetres, hour, also, type + 1, coin + 1, coin + 1));
    }

    private static int ruler(int type) {
        return type / TYPES_OF_A_RULER;
    }

    private static String typeId(int type) {
        return "t%04d".formatted(type);
    }
}
