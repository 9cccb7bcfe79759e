package exergue;

import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.model.Catalogue;
import exergue.model.Excuse;
import exergue.model.ExcusedIn;
import exergue.model.Written;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How far an excuse reaches.
 *
 * @param file   in which it holds
 * @param entry  id of the one entry in it for which it holds; empty for all that the file has
 * @param excuse with its reason
 */
record Waiver(String file, Optional<String> entry, Excuse excuse) {

    /** Those of coins and types, each for its own file; then those of the house, first for single entries, then for whole files. */
    static List<Waiver> all(Catalogue catalogue) {
        List<ExcusedIn> house = catalogue.style().rules().excused();
        return Stream.of(
                catalogue.types().stream().flatMap(type -> type.excused().stream()).map(Waiver::ofItsOwnFile),
                catalogue.coins().stream().flatMap(coin -> coin.excused().stream()).map(Waiver::ofItsOwnFile),
                house.stream().filter(one -> one.entry().isPresent()).map(Waiver::ofTheHouse),
                house.stream().filter(one -> one.entry().isEmpty()).map(Waiver::ofTheHouse)).flatMap(each -> each).toList();
    }

    private static Waiver ofItsOwnFile(Excuse excuse) {
        return new Waiver(excuse.finding().place().file(), Optional.empty(), excuse);
    }

    private static Waiver ofTheHouse(ExcusedIn one) {
        return new Waiver(one.file().value(), one.entry().map(Written::value), one.excuse());
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
                && entry.map(id -> isWithin(finding.path(), id)).orElse(true);
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
