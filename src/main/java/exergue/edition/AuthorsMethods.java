package exergue.edition;

import exergue.edition.methods.Counters;
import exergue.edition.methods.Hand;
import exergue.edition.methods.MethodsLanguage;
import exergue.edition.methods.StatedCount;
import exergue.edition.methods.Tally;
import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.finding.Place;
import exergue.model.Chapter;
import exergue.model.Inline;
import exergue.model.Prose;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The author's own sentences about measuring. Counts in braces are filled in from the data. Counts typed by hand are
 * held against the data: in a sentence that names a convention by its title, against the counts of that convention;
 * elsewhere against all counts of the same thing.
 */
final class AuthorsMethods {

    private static final Pattern COUNTER = Pattern.compile("\\{([^{}]*)}");

    private final Tally tally;
    private final Counters counters;
    private final Chapter chapter;
    private final MethodsLanguage language;

    AuthorsMethods(Tally tally, Chapter chapter, MethodsLanguage language) {
        this.language = language;
        this.tally = tally;
        this.counters = Counters.of(tally);
        this.chapter = chapter;
    }

    /** The author's blocks with every known counter filled in. */
    List<Prose> blocks() {
        return new ProseMapper(run -> run instanceof Inline.Words words ? filled(words) : run)
                .blocks(chapter.blocks());
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (ProseTexts.Line line : ProseTexts.of(chapter.blocks())) {
            findings.addAll(unknownCounters(line));
            for (StatedCount stated : language.statedCounts(line.text())) {
                contradiction(stated, line.place()).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private Inline filled(Inline.Words words) {
        return new Inline.Words(COUNTER.matcher(words.text()).replaceAll(match -> Matcher.quoteReplacement(
                counters.count(match.group(1).strip()).map(language::number).orElse(match.group()))));
    }

    private List<Finding> unknownCounters(ProseTexts.Line line) {
        List<Finding> findings = new ArrayList<>();
        COUNTER.matcher(line.text()).results().map(match -> match.group(1).strip())
                .filter(name -> counters.count(name).isEmpty())
                .forEach(name -> findings.add(Finding.of(EditionCodes.UNKNOWN_COUNTER, line.place(), "",
                        "“{" + name + "}” does not stand for a count.",
                        NearMiss.of(name, counters.all().keySet()).map(near -> "Did you mean “{" + near + "}”?")
                                .orElse("Write one of these: {" + String.join("}, {", counters.all().keySet())
                                        + "}."))));
        return findings;
    }

    private Optional<Finding> contradiction(StatedCount stated, Place place) {
        Optional<Hand> named = named(stated.sentence());
        String noun = stated.noun();
        if (named.isPresent()) {
            String counter = noun + " of " + named.get().convention().id();
            int counted = counters.count(counter).orElse(0);
            return counted == stated.count() ? Optional.empty() : Optional.of(Finding.of(
                    EditionCodes.COUNT_CONTRADICTED, place, "",
                    "The text says “" + stated.words() + "” of “" + named.get().convention().title()
                            + "”, but the entries give " + counted + ".",
                    "Write “{" + counter + "}” in place of the number, or mend the entries."));
        }
        boolean counted = counters.all().entrySet().stream().filter(counter -> isOf(noun, counter.getKey()))
                .map(Map.Entry::getValue).anyMatch(count -> count == stated.count());
        return counted ? Optional.empty() : Optional.of(Finding.of(EditionCodes.COUNT_NOT_BORNE_OUT, place, "",
                "The text says “" + stated.words() + "”, which is none of the counts taken from the entries.",
                "If a count of the whole catalogue is meant, write it as “{" + noun + "}” ("
                        + counters.count(noun).orElse(0) + " now)."));
    }

    /** "damaged coins" and "coins without weight" are counts of coins. */
    private static boolean isOf(String noun, String counter) {
        return List.of(counter.split(" ")).contains(noun);
    }

    /** The convention a sentence names, if it names just one. */
    private Optional<Hand> named(String sentence) {
        String lower = sentence.toLowerCase(Locale.ROOT);
        List<Hand> named = tally.hands().stream()
                .filter(hand -> lower.contains(hand.convention().title().toLowerCase(Locale.ROOT))).toList();
        return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
    }
}
