package exergue;

import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.model.Catalogue;
import exergue.model.Excuse;
import exergue.model.ExcusedIn;
import exergue.model.Written;
import exergue.source.works.WorksReader;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How far an excuse reaches.
 *
 * @param file   in which it holds
 * @param entry  id of the one entry in it for which it holds; empty for all that the file has
 * @param longer ids of other entries that begin like it: “hallam.1931” is not “hallam”
 * @param excuse with its reason
 */
record Waiver(String file, Optional<String> entry, List<String> longer, Excuse excuse) {

    Waiver {
        longer = List.copyOf(longer);
    }

    /** Those of coins and types, each for its own file; then those of the house, first for single entries, then for whole files. */
    static List<Waiver> all(Catalogue catalogue) {
        List<ExcusedIn> house = catalogue.style().rules().excused();
        return Stream.of(
                catalogue.types().stream().flatMap(type -> type.excused().stream()).map(Waiver::ofItsOwnFile),
                catalogue.coins().stream().flatMap(coin -> coin.excused().stream()).map(Waiver::ofItsOwnFile),
                house.stream().filter(one -> one.entry().isPresent()).map(one -> ofTheHouse(one, catalogue)),
                house.stream().filter(one -> one.entry().isEmpty()).map(one -> ofTheHouse(one, catalogue))).flatMap(each -> each).toList();
    }

    private static Waiver ofItsOwnFile(Excuse excuse) {
        return new Waiver(excuse.finding().place().file(), Optional.empty(), List.of(), excuse);
    }

    private static Waiver ofTheHouse(ExcusedIn one, Catalogue catalogue) {
        Optional<String> entry = one.entry().map(Written::value);
        return new Waiver(one.file().value(), entry, entry.map(id -> ids(one.file().value(), catalogue).stream()
                .filter(other -> other.startsWith(id + ".")).toList()).orElse(List.of()), one.excuse());
    }

    /** Of the entries of a file of lists. */
    private static Set<String> ids(String file, Catalogue catalogue) {
        if (WorksReader.FILES.contains(file)) {
            return catalogue.works().keySet();
        }
        return switch (file) {
            case "mints.yaml" -> catalogue.mints().keySet();
            case "rulers.yaml" -> catalogue.rulers().keySet();
            case "conventions.yaml" -> catalogue.conventions().keySet();
            case "find-spots.yaml" -> catalogue.findSpots().keySet();
            case "collections.yaml" -> catalogue.collections().keySet();
            default -> Set.of();
        };
    }

    String code() {
        return excuse.finding().value();
    }

    /** Where the code is written. */
    Place where() {
        return excuse.finding().place();
    }

    /** Whether it is meant for this finding. The path of a finding in a file of lists begins with the id of its entry. */
    boolean covers(Finding finding) {
        return finding.code().id().equals(code()) && finding.place().file().equals(file)
                && entry.map(id -> isWithin(finding.path(), id)
                        && longer.stream().noneMatch(other -> isWithin(finding.path(), other))).orElse(true);
    }

    private static boolean isWithin(String path, String id) {
        return path.equals(id) || path.startsWith(id + ".") || path.startsWith(id + "[");
    }

    /** As it is called in a sentence: "The entry", "The house". */
    String whose() {
        return where().file().equals(file) && entry.isEmpty() ? "The entry" : "The house";
    }

    /** Where it looks for its finding: "in it", "in works.yaml under “hallam-1931”". */
    String inWhat() {
        return whose().equals("The entry") ? "in it" : "in " + file + entry.map(id -> " under “" + id + "”").orElse("");
    }
}
