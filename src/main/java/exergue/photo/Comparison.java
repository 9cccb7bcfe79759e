package exergue.photo;

import exergue.measure.Axis;
import exergue.measure.Kind;
import exergue.measure.Meant;
import exergue.measure.Reading;
import exergue.measure.Slip;
import exergue.model.Coin;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import exergue.photo.AxisFromOutlines.Angle;
import java.math.BigDecimal;
import java.util.Optional;

/** What a coin’s entry says held against what its photographs show: of each kind the reading that the book prints. */
public final class Comparison {

    /** Of the diameter: the camera’s view of a thing that is not flat, and a scale bar that lies lower than its edge. */
    private static final double PERSPECTIVE = 0.03;
    /** An hour, and the six degrees by which two photographs may well lean. */
    private static final BigDecimal AN_HOUR = new BigDecimal("1.2");
    private static final BigDecimal NEAR = new BigDecimal("0.75");

    private final Coin coin;
    private final Type type;
    private final ReadingChoice choice;
    private final CoinPictures pictures;

    public Comparison(Coin coin, Type type, ReadingChoice choice, CoinPictures pictures) {
        this.coin = coin;
        this.type = type;
        this.choice = choice;
        this.pictures = pictures;
    }

    /**
     * @param line   "top to bottom", "the longer side"
     * @param shown  millimetres on the photograph along that line; where nobody says the line, the diameter of the coin that is
     *               nearest to the recorded one
     * @param agrees within 3 % and what the record was rounded to
     */
    public record Diameter(Reading.Read recorded, String line, double shown, PictureScale scale, boolean agrees) {

        /** Of two figures the greater. */
        double recordedMm() {
            return greater(recorded);
        }
    }

    /**
     * @param agrees within an hour
     * @param slip   by which the one may have become the other, where they do not agree
     */
    public record Turn(Reading.Read recorded, Angle shown, boolean agrees, Optional<Meant> slip) { }

    /** How wide the whole picture is at life size, as the entry says; in mm. */
    public static Optional<Double> width(Coin coin) {
        return coin.photograph().flatMap(Coin.Photograph::width)
                .flatMap(width -> width.value() instanceof Reading.Read read ? Optional.of(read.first().value().doubleValue())
                        : Optional.empty());
    }

    /** Along which line the printed diameter was taken, where there is one. */
    public Optional<DiameterLine> line() {
        ReadingChoice.Chosen chosen = choice.choose(coin, type, Kind.DIAMETER);
        return chosen.figure().flatMap(read -> chosen.measurement()
                .map(hand -> DiameterLine.of(read.form(), hand.convention().sizing().direction())));
    }

    /** The one figure of the printed diameter; for two figures, the greater. In mm. */
    public Optional<Double> diameterMm() {
        return choice.choose(coin, type, Kind.DIAMETER).figure().map(Comparison::greater);
    }

    private static double greater(Reading.Read read) {
        return read.normal().stream().mapToDouble(figure -> figure.value().doubleValue()).max().orElseThrow();
    }

    /**
     * The diameter against the obverse’s photograph; empty without one, without a scale that is not the diameter itself, or
     * where the figure is about, less or more than.
     */
    public Optional<Diameter> diameter() {
        Optional<Reading.Read> read = choice.choose(coin, type, Kind.DIAMETER).figure()
                .filter(figure -> figure.qualifier() == Reading.Qualifier.NONE);
        Optional<PictureScale> scale = pictures.obverse().flatMap(side -> side.scale(width(coin)));
        if (read.isEmpty() || scale.isEmpty()) {
            return Optional.empty();
        }
        Outline life = scale.get().life(pictures.obverse().get().outline());
        DiameterLine line = line().orElseThrow();
        double recorded = greater(read.get());
        boolean within = line == DiameterLine.NOT_SAID && recorded < line.on(life);
        double shown = within ? Math.max(recorded, life.least().length()) : line.on(life);
        String words = !within ? line.words() : shown > recorded ? "the least" : "in some direction";
        double step = read.get().first().resolution().doubleValue();
        return Optional.of(new Diameter(read.get(), words, shown, scale.get(),
                Math.abs(shown - recorded) <= PERSPECTIVE * recorded + step));
    }

    /** The axis against the two edges; empty without both or without a figure, or where the edges do not tell. */
    public Optional<Turn> axis() {
        Optional<Reading.Read> read = choice.choose(coin, type, Kind.AXIS).figure();
        Optional<Angle> angle = pictures.axis().filter(Angle.class::isInstance).map(Angle.class::cast);
        if (read.isEmpty() || angle.isEmpty() || read.get().form() != Reading.Form.SINGLE) {
            return Optional.empty();
        }
        BigDecimal shown = BigDecimal.valueOf(angle.get().hours());
        boolean agrees = Axis.difference(read.get().first().value(), shown).compareTo(AN_HOUR) <= 0;
        Optional<Meant> slip = agrees ? Optional.empty() : Meant.by(read.get()).stream()
                .filter(meant -> meant.slip() == Slip.MIRRORED || meant.slip() == Slip.UP_AND_DOWN)
                .filter(meant -> Axis.difference(meant.normal(), shown).compareTo(NEAR) <= 0).findFirst();
        return Optional.of(new Turn(read.get(), angle.get(), agrees, slip));
    }
}
