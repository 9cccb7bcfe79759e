package exergue.edition;

import exergue.edition.Part.WorkLine;
import exergue.model.Catalogue;
import exergue.model.HouseStyle.Quotes;
import exergue.model.Inline;
import exergue.model.NaturalOrder;
import exergue.model.Work;
import exergue.model.Written;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The works cited, in order of their signs; accents do not count in that order. A book's title is italic; a paper's
 * title stands in the house's quotation marks, and the volume it is in is italic.
 */
final class WorkLines {

    static final Comparator<Work> BY_SIGN = Comparator
            .comparing((Work work) -> withoutAccents(work.sign().value()), NaturalOrder.INSTANCE)
            .thenComparing(work -> work.sign().value())
            .thenComparing(work -> work.id().value());

    private WorkLines() { }

    /**
     * @param set full references that a citation style has set, by id
     * @param which the works of this list
     */
    static List<WorkLine> of(Catalogue catalogue, Map<String, List<Inline>> set, Predicate<Work> which) {
        Quotes quotes = catalogue.style().quotes();
        return catalogue.works().values().stream().filter(which).sorted(BY_SIGN)
                .map(work -> new WorkLine(Anchors.work(work.id().value()), work.sign().value(), full(work, set, quotes)))
                .toList();
    }

    private static List<Inline> full(Work work, Map<String, List<Inline>> set, Quotes quotes) {
        if (work.description() instanceof Work.AsPrinted printed) {
            return full(printed, quotes);
        }
        return set.getOrDefault(work.id().value(), List.of());
    }

    /** R. Hallam (1931), <i>The Coinage</i>, Alport. — or: R. Hallam (1931), “On dies”, <i>Journal</i>, vol. 3. */
    private static List<Inline> full(Work.AsPrinted work, Quotes quotes) {
        List<Inline> runs = new ArrayList<>();
        String year = work.year().map(y -> "(" + y.value() + ")").orElse("");
        String whose = (work.authors().map(Written::value).orElse("") + " " + year).strip();
        if (!whose.isEmpty()) {
            runs.add(new Inline.Words(whose + ", "));
        }
        String title = work.title().value();
        if (work.in().isPresent()) {
            runs.add(new Inline.Words(quotes.open() + title + quotes.close() + ", "));
            runs.add(italic(work.in().get().value()));
        } else {
            runs.add(italic(title));
        }
        String rest = work.rest().map(words -> ", " + words.value()).orElse("");
        runs.add(new Inline.Words(rest.endsWith(".") ? rest : rest + "."));
        return List.copyOf(runs);
    }

    private static Inline italic(String words) {
        return new Inline.Emphasis(List.of(new Inline.Words(words)));
    }

    private static String withoutAccents(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
    }
}
