package exergue.photo;

import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import exergue.measure.Kind;
import exergue.measure.Units;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Holds every entry against its photographs. */
public final class PictureCheck {

    private static final double SCALES_APART = 0.03;
    private static final List<Division> DIVISIONS = List.of(new Division(0.5, "half a millimetre"), new Division(2, "two millimetres"),
            new Division(5, "five millimetres"), new Division(10, "ten millimetres"));

    private record Division(double mm, String words) { }

    private final Function<String, Optional<Gauged>> gauged;
    private final ReadingChoice choice;
    private final List<Finding> found = new ArrayList<>();

    private PictureCheck(Function<String, Optional<Gauged>> gauged, ReadingChoice choice) {
        this.gauged = gauged;
        this.choice = choice;
    }

    /** Every file that entries name as a photograph of their coin, each once, in the order of the entries. */
    public static List<String> files(Catalogue catalogue) {
        return catalogue.coins().stream().flatMap(coin -> coin.photograph().stream())
                .flatMap(photograph -> java.util.stream.Stream.concat(photograph.obverse().stream(), photograph.reverse().stream()))
                .map(Written::value).distinct().toList();
    }

    /** @param gauged what a file of the source shows; empty for one that is not there */
    public static Findings check(Catalogue catalogue, Function<String, Optional<Gauged>> gauged) {
        PictureCheck check = new PictureCheck(gauged, ReadingChoice.of(catalogue.style()));
        Map<String, Type> types = new HashMap<>();
        catalogue.types().forEach(type -> types.putIfAbsent(type.id().value(), type));
        for (Coin coin : catalogue.coins()) {
            Type type = types.get(coin.type().value());
            if (coin.photograph().isPresent() && type != null) {
                check.look(coin, type, coin.photograph().get());
            }
        }
        return Findings.of(check.found);
    }

    private void look(Coin coin, Type type, Coin.Photograph photograph) {
        CoinPictures pictures = CoinPictures.of(photograph, gauged);
        pictures.missed().forEach(missed -> found.add(Finding.of(missed.unread() ? PhotoCodes.NOT_READ : PhotoCodes.NOT_MEASURED,
                missed.path().place(), "photograph", "The photograph “" + missed.path() + "” of “" + coin.id() + "” cannot be "
                        + (missed.unread() ? "read: " : "measured: ") + missed.words() + ".", missed.remedy())));
        Comparison comparison = new Comparison(coin, type, choice, pictures);
        comparison.axis().filter(turn -> !turn.agrees()).ifPresent(turn -> found.add(axis(coin, type, turn)));
        comparison.diameter().filter(size -> !size.agrees()).ifPresent(size -> found.add(diameter(coin, type, size)));
        pictures.obverse().or(pictures::reverse).ifPresent(side -> scales(coin, photograph, side));
    }

    private Finding axis(Coin coin, Type type, Comparison.Turn turn) {
        String cause = turn.slip().map(meant -> " Probable cause: " + meant.slip().words() + " (“" + turn.recorded().recorded()
                + "” for “" + meant.text() + "”).").orElse("");
        return Finding.of(PhotoCodes.AXIS, place(coin, type, Kind.AXIS), path(coin, type, Kind.AXIS),
                "The axis “" + turn.recorded().recorded() + "” of “" + coin.id() + "” is not that of its photographs: as they stand, "
                        + "the edges fit at " + turn.shown().hour() + " h (" + Math.round(turn.shown().degrees()) + "°)." + cause,
                "Look at the coin again, turned about its vertical. If the axis is right, one of the photographs does not stand "
                        + "upright, or they are of two coins: set them upright, or name the right file.");
    }

    private Finding diameter(Coin coin, Type type, Comparison.Diameter size) {
        return Finding.of(PhotoCodes.DIAMETER, place(coin, type, Kind.DIAMETER), path(coin, type, Kind.DIAMETER),
                "The diameter “" + size.recorded().recorded() + "” of “" + coin.id() + "” is not that of its photograph: "
                        + mm(size.shown()) + ", " + size.line() + ", by " + size.scale().source().words() + "." + division(size),
                "Measure the coin again, along the line that its convention names. If the diameter is right, mend the scale: the "
                        + "bar must lie level with the coin’s edge, and “width” is that of the whole picture.");
    }

    /** Bars of other divisions look the same; the recorded diameter gives them away. */
    private static String division(Comparison.Diameter size) {
        double times = size.recordedMm() / size.shown();
        return size.scale().source() != PictureScale.Source.SCALE_BAR ? "" : DIVISIONS.stream()
                .filter(division -> Math.abs(times / division.mm() - 1) < SCALES_APART).findFirst()
                .map(division -> " It would be, were each division of the bar " + division.words() + " and not one.").orElse("");
    }

    private void scales(Coin coin, Coin.Photograph photograph, SidePicture side) {
        Optional<Double> width = Comparison.width(coin);
        if (width.isPresent() && side.picture().bar() instanceof ScaleBarRead.Read bar) {
            double byBar = side.picture().width() / bar.pixelsPerMm();
            if (Math.abs(byBar - width.get()) > SCALES_APART * byBar) {
                found.add(Finding.of(PhotoCodes.SCALES, photograph.width().orElseThrow().place(), "photograph.width",
                        "The photograph “" + side.path() + "” is " + mm(byBar) + " wide by its scale bar of " + bar.divisions()
                                + " divisions, and not “" + photograph.width().get().value().recorded() + "”.",
                        "Write “width: " + mm(byBar) + "”, if each division of the bar is a millimetre."));
            }
        }
    }

    private static String mm(double figure) {
        return String.format(Locale.ROOT, "%.1f ", figure) + Units.MILLIMETRE.symbol();
    }

    private Place place(Coin coin, Type type, Kind kind) {
        return choice.choose(coin, type, kind).reading().orElseThrow().place();
    }

    private String path(Coin coin, Type type, Kind kind) {
        ReadingChoice.Chosen chosen = choice.choose(coin, type, kind);
        boolean main = coin.measured().equals(chosen.measurement());
        return (main ? "measured" : "also-measured[" + (coin.alsoMeasured().indexOf(chosen.measurement().orElseThrow()) + 1) + "]")
                + "." + kind.word();
    }
}
