package exergue.edition;

import exergue.edition.methods.Passage;
import exergue.model.BookWord;
import exergue.model.Coin;
import exergue.model.Inline;
import exergue.model.Provenance;
import exergue.model.Side;
import exergue.model.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What there is to say of one coin after its figures and dies, in short sentences, each with its capital and its stop. */
final class Remarks {

    private final List<Inline> runs = new ArrayList<>();

    private Remarks() { }

    /** Where the coin is, and what there is to remark. */
    static List<Inline> withWhereabouts(String whereabouts, List<Inline> remarks) {
        Remarks all = new Remarks();
        all.sentence(whereabouts);
        if (!remarks.isEmpty()) {
            all.start();
            all.runs.addAll(remarks);
        }
        return List.copyOf(all.runs);
    }

    /**
     * Damage; what its sides have other than the type; what its diameter means; the year on it and what else was measured; where it was found, if the row gives
     * its collection; references; provenance.
     */
    static List<Inline> of(Coin coin, List<String> besides, Whereabouts whereabouts, Map<String, Work> works, BookWords words) {
        Remarks remarks = new Remarks();
        remarks.damage(coin, words);
        remarks.sides(coin, words);
        remarks.measured(coin, besides, words);
        whereabouts.besides(coin).ifPresent(remarks::sentence);
        ReferenceTexts.lines(ReferenceTexts.of(coin.references(), works, words)).forEach(remarks::sentence);
        remarks.sentence(provenance(coin));
        return List.copyOf(remarks.runs);
    }

    /** Earlier owners and sales in order of date. */
    static String provenance(Coin coin) {
        return String.join("; ", Provenance.inOrder(coin.provenance()).stream()
                .map(step -> step.words().value()).toList());
    }

    /** Only what the sides of this coin have other than the type. */
    static List<Inline> differences(Coin coin, BookWords words) {
        Remarks remarks = new Remarks();
        remarks.sides(coin, words);
        return List.copyOf(remarks.runs);
    }

    /** Damage, what its diameter means, and what else was measured. */
    static List<Inline> condition(Coin coin, List<String> besides, BookWords words) {
        Remarks remarks = new Remarks();
        remarks.damage(coin, words);
        remarks.measured(coin, besides, words);
        return List.copyOf(remarks.runs);
    }

    private void damage(Coin coin, BookWords words) {
        sentence(String.join(", ", coin.damage().stream().map(damage -> words.of(damage.value())).toList()));
    }

    private void sides(Coin coin, BookWords words) {
        side(words.of(BookWord.OBVERSE), coin.obverse(), words);
        side(words.of(BookWord.REVERSE), coin.reverse(), words);
    }

    private void measured(Coin coin, List<String> besides, BookWords words) {
        coin.diameterMeans().ifPresent(means -> sentence(words.with(BookWord.DIAMETER, means.value())));
        coin.countermark().ifPresent(mark -> sentence(words.with(BookWord.COUNTERMARK, mark.value())));
        besides.forEach(this::sentence);
    }

    private void side(String label, Side side, BookWords words) {
        if (side.isBlank()) {
            return;
        }
        start();
        runs.add(new Inline.Emphasis(List.of(new Inline.Words(label))));
        if (side.legend().isPresent() || side.retrograde()) {
            String legend = side.legend().map(text -> " " + text.value().printed()).orElse("");
            String way = side.retrograde() ? (legend.isEmpty() ? " " : ", ") + words.of(BookWord.RETROGRADE) : "";
            runs.add(new Inline.Words(" " + words.of(BookWord.LEGEND) + legend + way + Sentence.stop(legend + way)));
        }
        side.description().ifPresent(description -> {
            runs.add(new Inline.Words(" "));
            runs.addAll(description.runs());
            stop(Inline.plain(description.runs()));
        });
    }

    private void sentence(String text) {
        if (!text.isBlank()) {
            start();
            runs.add(new Inline.Words(Passage.capital(text)));
            stop(text);
        }
    }

    private void start() {
        if (!runs.isEmpty()) {
            runs.add(new Inline.Words(" "));
        }
    }

    private void stop(String text) {
        if (!Sentence.stop(text).isEmpty()) {
            runs.add(new Inline.Words(Sentence.stop(text)));
        }
    }
}
