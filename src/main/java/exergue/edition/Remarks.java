package exergue.edition;

import exergue.model.Coin;
import exergue.model.Inline;
import exergue.model.Side;
import exergue.model.Work;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What there is to say of one coin after its figures, in short sentences: damage; what its sides have other than the
 * type; what its diameter means; where it was found, if the row gives its collection; references; provenance.
 */
final class Remarks {

    private final List<Inline> runs = new ArrayList<>();

    private Remarks() { }

    static List<Inline> of(Coin coin, Whereabouts whereabouts, Map<String, Work> works, BookWords words) {
        Remarks remarks = new Remarks();
        remarks.sentence(String.join(", ", coin.damage().stream().map(damage -> damage.value().word()).toList()));
        remarks.side(words.obverse(), coin.obverse(), words);
        remarks.side(words.reverse(), coin.reverse(), words);
        coin.diameterMeans().ifPresent(means -> remarks.sentence(words.diameter() + " " + means.value()));
        whereabouts.besides(coin).ifPresent(remarks::sentence);
        remarks.sentence(ReferenceTexts.line(ReferenceTexts.of(coin.references(), works, words)));
        remarks.sentence(String.join("; ", coin.provenance().stream().map(Written::value).toList()));
        return List.copyOf(remarks.runs);
    }

    private void side(String label, Side side, BookWords words) {
        if (side.isBlank()) {
            return;
        }
        start();
        runs.add(new Inline.Emphasis(List.of(new Inline.Words(label))));
        Optional<String> legend = side.legend().map(Written::value);
        legend.ifPresent(text -> runs.add(new Inline.Words(" " + words.legend() + " " + text)));
        side.description().ifPresent(description -> {
            runs.add(new Inline.Words(legend.isPresent() ? ". " : " "));
            runs.addAll(description.runs());
        });
        stop(side.description().map(description -> Inline.plain(description.runs())).orElse(""));
    }

    private void sentence(String text) {
        if (text.isBlank()) {
            return;
        }
        start();
        int first = text.offsetByCodePoints(0, 1);
        runs.add(new Inline.Words(text.substring(0, first).toUpperCase(Locale.ROOT) + text.substring(first)));
        stop(text);
    }

    private void start() {
        if (!runs.isEmpty()) {
            runs.add(new Inline.Words(" "));
        }
    }

    private void stop(String text) {
        if (!text.endsWith(".") && !text.endsWith("!") && !text.endsWith("?")) {
            runs.add(new Inline.Words("."));
        }
    }
}
