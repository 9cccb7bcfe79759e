package exergue.photo.print;

import exergue.measure.Kind;
import exergue.measure.Quantity;
import exergue.measure.Reading;
import exergue.model.Coin;
import exergue.model.HouseStyle;
import exergue.model.PictureStyle;
import exergue.model.PrintScale;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import exergue.model.Written;
import exergue.photo.DiameterLine;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Optional;

/** How large the coins of a catalogue are printed, from what their entries say. */
final class PrintedSize {

    /** Where nobody says how large the coin is. */
    static final BigDecimal MODEST = new BigDecimal("20");

    private final ReadingChoice choice;
    private final PictureStyle style;

    PrintedSize(HouseStyle house) {
        this.choice = ReadingChoice.of(house);
        this.style = house.pictures();
    }

    /**
     * What is known of one coin's size. All in mm, of the coin itself and not of its print.
     *
     * @param diameter the one the book prints; of two, the greater
     * @param taken    along which line
     * @param file     how wide each whole picture is at life size
     */
    record Size(Optional<BigDecimal> diameter, DiameterLine taken, Optional<BigDecimal> file, PrintScale scale) {

        boolean isKnown() {
            return diameter.isPresent() || file.isPresent();
        }

        /** On paper: its own width; without it the greatest diameter, as if the picture were trimmed to the coin. */
        BigDecimal ofWholePicture() {
            return file.or(() -> diameter).map(scale::times).orElse(MODEST);
        }
    }

    Size of(Coin coin, Type type) {
        ReadingChoice.Chosen chosen = choice.choose(coin, type, Kind.DIAMETER);
        Optional<BigDecimal> diameter = chosen.figure().flatMap(PrintedSize::greatest);
        Optional<BigDecimal> file = coin.photograph().flatMap(Coin.Photograph::width).map(Written::value)
                .filter(Reading.Read.class::isInstance).map(Reading.Read.class::cast).flatMap(PrintedSize::greatest);
        DiameterLine taken = chosen.figure().flatMap(read -> chosen.measurement()
                .map(by -> DiameterLine.of(read.form(), by.convention().sizing().direction()))).orElse(DiameterLine.NOT_SAID);
        return new Size(diameter, taken, file,
                diameter.isPresent() || file.isPresent() ? scale(coin, diameter) : PrintScale.LIFE);
    }

    private static Optional<BigDecimal> greatest(Reading.Read read) {
        return read.normal().stream().map(Quantity::value).max(Comparator.naturalOrder());
    }

    private PrintScale scale(Coin coin, Optional<BigDecimal> diameter) {
        return coin.photograph().flatMap(Coin.Photograph::scale)
                .or(() -> style.small().filter(small -> diameter.filter(of -> of.compareTo(small.below()) < 0).isPresent())
                        .map(PictureStyle.Enlarged::scale))
                .orElse(style.scale());
    }
}
