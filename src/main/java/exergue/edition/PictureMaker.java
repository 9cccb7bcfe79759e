package exergue.edition;

import exergue.edition.Specimen.Picture;
import exergue.measure.Kind;
import exergue.measure.Quantity;
import exergue.measure.Reading;
import exergue.model.BookWord;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Phrase;
import exergue.model.ReadingChoice;
import exergue.model.Side;
import exergue.model.Type;
import exergue.model.Written;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Optional;

/** Photographs of a coin: their words for who cannot see them, and how large they are printed. */
final class PictureMaker {

    /** Where nobody says how large the coin is. */
    private static final BigDecimal MODEST = new BigDecimal("20");

    private final Numbering numbers;
    private final BookWords words;
    private final ReadingChoice choice;

    PictureMaker(Catalogue catalogue, Numbering numbers, BookWords words) {
        this.numbers = numbers;
        this.words = words;
        this.choice = ReadingChoice.of(catalogue.style());
    }

    Optional<Picture> of(Coin coin, Type type) {
        String number = numbers.of(coin.id().value()).map(String::valueOf).orElse(Numbering.NO_COIN);
        Optional<BigDecimal> width = width(coin, type);
        return coin.photograph().filter(photo -> photo.obverse().isPresent() || photo.reverse().isPresent())
                .map(photo -> new Picture(photo.obverse().map(Written::value), photo.reverse().map(Written::value),
                        alternative(BookWord.OBVERSE_OF, number, type.obverse()),
                        alternative(BookWord.REVERSE_OF, number, type.reverse()),
                        photo.credit().map(Written::value), width.orElse(MODEST), width.isPresent()));
    }

    /** The picture's own width; without it the greatest diameter, as if the picture were trimmed to the coin. */
    private Optional<BigDecimal> width(Coin coin, Type type) {
        Optional<Reading.Read> own = coin.photograph().flatMap(Coin.Photograph::width).map(Written::value)
                .filter(Reading.Read.class::isInstance).map(Reading.Read.class::cast);
        return own.or(() -> choice.choose(coin, type, Kind.DIAMETER).figure())
                .flatMap(read -> read.normal().stream().map(Quantity::value).max(Comparator.naturalOrder()));
    }

    private String alternative(BookWord sideOf, String number, Side side) {
        return words.of(sideOf) + " " + number + side.description().map(Phrase::plain)
                .map(text -> words.language().colon() + text).orElse("");
    }
}
