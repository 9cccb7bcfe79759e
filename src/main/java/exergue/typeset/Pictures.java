package exergue.typeset;

import exergue.edition.Specimen;
import exergue.finding.Finding;
import exergue.finding.Place;
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
        List<String> lost = new ArrayList<>();
        picture.obverse().flatMap(path -> side(path, picture.obverseAlternative(), lost)).ifPresent(sides::add);
        picture.reverse().flatMap(path -> side(path, picture.reverseAlternative(), lost)).ifPresent(sides::add);
        lost.forEach(path -> report(coin, number, path));
        if (sides.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("sides", sides);
        value.put("width", picture.width().toPlainString());
        value.put("credit", picture.credit().orElse(""));
        return Optional.of(value);
    }

    private Optional<Map<String, Object>> side(String path, String alternative, List<String> lost) {
        if (!setting.source().has(path)) {
            lost.add(path);
            return Optional.empty();
        }
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("address", TreeResources.address(path));
        value.put("alternative", alternative);
        return Optional.of(value);
    }

    private void report(String coin, String number, String path) {
        Place place = setting.written().getOrDefault(coin, Place.ofFile(path));
        findings.accept(Finding.of(TypesetCodes.PICTURE_MISSING, place, "photograph",
                "There is no photograph “" + path + "”, which coin " + coin + " (no. " + number + ") names.",
                "Put the file there, or correct its path; paths start at the source folder."));
    }
}
