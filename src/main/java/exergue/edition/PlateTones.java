package exergue.edition;

import exergue.edition.Plate.Pair;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Type;
import exergue.model.Written;
import exergue.photo.print.PrintCodes;
import exergue.photo.print.PrintedCoins;
import exergue.photo.print.PrintedSide;
import exergue.photo.print.Tone;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Photographs that stand out from the others of their plate because they were taken in another light. Coins are compared
 * with those of the same metal only, since bronze is darker than silver under any lamp. The bounds are this program's own
 * (common practice, no source).
 */
final class PlateTones {

    /** With fewer coins nobody can say which of them is the odd one. */
    private static final int ENOUGH = 4;
    private static final int FAR = 40;
    private static final int TIMES = 2;

    private final PrintedCoins pictures;
    private final Map<String, Coin> coins = new HashMap<>();
    private final Map<String, Type> types;
    private final List<Finding> findings = new ArrayList<>();

    private PlateTones(Catalogue catalogue, PrintedCoins pictures) {
        this.pictures = pictures;
        this.types = Editor.types(catalogue);
        catalogue.coins().forEach(coin -> coins.put(Anchors.coin(coin.id().value()), coin));
    }

    static List<Finding> of(List<Plate> plates, Catalogue catalogue, PrintedCoins pictures) {
        PlateTones tones = new PlateTones(catalogue, pictures);
        plates.forEach(tones::look);
        return tones.findings;
    }

    /** The mean of a coin's sides. */
    private record Shade(Pair pair, Coin coin, int mean, int spread) { }

    private void look(Plate plate) {
        Map<String, List<Shade>> byMetal = new LinkedHashMap<>();
        for (Pair pair : plate.pairs()) {
            Coin coin = coins.get(pair.coin());
            shade(pair, coin).ifPresent(shade -> byMetal.computeIfAbsent(metal(coin), metal -> new ArrayList<>()).add(shade));
        }
        byMetal.forEach((metal, shades) -> {
            if (shades.size() >= ENOUGH) {
                int mean = middle(shades.stream().map(Shade::mean).sorted().toList());
                int spread = middle(shades.stream().map(Shade::spread).sorted().toList());
                shades.forEach(shade -> compare(shade, plate, mean, spread));
            }
        });
    }

    private String metal(Coin coin) {
        return types.get(coin.type().value()).metal().value();
    }

    private Optional<Shade> shade(Pair pair, Coin coin) {
        List<Tone> tones = pictures.of(coin).stream().flatMap(picture -> picture.sides()).map(PrintedSide::tone)
                .flatMap(Optional::stream).toList();
        return tones.isEmpty() ? Optional.empty() : Optional.of(new Shade(pair, coin,
                tones.stream().mapToInt(Tone::mean).sum() / tones.size(), tones.stream().mapToInt(Tone::spread).sum() / tones.size()));
    }

    private static int middle(List<Integer> sorted) {
        return sorted.get(sorted.size() / 2);
    }

    private void compare(Shade shade, Plate plate, int mean, int spread) {
        if (Math.abs(shade.mean() - mean) > FAR) {
            boolean dark = shade.mean() < mean;
            add(shade, plate, (dark ? "darker" : "lighter") + " than the others of its metal there: its mean grey is " + shade.mean()
                    + ", that in the middle of them " + mean + " (0 black, 255 white).",
                    "Make its pictures " + (dark ? "lighter" : "darker") + ", best from the camera’s own file, or photograph the coin in the "
                            + "light of the others. If it is so by its patina, leave it.");
        } else if (shade.spread() * TIMES < spread || shade.spread() > spread * TIMES) {
            boolean flat = shade.spread() < spread;
            add(shade, plate, (flat ? "flatter" : "harder") + " than the others of its metal there: its greys spread by " + shade.spread()
                    + " about their mean, those of the one in the middle by " + spread + ".",
                    "Photograph the coin in the light of the others: " + (flat ? "a lamp from the side" : "a larger or farther lamp")
                            + " brings the relief to theirs. If it is so because it is worn, leave it.");
        }
    }

    private void add(Shade shade, Plate plate, String how, String remedy) {
        Place place = shade.coin().photograph().flatMap(photo -> photo.obverse().or(photo::reverse)).map(Written::place)
                .orElse(shade.coin().place());
        findings.add(Finding.of(PrintCodes.OTHER_LIGHT, place, "photograph",
                "On " + plate.heading() + " no. " + shade.pair().number() + " (“" + shade.coin().id() + "”) is " + how, remedy));
    }
}
