package exergue;

import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * One slip in a figure shows in several ways: it is far off those of its type, another hand disagrees, and it may be finer
 * than its instrument. The stages do not know of each other, so what they say of one figure is brought together here:
 * the finding that holds the figure against its type keeps the word, with the other hand's figure as a related place. So
 * it is with a key that has no value where a figure is wanted, and with a name in signs that no id has, which leads nowhere.
 */
final class OneCause {

    private static final List<String> AGAINST_ITS_TYPE = List.of("weight-far-off", "diameter-far-off", "outside-limits");
    private static final String AGAINST_ANOTHER_HAND = "hands-disagree";
    private static final String AGAINST_ITS_INSTRUMENT = "finer-than-instrument";
    private static final String NO_VALUE = "empty-value";
    private static final String NO_READING = "reading-not-given";
    private static final String NOT_AN_ID = "not-an-id";

    private final List<Finding> all;
    /** Those that hold a figure against others; there are few, so that they may be looked through again and again. */
    private final List<Finding> figures;
    private final Map<String, Finding> empty;
    private final Map<String, Finding> missing;
    private final Set<Place> noIds;
    private final Set<Place> nearlyKnown;

    private OneCause(Findings all) {
        this.all = all.all();
        this.figures = all.all().stream().filter(finding -> AGAINST_ITS_TYPE.contains(finding.code().id()) || is(finding, AGAINST_ANOTHER_HAND))
                .toList();
        this.empty = byPath(NO_VALUE);
        this.missing = byPath(NO_READING);
        this.noIds = places(finding -> is(finding, NOT_AN_ID));
        this.nearlyKnown = places(finding -> leadsNowhere(finding) && finding.edit().isPresent());
    }

    static Findings of(Findings findings) {
        return Findings.of(new OneCause(findings).kept(), findings.excused());
    }

    private List<Finding> kept() {
        List<Finding> kept = new ArrayList<>();
        for (Finding finding : all) {
            if (is(finding, AGAINST_ANOTHER_HAND) && strangeFigure(finding).isPresent()
                    || is(finding, AGAINST_ITS_INSTRUMENT) && isToldBetter(finding)
                    || is(finding, NO_VALUE) && missing.containsKey(path(finding))
                    || isNameToldBetter(finding)) {
                continue;
            }
            kept.add(AGAINST_ITS_TYPE.contains(finding.code().id()) ? withOtherHands(finding)
                    : is(finding, NO_READING) ? atItsKey(finding) : finding);
        }
        return kept;
    }

    private static boolean is(Finding finding, String code) {
        return finding.code().id().equals(code);
    }

    /** What is said of one of the two figures against its type. */
    private Optional<Finding> strangeFigure(Finding hands) {
        return figures.stream().filter(finding -> AGAINST_ITS_TYPE.contains(finding.code().id()) && concerns(hands, finding)).findFirst();
    }

    private static boolean concerns(Finding hands, Finding strange) {
        return hands.place().equals(strange.place())
                || hands.related().stream().anyMatch(other -> other.place().equals(strange.place()));
    }

    private Set<Place> places(Predicate<Finding> which) {
        return all.stream().filter(which).map(Finding::place).collect(Collectors.toSet());
    }

    private Map<String, Finding> byPath(String code) {
        Map<String, Finding> found = new HashMap<>();
        all.stream().filter(finding -> is(finding, code)).forEach(finding -> found.putIfAbsent(path(finding), finding));
        return found;
    }

    private static String path(Finding finding) {
        return finding.place().file() + " " + finding.path();
    }

    /** Where the key stands and says nothing, the figure is wanted there. */
    private Finding atItsKey(Finding missing) {
        return Optional.ofNullable(empty.get(path(missing))).map(key -> new Finding(missing.code(), key.place(), missing.path(),
                missing.what(), missing.remedy(), missing.related(), missing.edit())).orElse(missing);
    }

    /** A name that is no id and leads nowhere is told once: as no id, unless in small letters it is the right one. */
    private boolean isNameToldBetter(Finding finding) {
        return is(finding, NOT_AN_ID) ? nearlyKnown.contains(finding.place())
                : leadsNowhere(finding) && finding.edit().isEmpty() && noIds.contains(finding.place());
    }

    private static boolean leadsNowhere(Finding finding) {
        return finding.code().id().startsWith("unknown-");
    }

    private boolean isToldBetter(Finding instrument) {
        return figures.stream().anyMatch(finding -> finding.path().equals(instrument.path())
                && finding.place().file().equals(instrument.place().file())
                && finding.place().line() == instrument.place().line());
    }

    private Finding withOtherHands(Finding strange) {
        List<Finding.Related> related = new ArrayList<>(strange.related());
        for (Finding hands : figures) {
            if (is(hands, AGAINST_ANOTHER_HAND) && concerns(hands, strange)) {
                hands.related().stream().filter(other -> !other.place().equals(strange.place())).forEach(related::add);
                if (!hands.place().equals(strange.place())) {
                    related.add(new Finding.Related(hands.place(), "what another hand says of this coin"));
                }
            }
        }
        return new Finding(strange.code(), strange.place(), strange.path(), strange.what(), strange.remedy(), related, strange.edit());
    }
}
