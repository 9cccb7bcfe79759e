package exergue.check;

import exergue.files.MemoryTree;
import exergue.finding.Finding;
import exergue.model.Catalogue;
import exergue.source.Loaded;
import exergue.source.SourceReader;
import exergue.study.Plausibility;
import exergue.study.die.DieChecks;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A sound tree of one type and one coin, to be changed a file at a time. */
final class SmallTree {

    static final String COIN = """
            id: lk-1
            type: owl-drachm
            measured: {by: bench, weight: 3.87 g, diameter: 18 mm, axis: 6 h}
            """;
    static final String TYPE = """
            id: owl-drachm
            mint: lakonthos
            denomination: drachm
            metal: silver
            obverse: {description: Head of a nymph right}
            reverse: {legend: ΛΑΚ, description: Owl standing left}
            """;
    private static final String CONVENTIONS = """
            bench:
              title: measurements at the bench
              by: the excavation staff
              weight: {instrument: electronic balance}
              diameter: {instrument: sliding calliper, direction: greatest}
            """;

    private final Map<String, String> files = new TreeMap<>();

    SmallTree() {
        with("catalogue.yaml", "title: Coins of the Coast\nlanguage: en\nparts: {body: [catalogue]}\n");
        with("conventions.yaml", CONVENTIONS);
        with("mints.yaml", "lakonthos: {name: Lakonthos}\n");
        with("types/owl-drachm.yaml", TYPE);
        with("coins/lk-1.yaml", COIN);
    }

    SmallTree with(String path, String text) {
        files.put(path, text);
        return this;
    }

    Map<String, String> files() {
        return Map.copyOf(files);
    }

    /** One more coin of the same type. */
    SmallTree withCoin(String id, String weight, String more) {
        return with("coins/" + id + ".yaml", COIN.replace("lk-1", id).replace("3.87 g", weight) + more);
    }

    /** A second hand, by the id of {@code list}, that measured in another direction, and what it says of the coin lk-1. */
    SmallTree withSecondHand(String readings) {
        with("conventions.yaml", CONVENTIONS + """
                list:
                  title: a hand-list
                  by: the museum
                  weight: {instrument: beam balance, unit: g}
                  diameter: {unit: mm, direction: greatest}
                  axis: {notation: hours}
                """);
        return with("coins/lk-1.yaml", COIN + "also-measured:\n  - {by: list, " + readings + "}\n");
    }

    Loaded read() {
        try {
            return SourceReader.read(MemoryTree.ofText(files));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What check and study find, errors of the reader aside. */
    List<Finding> findings() {
        Catalogue catalogue = read().catalogue().orElseThrow();
        return Checker.check(catalogue).and(Plausibility.check(catalogue)).and(DieChecks.check(catalogue)).all();
    }

    List<String> codes() {
        return findings().stream().map(finding -> finding.code().id()).toList();
    }
}
