package exergue.study.die.show;

import exergue.model.DieWord;
import exergue.study.chart.Links;
import exergue.study.die.Combination;
import exergue.study.die.Die;
import exergue.study.die.DieChain;
import exergue.study.die.DieStudy;
import exergue.study.figure.Plot;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The chains as a drawing: side by side as far as there is room, then in further bands. A chain that is too long for one band
 * goes on in the next, with those of its reverses again that are used there again.
 */
final class LinkDiagram {

    /** Names that stand side by side without touching, at the width of a chapter's lines. */
    private static final int ROOM = 18;
    private static final double GAP = 0.6;

    private final DieWords words;
    private final DieStudy study;
    private final List<Links.Band> bands = new ArrayList<>();
    private List<Links.Group> band = new ArrayList<>();
    private double filled;
    private boolean again;

    LinkDiagram(DieWords words, DieStudy study) {
        this.words = words;
        this.study = study;
    }

    /** Of a study that has a chain. */
    Plot plot() {
        for (int i = 0; i < study.chains().size(); i++) {
            add(String.valueOf(i + 1), study.chains().get(i));
        }
        bands.add(new Links.Band(band));
        List<String> notes = new ArrayList<>(List.of(words.of(DieWord.DIAGRAM_NOTE)));
        if (!study.usage().isEmpty()) {
            notes.add(words.of(DieWord.ORDERED_NOTE));
        }
        if (again) {
            notes.add(words.of(DieWord.AGAIN_NOTE));
        }
        return new Plot(new Links(bands), alternative(), new LinkTables(words, study).links(), notes);
    }

    private void add(String name, DieChain chain) {
        Set<Die> drawn = new HashSet<>();
        List<Die> obverses = new ArrayList<>();
        for (Die obverse : chain.obverses()) {
            List<Die> with = new ArrayList<>(obverses);
            with.add(obverse);
            if (!obverses.isEmpty() && slots(chain, with) > ROOM) {
                place(name, chain, obverses, drawn);
                with = new ArrayList<>(List.of(obverse));
            }
            obverses = with;
        }
        place(name, chain, obverses, drawn);
    }

    private static int slots(DieChain chain, List<Die> obverses) {
        return Math.max(obverses.size(), reverses(chain, obverses).size());
    }

    private static List<Die> reverses(DieChain chain, List<Die> obverses) {
        Set<Die> used = new LinkedHashSet<>();
        chain.combinations().stream().filter(pair -> obverses.contains(pair.pair().obverse())).forEach(pair -> used.add(pair.pair().reverse()));
        return chain.reverses().stream().filter(used::contains).toList();
    }

    private void place(String name, DieChain chain, List<Die> obverses, Set<Die> drawn) {
        List<Die> reverses = reverses(chain, obverses);
        int slots = slots(chain, obverses);
        if (!band.isEmpty() && filled + slots > ROOM) {
            bands.add(new Links.Band(band));
            band = new ArrayList<>();
            filled = 0;
        }
        List<Links.Line> lines = new ArrayList<>();
        for (Combination pair : chain.combinations()) {
            if (obverses.contains(pair.pair().obverse())) {
                lines.add(new Links.Line(obverses.indexOf(pair.pair().obverse()), reverses.indexOf(pair.pair().reverse()), pair.coins().size()));
            }
        }
        again |= reverses.stream().anyMatch(drawn::contains);
        Places places = Places.of(obverses.size(), reverses.size(), lines);
        band.add(new Links.Group(name, filled, slots, nodes(obverses, places.upper(), drawn), nodes(reverses, places.lower(), drawn), lines));
        drawn.addAll(reverses);
        filled += slots + GAP;
    }

    private List<Links.Node> nodes(List<Die> dies, List<Double> at, Set<Die> drawn) {
        List<Links.Node> nodes = new ArrayList<>();
        for (int i = 0; i < dies.size(); i++) {
            nodes.add(new Links.Node(words.name(dies.get(i)), at.get(i), drawn.contains(dies.get(i))));
        }
        return nodes;
    }

    /** Every link in words. */
    private String alternative() {
        List<String> chains = new ArrayList<>();
        for (int i = 0; i < study.chains().size(); i++) {
            DieChain chain = study.chains().get(i);
            List<String> links = chain.obverses().stream().map(obverse -> words.of(DieWord.LINK_ALT, "die", words.name(obverse), "partners",
                    words.names(reverses(chain, List.of(obverse))))).toList();
            chains.add(words.of(DieWord.CHAIN_ALT, "number", String.valueOf(i + 1), "links", String.join("; ", links)));
        }
        return words.of(DieWord.DIAGRAM_ALT, "chains", String.join(" ", chains));
    }
}
