package exergue.typeset;

import exergue.edition.Specimen;
import exergue.finding.Finding;
import exergue.finding.Place;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Photographs of a coin as what templates see: the sides that are there, with words for who cannot see them. */
final class Pictures {

    private final Setting setting;
    private final Consumer<Finding> findings;

    Pictures(Setting setting, Consumer<Finding> findings) {
        this.setting = setting;
        this.findings = findings;
    }

    Optional<Map<String, Object>> of(String coin, String number, Specimen.Picture picture) {
        List<Map<String, Object>> sides = new ArrayList<>();
        for (Specimen.Face face : picture.faces()) {
            if (setting.source().has(face.path())) {
                sides.add(side(face));
            } else {
                report(coin, number, face.file());
            }
        }
        if (sides.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("sides", sides);
        value.put("width", picture.width());
        value.put("scale", picture.scale());
        value.put("credit", picture.credit().orElse(""));
        return Optional.of(value);
    }

    private static Map<String, Object> side(Specimen.Face face) {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("address", TreeResources.address(face.path()));
        value.put("alternative", face.alternative());
        value.put("width", millimetres(face.width()));
        value.put("shape", face.shape());
        return value;
    }

    /** What stands above and below something to bring its middle to the middle of something higher. */
    static String halfOf(BigDecimal rest) {
        return millimetres(rest.divide(new BigDecimal(2), MathContext.DECIMAL64));
    }

    /** To a thousandth, which no press can show. */
    static String millimetres(BigDecimal length) {
        return length.setScale(3, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString();
    }

    private void report(String coin, String number, String path) {
        Place place = setting.written().getOrDefault(coin, Place.ofFile(path));
        findings.accept(Finding.of(TypesetCodes.PICTURE_MISSING, place, "photograph",
                "There is no photograph “" + path + "”, which coin " + coin + " (no. " + number + ") names.",
                "Put the file there, or correct its path; paths start at the source folder."));
    }
}
