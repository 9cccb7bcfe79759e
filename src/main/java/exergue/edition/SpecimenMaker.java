package exergue.edition;

import exergue.edition.Specimen.Cell;
import exergue.edition.Specimen.Picture;
import exergue.model.BookWord;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Inline;
import exergue.model.Phrase;
import exergue.model.Side;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One coin as printed. */
final class SpecimenMaker {

    private final Catalogue catalogue;
    private final Numbering numbers;
    private final MeasurementLine figures;
    private final CrossReferences references;
    private final Whereabouts whereabouts;
    private final BookWords words;
    private final DateWords dates;
    private final MeasuredRemarks measured;

    SpecimenMaker(Catalogue catalogue, Numbering numbers, MeasurementLine figures, CrossReferences references,
                  BookWords words) {
        this.catalogue = catalogue;
        this.numbers = numbers;
        this.figures = figures;
        this.references = references;
        this.whereabouts = new Whereabouts(catalogue);
        this.words = words;
        this.dates = new DateWords(catalogue.style());
        this.measured = new MeasuredRemarks(catalogue, figures, words);
    }

    Specimen of(Coin coin, Type type) {
        String id = coin.id().value();
        String number = numbers.of(id).map(String::valueOf).orElse(Numbering.NO_COIN);
        List<Cell> cells = figures.cells(coin, type);
        List<Inline> remarks = references.inRuns(Remarks.of(coin, besides(coin, type), whereabouts, catalogue.works(),
                words));
        return new Specimen(Anchors.coin(id), number, cells, MeasurementLine.line(cells), dies(coin),
                whereabouts.of(coin), remarks, references.in(coin.note()), picture(coin, type, number));
    }

    /** The year on it, and what else was measured. */
    private List<String> besides(Coin coin, Type type) {
        List<String> besides = new ArrayList<>();
        coin.eraDate().map(dates::of).ifPresent(besides::add);
        besides.addAll(measured.of(coin, type));
        return besides;
    }

    /** "O1/R3"; a die that is not known is an en dash; nothing where neither is. */
    private static String dies(Coin coin) {
        Optional<String> obverse = coin.dies().flatMap(Coin.Dies::obverse).map(Written::value);
        Optional<String> reverse = coin.dies().flatMap(Coin.Dies::reverse).map(Written::value);
        if (obverse.isEmpty() && reverse.isEmpty()) {
            return "";
        }
        return obverse.orElse("–") + "/" + reverse.orElse("–");
    }

    private Optional<Picture> picture(Coin coin, Type type, String number) {
        return coin.photograph().filter(photo -> photo.obverse().isPresent() || photo.reverse().isPresent())
                .map(photo -> new Picture(photo.obverse().map(Written::value), photo.reverse().map(Written::value),
                        alternative(BookWord.OBVERSE_OF, number, type.obverse()),
                        alternative(BookWord.REVERSE_OF, number, type.reverse()),
                        photo.credit().map(Written::value)));
    }

    private String alternative(BookWord sideOf, String number, Side side) {
        return words.of(sideOf) + " " + number
                + side.description().map(Phrase::plain).map(text -> words.language().colon() + text).orElse("");
    }
}
