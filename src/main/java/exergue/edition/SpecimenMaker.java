package exergue.edition;

import exergue.edition.Specimen.Cell;
import exergue.model.Coin;
import exergue.model.Inline;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One coin as printed. */
final class SpecimenMaker {

    private final EditorsDesk desk;
    private final MeasurementLine figures;
    private final Whereabouts whereabouts;
    private final DateWords dates;
    private final MeasuredRemarks measured;
    private final PictureMaker pictures;
    private final AloneMaker alone;

    SpecimenMaker(EditorsDesk desk, MeasurementLine figures, PictureMaker pictures) {
        this.desk = desk;
        this.figures = figures;
        this.whereabouts = new Whereabouts(desk.catalogue());
        this.dates = new DateWords(desk.catalogue().style());
        this.measured = new MeasuredRemarks(desk.catalogue(), figures, desk.words());
        this.pictures = pictures;
        this.alone = new AloneMaker(desk);
    }

    List<Specimen> of(BookOrder.TypeInBook inBook) {
        List<Specimen> specimens = new ArrayList<>();
        for (Coin coin : inBook.coins()) {
            specimens.add(specimen(coin, inBook.type(), specimens.isEmpty() ? "" : specimens.get(0).number()));
        }
        return specimens;
    }

    private Specimen specimen(Coin coin, Type type, String first) {
        String id = Anchors.coin(coin.id().value());
        String number = desk.numbers().of(coin.id().value()).map(String::valueOf).orElse(Numbering.NO_COIN);
        List<Cell> cells = figures.cells(coin, type);
        List<String> besides = besides(coin, type);
        List<Inline> remarks = desk.references().inRuns(Remarks.of(coin, besides, whereabouts,
                desk.catalogue().works(), desk.words()));
        return new Specimen(id, number, cells, MeasurementLine.line(cells), dies(coin), whereabouts.of(coin), remarks,
                desk.references().in(coin.note()), pictures.of(coin, type), desk.plates().getOrDefault(id, ""),
                alone.of(coin, type, first, besides));
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
}
