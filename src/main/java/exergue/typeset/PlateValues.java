package exergue.typeset;

import exergue.edition.Anchors;
import exergue.edition.DrawnScale;
import exergue.edition.Part;
import exergue.edition.Plate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The plates as what templates see; every measure in it is millimetres. */
record PlateValues(Pictures pictures) {

    private static final int FIGURES = 10;

    Map<String, Object> of(Part.Plates part) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("plates", part.plates().stream().map(this::plate).toList());
        values.put("legend", part.legend());
        if (part.scaleBar().isDrawn()) {
            values.put("scaleBar", scaleBar(part.scaleBar()));
        }
        return values;
    }

    private Map<String, Object> plate(Plate plate) {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("anchor", plate.id());
        value.put("number", plate.number());
        value.put("heading", plate.heading());
        value.put("caption", plate.caption());
        value.put("below", Pictures.millimetres(plate.below()));
        value.put("rows", plate.rows().stream().map(this::row).toList());
        return value;
    }

    private static Map<String, Object> scaleBar(DrawnScale bar) {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("length", onPaper(bar, bar.length()));
        value.put("division", onPaper(bar, 1));
        value.put("black", IntStream.range(0, bar.length()).filter(at -> at % 2 == 0).mapToObj(at -> onPaper(bar, at)).toList());
        value.put("figures", IntStream.rangeClosed(0, bar.length()).filter(at -> at % FIGURES == 0 || at == bar.length())
                .mapToObj(at -> Map.of("at", onPaper(bar, at), "words", at)).toList());
        return value;
    }

    private static String onPaper(DrawnScale bar, int millimetres) {
        return Pictures.millimetres(bar.onPaper(millimetres));
    }

    private Map<String, Object> row(Plate.Row row) {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("above", row.above().toPlainString());
        value.put("cell", row.cell().toPlainString());
        List<Map<String, Object>> places = new ArrayList<>();
        row.pairs().forEach(pair -> places.add(pair(pair, row)));
        while (places.size() < row.places()) {
            places.add(Map.of());
        }
        value.put("places", places);
        return value;
    }

    private Map<String, Object> pair(Plate.Pair pair, Plate.Row row) {
        Map<String, Object> value = new LinkedHashMap<>();
        pictures.of(pair.coin(), pair.number(), pair.picture()).ifPresent(picture -> {
            value.put("anchor", Anchors.onPlate(pair.coin()));
            value.put("above", Pictures.halfOf(row.height().subtract(pair.picture().height())));
            value.put("coin", pair.coin());
            value.put("number", pair.number());
            value.put("picture", picture);
        });
        return value;
    }
}
