package exergue.cli.collation;

import exergue.files.MemoryTree;
import exergue.review.SmallCatalogue;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;

/** What can become of the small catalogue, a name for each. */
final class CollationCases {

    private static final String COIN = "coins/lk-1.yaml";
    private static final String OTHER = "coins/lk-2.yaml";
    private static final String GRAINS = "coins/lk-4.yaml";
    private static final String TYPE = "types/owl.yaml";

    private final Map<String, UnaryOperator<SmallCatalogue>> cases = new LinkedHashMap<>();

    private CollationCases() {
        figures();
        words();
        entries();
        frame();
    }

    static Map<String, UnaryOperator<SmallCatalogue>> all() {
        return new CollationCases().cases;
    }

    private void figures() {
        cases.put("digits-exchanged", c -> c.with(COIN, "3.78 g", "3.87 g"));
        cases.put("digit-misread", c -> c.with(COIN, "3.78 g", "3.18 g"));
        cases.put("decimal-point", c -> c.with(COIN, "3.78 g", "37.8 g"));
        cases.put("another-unit", c -> c.with(GRAINS, "63.6 gr", "63.6 g"));
        cases.put("axis-mirror", c -> c.with(COIN, "5 h", "7 h"));
        cases.put("axis-half-turn", c -> c.with("coins/lk-3.yaml", "12 h", "6 h"));
        cases.put("precision-lost", c -> c.with(OTHER, "4.12 g", "4.1 g"));
        cases.put("precision-gained", c -> c.with("coins/lk-3.yaml", "4.05 g", "4.0 g").with(OTHER, "4.12 g", "4.123 g"));
        cases.put("printed-as-before", c -> c.with(GRAINS, "63.6 gr", "4.12 g"));
        cases.put("figure-to-absence", c -> c.with(COIN, "5 h", "'missing: worn'"));
        cases.put("another-hand", c -> c.withMore(COIN, "also-measured: [{by: bench, weight: 3.7 g}]\n"));
    }

    private void words() {
        cases.put("reference-added", c -> c.withMore(COIN, "references: [{work: orrin, number: '7', relation: this coin}]\n"));
        cases.put("reference-changed", c -> c.with(TYPE, "number: '10'", "number: '11'"));
        cases.put("reference-taken-out", c -> c.with(TYPE, "references: [{work: vane, number: '10'}]\n", ""));
        cases.put("description", c -> c.with(TYPE, "Head of a nymph right; border of dots.",
                "Head of a nymph right, wearing a necklace; border of dots."));
        cases.put("legend", c -> c.with(TYPE, "ΛΑΚ", "ΛΑ"));
        cases.put("date", c -> c.with(TYPE, "-0319~/-0300~", "-0319~/-0309~"));
        cases.put("damage", c -> c.withMore(COIN, "damage: [chipped]\n"));
        cases.put("provenance", c -> c.withMore(COIN, "provenance: [{words: Orrin cabinet, date: 1902, under: Orrin}]\n"));
        cases.put("excused", c -> c.withMore(COIN, "excused: [{finding: weight-far-off, because: plated}]\n")
                .withMore("house-style.yaml", "words: {methods: On measuring}\nexcused: [{in: works.yaml, entry: orrin, finding: work-never-cited, "
                        + "because: the first list}]\n"));
        cases.put("note", c -> c.withMore(COIN, "note: The flan is *cracked*; see [type:bull].\n"));
        cases.put("new-die-link", c -> c.with("coins/lk-3.yaml", "reverse: R3", "reverse: R1"));
        cases.put("dies-numbered-by-mint", c -> c.withMore("house-style.yaml", "die-names: by mint\n")
                .with("coins/ma-1.yaml", "obverse: O9, reverse: R9", "obverse: O1, reverse: R4").with("coins/lk-3.yaml", "reverse: R3", "reverse: R1"));
        cases.put("die-link-gone", c -> c.with("coins/lk-6.yaml", "reverse: R5", "reverse: R6"));
    }

    private void entries() {
        cases.put("coin-to-another-type", c -> c.with(COIN, "type: owl", "type: wheel"));
        cases.put("type-to-another-issue", c -> c.with(TYPE, "First issue", "Second issue"));
        cases.put("coin-added", c -> c.with("coins/lk-7.yaml", c.text(OTHER).replace("lk-2", "lk-7").replace("4.12", "3.99")
                .replace("A 2", "A 17").replace("R2", "R7").replace("6 h", "8 h").replace("17 mm", "19 mm")));
        cases.put("coin-taken-out", c -> c.without("coins/lk-3.yaml"));
        cases.put("coin-renamed", c -> c.moved(OTHER, "coins/la-2.yaml", "id: lk-2", "id: la-2"));
        cases.put("coin-renamed-and-changed", c -> c.moved(OTHER, "coins/la-2.yaml", "id: lk-2\ntype: owl", "id: la-2\ntype: bull"));
        cases.put("coin-split", c -> c.with("coins/lk-2b.yaml", c.text(OTHER).replace("lk-2", "lk-2b").replace("4.12", "3.30")));
        cases.put("type-split", c -> c.with("types/owlet.yaml", c.text(TYPE).replace("id: owl", "id: owlet").replace("Owl standing", "Owlet standing"))
                .with(OTHER, "type: owl", "type: owlet"));
        cases.put("types-joined", c -> c.without("types/bull.yaml").with("coins/lk-3.yaml", "type: bull", "type: wheel")
                .with(GRAINS, "type: bull", "type: wheel"));
        cases.put("type-renamed", c -> c.moved(TYPE, "types/owl-drachm.yaml", "id: owl", "id: owl-drachm")
                .with(COIN, "type: owl", "type: owl-drachm").with(OTHER, "type: owl", "type: owl-drachm"));
        cases.put("coins-changed-round", c -> c.with(OTHER, c.text("coins/lk-3.yaml").replace("lk-3", "lk-2"))
                .with("coins/lk-3.yaml", c.text(OTHER).replace("lk-2", "lk-3")));
        cases.put("entry-half-merged", c -> c.with(COIN, "<<<<<<< HEAD\n" + c.text(COIN) + "=======\n" + c.text(COIN).replace("3.78", "3.87")
                + ">>>>>>> editor\n").with(OTHER, "6 h", "8 h"));
        cases.put("list-not-readable", c -> c.with("mints.yaml", "lakonthos: {name: \"Lakonthos}\n"));
        cases.put("pinned-number", c -> c.withMore("coins/ma-1.yaml", "number: 70\n"));
    }

    private void frame() {
        cases.put("formatting-only", c -> c.with(COIN, """
                # as weighed
                type: owl
                id:   lk-1
                collection:
                  id: cabinet
                  number: 'A 1'
                measured:
                  weight: 3.78   gm
                  by: "bench"
                  diameter: 18 mm
                  axis: 5 h
                dies: {reverse: R1, obverse: O1}
                """));
        cases.put("formatting-beside-a-change", c -> c.with(COIN, "id: lk-1\n", "id: 'lk-1'\n\n").with(OTHER, "6 h", "8 h"));
        cases.put("chapter", c -> c.with("chapters/history.md", "another hand", "a finer hand").with("chapters/history.md",
                "The mint was closed when the harbour silted up.", "It closed early.\n\nThe harbour is a meadow now."));
        cases.put("house-decimals", c -> c.withMore("house-style.yaml", "measurement-line: {weight-decimals: 1}\n"));
        cases.put("convention", c -> c.with("conventions.yaml", "electronic balance", "beam balance"));
        cases.put("work", c -> c.with("works.yaml", "Coins with Birds", "Coins with Birds and Fishes"));
        cases.put("mints-in-another-order", c -> c.with("mints.yaml", "marsh: {name: The Marsh Towns}\nlakonthos: {name: Lakonthos}\n"));
        cases.put("parts", c -> c.with("catalogue.yaml", "[methods, catalogue]", "[catalogue, methods]"));
        cases.put("exact-find-spot", c -> c.with("find-spots.yaml", "third dune", "fourth dune"));
    }

    /** A photograph replaced, one renamed, one new. */
    static MemoryTree photographs(SmallCatalogue catalogue, boolean before) {
        return catalogue.treeWith(before ? Map.of("photographs/lk-1.jpg", "the first picture", "photographs/lk-2.jpg", "the second")
                : Map.of("photographs/lk-1.jpg", "the first picture, taken anew", "photographs/lk-02.jpg", "the second",
                        "photographs/lk-3.jpg", "the third"));
    }
}
