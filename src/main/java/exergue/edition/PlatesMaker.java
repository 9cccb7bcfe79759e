package exergue.edition;

import exergue.edition.Plate.Pair;
import exergue.edition.Specimen.Picture;
import exergue.model.BookWord;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Inline;
import exergue.model.PictureStyle;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The plates: every coin that has a photograph, in the order of the book. */
final class PlatesMaker {

    private final Catalogue catalogue;
    private final Numbering numbers;
    private final BookWords words;
    private final List<Coin> coins = new ArrayList<>();
    private final List<String> mints = new ArrayList<>();
    private final List<Pair> pairs = new ArrayList<>();
    private final List<Plate> plates = new ArrayList<>();
    private final List<String> legend;

    PlatesMaker(Catalogue catalogue, BookOrder order, Numbering numbers, BookWords words, PictureMaker pictures) {
        this.catalogue = catalogue;
        this.numbers = numbers;
        this.words = words;
        order.types().forEach(type -> type.coins().forEach(
                coin -> pictures.of(coin, type.type()).ifPresent(picture -> add(coin, type.type(), picture))));
        this.legend = legend();
        int from = 0;
        PlateSpace space = PlateSpace.of(scaleBar().isDrawn(), legend);
        for (List<Plate.Row> rows : PlateLayout.of(pairs, space)) {
            int to = from + rows.stream().mapToInt(row -> row.pairs().size()).sum();
            String number = Roman.of(plates.size() + 1).toUpperCase(Locale.ROOT);
            plates.add(new Plate(Anchors.plate(number), number, words.of(BookWord.PLATE) + "\u00A0" + number,
                    caption(from, to), rows, space.below(rows, to == pairs.size())));
            from = to;
        }
    }

    private DrawnScale scaleBar() {
        PictureStyle style = catalogue.style().pictures();
        return DrawnScale.fitting(style.scaleBar(), style.scale(), PlateSpace.WIDTH);
    }

    private void add(Coin coin, Type type, Picture picture) {
        String number = numbers.of(coin.id().value()).map(String::valueOf).orElse(Numbering.NO_COIN);
        coins.add(coin);
        mints.add(Optional.ofNullable(catalogue.mints().get(type.mint().value())).map(mint -> mint.name().value())
                .orElse(type.mint().value()));
        pairs.add(new Pair(Anchors.coin(coin.id().value()), number, picture));
    }

    /** Each mint once for its coins that follow each other, with the first and the last of their numbers. */
    private String caption(int from, int to) {
        List<String> captions = new ArrayList<>();
        int begin = from;
        for (int at = from + 1; at <= to; at++) {
            if (at == to || !mints.get(at).equals(mints.get(begin))) {
                String first = pairs.get(begin).number();
                String last = pairs.get(at - 1).number();
                captions.add(mints.get(begin) + " " + (first.equals(last) ? first : first + "–" + last));
                begin = at;
            }
        }
        return String.join(", ", captions);
    }

    /** "pl. IV" by the anchor of the coin, for looking up only. */
    Map<String, String> byCoin() {
        Map<String, String> byCoin = new HashMap<>();
        for (Plate plate : plates) {
            plate.rows().forEach(row -> row.pairs().forEach(
                    pair -> byCoin.put(pair.coin(), words.of(BookWord.PLATE_SHORT) + "\u00A0" + plate.number())));
        }
        return byCoin;
    }

    List<Plate> plates() {
        return List.copyOf(plates);
    }

    /** Nothing if no coin has a photograph. */
    Optional<Part> part(String id) {
        return plates.isEmpty() ? Optional.empty()
                : Optional.of(new Part.Plates(id, List.of(new Inline.Words(words.of(BookWord.PLATES))), plates, legend, scaleBar()));
    }

    /** Scale, what is not to scale, and whom to thank for which pictures: finished sentences for below the last plate. */
    private List<String> legend() {
        List<String> legend = new ArrayList<>();
        List<Coin> unscaled = new ArrayList<>();
        Map<String, List<Coin>> credits = new LinkedHashMap<>();
        for (int i = 0; i < coins.size(); i++) {
            Coin coin = coins.get(i);
            if (!pairs.get(i).picture().toScale()) {
                unscaled.add(coin);
            }
            Optional<String> credit = coin.photograph().flatMap(Coin.Photograph::credit).map(Written::value);
            credit.ifPresent(words -> credits.computeIfAbsent(words, w -> new ArrayList<>()).add(coin));
        }
        if (unscaled.size() < coins.size()) {
            legend.add(Sentence.of(words.of(BookWord.SCALE) + " " + catalogue.style().pictures().scale().text()
                    + (pairs.stream().allMatch(pair -> pair.picture().scale().isEmpty()) ? ""
                    : ", " + words.of(BookWord.UNLESS_BY_NUMBER))));
        }
        if (!unscaled.isEmpty()) {
            legend.add(Sentence.of(words.with(BookWord.NOT_TO_SCALE, numbers(unscaled))));
        }
        credits.forEach((credit, thanked) -> legend.add(Sentence.of(
                thanked.size() == coins.size() ? credit : credit + words.language().colon() + numbers(thanked))));
        return legend;
    }

    private String numbers(List<Coin> some) {
        return words.of(some.size() == 1 ? BookWord.NUMBER : BookWord.NUMBERS) + "\u00A0" + numbers.range(some);
    }
}
